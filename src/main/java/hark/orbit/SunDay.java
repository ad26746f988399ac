package hark.orbit;

import java.time.Instant;

/**
 * Sunlight on an orbit at one time. Use {@link #eclipseFraction}: cones behind the ellipsoid. Below
 * β of 55° the plain formula stays within 0.004 of it; where the shadow is grazed it is up to 0.04
 * too large on a sun-synchronous orbit at 500 km, since the poles are nearer to the centre.
 *
 * @param betaDeg angle between the Sun and the orbital plane, positive on the side of the normal
 * @param heightMeters mean height over the equator's radius
 * @param periodSeconds from node to node
 * @param umbraFraction part of a revolution with the Sun wholly hidden
 * @param shadowFraction part with the Sun at least partly hidden
 * @param cylinderFraction the same for the plain formula: a cylinder of shadow behind a sphere of
 *     the equator's radius, a circle at the mean height
 */
public record SunDay(
    Instant time,
    double betaDeg,
    double heightMeters,
    double periodSeconds,
    double umbraFraction,
    double shadowFraction,
    double cylinderFraction) {
  /** Refuses what is no number. */
  public SunDay {
    boolean angles = Math.abs(betaDeg) <= 90 && heightMeters > 0 && periodSeconds > 0;
    boolean parts = umbraFraction >= 0 && shadowFraction >= umbraFraction && shadowFraction < 1;
    if (!angles || !parts || !(cylinderFraction >= 0 && cylinderFraction < 1)) {
      throw new IllegalArgumentException("no sunlight like this: beta " + betaDeg + "°");
    }
  }

  /** Part of a revolution's light that is lost: half of the penumbra counts. */
  public double eclipseFraction() {
    return (umbraFraction + shadowFraction) / 2;
  }

  static SunDay of(MeanOrbit orbit, double seconds, Instant time) {
    SunPlane plane = new SunPlane(orbit, seconds);
    double axis = orbit.axisMeters(seconds);
    double cap = ShadowPart.capRad(EarthModel.EQUATORIAL_RADIUS_METERS, axis);
    return new SunDay(
        time,
        Math.toDegrees(plane.betaRad()),
        axis - EarthModel.EQUATORIAL_RADIUS_METERS,
        orbit.periodSeconds(seconds),
        plane.fraction(ShadowPart.Kind.UMBRA),
        plane.fraction(ShadowPart.Kind.PENUMBRA),
        ShadowPart.halfArcRad(cap, plane.betaRad()) / Math.PI);
  }
}

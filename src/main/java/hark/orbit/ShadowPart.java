package hark.orbit;

/**
 * How much of a circular orbit lies in the shadow of a sphere.
 *
 * <p>Seen from the sphere's centre the shadow covers a cap about the point opposite the Sun. A ray
 * that just passes the sphere leaves it at a right angle, so the cap of a cylinder of shadow has
 * the radius asin(R/r); rays from the Sun's far and near limb are tilted by asin((S ∓ R)/d), which
 * makes the cap of the umbra smaller and that of the penumbra larger by this angle. The orbit
 * crosses the cap's middle at a distance β.
 */
final class ShadowPart {
  /** The three kinds of shadow. */
  enum Kind {
    /** The Sun is a disc and wholly hidden. */
    UMBRA,
    /** The Sun is a point at infinity. */
    CYLINDER,
    /** The Sun is a disc and at least partly hidden: umbra included. */
    PENUMBRA
  }

  private ShadowPart() {}

  /** How far the rays at the shadow's rim are tilted, rad; positive makes the shadow wider. */
  static double tiltRad(Kind kind, double sunMeters) {
    double earth = EarthModel.EQUATORIAL_RADIUS_METERS;
    return switch (kind) {
      case UMBRA -> -Math.asin((Sun.RADIUS_METERS - earth) / sunMeters);
      case CYLINDER -> 0;
      case PENUMBRA -> Math.asin((Sun.RADIUS_METERS + earth) / sunMeters);
    };
  }

  /** Radius of the cap that a cylinder shades, rad: also the β beyond which there is no shadow. */
  static double capRad(double earthMeters, double radiusMeters) {
    return Math.asin(Math.min(1, earthMeters / radiusMeters));
  }

  /** Half the angle along the orbit inside a cap, rad; nothing when the orbit misses it. */
  static double halfArcRad(double capRad, double betaRad) {
    double part = Math.cos(capRad) / Math.cos(betaRad);
    return part < 1 && Math.abs(betaRad) < Math.PI / 2 ? Math.acos(part) : 0;
  }
}

package hark.orbit;

import hark.orbit.ShadowPart.Kind;

/**
 * Sun, Earth's ellipsoid and a near-circular orbit at one time.
 *
 * <p>The limb is taken at the ellipsoid's radius where the grazing ray touches it, once where the
 * orbit is deepest in the shadow and once at each edge.
 */
final class SunPlane {
  private static final double TINY = 1e-9;

  private final MeanOrbit orbit;
  private final double seconds;
  private final double sunMeters;
  private final double[] sun = new double[3];
  private final double[][] axes;
  private final double[] noon = new double[3];
  private final double[] ahead = new double[3];
  private final double betaRad;

  SunPlane(MeanOrbit orbit, double seconds) {
    this.orbit = orbit;
    this.seconds = seconds;
    this.axes = orbit.axes(seconds);
    Sun.position(orbit.unixSeconds(seconds), sun);
    this.sunMeters = Trajectory.radius(sun);
    for (int i = 0; i < 3; i++) {
      sun[i] /= sunMeters;
    }
    double[] normal = axes[2];
    double sinBeta = Math.max(-1, Math.min(1, dot(sun, normal)));
    this.betaRad = Math.asin(sinBeta);
    double cosBeta = Math.cos(betaRad);
    for (int i = 0; i < 3; i++) {
      noon[i] = cosBeta < TINY ? axes[0][i] : (sun[i] - sinBeta * normal[i]) / cosBeta;
    }
    for (int i = 0; i < 3; i++) {
      int j = (i + 1) % 3;
      int k = (i + 2) % 3;
      ahead[i] = normal[j] * noon[k] - normal[k] * noon[j];
    }
  }

  double betaRad() {
    return betaRad;
  }

  double sunMeters() {
    return sunMeters;
  }

  /** How far the orbit stays clear of a shadow, rad; negative when it enters. */
  double clearRad(Kind kind) {
    double limb = Math.cos(betaRad) * axes[2][2] - Math.sin(betaRad) * noon[2];
    return Math.abs(betaRad) - cap(kind, Math.PI, limb);
  }

  /** Part of a revolution in a shadow. */
  double fraction(Kind kind) {
    double clear = clearRad(kind);
    if (clear >= 0) {
      return 0;
    }
    double middle = ShadowPart.halfArcRad(Math.abs(betaRad) - clear, betaRad);
    return (edge(kind, middle, -1) + edge(kind, middle, 1)) / (2 * Math.PI);
  }

  /** From midnight to the shadow's edge, rad; the limb there stands on another latitude. */
  private double edge(Kind kind, double guess, int side) {
    double half = guess;
    for (int round = 0; round < 2; round++) {
      double phase = Math.PI + side * half;
      double z = Math.cos(phase) * noon[2] + Math.sin(phase) * ahead[2];
      double behind = -Math.cos(betaRad) * Math.cos(phase);
      double across = Math.sqrt(Math.max(TINY, 1 - behind * behind));
      half = ShadowPart.halfArcRad(cap(kind, phase, (z + behind * sun[2]) / across), betaRad);
    }
    return half;
  }

  /**
   * Radius of the shaded cap where the orbit has a phase, rad.
   *
   * @param limb sine of the latitude at which the grazing ray touches the Earth
   */
  private double cap(Kind kind, double phase, double limb) {
    double cosU = Math.cos(phase) * dot(noon, axes[0]) + Math.sin(phase) * dot(ahead, axes[0]);
    double sinU = Math.cos(phase) * dot(noon, axes[1]) + Math.sin(phase) * dot(ahead, axes[1]);
    double earth = EarthModel.EQUATORIAL_RADIUS_METERS * (1 - EarthModel.FLATTENING * limb * limb);
    return ShadowPart.capRad(earth, orbit.radiusMeters(seconds, cosU, sinU))
        + ShadowPart.tiltRad(kind, sunMeters);
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}

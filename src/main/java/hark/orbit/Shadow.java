package hark.orbit;

/**
 * How far the Sun's centre stands from the limb of the Earth's ellipsoid as seen from an object.
 *
 * <p>The limb is sought in the plane of object, Earth's centre and Sun, where a line touches the
 * ellipsoid in closed form. The limb's slope across that plane is the flattening at most, which
 * changes the angle by a few parts in a million: under a millisecond of crossing.
 */
final class Shadow {
  private static final double A2 =
      EarthModel.EQUATORIAL_RADIUS_METERS * EarthModel.EQUATORIAL_RADIUS_METERS;
  private static final double B2 = A2 * (1 - EarthModel.FLATTENING) * (1 - EarthModel.FLATTENING);

  /** Nearer to the Sun's axis than this, any side will do, m. */
  private static final double TINY_METERS = 1;

  private final double[] sun = new double[3];
  private final double[] toSun = new double[3];
  private final double[] side = new double[3];
  private final double polar2;
  private double marginRad;
  private double sunRadiusRad;

  /** On the WGS-84 ellipsoid. */
  Shadow() {
    this(B2);
  }

  private Shadow(double polar2) {
    this.polar2 = polar2;
  }

  /** On a sphere of the equatorial radius, for comparison. */
  static Shadow ofSphere() {
    return new Shadow(A2);
  }

  /** Computes both angles for a TEME position, m. */
  void look(double unixSeconds, double[] position) {
    Sun.position(unixSeconds, sun);
    double r = Trajectory.radius(position);
    double along = 0;
    double d2 = 0;
    for (int i = 0; i < 3; i++) {
      toSun[i] = sun[i] - position[i];
      along -= toSun[i] * position[i] / r;
      d2 += toSun[i] * toSun[i];
    }
    double across2 = 0;
    for (int i = 0; i < 3; i++) {
      side[i] = toSun[i] + along * position[i] / r;
      across2 += side[i] * side[i];
    }
    double across = Math.sqrt(across2);
    double sideLength = across > TINY_METERS ? across : anySide(position);
    sunRadiusRad = Math.asin(Sun.RADIUS_METERS / Math.sqrt(d2));
    marginRad = Math.atan2(across, along) - limb(position, r, sideLength);
  }

  /** Any direction across the line to the Earth's centre; returns its length. */
  private double anySide(double[] p) {
    boolean low = Math.abs(p[2]) < Math.abs(p[0]) + Math.abs(p[1]);
    side[0] = low ? -p[1] : 0;
    side[1] = low ? p[0] : -p[2];
    side[2] = low ? 0 : p[1];
    return Trajectory.radius(side);
  }

  /** Angle from nadir to the limb, towards the Sun: a quadratic in its tangent. */
  private double limb(double[] p, double r, double sideLength) {
    double pu = 0;
    double pw = 0;
    double uu = 0;
    double uw = 0;
    double ww = 0;
    double pp = 0;
    for (int i = 0; i < 3; i++) {
      double weight = 1 / (i == 2 ? polar2 : A2);
      double u = -p[i] / r;
      double w = side[i] / sideLength;
      pu += weight * p[i] * u;
      pw += weight * p[i] * w;
      uu += weight * u * u;
      uw += weight * u * w;
      ww += weight * w * w;
      pp += weight * p[i] * p[i];
    }
    double k = pp - 1;
    double a = pw * pw - k * ww;
    double halfB = pu * pw - k * uw;
    double c = pu * pu - k * uu;
    double root = Math.sqrt(Math.max(0, halfB * halfB - a * c));
    return Math.atan((-halfB - root) / a); // a is negative outside the Earth: the positive root
  }

  /** Sun's centre above the limb, rad; negative behind the Earth. */
  double marginRad() {
    return marginRad;
  }

  /** Angular radius of the Sun, rad. */
  double sunRadiusRad() {
    return sunRadiusRad;
  }
}

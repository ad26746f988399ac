package hark.station;

import hark.orbit.EarthModel;

/**
 * The local frame of a site: turns Earth-fixed states into directions. Holds the last result so
 * that loops make no garbage; not safe to share between threads.
 */
final class SiteFrame {
  private final double[] origin;
  private final double[] east;
  private final double[] north;
  private final double[] up;

  private double e;
  private double n;
  private double u;
  private double range;
  private double rangeRate;
  private double upRate;

  SiteFrame(Site site) {
    double latitude = Math.toRadians(site.latitudeDeg());
    double longitude = Math.toRadians(site.longitudeDeg());
    double sinLat = Math.sin(latitude);
    double cosLat = Math.cos(latitude);
    double sinLon = Math.sin(longitude);
    double cosLon = Math.cos(longitude);
    double e2 = EarthModel.FLATTENING * (2 - EarthModel.FLATTENING);
    double normal = EarthModel.EQUATORIAL_RADIUS_METERS / Math.sqrt(1 - e2 * sinLat * sinLat);
    double h = site.altitudeMeters();
    this.east = new double[] {-sinLon, cosLon, 0};
    this.north = new double[] {-sinLat * cosLon, -sinLat * sinLon, cosLat};
    this.up = new double[] {cosLat * cosLon, cosLat * sinLon, sinLat};
    this.origin =
        new double[] {
          (normal + h) * cosLat * cosLon,
          (normal + h) * cosLat * sinLon,
          (normal * (1 - e2) + h) * sinLat
        };
  }

  /** Takes an Earth-fixed state, m and m/s. */
  void look(double[] state) {
    double x = state[0] - origin[0];
    double y = state[1] - origin[1];
    double z = state[2] - origin[2];
    e = east[0] * x + east[1] * y;
    n = north[0] * x + north[1] * y + north[2] * z;
    u = up[0] * x + up[1] * y + up[2] * z;
    range = Math.sqrt(x * x + y * y + z * z);
    rangeRate = (x * state[3] + y * state[4] + z * state[5]) / range;
    upRate = up[0] * state[3] + up[1] * state[4] + up[2] * state[5];
  }

  double sineOfElevation() {
    return u / range;
  }

  /** Time derivative of {@link #sineOfElevation}, 1/s. */
  double sineRate() {
    return (upRate - u / range * rangeRate) / range;
  }

  double elevationDeg() {
    return Math.toDegrees(Math.atan2(u, Math.hypot(e, n)));
  }

  double azimuthDeg() {
    double azimuth = Math.toDegrees(Math.atan2(e, n));
    return azimuth < 0 ? azimuth + 360 : azimuth;
  }

  double rangeMeters() {
    return range;
  }

  /** Motion of the last look across the sky along a great circle, degrees/s. */
  double degreesPerSecond(double[] state) {
    double v2 = state[3] * state[3] + state[4] * state[4] + state[5] * state[5];
    return Math.toDegrees(Math.sqrt(Math.max(1e-12, v2 - rangeRate * rangeRate)) / range);
  }

  /** The last look as a value. */
  Look toLook() {
    return new Look(azimuthDeg(), elevationDeg(), range, rangeRate);
  }

  /** Angle at the Earth's centre between site and object, rad. */
  double centralAngle(double[] state) {
    double dot = origin[0] * state[0] + origin[1] * state[1] + origin[2] * state[2];
    double r =
        Math.sqrt(state[0] * state[0] + state[1] * state[1] + state[2] * state[2]) * distance();
    return Math.acos(Math.max(-1, Math.min(1, dot / r)));
  }

  /** Distance of the site from the Earth's centre, m. */
  double distance() {
    return Math.sqrt(origin[0] * origin[0] + origin[1] * origin[1] + origin[2] * origin[2]);
  }
}

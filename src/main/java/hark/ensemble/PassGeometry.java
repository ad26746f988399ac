package hark.ensemble;

import hark.station.HorizonMask;
import hark.station.Look;

/**
 * One candidate's predicted path over one station, sampled evenly and wider than the window on both
 * sides, so that an object which comes early or late is still on it. Times are seconds since
 * separation.
 */
public final class PassGeometry {
  private static final double FAR_AWAY_METERS = 1e8;

  private final double start;
  private final double step;
  private final double[] east;
  private final double[] north;
  private final double[] up;
  private final double[] rangeMeters;
  private final double[] rangeRate;
  private final double[] aboveMaskDeg;

  PassGeometry(double start, double step, Look[] looks, HorizonMask mask) {
    int count = looks.length;
    this.start = start;
    this.step = step;
    east = new double[count];
    north = new double[count];
    up = new double[count];
    rangeMeters = new double[count];
    rangeRate = new double[count];
    aboveMaskDeg = new double[count];
    for (int k = 0; k < count; k++) {
      Look look = looks[k];
      if (Double.isNaN(look.elevationDeg())) {
        // elements no longer valid: nothing to hear there
        north[k] = 1;
        rangeMeters[k] = FAR_AWAY_METERS;
        aboveMaskDeg[k] = -90;
        continue;
      }
      double azimuth = Math.toRadians(look.azimuthDeg());
      double elevation = Math.toRadians(look.elevationDeg());
      east[k] = Math.sin(azimuth) * Math.cos(elevation);
      north[k] = Math.cos(azimuth) * Math.cos(elevation);
      up[k] = Math.sin(elevation);
      rangeMeters[k] = look.rangeMeters();
      rangeRate[k] = look.rangeRateMetersPerSecond();
      aboveMaskDeg[k] = look.elevationDeg() - mask.elevationDegAt(look.azimuthDeg());
    }
  }

  /** Reads the path at a time into {@code out}; times beyond the ends read the ends. */
  void at(double seconds, Point out) {
    double place = Math.max(0, Math.min(east.length - 1.000001, (seconds - start) / step));
    int k = (int) place;
    double f = place - k;
    double x = east[k] + f * (east[k + 1] - east[k]);
    double y = north[k] + f * (north[k + 1] - north[k]);
    double z = up[k] + f * (up[k + 1] - up[k]);
    double length = Math.sqrt(x * x + y * y + z * z);
    out.east = x / length;
    out.north = y / length;
    out.up = z / length;
    out.rangeMeters = rangeMeters[k] + f * (rangeMeters[k + 1] - rangeMeters[k]);
    out.rangeRate = rangeRate[k] + f * (rangeRate[k + 1] - rangeRate[k]);
    out.aboveMaskDeg = aboveMaskDeg[k] + f * (aboveMaskDeg[k + 1] - aboveMaskDeg[k]);
  }

  /** True when the predicted path is above the mask at a time. */
  boolean isAboveMask(double seconds) {
    double place = Math.max(0, Math.min(east.length - 1.000001, (seconds - start) / step));
    int k = (int) place;
    return aboveMaskDeg[k] + (place - k) * (aboveMaskDeg[k + 1] - aboveMaskDeg[k]) >= 0;
  }

  /** A place on the path; reused, because there are very many. */
  static final class Point {
    double east;
    double north;
    double up;
    double rangeMeters;
    double rangeRate;
    double aboveMaskDeg;

    double elevationDeg() {
      return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, up))));
    }

    double azimuthDeg() {
      double azimuth = Math.toDegrees(Math.atan2(east, north));
      return azimuth < 0 ? azimuth + 360 : azimuth;
    }

    /** Angle to another direction, degrees. */
    double angleDeg(Point other) {
      double dot = east * other.east + north * other.north + up * other.up;
      return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, dot))));
    }
  }
}

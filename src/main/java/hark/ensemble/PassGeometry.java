package hark.ensemble;

import hark.station.HorizonMask;
import hark.station.Look;
import hark.station.Station;

/**
 * One candidate's predicted path over one station, sampled evenly and wider than the window on both
 * sides, so that an object which comes early or late is still on it. Times are seconds since
 * separation.
 */
public final class PassGeometry {
  private static final double FAR_AWAY_METERS = 1e8;

  /** An antenna is followed in such steps while it lags, s. */
  private static final double STEERING_SECONDS = 1;

  private final double start;
  private final double step;
  private final double[] east;
  private final double[] north;
  private final double[] up;
  private final double[] rangeMeters;
  private final double[] rangeRate;
  private final double[] aboveMaskDeg;
  private final PassGeometry antenna;

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
    antenna = this;
  }

  private PassGeometry(PassGeometry path, PassGeometry antenna) {
    start = path.start;
    step = path.step;
    east = path.east;
    north = path.north;
    up = path.up;
    rangeMeters = path.rangeMeters;
    rangeRate = path.rangeRate;
    aboveMaskDeg = path.aboveMaskDeg;
    this.antenna = antenna;
  }

  /** A path sampled anew at shorter steps, with another azimuth at each. */
  private PassGeometry(PassGeometry path, double[] azimuthDeg) {
    int count = azimuthDeg.length;
    start = path.start;
    step = STEERING_SECONDS;
    east = new double[count];
    north = new double[count];
    up = new double[count];
    rangeMeters = new double[count];
    rangeRate = new double[count];
    aboveMaskDeg = new double[count];
    Point there = new Point();
    for (int k = 0; k < count; k++) {
      path.at(start + k * step, there);
      double level = Math.hypot(there.east, there.north);
      double azimuth = Math.toRadians(azimuthDeg[k]);
      east[k] = level * Math.sin(azimuth);
      north[k] = level * Math.cos(azimuth);
      up[k] = there.up;
      rangeMeters[k] = there.rangeMeters;
      rangeRate[k] = there.rangeRate;
      aboveMaskDeg[k] = there.aboveMaskDeg;
    }
    antenna = this;
  }

  /**
   * The same path followed by an antenna that turns no faster than its rotator does. It stands on
   * the path until that rises above the mask, goes the shorter way round, and keeps the path's
   * elevation and Doppler. Stops in azimuth are not modelled.
   */
  PassGeometry steeredBy(Station.Rotator rotator) {
    if (!rotator.keyhole()) {
      return this;
    }
    double most = rotator.rateDegPerSecond() * STEERING_SECONDS;
    double[] azimuth = new double[1 + (int) Math.floor((east.length - 1) * step)];
    boolean lags = false;
    Point there = new Point();
    for (int k = 0; k < azimuth.length; k++) {
      at(start + k * STEERING_SECONDS, there);
      double wanted = there.azimuthDeg();
      if (k == 0 || there.aboveMaskDeg < 0) {
        azimuth[k] = wanted;
        continue;
      }
      double turn = Math.IEEEremainder(wanted - azimuth[k - 1], 360);
      lags |= Math.abs(turn) > most;
      azimuth[k] = azimuth[k - 1] + Math.max(-most, Math.min(most, turn));
    }
    return lags ? new PassGeometry(this, new PassGeometry(this, azimuth)) : this;
  }

  /** Where the antenna stands at a time when it follows this path. */
  void aimAt(double seconds, Point out) {
    antenna.at(seconds, out);
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
      return Math.toDegrees(Arc.ofSine(up));
    }

    double azimuthDeg() {
      double azimuth = Math.toDegrees(Math.atan2(east, north));
      return azimuth < 0 ? azimuth + 360 : azimuth;
    }

    /** Turns the direction about the vertical, to the east when seen facing north; degrees. */
    void turn(double degrees) {
      if (degrees == 0) {
        return;
      }
      double angle = Math.toRadians(degrees);
      double sine = Math.sin(angle);
      double cosine = Math.cos(angle);
      double turnedEast = east * cosine + north * sine;
      north = north * cosine - east * sine;
      east = turnedEast;
    }

    /** Angle to another direction, degrees. */
    double angleDeg(Point other) {
      return angleDeg(other.east, other.north, other.up);
    }

    double angleDeg(double otherEast, double otherNorth, double otherUp) {
      double dot = east * otherEast + north * otherNorth + up * otherUp;
      return Math.toDegrees(Arc.ofCosine(dot));
    }
  }
}

package hark.orbit;

import java.time.Instant;
import org.orekit.frames.EOPHistory;
import org.orekit.frames.PoleCorrection;
import org.orekit.time.AbsoluteDate;

/**
 * Turns TEME states into Earth-fixed ones: Greenwich mean sidereal time of 1982 and, where tables
 * give it, UT1 and the pole. Not safe to share between threads: it remembers the last table values.
 */
final class EarthRotation {
  /** Unix time of 2000-01-01T12:00:00Z, s. */
  static final double J2000_UNIX_SECONDS = 946728000.0;

  /** Rotation rate of the Earth against the mean equinox, rad/s (rate of GMST 1982). */
  static final double RATE = 7.292115855306589e-5;

  private static final double DAY = 86400.0;
  private static final double CENTURY = 36525.0 * DAY;

  /** Table values are taken at this spacing and interpolated linearly, s; UT1 moves 1 ms a day. */
  private static final double TABLE_STEP = 21600.0;

  private final EarthModel earth;
  private double cellStart = Double.NaN;
  private final double[] low = new double[3];
  private final double[] high = new double[3];

  EarthRotation(EarthModel earth) {
    this.earth = earth;
  }

  /**
   * Greenwich mean sidereal time, rad, not reduced. Source: IAU 1982 expression, Aoki et al. 1982.
   *
   * @param ut1Seconds UT1 since 2000-01-01T12:00, s
   */
  static double gmst(double ut1Seconds) {
    double t = ut1Seconds / CENTURY;
    double wholeTurns = ut1Seconds / DAY - Math.rint(ut1Seconds / DAY);
    double seconds = 67310.54841 + (8640184.812866 + (0.093104 - 6.2e-6 * t) * t) * t - DAY / 2;
    return 2 * Math.PI * (wholeTurns + 0.5 + seconds / DAY);
  }

  /**
   * Rotates a TEME state in place.
   *
   * @param unixSeconds UTC, s since 1970
   * @param state position m and velocity m/s
   */
  void toEarthFixed(double unixSeconds, double[] state) {
    double ut1 = unixSeconds - J2000_UNIX_SECONDS;
    if (earth.orientation().isPresent()) {
      interpolate(unixSeconds, earth.orientation().get());
      ut1 += value(unixSeconds, 0);
    }
    double angle = gmst(ut1);
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double x = cos * state[0] + sin * state[1];
    double y = cos * state[1] - sin * state[0];
    double vx = cos * state[3] + sin * state[4] + RATE * y;
    double vy = cos * state[4] - sin * state[3] - RATE * x;
    state[0] = x;
    state[1] = y;
    state[3] = vx;
    state[4] = vy;
    if (earth.orientation().isPresent()) {
      tilt(state, 0, value(unixSeconds, 1), value(unixSeconds, 2));
      tilt(state, 3, value(unixSeconds, 1), value(unixSeconds, 2));
    }
  }

  /** Polar motion: from the axis of rotation to the pole of the maps, small angles in rad. */
  private static void tilt(double[] v, int at, double poleX, double poleY) {
    double x = v[at];
    double y = v[at + 1];
    double z = v[at + 2];
    v[at] = x + poleX * z;
    v[at + 1] = y - poleY * z;
    v[at + 2] = z - poleX * x + poleY * y;
  }

  private double value(double unixSeconds, int which) {
    double part = (unixSeconds - cellStart) / TABLE_STEP;
    return low[which] + part * (high[which] - low[which]);
  }

  private void interpolate(double unixSeconds, EOPHistory history) {
    double start = Math.floor(unixSeconds / TABLE_STEP) * TABLE_STEP;
    if (start != cellStart) {
      cellStart = start;
      fill(history, start, low);
      fill(history, start + TABLE_STEP, high);
    }
  }

  private void fill(EOPHistory history, double unixSeconds, double[] into) {
    AbsoluteDate date = earth.date(Instant.ofEpochSecond((long) unixSeconds));
    PoleCorrection pole = history.getPoleCorrection(date);
    into[0] = history.getUT1MinusUTC(date);
    into[1] = pole.getXp();
    into[2] = pole.getYp();
  }
}

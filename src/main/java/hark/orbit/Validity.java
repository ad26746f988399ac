package hark.orbit;

/**
 * Finds when elements stop being valid. Orbits that stay well clear of the air are only looked at
 * every few hours; low ones are walked step by step.
 */
final class Validity {
  /** Perigees above this are safe for a look, m. */
  private static final double SAFE_RADIUS_METERS = 6378135.0 + 200e3;

  private static final double LOOK_SECONDS = 21600;
  private static final double WALK_SECONDS = 20;
  private static final double FOUND_WITHIN_SECONDS = 1e-3;

  private final Trajectory trajectory;
  private final double[] state = new double[6];

  private Validity(Trajectory trajectory) {
    this.trajectory = trajectory;
  }

  /**
   * First invalid second of a span, or NaN. What ended between epoch and span is not raised again,
   * even where the theory would give some state there.
   */
  static double end(Trajectory trajectory, double from, double to) {
    Validity validity = new Validity(trajectory);
    if (from > 0 && !Double.isNaN(validity.find(0, from))) {
      return from;
    }
    return validity.find(from, to);
  }

  private double find(double from, double to) {
    if (!trajectory.teme(from, state)) {
      return from;
    }
    boolean startSafe = isSafe(from);
    for (double t = from; t < to; t += LOOK_SECONDS) {
      double next = Math.min(t + LOOK_SECONDS, to);
      boolean endSafe = isSafe(next);
      if (!startSafe || !endSafe) {
        double end = walk(t, next);
        if (!Double.isNaN(end)) {
          return end;
        }
      }
      startSafe = endSafe;
    }
    return Double.NaN;
  }

  private double walk(double from, double to) {
    for (double t = from; t < to; t += WALK_SECONDS) {
      double next = Math.min(t + WALK_SECONDS, to);
      if (!trajectory.teme(next, state)) {
        return bisect(t, next);
      }
    }
    return Double.NaN;
  }

  private double bisect(double good, double bad) {
    double low = good;
    double high = bad;
    while (high - low > FOUND_WITHIN_SECONDS) {
      double middle = (low + high) / 2;
      if (trajectory.teme(middle, state)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private boolean isSafe(double seconds) {
    return trajectory.teme(seconds, state)
        && OrbitShape.of(state).perigeeMeters() > SAFE_RADIUS_METERS;
  }
}

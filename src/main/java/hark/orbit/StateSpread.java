package hark.orbit;

/**
 * How far an object may be from a propagated state along its track: σ² = initial² + (perDay·d)² +
 * (perDay2·d²)², s, with d the days since the state.
 */
public record StateSpread(double initialSeconds, double perDaySeconds, double perDay2Seconds) {
  /** Refuses what is not a spread. */
  public StateSpread {
    if (!(initialSeconds > 0 && perDaySeconds >= 0 && perDay2Seconds >= 0)) {
      throw new IllegalArgumentException(
          "spread " + initialSeconds + ", " + perDaySeconds + ", " + perDay2Seconds + " s");
    }
  }

  /** Standard deviation at an age, s. */
  public double sdSeconds(double ageDays) {
    double linear = perDaySeconds * ageDays;
    double square = perDay2Seconds * ageDays * ageDays;
    return Math.sqrt(initialSeconds * initialSeconds + linear * linear + square * square);
  }
}

package hark.assessment;

import java.time.Instant;

/**
 * What an assessment depends on beside mission and record.
 *
 * @param horizonDays how far to look ahead, days
 * @param members bodies wanted for each event set of order ≤ 1; rounded up to a multiple of six, at
 *     least 60
 * @param seed of all draws
 * @param threads only how fast: the answer does not depend on it
 */
public record AssessmentRequest(
    Instant now, double horizonDays, int members, long seed, int threads) {
  /** Days looked ahead when nothing else is said. */
  public static final double USUAL_HORIZON_DAYS = 7;

  /** Bodies for each small event set when nothing else is said. */
  public static final int USUAL_MEMBERS = 96;

  /** Fewest bodies for each small event set. */
  private static final int LEAST_MEMBERS = 60;

  /** Longest horizon that is computed, days. */
  public static final double LONGEST_HORIZON_DAYS = 60;

  /** Most bodies for each event set. */
  public static final int MOST_MEMBERS = 6000;

  private static final int GROUPS = 6;

  /** Refuses horizons and numbers out of range. */
  public AssessmentRequest {
    if (!(horizonDays > 0 && horizonDays <= LONGEST_HORIZON_DAYS)) {
      throw new IllegalArgumentException("horizon " + horizonDays + " d is outside (0, 60]");
    }
    if (!(members >= 1 && members <= MOST_MEMBERS)) {
      throw new IllegalArgumentException(
          "members " + members + " is outside [1, " + MOST_MEMBERS + "]");
    }
    if (threads < 1) {
      throw new IllegalArgumentException("threads " + threads + " is below 1");
    }
  }

  /** The usual request at a time. */
  public static AssessmentRequest at(Instant now) {
    int threads = Math.max(1, Math.min(8, Runtime.getRuntime().availableProcessors()));
    return new AssessmentRequest(now, USUAL_HORIZON_DAYS, USUAL_MEMBERS, 1, threads);
  }

  /** Bodies for each event set of order ≤ 1. */
  int bodiesPerSet() {
    return Math.max(LEAST_MEMBERS, (members + GROUPS - 1) / GROUPS * GROUPS);
  }
}

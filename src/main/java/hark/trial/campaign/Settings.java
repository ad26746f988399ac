package hark.trial.campaign;

/**
 * What a trial is to do.
 *
 * @param campaigns how many whose contact is lost
 * @param days from separation to the diagnosis
 * @param seed of all draws; campaign {@code k} depends on it and on {@code k} alone
 * @param world where truths come from
 * @param members bodies for each event set of order ≤ 1 of the diagnosis
 * @param ownBodies each campaign is diagnosed with bodies of its own, as users are; else all share
 *     {@value #SHARED} times as many
 */
public record Settings(
    int campaigns, double days, long seed, Kind world, int members, boolean ownBodies) {
  /** How many times the bodies a shared ensemble has. */
  public static final int SHARED = 8;

  /** Steps of the hidden body, s; see {@code src/docs/trials.md} for what finer ones change. */
  public static final double TRUTH_STEP_SECONDS = 5;

  /** On the first day everything is listened to, then this share of the windows. */
  public static final double LISTENED_SHARE = 0.08;

  /** A contact is lost when so many windows listened to in the end were silent. */
  public static final int SILENT_LAST = 6;

  /** Fewest and most days that make sense here. */
  private static final double LEAST_DAYS = 2;

  private static final double MOST_DAYS = 30;

  /** Refuses numbers out of range. */
  public Settings {
    if (campaigns < 1 || campaigns > 100_000) {
      throw new IllegalArgumentException("campaigns " + campaigns + " is outside 1 … 100000");
    }
    if (!(days >= LEAST_DAYS && days <= MOST_DAYS)) {
      throw new IllegalArgumentException("days " + days + " is outside 2 … 30");
    }
  }

  /** Where truths come from. */
  public enum Kind {
    /** The mission's own priors. */
    SAME,
    /** A world that the mission's crew did not think of. */
    SHIFTED
  }
}

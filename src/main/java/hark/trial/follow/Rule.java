package hark.trial.follow;

/** A rule by which a crew spends its hours. */
public enum Rule {
  /** The plan, made again as the record grows. */
  HARK,
  /** Every window as it comes, as planned. */
  EVERY,
  /** The highest windows of each week, as planned. */
  HIGHEST,
  /** Windows and procedures by lot. */
  RANDOM,
  /** Every window as it comes, the checklist in turn. */
  ROTATION,
  /** The highest windows of each week, the checklist in turn. */
  HIGHEST_ROTATION;

  /** As it is written on the command line. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  /** Whether it goes through the checklist rather than listening as planned. */
  boolean checks() {
    return this == RANDOM || this == ROTATION || this == HIGHEST_ROTATION;
  }
}

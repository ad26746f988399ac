package hark.ensemble;

import hark.station.Station;

/**
 * Someone else listened, and told. How far a report is to be believed decides; the health of our
 * own stations has no part in it.
 *
 * @param station a plain station at that place
 * @param trust how far the report is believed, 0…1
 */
record OutsideClue(
    int entry,
    Station station,
    SkyWindow window,
    Listening listening,
    double clockSdSeconds,
    boolean heard,
    double trust)
    implements Clue {
  /** A believed listener still takes something else for ours in so many windows. Judged. */
  private static final double NOT_OURS = 0.05;

  /** A report that means nothing says heard with this chance. Judged. */
  private static final double HEARD_BY_CHANCE = 0.5;

  /**
   * Of the people who report silence, so many followed the right object, on the right frequency, at
   * the right time, and were able to hear it. Judged; half is generous.
   */
  private static final double LISTENED_RIGHT = 0.5;

  /**
   * Chance of the report. Silence never counts for more than its own small weight.
   *
   * @param detected chance that a listener who did everything right would have noticed a burst
   */
  double likelihood(double detected) {
    if (heard) {
      double believed = NOT_OURS + (1 - NOT_OURS) * detected;
      return trust * believed + (1 - trust) * HEARD_BY_CHANCE;
    }
    return 1 - trust * LISTENED_RIGHT * detected;
  }
}

package hark.ensemble;

/**
 * One possibility on board: events with their onsets, the body they happened to, and what became of
 * the radio. The hearing is not in it: each member is weighed at every node of its group.
 *
 * @param set index into the event sets
 * @param draw index of the shared draw of the body's numbers
 * @param body index into the bodies
 * @param onsets onset of each event of the set, in its order, s since separation
 * @param importance prior density of the onsets over their proposal
 */
record Member(
    int set, int draw, int body, double[] onsets, double importance, RadioTimeline radio) {
  Member withImportance(double changed) {
    return new Member(set, draw, body, onsets, changed, radio);
  }

  Member with(RadioTimeline changed) {
    return new Member(set, draw, body, onsets, importance, changed);
  }

  int group() {
    return Draws.groupOf(draw);
  }

  /** Which of so many groups of hearings it is weighed at. */
  int hearings(int groups) {
    return draw % groups;
  }
}

package hark.plan;

/**
 * When each window is, where, and what it takes to sit there; all arrays by window, in the order of
 * time.
 *
 * @param station index of the station
 * @param beginDays days from now
 * @param endDays days from now
 * @param sessionHours setting up for it, h of people's time
 * @param passHours the pass itself, h of people's time
 * @param antennaHours how long it lasts, h
 * @param week index of the week whose hours it is counted in
 * @param horizonDays where the plan ends, days from now
 */
record Timetable(
    int[] station,
    double[] beginDays,
    double[] endDays,
    double[] sessionHours,
    double[] passHours,
    double[] antennaHours,
    int[] week,
    double horizonDays) {
  /** A week's hours are counted from Monday; so many at most that a plan may touch. */
  static final int MOST_WEEKS = 12;

  /** Number of windows. */
  int count() {
    return station.length;
  }

  /** Number of stations. */
  int stations() {
    int most = -1;
    for (int each : station) {
      most = Math.max(most, each);
    }
    return most + 1;
  }
}

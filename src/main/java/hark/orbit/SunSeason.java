package hark.orbit;

import java.time.Instant;

/**
 * A stretch of time in which every orbit is alike in having, or not having, a shadow.
 *
 * @param sure false when the stretch does not come at all with one of the doubts at one standard
 *     deviation
 */
public record SunSeason(Edge from, Edge to, boolean sure) {
  /**
   * Where a stretch begins or ends, to within an orbit.
   *
   * @param spreadDays one standard deviation; 0 at the end of what was asked for
   * @param cut true when not the stretch but what was asked for, or the orbit, begins or ends here
   */
  public record Edge(Instant time, double spreadDays, boolean cut) {
    /** Refuses a negative spread. */
    public Edge {
      if (!(spreadDays >= 0)) {
        throw new IllegalArgumentException("spread of " + spreadDays + " days");
      }
    }
  }

  /** Whether a time lies inside. */
  public boolean contains(Instant time) {
    return !time.isBefore(from.time()) && time.isBefore(to.time());
  }
}

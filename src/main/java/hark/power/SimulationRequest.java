package hark.power;

import java.util.List;

/**
 * What to simulate besides the body itself.
 *
 * @param endSeconds last time, s since separation
 * @param gridStartSeconds first time kept on the grid (earlier times are simulated, not kept)
 * @param gridStepSeconds grid step, s
 * @param events changes with their onsets, s since separation (before 0 counts as 0; beyond the end
 *     never happens)
 * @param probeSeconds times at which telemetry is asked for, rising
 * @param checkpointSeconds times at which the state is kept for branching, rising
 */
public record SimulationRequest(
    double endSeconds,
    double gridStartSeconds,
    double gridStepSeconds,
    List<TimedChange> events,
    double[] probeSeconds,
    double[] checkpointSeconds) {

  /** A change and when it begins, s since separation. */
  public record TimedChange(double onsetSeconds, OnboardChange change) {}
}

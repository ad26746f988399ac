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
 * @param probeSeconds times at which telemetry is asked for, rising; none is answered after the end
 * @param checkpointSeconds times at which the state is kept for branching, rising; none after the
 *     end
 * @param longestStepSeconds of the simulation, s
 */
public record SimulationRequest(
    double endSeconds,
    double gridStartSeconds,
    double gridStepSeconds,
    List<TimedChange> events,
    double[] probeSeconds,
    double[] checkpointSeconds,
    double longestStepSeconds) {
  /** A request with the usual longest step. */
  public SimulationRequest(
      double endSeconds,
      double gridStartSeconds,
      double gridStepSeconds,
      List<TimedChange> events,
      double[] probeSeconds,
      double[] checkpointSeconds) {
    this(
        endSeconds,
        gridStartSeconds,
        gridStepSeconds,
        events,
        probeSeconds,
        checkpointSeconds,
        PowerPhysics.STEP_SECONDS);
  }

  /** Refuses times that are negative or not rising and a grid without step. */
  public SimulationRequest {
    Check.notNegative("end", endSeconds);
    Check.notNegative("start of the grid", gridStartSeconds);
    Check.positive("grid step", gridStepSeconds);
    Check.positive("longest step", longestStepSeconds);
    events = List.copyOf(events);
    probeSeconds = probeSeconds.clone();
    checkpointSeconds = checkpointSeconds.clone();
    Check.rising("probe time", probeSeconds);
    Check.rising("checkpoint time", checkpointSeconds);
    if (endSeconds / gridStepSeconds > MOST_GRID_POINTS) {
      throw new IllegalArgumentException("more than " + MOST_GRID_POINTS + " grid points");
    }
  }

  /** The same with other changes. */
  public SimulationRequest with(List<TimedChange> changes) {
    return new SimulationRequest(
        endSeconds,
        gridStartSeconds,
        gridStepSeconds,
        changes,
        probeSeconds,
        checkpointSeconds,
        longestStepSeconds);
  }

  /** Grid points that one history may have. */
  private static final int MOST_GRID_POINTS = 10_000_000;

  /** A change and when it begins, s since separation. */
  public record TimedChange(double onsetSeconds, OnboardChange change) {
    /** Refuses an onset that is NaN; positive infinity never comes. */
    public TimedChange {
      if (Double.isNaN(onsetSeconds)) {
        throw new IllegalArgumentException("onset is not a number");
      }
    }
  }
}

package hark.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The options of every window, the plan over them and the case for going on.
 *
 * @param options by window, best first
 * @param choices planned procedure by window index
 * @param upperBound chance to hear something when every window is listened to in the best way for
 *     each possibility
 * @param meanDaysToHear restricted mean time to the first reception, horizon where none comes, days
 * @param goingOn pairs of (hours, chance heard), rising
 * @param recoveries by cause: when a possibility that has it is first audible by itself
 * @param book answers questions about this plan and others like it
 * @param afterNext how the causes will stand after the next planned window
 */
public record PlanOutcome(
    List<List<OptionValue>> options,
    Map<Integer, Procedure> choices,
    double costHours,
    double heardByHorizon,
    double upperBound,
    double meanDaysToHear,
    List<double[]> goingOn,
    List<Recovery> recoveries,
    PlanBook book,
    List<CauseAfter> afterNext) {

  /** How likely a cause has begun now, and after nothing or something was heard. */
  public record CauseAfter(
      String id, String title, double now, double afterNothing, double afterHeard) {}

  /**
   * Return without any action, among possibilities in which the cause has begun.
   *
   * @param probability that the first audible window lies within the horizon
   * @param p10 s since separation by which one in ten is back; empty when fewer are
   * @param weight of those possibilities among all
   */
  public record Recovery(
      double probability,
      Optional<Double> p10,
      Optional<Double> p50,
      Optional<Double> p90,
      double weight) {}
}

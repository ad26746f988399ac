package hark.plan;

import hark.ensemble.Diagnosis;
import hark.ensemble.Workers;
import java.util.List;
import java.util.Optional;

/**
 * How far listening reaches by the horizon, for each possibility: by the plan's own choices, by the
 * widest ear in every window, and by the cheapest watch. Commands are left out: what is heard here
 * is heard without sending anything.
 *
 * @param found chance that the plan's listening hears it
 * @param error Monte-Carlo standard error of {@code found}
 * @param foundWith by cause, the same where the cause has begun by now; NaN where it has in none
 * @param foundWithout by cause, the same where it has not
 * @param sets by event set
 * @param stations by station
 * @param watch the cheapest watch; empty when nothing can be listened to
 */
public record Reach(
    double found,
    double error,
    double[] foundWith,
    double[] foundWithout,
    List<OfSet> sets,
    List<OfStation> stations,
    Optional<Watch> watch) {

  /**
   * Within one event set, whose particles make up {@code weight} of all.
   *
   * @param soon chance that the widest ear in every window of the first day hears it, stations all
   *     working
   * @param everywhere the same by the horizon; never less than the plan's way, stations working
   */
  public record OfSet(double weight, double soon, double everywhere) {}

  /** The plan's listening if a station certainly works, and if it certainly does not. */
  public record OfStation(double works, double fails) {}

  /**
   * The cheapest watch to keep.
   *
   * @param station index of it
   * @param unattended true when it records by itself
   * @param windows how many until the horizon
   * @param hours of people's time for all of them
   * @param found chance that it hears something by the horizon
   * @param foundWith by cause, where the cause has begun by now
   */
  public record Watch(
      int station,
      boolean unattended,
      int windows,
      double hours,
      double found,
      double[] foundWith) {}

  /** Works it out. */
  public static Reach of(Diagnosis diagnosis, PlanOutcome plan, Workers workers) {
    return new ReachSum(diagnosis, plan, workers).reach();
  }
}

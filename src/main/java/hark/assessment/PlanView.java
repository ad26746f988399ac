package hark.assessment;

import hark.plan.PlanBook;
import hark.plan.PlanFigures;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The proposed plan, with what each window counts for and why.
 *
 * @param upperBound no plan of these options finds more, but for sampling
 * @param weeks hours granted, spent and planned
 * @param windows all of the horizon, rising
 */
public record PlanView(
    Instant now,
    Instant until,
    PlanFigures figures,
    double upperBound,
    List<PlanBook.WeekHours> weeks,
    List<Row> windows,
    After afterNothing,
    After afterHeard,
    OneMoreHour oneMoreHour) {
  /**
   * A window in the plan or left out of it.
   *
   * @param notAvailable why nobody may sit there; empty when somebody may
   * @param taken id of the planned procedure, or empty
   * @param best id of what is taken, or would be if anything were; empty when nothing is possible
   * @param title of {@code best}
   * @param heard chance to hear it in this window that way
   * @param costHours that it takes beside the rest of the plan, h
   * @param adds what it adds to the chance of hearing by the horizon, or would
   * @param saves what it takes off the mean time to the first reception, days, or would
   * @param fits false when it would break a limit beside the rest
   * @param why one or two sentences
   * @param cautions for whoever decides on it
   * @param options ids of everything possible there, best first
   */
  public record Row(
      Assessment.Window window,
      Optional<String> notAvailable,
      Optional<String> taken,
      Optional<String> best,
      String title,
      double heard,
      double costHours,
      double adds,
      double saves,
      boolean fits,
      String why,
      List<String> cautions,
      List<String> options) {}

  /**
   * What becomes of the plan after the next planned window.
   *
   * @param sentence what to do then
   * @param window id of the window to go to then, or empty
   * @param procedure what to do there, or empty
   * @param chance after nothing: to hear it by the horizon all the same; after a reception: to hear
   *     it again there
   * @param hours of the plan that are left, h
   * @param causes that move most, largest move first
   */
  public record After(
      String sentence,
      Optional<String> window,
      Optional<String> procedure,
      double chance,
      double hours,
      List<Moved> causes) {}

  /** A cause before and after. */
  public record Moved(String id, String title, double before, double after) {}

  /** What one more hour in every week would buy. */
  public record OneMoreHour(String sentence, double hours, double found, double days) {}
}

package hark.assessment;

import hark.assessment.ReviewCase.Arguments;
import hark.assessment.ReviewCase.Dated;
import hark.assessment.ReviewCase.Effort;
import hark.assessment.ReviewCase.Step;
import hark.assessment.ReviewCase.Unheard;
import hark.assessment.ReviewCase.Watch;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What speaks for going on and for stopping, and what would make stopping defensible, each from the
 * numbers of the case alone.
 *
 * @param steps the next hours and what they add
 */
record CaseArguments(
    Assessment assessment,
    List<Step> steps,
    Effort effort,
    List<Dated> dates,
    List<Unheard> unheard,
    Optional<Watch> watch) {
  /** A date counts if so much weight becomes reachable at it, 0…1. Judged. */
  private static final double WORTH_A_DATE = 0.02;

  /** A date that is further off is no reason to keep a crew, days. Judged. */
  private static final int SOON_DAYS = 60;

  Arguments all() {
    return new Arguments(goingOn(), stopping(), defensible());
  }

  private List<String> goingOn() {
    List<String> reasons = new ArrayList<>();
    steps.stream()
        .findFirst()
        .filter(step -> step.adds() >= effort.gain())
        .ifPresent(
            step ->
                reasons.add(
                    "The next "
                        + hours(step)
                        + " of people's time hear it with "
                        + Words.percent(step.adds())
                        + "."));
    next()
        .ifPresent(
            date ->
                reasons.add(
                    "On "
                        + Words.dateAndYear(date.from())
                        + " another "
                        + Words.percent(date.weight())
                        + " begins to become reachable: "
                        + date.what()
                        + "."));
    double alive = weight("sends") + weight("comes-back") + weight("comes-back-later");
    if (alive >= effort.gain()) {
      reasons.add(
          "In "
              + Words.percent(alive)
              + " of what still fits it sends now or will without help, and listening alone finds"
              + " it.");
    }
    return reasons;
  }

  private List<String> stopping() {
    List<String> against = new ArrayList<>();
    double silent = weight("silent") + weight("out-of-reach");
    if (silent > 0) {
      against.add(
          "In "
              + Words.percent(silent)
              + " of what still fits nothing that can be done from here would let it be heard.");
    }
    if (steps.size() > 1 && steps.get(1).adds() < effort.gain()) {
      against.add(
          "After the next "
              + hours(steps.get(0))
              + ", the "
              + hours(steps.get(1))
              + " that follow add "
              + Words.percent(steps.get(1).adds())
              + " within this look ahead.");
    }
    if (effort.monthAtMost() < WORTH_A_DATE) {
      against.add(
          "A month of "
              + Math.round(effort.monthHours())
              + " h after the plan could add at most "
              + Words.percent(effort.monthAtMost())
              + ".");
    }
    if (next().isEmpty()) {
      against.add(
          "No date within "
              + SOON_DAYS
              + " days makes as much as "
              + Words.percent(WORTH_A_DATE)
              + " more reachable.");
    }
    return against;
  }

  /** The nearest date that is worth keeping somebody for. */
  private Optional<Dated> next() {
    Instant soon = assessment.now().plus(SOON_DAYS, ChronoUnit.DAYS);
    return dates.stream()
        .filter(date -> date.weight() >= WORTH_A_DATE && date.from().isBefore(soon))
        .findFirst();
  }

  private String defensible() {
    List<String> when = new ArrayList<>();
    if (effort.fromHours().isPresent() && effort.fromHours().getAsDouble() > 0) {
      when.add(
          "once "
              + Math.round(effort.fromHours().getAsDouble())
              + " h more have brought nothing: from there on "
              + Math.round(effort.perHours())
              + " h add less than "
              + Words.percent(effort.gain()));
    } else if (effort.fromHours().isPresent()) {
      when.add(
          "already by its hours: the next "
              + Math.round(effort.perHours())
              + " add less than "
              + Words.percent(effort.gain()));
    }
    last()
        .ifPresent(
            date ->
                when.add(
                    "not while "
                        + Words.dateAndYear(date.from())
                        + " lies ahead, unless the cheapest watch is kept until then"));
    String kept =
        watch
            .map(
                w ->
                    " Kept alone, the cheapest watch at "
                        + w.station()
                        + " still finds "
                        + Words.percent(w.found())
                        + ".")
            .orElse("");
    return when.isEmpty()
        ? "Nothing here says when." + kept
        : "Stopping is defensible " + String.join("; ", when) + "." + kept;
  }

  /** The last date worth a word. */
  private Optional<Dated> last() {
    return dates.stream()
        .filter(date -> date.weight() >= WORTH_A_DATE)
        .reduce((earlier, later) -> later);
  }

  private double weight(String id) {
    return unheard.stream()
        .filter(group -> group.id().equals(id))
        .mapToDouble(Unheard::weight)
        .sum();
  }

  private static String hours(Step step) {
    return Math.round(step.toHours() - step.fromHours()) + " h";
  }
}

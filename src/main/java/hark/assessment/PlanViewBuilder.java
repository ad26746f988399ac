package hark.assessment;

import hark.plan.PlanBook;
import hark.plan.PlanOutcome;
import hark.plan.Procedure;
import hark.plan.WindowOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Puts the plan's own answers into a {@link PlanView}. */
final class PlanViewBuilder {
  /** Causes named as moved by the next window. */
  private static final int MOST_MOVED = 3;

  private final Assessment assessment;
  private final PlanBook book;
  private final PlanOutcome plan;
  private final Instant until;

  PlanViewBuilder(Assessment assessment, PlanOutcome plan) {
    this.assessment = assessment;
    this.plan = plan;
    this.book = plan.book();
    this.until = assessment.now().plusMillis(Math.round(assessment.horizonDays() * 86_400_000));
  }

  PlanView build() {
    Map<Integer, Integer> proposed = book.proposed();
    List<PlanBook.Share> shares = book.shares(proposed);
    List<PlanView.Row> rows = new ArrayList<>();
    for (int w = 0; w < shares.size(); w++) {
      rows.add(row(w, shares.get(w), proposed.containsKey(w)));
    }
    PlanBook.More more = book.oneMoreHour();
    return new PlanView(
        assessment.now(),
        until,
        book.figures(proposed),
        plan.upperBound(),
        book.weeks(proposed),
        rows,
        afterNothing(proposed),
        afterHeard(proposed),
        new PlanView.OneMoreHour(
            PlanWords.oneMore(more, until), more.hours(), more.found(), more.days()));
  }

  private PlanView.Row row(int w, PlanBook.Share share, boolean taken) {
    Assessment.Window window = assessment.windows().get(w);
    Optional<WindowOption> option =
        share.option() < 0 ? Optional.empty() : Optional.of(book.options(w).get(share.option()));
    Optional<String> best = option.map(o -> o.procedure().id());
    return new PlanView.Row(
        window,
        window.notAvailable(),
        taken ? best : Optional.empty(),
        best,
        option.map(o -> o.procedure().title()).orElse(""),
        best.flatMap(id -> find(window, id)).map(Assessment.Option::heardThisPass).orElse(0.0),
        share.hours(),
        share.found(),
        share.days(),
        share.fits(),
        why(window, option, share, taken),
        best.flatMap(id -> find(window, id)).map(Assessment.Option::cautions).orElse(List.of()),
        window.options().stream().map(Assessment.Option::procedure).toList());
  }

  private static Optional<Assessment.Option> find(Assessment.Window window, String procedure) {
    return window.options().stream().filter(o -> o.procedure().equals(procedure)).findFirst();
  }

  private String why(
      Assessment.Window window,
      Optional<WindowOption> option,
      PlanBook.Share share,
      boolean taken) {
    if (window.notAvailable().isPresent()) {
      return "Not available: " + window.notAvailable().get() + ".";
    }
    if (option.isEmpty()) {
      return "Nothing can be done there.";
    }
    if (!taken) {
      return PlanWords.leftOut(share, book.leastGainPerHour());
    }
    boolean sends = option.get().procedure().change() instanceof Procedure.Command;
    String counts = PlanWords.taken(share, until);
    return sends
        ? find(window, option.get().procedure().id()).map(o -> o.why() + " ").orElse("") + counts
        : counts;
  }

  private PlanView.After afterNothing(Map<Integer, Integer> proposed) {
    PlanBook.After after = book.afterNothing(proposed);
    Optional<Integer> next = book.next(after.choice());
    String sentence =
        next.map(
                w ->
                    "After nothing, go on with "
                        + what(w, after.choice().get(w))
                        + "; it is then still heard by "
                        + Words.date(until)
                        + " with "
                        + Words.percent(after.found())
                        + ".")
            .orElse("After nothing, the plan has nothing more.");
    return new PlanView.After(
        sentence,
        next.map(w -> assessment.windows().get(w).id()),
        next.map(w -> book.options(w).get(after.choice().get(w)).procedure().id()),
        after.found(),
        after.hours(),
        moved(PlanOutcome.CauseAfter::afterNothing));
  }

  private PlanView.After afterHeard(Map<Integer, Integer> proposed) {
    PlanBook.Again again = book.afterHeard(proposed);
    if (again.window() < 0) {
      return new PlanView.After(
          "After a reception there is no later window to hear it again in.",
          Optional.empty(),
          Optional.empty(),
          0,
          0,
          moved(PlanOutcome.CauseAfter::afterHeard));
    }
    return new PlanView.After(
        "After a reception the search is over: hear it again with "
            + what(again.window(), again.option())
            + ", where it is heard again with "
            + Words.percent(again.again())
            + ", and read its telemetry before anything is sent.",
        Optional.of(assessment.windows().get(again.window()).id()),
        Optional.of(book.options(again.window()).get(again.option()).procedure().id()),
        again.again(),
        0,
        moved(PlanOutcome.CauseAfter::afterHeard));
  }

  private String what(int window, int option) {
    Assessment.Window there = assessment.windows().get(window);
    return "'"
        + book.options(window).get(option).procedure().title()
        + "' at "
        + there.station()
        + " on "
        + Words.dateAndMinute(there.aos());
  }

  private List<PlanView.Moved> moved(ToDoubleFunction<PlanOutcome.CauseAfter> then) {
    return plan.afterNext().stream()
        .map(
            cause ->
                new PlanView.Moved(
                    cause.id(), cause.title(), cause.now(), then.applyAsDouble(cause)))
        .sorted(
            Comparator.comparingDouble((PlanView.Moved m) -> Math.abs(m.after() - m.before()))
                .reversed())
        .limit(MOST_MOVED)
        .toList();
  }
}

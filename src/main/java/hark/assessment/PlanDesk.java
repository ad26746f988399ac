package hark.assessment;

import hark.plan.PlanBook;
import hark.plan.PlanFigures;
import hark.plan.PlanOutcome;
import hark.plan.WindowOption;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Answers questions about the plan of one assessment: what each window counts for, and what the
 * plan would be worth with other choices. Each answer takes well under a second; safe for several
 * threads.
 */
public final class PlanDesk {
  /** Edits in one question; a horizon of 60 days has hardly more windows. */
  public static final int MOST_EDITS = 2000;

  private final Assessment assessment;
  private final PlanOutcome plan;
  private final PlanBook book;
  private PlanView view;

  private PlanDesk(Assessment assessment, PlanOutcome plan) {
    this.assessment = assessment;
    this.plan = plan;
    this.book = plan.book();
  }

  static PlanDesk of(Assessment assessment, PlanOutcome plan) {
    return new PlanDesk(assessment, plan);
  }

  /** The proposal. */
  public synchronized PlanView view() {
    if (view == null) {
      view = new PlanViewBuilder(assessment, plan).build();
    }
    return view;
  }

  /**
   * The plan with other choices in some windows.
   *
   * @throws BadInput naming every window or procedure that is not there
   */
  public synchronized PlanTrial tryOut(List<PlanEdit> edits) {
    Map<Integer, Integer> choice = new TreeMap<>(book.proposed());
    List<Problem> problems = new ArrayList<>();
    for (PlanEdit edit : edits) {
      apply(edit, choice, problems);
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    PlanFigures proposed = view().figures();
    PlanFigures edited = book.figures(choice);
    List<PlanBook.WeekHours> weeks = book.weeks(choice);
    return new PlanTrial(
        proposed,
        edited,
        weeks,
        PlanWords.objections(book, choice, weeks),
        PlanWords.compared(proposed, edited, view().until()),
        named(choice));
  }

  private void apply(PlanEdit edit, Map<Integer, Integer> choice, List<Problem> problems) {
    Optional<Integer> window =
        IntStream.range(0, assessment.windows().size())
            .boxed()
            .filter(w -> assessment.windows().get(w).id().equals(edit.window()))
            .findFirst();
    if (window.isEmpty()) {
      problems.add(
          new Problem(
              "there is no window '" + edit.window() + "' in this plan",
              edit.window(),
              "take an id from the list of windows"));
      return;
    }
    if (edit.procedure().isEmpty()) {
      choice.remove(window.get());
      return;
    }
    List<WindowOption> options = book.options(window.get());
    String wanted = edit.procedure().get();
    for (int o = 0; o < options.size(); o++) {
      if (options.get(o).procedure().id().equals(wanted)) {
        choice.put(window.get(), o);
        return;
      }
    }
    problems.add(
        new Problem(
            "'" + wanted + "' is not possible in this window",
            edit.window(),
            "possible are: "
                + String.join(", ", options.stream().map(o -> o.procedure().id()).toList())));
  }

  private Map<String, String> named(Map<Integer, Integer> choice) {
    Map<String, String> named = new LinkedHashMap<>();
    choice.forEach(
        (window, option) ->
            named.put(
                assessment.windows().get(window).id(),
                book.options(window).get(option).procedure().id()));
    return named;
  }
}

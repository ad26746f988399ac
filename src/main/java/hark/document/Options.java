package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.ProcedureView;
import hark.assessment.Assessment.Window;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Looks things up among windows and options; judges nothing. */
final class Options {
  private static final double DAY_MILLIS = 86_400_000;

  private Options() {}

  /** Where the look ahead ends. */
  static Instant end(Assessment assessment) {
    return assessment.now().plusMillis(Math.round(assessment.horizonDays() * DAY_MILLIS));
  }

  /** Windows that are not over, in time order. */
  static List<Window> ahead(Assessment assessment) {
    Instant now = assessment.now();
    return assessment.windows().stream()
        .filter(w -> w.los().isAfter(now))
        .sorted(Comparator.comparing(Window::aos))
        .toList();
  }

  /** Windows ahead for which the plan has something other than waiting. */
  static List<Window> planned(Assessment assessment) {
    return ahead(assessment).stream().filter(w -> isWork(assessment, w)).toList();
  }

  private static boolean isWork(Assessment assessment, Window window) {
    return planned(window).filter(o -> !kind(assessment, o.procedure()).equals("wait")).isPresent();
  }

  /** The planned option of a window. */
  static Optional<Option> planned(Window window) {
    return window.planned().flatMap(id -> find(window, id));
  }

  static Optional<Option> find(Window window, String procedure) {
    return window.options().stream().filter(o -> o.procedure().equals(procedure)).findFirst();
  }

  static List<Option> byRank(Window window) {
    return window.options().stream().sorted(Comparator.comparingInt(Option::rank)).toList();
  }

  static Optional<ProcedureView> procedure(Assessment assessment, String id) {
    return assessment.procedures().stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /** Kind of a procedure; {@code listen} when the assessment does not list it. */
  static String kind(Assessment assessment, String id) {
    return procedure(assessment, id).map(ProcedureView::kind).orElse("listen");
  }

  static boolean isCommand(Assessment assessment, Option option) {
    return option.reach().isPresent() || kind(assessment, option.procedure()).equals("command");
  }

  static List<Option> commands(Assessment assessment, Window window) {
    return byRank(window).stream().filter(o -> isCommand(assessment, o)).toList();
  }
}

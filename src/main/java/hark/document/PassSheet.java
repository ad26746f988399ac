package hark.document;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.ProcedureView;
import hark.assessment.Assessment.Window;
import hark.problem.BadInput;
import java.util.List;
import java.util.Optional;

/**
 * One pass on paper, in Markdown: cautions first, then what is known beforehand, the procedure, and
 * the log with room to write. Its fields are those crews write down (common practice).
 */
public final class PassSheet {
  private static final String ROOM = "&nbsp;";
  private static final List<String> LOG =
      List.of(
          "Began, ended (UTC)",
          "Noise floor, dB",
          "Signal: time, frequency, drift, level, how many, form",
          "Sent: time, power, acknowledged",
          "What was done otherwise than planned",
          "Equipment, weather",
          "Known satellite before and after: level, expected",
          "Recording file",
          "Who");

  /** Windows named when none is found. */
  private static final int NAMED = 5;

  private PassSheet() {}

  /**
   * The sheet of one window.
   *
   * @param id of the window; empty for the next planned one
   * @throws BadInput when there is no such window, or nothing is planned
   */
  public static String of(Assessment assessment, MissionFacts facts, Optional<String> id) {
    Window window = window(assessment, id);
    Option option =
        Options.planned(window)
            .or(() -> Options.byRank(window).stream().findFirst())
            .orElseThrow(
                () -> BadInput.of("nothing is possible there", window.id(), "take another"));
    Optional<ProcedureView> procedure = Options.procedure(assessment, option.procedure());
    Markdown out = new Markdown();
    head(out, assessment, window, option);
    procedure.ifPresent(found -> cautions(out, found));
    out.heading(2, "The pass");
    PassPlan.window(out, assessment, facts, window, option);
    procedure.ifPresent(found -> out.embed(found.markdown(), 1));
    log(out);
    return out.toString();
  }

  private static Window window(Assessment assessment, Optional<String> id) {
    if (id.isEmpty()) {
      return Options.planned(assessment).stream()
          .findFirst()
          .orElseThrow(
              () ->
                  BadInput.of(
                      "nothing is planned in the next " + Words.days(assessment.horizonDays()),
                      "--window",
                      "name one: " + some(assessment)));
    }
    return assessment.windows().stream()
        .filter(each -> each.id().equals(id.get()))
        .findFirst()
        .orElseThrow(
            () ->
                BadInput.of(
                    "there is no window '" + id.get() + "' in the days ahead",
                    "--window",
                    "name one such as " + some(assessment)));
  }

  private static String some(Assessment assessment) {
    return String.join(
        "; ", Options.ahead(assessment).stream().limit(NAMED).map(Window::id).toList());
  }

  private static void head(Markdown out, Assessment assessment, Window window, Option option) {
    out.heading(
        1,
        Markdown.plain(assessment.mission())
            + ", "
            + Markdown.plain(window.station())
            + ", "
            + Words.yearAndMinute(window.aos()));
    out.paragraph(
        "**"
            + Markdown.plain(Words.sentenceCase(Words.inSentence(option.title())))
            + ", "
            + Words.clock(window.aos())
            + " to "
            + Words.clock(window.los())
            + (window.planned().isPresent() ? ".**" : ". Not planned.**"));
    out.paragraph(
        "Written by Hark for "
            + Words.yearAndMinute(assessment.now())
            + ". All times are UTC; a newer element set moves them.");
  }

  private static void cautions(Markdown out, ProcedureView procedure) {
    out.heading(2, "Cautions");
    procedure.cautions().forEach(caution -> out.item(Markdown.plain(caution)));
    procedure
        .forbiddenIf()
        .forEach(caution -> out.item("**Forbidden if:** " + Markdown.plain(caution)));
    out.end();
  }

  private static void log(Markdown out) {
    out.heading(2, "Log");
    out.header("Field", "Written during the pass");
    LOG.forEach(field -> out.field(field, ROOM));
    out.end();
    out.paragraph("Then enter it: `hark log … nothing-heard`, `heard` or `not-listened`.");
  }
}

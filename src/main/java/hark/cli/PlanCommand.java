package hark.cli;

import hark.assessment.Examination;
import hark.assessment.PlanView;
import hark.cli.TableWriter.Column;
import hark.document.PlanJson;
import hark.document.PlanPage;
import hark.mission.Mission;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code hark plan MISSION}: what to do in which window, and why. */
@Command(
    name = "plan",
    description = {
      "What to do in which window over the days ahead, and why; which windows are left out; what the"
          + " plan becomes after the next window, and what one more hour a week would buy.",
      "It is chosen for weight found early (a reception three days later counts 1/e) under the crew's"
          + " hours of each week, the stations' times, licences and the hazard limit. Chosen on one"
          + " half of the possibilities, valued on the other."
    },
    footer = {
      "",
      "Examples:",
      "  hark plan my-mission",
      "  hark plan my-mission --days 14 --hours-per-week 5",
      "  hark plan my-mission --format csv > plan.csv"
    },
    mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
  private static final TableWriter ROWS =
      new TableWriter(
          "windows",
          List.of(
              Column.text("window"),
              Column.text("station"),
              Column.text("aos"),
              Column.text("los"),
              Column.number("maxElevationDeg", 1),
              Column.text("available"),
              Column.text("taken"),
              Column.text("best"),
              Column.number("heard", 4),
              Column.number("costHours", 2),
              Column.number("adds", 5),
              Column.number("addsDays", 3),
              Column.text("why")));

  @Spec private CommandSpec spec;
  @Mixin private AssessOptions options;
  @Mixin private FormatOption format;

  @Option(
      names = "--hours-per-week",
      paramLabel = "H",
      description = "People's hours in a week, in place of crew.hours_per_week.")
  private Double hoursPerWeek;

  @Override
  public Integer call() {
    MissionRecord record = options.read();
    Mission mission =
        hoursPerWeek == null
            ? record.mission()
            : record.with(Map.of("crew.hours_per_week", hoursPerWeek.toString()));
    Examination examined = options.examine(record, mission);
    PlanView view = examined.plan().view();
    PrintWriter out = spec.commandLine().getOut();
    switch (format.format()) {
      case TABLE -> out.print(PlanPage.of(examined.assessment(), view));
      case JSON -> out.print(PlanJson.text(examined.assessment(), view));
      case CSV ->
          ROWS.write(OutputFormat.CSV, view.windows().stream().map(PlanCommand::row).toList(), out);
    }
    out.flush();
    return ExitCode.DONE;
  }

  private static Object[] row(PlanView.Row row) {
    return new Object[] {
      row.window().id(),
      row.window().station(),
      row.window().aos(),
      row.window().los(),
      row.window().maxElevationDeg(),
      row.notAvailable().isEmpty(),
      row.taken().orElse(null),
      row.best().orElse(null),
      row.heard(),
      row.costHours(),
      row.adds(),
      -row.saves(),
      row.why()
    };
  }
}

package hark.cli;

import hark.assessment.Assessment;
import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.cli.SkyQuestion.Place;
import hark.cli.TableWriter.Column;
import hark.document.PassCalendar;
import hark.document.PlanEvents;
import hark.orbit.Trajectory;
import hark.station.Pass;
import hark.station.Passes;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** When objects pass over a site. */
@Command(
    name = "passes",
    description = {
      "Passes of objects over a site, or of a mission's candidates over its stations.",
      "Passes in progress at either end keep their true AOS and LOS. An object in view for more than"
          + " three days beyond an end is cut there.",
      "--format ics writes a calendar: an entry for each pass, candidates that fly close together in"
          + " one. With --planned it holds the windows in which the plan of the mission does something,"
          + " and what."
    },
    mixinStandardHelpOptions = true)
final class PassesCommand implements Callable<Integer> {
  private static final TableWriter TABLE =
      new TableWriter(
          "passes",
          List.of(
              Column.text("object"),
              Column.text("site"),
              Column.text("aos"),
              Column.text("culmination"),
              Column.text("los"),
              Column.number("maxElevationDeg", 5),
              Column.number("aosAzimuthDeg", 4),
              Column.number("culminationAzimuthDeg", 4),
              Column.number("losAzimuthDeg", 4),
              Column.number("culminationRangeKm", 4),
              Column.text("sunlitAtCulmination")));

  @Spec private CommandSpec spec;
  @Mixin private SubjectOptions subject;
  @Mixin private SkyOptions sky;
  @Mixin private SiteOptions place;

  @Option(
      names = "--format",
      defaultValue = "table",
      paramLabel = "table|json|csv|ics",
      description = "How to print (default: ${DEFAULT-VALUE}).")
  private String format;

  @Option(
      names = "--planned",
      description = "With a MISSION and --format ics: assess it and write what is planned.")
  private boolean planned;

  @Override
  public Integer call() {
    Optional<OutputFormat> table = ExtraFormat.of(format, "ics", spec).table();
    PrintWriter out = spec.commandLine().getOut();
    if (planned) {
      if (table.isPresent()) {
        throw new ParameterException(spec.commandLine(), "--planned goes with --format ics");
      }
      print(plan(), out);
      return ExitCode.DONE;
    }
    SkyQuestion asked = subject.question(sky, place);
    SkyRun run = new SkyRun(asked.legs(), asked.earth(), spec.commandLine().getErr());
    List<Pass> passes = run.each((trajectory, leg) -> passes(trajectory, leg, asked.places()));
    List<Pass> inOrder = FoundPasses.inOrder(passes, pass -> pass);
    if (table.isPresent()) {
      TABLE.write(table.get(), inOrder.stream().map(PassesCommand::row).toList(), out);
    } else {
      print(PassCalendar.of(CalendarEvents.ofPasses(inOrder), asked.from()), out);
    }
    return ExitCode.DONE;
  }

  /** A calendar brings its own ends of lines. */
  private static void print(String calendar, PrintWriter out) {
    out.print(calendar);
    out.flush();
  }

  private String plan() {
    Path folder = subject.requireMission();
    MissionRecord record = MissionRecord.read(folder);
    Instant now = record.now(Main.of(spec).clock());
    Assessment assessment =
        Assessor.assess(record.mission(), record.entries(), AssessmentRequest.at(now), sky.earth());
    List<PassCalendar.Event> events = PlanEvents.of(assessment);
    return PassCalendar.of(events, now);
  }

  private static List<Pass> passes(Trajectory trajectory, Leg leg, List<Place> places) {
    return places.stream()
        .flatMap(
            place ->
                Passes.find(trajectory, place.site(), place.mask(), leg.from(), leg.to()).stream())
        .toList();
  }

  private static Object[] row(Pass pass) {
    return new Object[] {
      pass.objectId(),
      pass.site(),
      pass.aos(),
      pass.culmination(),
      pass.los(),
      pass.maxElevationDeg(),
      pass.aosAzimuthDeg(),
      pass.culminationAzimuthDeg(),
      pass.losAzimuthDeg(),
      pass.culminationRangeKm(),
      pass.sunlitAtCulmination()
    };
  }
}

package hark.cli;

import hark.assessment.OrbitDesk;
import hark.assessment.OrbitKnowledge;
import hark.assessment.OrbitKnowledge.Known;
import hark.cli.TableWriter.Column;
import hark.document.OrbitReport;
import hark.orbit.ElementSet;
import hark.orbit.ElementText;
import hark.orbit.OmmText;
import hark.orbit.SetStep;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code hark orbit MISSION}: what the element sets say, and how well. */
@Command(
    name = "orbit",
    description = {
      "What is known of each object's orbit and how well: age of its sets, spread along the track,"
          + " how well successive sets foretell each other, jumps, decay.",
      "A jump is a set more than five usual spreads or 15 km aside of where the one before it foretold"
          + " the object."
    },
    mixinStandardHelpOptions = true)
final class OrbitCommand implements Callable<Integer> {
  private static final double DAYS_A_YEAR = 365.25;

  private static final TableWriter OBJECTS =
      new TableWriter(
          "orbit",
          List.of(
              Column.text("object"),
              Column.number("weight", 4),
              Column.text("sets"),
              Column.text("lastEpoch"),
              Column.number("ageHours", 2),
              Column.number("alongTrackSdS", 2),
              Column.number("measuredPerDayS", 3),
              Column.number("believedPerDayS", 3),
              Column.text("jumps"),
              Column.text("looksLike"),
              Column.number("heightKm", 1),
              Column.number("sinksMPerDay", 1),
              Column.number("bstar", 8),
              Column.number("bstarChange", 3),
              Column.number("endSoonestYears", 2),
              Column.number("endLatestYears", 2)));

  private static final TableWriter STEPS =
      new TableWriter(
          "steps",
          List.of(
              Column.text("object"),
              Column.text("from"),
              Column.text("to"),
              Column.number("days", 3),
              Column.number("lateS", 3),
              Column.number("asideKm", 3),
              Column.number("aboveKm", 3),
              Column.number("spreads", 2),
              Column.text("jump")));

  @Spec private CommandSpec spec;
  @Mixin private EarthOption earth;
  @Mixin private FormatOption format;

  @Parameters(paramLabel = "MISSION", description = "The mission folder.")
  private Path folder;

  @Option(
      names = "--now",
      paramLabel = "T",
      description = "Use element sets known by this time, UTC (default: the mission's clock).")
  private Instant now;

  @Option(
      names = "--write",
      paramLabel = "FORM",
      description = {
        "Print the candidates' newest sets in this form instead: tle, omm, omm-xml or omm-json.",
        "A deployer's state gives the mean elements fitted to its path."
      })
  private String write;

  @Option(names = "--steps", description = "List each set as the one before it foretold it.")
  private boolean steps;

  @Override
  public Integer call() {
    MissionRecord record = MissionRecord.read(folder);
    Instant at = now == null ? record.now(Main.of(spec).clock()) : now;
    OrbitKnowledge knowledge = OrbitDesk.of(record.mission(), earth.earth(), at);
    PrintWriter out = spec.commandLine().getOut();
    if (write != null) {
      out.print(elements(knowledge));
      out.flush();
    } else if (steps) {
      List<Object[]> rows =
          knowledge.objects().stream()
              .flatMap(known -> known.steps().stream().map(step -> row(known.objectId(), step)))
              .toList();
      STEPS.write(format.format(), rows, out);
    } else if (format.format() == OutputFormat.TABLE) {
      out.print(OrbitReport.of(knowledge));
      out.flush();
    } else {
      OBJECTS.write(
          format.format(), knowledge.objects().stream().map(OrbitCommand::row).toList(), out);
    }
    return ExitCode.DONE;
  }

  private String elements(OrbitKnowledge knowledge) {
    List<ElementSet> sets =
        knowledge.objects().stream()
            .filter(known -> known.weight().isPresent())
            .map(Known::last)
            .toList();
    return switch (write.toLowerCase(Locale.ROOT)) {
      case "tle" -> sets.stream().map(ElementText::twoLines).collect(Collectors.joining());
      case "omm" -> OmmText.lines(sets, knowledge.now());
      case "omm-xml" -> OmmText.xml(sets, knowledge.now());
      case "omm-json" -> OmmText.json(sets, knowledge.now());
      default ->
          throw new ParameterException(
              spec.commandLine(),
              "--write '" + write + "' is not one of tle, omm, omm-xml and omm-json");
    };
  }

  private static Object[] row(Known known) {
    return new Object[] {
      known.objectId(),
      orMissing(known.weight()),
      known.sets().size(),
      known.last().epoch(),
      known.ageDays() * 24,
      known.alongTrackSdSeconds(),
      orMissing(known.measuredPerDaySeconds()),
      known.expectedPerDaySeconds(),
      known.jumps().size(),
      known.standing().looksLike().orElse(null),
      known.decay().heightMeters() / 1000,
      known.decay().metersPerDay(),
      known.last().bstar(),
      orMissing(known.dragTermChange()),
      years(known.decay().soonestDays()),
      years(known.decay().latestDays())
    };
  }

  private static Object[] row(String object, SetStep step) {
    return new Object[] {
      object,
      step.before().epoch(),
      step.after().epoch(),
      step.days(),
      step.lateSeconds(),
      step.crossMeters() / 1000,
      step.radialMeters() / 1000,
      step.sigmas(),
      step.isJump()
    };
  }

  private static double orMissing(OptionalDouble value) {
    return value.orElse(Double.NaN);
  }

  /** Missing for an orbit that does not sink. */
  private static double years(double days) {
    return Double.isInfinite(days) ? Double.NaN : days / DAYS_A_YEAR;
  }
}

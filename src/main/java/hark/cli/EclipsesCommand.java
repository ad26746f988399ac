package hark.cli;

import hark.cli.TableWriter.Column;
import hark.orbit.Eclipse;
import hark.orbit.Eclipses;
import hark.orbit.Trajectory;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** When objects are in the Earth's shadow. */
@Command(
    name = "eclipses",
    description =
        "Passages of objects through the Earth's shadow (WGS-84 ellipsoid, no atmosphere).",
    mixinStandardHelpOptions = true)
final class EclipsesCommand implements Callable<Integer> {
  private static final TableWriter TABLE =
      new TableWriter(
          "eclipses",
          List.of(
              Column.text("object"),
              Column.text("penumbraEntry"),
              Column.text("umbraEntry"),
              Column.text("umbraExit"),
              Column.text("penumbraExit")));

  @Spec private CommandSpec spec;
  @Mixin private SkyOptions sky;
  @Mixin private FormatOption format;

  @Option(
      names = "--days",
      paramLabel = "D",
      defaultValue = "1",
      description = "Length of the span (default: ${DEFAULT-VALUE}).")
  private double days;

  private record Found(String objectId, Eclipse eclipse) {
    Instant begin() {
      return eclipse.penumbraEntry();
    }
  }

  @Override
  public Integer call() {
    Clock clock = Main.of(spec).clock();
    Instant to = sky.to(clock, days, Duration.ofDays(1), PassesCommand.DAYS);
    SkyRun run = new SkyRun(sky, clock, to, spec.commandLine().getErr());
    List<Object[]> rows =
        run.each(trajectory -> find(trajectory, run.from(), to)).stream()
            .sorted(Comparator.comparing(Found::begin).thenComparing(Found::objectId))
            .map(EclipsesCommand::row)
            .toList();
    TABLE.write(format.format(), rows, spec.commandLine().getOut());
    return ExitCode.DONE;
  }

  private static List<Found> find(Trajectory trajectory, Instant from, Instant to) {
    String id = trajectory.elements().objectId();
    return Eclipses.find(trajectory, from, to).stream().map(each -> new Found(id, each)).toList();
  }

  private static Object[] row(Found found) {
    Eclipse eclipse = found.eclipse();
    return new Object[] {
      found.objectId(),
      eclipse.penumbraEntry(),
      eclipse.umbraEntry().orElse(null),
      eclipse.umbraExit().orElse(null),
      eclipse.penumbraExit()
    };
  }
}

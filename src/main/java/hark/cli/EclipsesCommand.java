package hark.cli;

import hark.cli.TableWriter.Column;
import hark.orbit.Eclipse;
import hark.orbit.Eclipses;
import hark.orbit.Trajectory;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** When objects are in the Earth's shadow. */
@Command(
    name = "eclipses",
    description =
        "Passages of objects, or of a mission's candidates, through the Earth's shadow (WGS-84"
            + " ellipsoid, no atmosphere).",
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
  @Mixin private SubjectOptions subject;
  @Mixin private SkyOptions sky;
  @Mixin private FormatOption format;

  private record Found(String objectId, Eclipse eclipse) {
    Instant begin() {
      return eclipse.penumbraEntry();
    }

    boolean isOverlappedBy(Found later) {
      return objectId.equals(later.objectId()) && !later.begin().isAfter(eclipse.penumbraExit());
    }
  }

  @Override
  public Integer call() {
    SkyQuestion asked = subject.question(sky);
    SkyRun run = new SkyRun(asked.legs(), asked.earth(), spec.commandLine().getErr());
    List<Object[]> rows =
        Leg.joined(run.each(EclipsesCommand::find), Found::isOverlappedBy).stream()
            .sorted(Comparator.comparing(Found::begin).thenComparing(Found::objectId))
            .map(EclipsesCommand::row)
            .toList();
    TABLE.write(format.format(), rows, spec.commandLine().getOut());
    return ExitCode.DONE;
  }

  private static List<Found> find(Trajectory trajectory, Leg leg) {
    return Eclipses.find(trajectory, leg.from(), leg.to()).stream()
        .map(each -> new Found(leg.set().objectId(), each))
        .toList();
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

package hark.cli;

import hark.cli.SkyQuestion.Place;
import hark.cli.TableWriter.Column;
import hark.orbit.Trajectory;
import hark.station.Pass;
import hark.station.Passes;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** When objects pass over a site. */
@Command(
    name = "passes",
    description = {
      "Passes of objects over a site, or of a mission's candidates over its stations.",
      "Passes in progress at either end keep their true AOS and LOS. An object in view for more than"
          + " three days beyond an end is cut there."
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
  @Mixin private FormatOption format;

  @Override
  public Integer call() {
    SkyQuestion asked = subject.question(sky, place);
    SkyRun run = new SkyRun(asked.legs(), asked.earth(), spec.commandLine().getErr());
    List<Pass> passes = run.each((trajectory, leg) -> passes(trajectory, leg, asked.places()));
    List<Object[]> rows =
        FoundPasses.inOrder(passes, pass -> pass).stream().map(PassesCommand::row).toList();
    TABLE.write(format.format(), rows, spec.commandLine().getOut());
    return ExitCode.DONE;
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

package hark.cli;

import hark.cli.TableWriter.Column;
import hark.station.HorizonMask;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Site;
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

/** When objects pass over a site. */
@Command(
    name = "passes",
    description = {
      "Passes of objects over a site.",
      "Passes in progress at either end keep their true AOS and LOS. An object in view for more than"
          + " three days beyond an end is cut there."
    },
    mixinStandardHelpOptions = true)
final class PassesCommand implements Callable<Integer> {
  static final SkyOptions.Limit DAYS = new SkyOptions.Limit("--days", 400);
  static final Comparator<Pass> ORDER =
      Comparator.comparing(Pass::aos).thenComparing(Pass::objectId);

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
  @Mixin private SkyOptions sky;
  @Mixin private SiteOptions place;
  @Mixin private FormatOption format;

  @Option(
      names = "--days",
      paramLabel = "D",
      defaultValue = "1",
      description = "Length of the span (default: ${DEFAULT-VALUE}).")
  private double days;

  @Override
  public Integer call() {
    Clock clock = Main.of(spec).clock();
    Site site = place.site();
    HorizonMask mask = place.mask();
    Instant to = sky.to(clock, days, Duration.ofDays(1), DAYS);
    SkyRun run = new SkyRun(sky, clock, to, spec.commandLine().getErr());
    List<Object[]> rows =
        run.each(trajectory -> Passes.find(trajectory, site, mask, run.from(), to)).stream()
            .sorted(ORDER)
            .map(PassesCommand::row)
            .toList();
    TABLE.write(format.format(), rows, spec.commandLine().getOut());
    return ExitCode.DONE;
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

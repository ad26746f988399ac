package hark.cli;

import hark.cli.TableWriter.Column;
import hark.orbit.Eclipses;
import hark.orbit.Trajectory;
import hark.station.HorizonMask;
import hark.station.Look;
import hark.station.Looks;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Site;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where objects stand during their passes. */
@Command(
    name = "track",
    description = "Azimuth, elevation, range and Doppler at even steps inside each pass.",
    mixinStandardHelpOptions = true)
final class TrackCommand implements Callable<Integer> {
  private static final double LIGHT_METERS_PER_SECOND = 299_792_458;

  /** Rows of one object; more would not fit the memory of a small computer. */
  private static final long MOST_ROWS = 1_000_000;

  private static final List<Column> COLUMNS =
      List.of(
          Column.text("object"),
          Column.text("time"),
          Column.number("azimuthDeg", 5),
          Column.number("elevationDeg", 5),
          Column.number("rangeKm", 4),
          Column.number("rangeRateKmS", 7));

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

  @Option(
      names = "--step",
      paramLabel = "SECONDS",
      defaultValue = "30",
      description = "Time between rows (default: ${DEFAULT-VALUE}).")
  private double stepSeconds;

  @Option(
      names = "--frequency-mhz",
      paramLabel = "F",
      description = "Adds the Doppler shift of a signal sent at this frequency; > 0 approaching.")
  private Double frequencyMhz;

  /** Rows of one pass, kept together while passes are put in order. */
  private record PassRows(Pass pass, List<Object[]> rows) {}

  @Override
  public Integer call() {
    Clock clock = Main.of(spec).clock();
    refuseNonsense();
    Site site = place.site();
    HorizonMask mask = place.mask();
    Instant to = sky.to(clock, days, Duration.ofDays(1), PassesCommand.DAYS);
    SkyRun run = new SkyRun(sky, clock, to, spec.commandLine().getErr());
    List<Object[]> rows =
        run.each(trajectory -> track(trajectory, site, mask, run.from(), to)).stream()
            .sorted(Comparator.comparing(PassRows::pass, PassesCommand.ORDER))
            .flatMap(pass -> pass.rows().stream())
            .toList();
    new TableWriter("track", columns()).write(format.format(), rows, spec.commandLine().getOut());
    return ExitCode.DONE;
  }

  private void refuseNonsense() {
    if (!(stepSeconds >= 0.001 && stepSeconds <= 86400)) {
      throw new ParameterException(
          spec.commandLine(), "--step is " + stepSeconds + "; it must lie between 0.001 and 86400");
    }
    if (frequencyMhz != null && !(frequencyMhz > 0 && frequencyMhz <= 1e6)) {
      throw new ParameterException(
          spec.commandLine(),
          "--frequency-mhz is " + frequencyMhz + "; it must lie above 0 and at most at 1000000");
    }
  }

  private List<Column> columns() {
    List<Column> columns = new ArrayList<>(COLUMNS);
    if (frequencyMhz != null) {
      columns.add(Column.number("dopplerHz", 3));
    }
    columns.add(Column.text("sunlit"));
    return columns;
  }

  private List<PassRows> track(
      Trajectory trajectory, Site site, HorizonMask mask, Instant from, Instant to) {
    List<PassRows> all = new ArrayList<>();
    long count = 0;
    for (Pass pass : Passes.find(trajectory, site, mask, from, to)) {
      double seconds = Duration.between(pass.aos(), pass.los()).toMillis() / 1e3;
      count += (long) (seconds / stepSeconds) + 1;
      if (count > MOST_ROWS) {
        throw new CouldNot(
            "more than " + MOST_ROWS + " rows for " + pass.objectId() + "; choose a longer --step",
            null);
      }
      all.add(new PassRows(pass, rows(trajectory, site, pass)));
    }
    return all;
  }

  private List<Object[]> rows(Trajectory trajectory, Site site, Pass pass) {
    List<Object[]> rows = new ArrayList<>();
    Instant start = wholeMillisecond(pass.aos());
    for (long i = 0; ; i++) {
      Instant time = start.plusNanos(Math.round(i * stepSeconds * 1e9));
      if (time.isAfter(pass.los())) {
        return rows;
      }
      Look look = Looks.at(trajectory, site, time);
      rows.add(row(pass.objectId(), time, look, Eclipses.sunlitAt(trajectory, time)));
    }
  }

  /** Rows are computed for the time that is printed. */
  private static Instant wholeMillisecond(Instant time) {
    Instant earlier = time.truncatedTo(ChronoUnit.MILLIS);
    return earlier.equals(time) ? time : earlier.plusMillis(1);
  }

  private Object[] row(String object, Instant time, Look look, boolean sunlit) {
    List<Object> row = new ArrayList<>();
    row.add(object);
    row.add(time);
    row.add(look.azimuthDeg());
    row.add(look.elevationDeg());
    row.add(look.rangeMeters() / 1000);
    row.add(look.rangeRateMetersPerSecond() / 1000);
    if (frequencyMhz != null) {
      row.add(-look.rangeRateMetersPerSecond() / LIGHT_METERS_PER_SECOND * frequencyMhz * 1e6);
    }
    row.add(sunlit);
    return row.toArray();
  }
}

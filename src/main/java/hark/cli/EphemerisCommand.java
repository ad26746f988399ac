package hark.cli;

import hark.cli.TableWriter.Column;
import hark.orbit.ElementSet;
import hark.orbit.EphemerisText;
import hark.orbit.State;
import hark.orbit.Trajectory;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Positions and velocities of objects. */
@Command(
    name = "ephemeris",
    description = {
      "Positions and velocities at even steps, object by object; --format oem writes a CCSDS orbit"
          + " ephemeris message, a segment for each object."
    },
    mixinStandardHelpOptions = true)
final class EphemerisCommand implements Callable<Integer> {
  private static final SkyOptions.Limit HOURS = new SkyOptions.Limit("--hours", 9600);

  /** Rows of one object; more would not fit the memory of a small computer. */
  private static final long MOST_ROWS = 1_000_000;

  private static final TableWriter TABLE =
      new TableWriter(
          "ephemeris",
          List.of(
              Column.text("object"),
              Column.text("time"),
              Column.number("xKm", 7),
              Column.number("yKm", 7),
              Column.number("zKm", 7),
              Column.number("vxKmS", 10),
              Column.number("vyKmS", 10),
              Column.number("vzKmS", 10)));

  @Spec private CommandSpec spec;
  @Mixin private SkyOptions sky;

  @Option(
      names = "--format",
      defaultValue = "table",
      paramLabel = "table|json|csv|oem",
      description = "How to print (default: ${DEFAULT-VALUE}).")
  private String format;

  @Option(
      names = "--hours",
      paramLabel = "H",
      defaultValue = "24",
      description = "Length of the span (default: ${DEFAULT-VALUE}).")
  private double hours;

  @Option(
      names = "--step",
      paramLabel = "SECONDS",
      defaultValue = "60",
      description = "Time between rows (default: ${DEFAULT-VALUE}).")
  private double stepSeconds;

  @Option(
      names = "--frame",
      paramLabel = "teme|itrf",
      defaultValue = "teme",
      description = "teme: true equator, mean equinox of date; itrf: turning with the Earth.")
  private FrameName frame;

  /** The frames that can be asked for. */
  enum FrameName {
    TEME,
    ITRF
  }

  @Override
  public Integer call() {
    Clock clock = Main.of(spec).clock();
    Instant to = sky.to(clock, hours, Duration.ofHours(1), HOURS);
    double seconds = hours * 3600;
    if (!(stepSeconds >= 0.001 && seconds / stepSeconds < MOST_ROWS)) {
      throw new ParameterException(
          spec.commandLine(),
          "--step is "
              + stepSeconds
              + "; it must be at least 0.001 and leave no more than "
              + MOST_ROWS
              + " rows");
    }
    Instant from = sky.from(clock);
    List<Leg> legs = sky.elementSets(clock).stream().map(set -> new Leg(set, from, to)).toList();
    Optional<OutputFormat> table = ExtraFormat.of(format, "oem", spec).table();
    SkyRun run = new SkyRun(legs, sky.earth(), spec.commandLine().getErr());
    PrintWriter out = spec.commandLine().getOut();
    if (table.isEmpty()) {
      out.print(EphemerisText.oem(segments(run, from, to), clock.instant()));
      out.flush();
      return ExitCode.DONE;
    }
    List<Object[]> rows =
        run.each(
            (trajectory, leg) ->
                rows(trajectory, from, to).stream()
                    .map(row -> row(trajectory.elements().objectId(), row.time(), row.state()))
                    .toList());
    TABLE.write(table.get(), rows, out);
    return ExitCode.DONE;
  }

  private List<EphemerisText.Segment> segments(SkyRun run, Instant from, Instant to) {
    List<EphemerisText.Segment> segments =
        run.each(
            (trajectory, leg) -> {
              List<EphemerisText.Row> rows = rows(trajectory, from, to);
              return rows.isEmpty() ? List.of() : List.of(segment(leg.set(), rows));
            });
    if (segments.isEmpty()) {
      throw new CouldNot("no object has a valid state in that span, so there is no message", null);
    }
    return segments;
  }

  private EphemerisText.Segment segment(ElementSet set, List<EphemerisText.Row> rows) {
    String name = set.name().orElse(set.objectId());
    String frameName = frame == FrameName.TEME ? "TEME" : "ITRF2020";
    return new EphemerisText.Segment(set.objectId(), name, frameName, rows);
  }

  private List<EphemerisText.Row> rows(Trajectory trajectory, Instant from, Instant to) {
    Instant end = trajectory.validUntil(from, to).orElse(to.plusNanos(1));
    List<EphemerisText.Row> rows = new ArrayList<>();
    for (long i = 0; ; i++) {
      Instant time = from.plusNanos(Math.round(i * stepSeconds * 1e9));
      if (!time.isBefore(end)) {
        return rows;
      }
      Optional<State> state =
          frame == FrameName.TEME ? trajectory.temeAt(time) : trajectory.earthFixedAt(time);
      state.ifPresent(found -> rows.add(new EphemerisText.Row(time, found)));
    }
  }

  private static Object[] row(String object, Instant time, State state) {
    return new Object[] {
      object,
      time,
      state.xMeters() / 1000,
      state.yMeters() / 1000,
      state.zMeters() / 1000,
      state.vxMetersPerSecond() / 1000,
      state.vyMetersPerSecond() / 1000,
      state.vzMetersPerSecond() / 1000
    };
  }
}

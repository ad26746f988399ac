package hark.cli;

import hark.cli.TableWriter.Column;
import hark.orbit.Eclipses;
import hark.orbit.Trajectory;
import hark.problem.BadInput;
import hark.station.Look;
import hark.station.Looks;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Site;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
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
    description = {
      "Azimuth, elevation, range and Doppler at even steps inside each pass, over a site or over a"
          + " mission's stations (these rows name the station as site).",
      "With --downlink-mhz and --uplink-mhz each row says where to tune: receiveHz is where a signal"
          + " sent at the first arrives, transmitHz is what to send so that the second arrives. --out"
          + " writes a file of comma-separated values for each pass."
    },
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
  @Mixin private SubjectOptions subject;
  @Mixin private SkyOptions sky;
  @Mixin private SiteOptions place;
  @Mixin private FormatOption format;

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

  @Option(
      names = "--downlink-mhz",
      paramLabel = "F",
      description = "Adds receiveHz: where to listen for a signal sent at this frequency.")
  private Double downlinkMhz;

  @Option(
      names = "--uplink-mhz",
      paramLabel = "F",
      description =
          "Adds transmitHz: what to send so that it arrives at this frequency. Sending needs a"
              + " licence and somebody who may authorise it.")
  private Double uplinkMhz;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Write a CSV file for each pass into this new or empty folder instead.")
  private Path directory;

  /** Rows of one pass, kept together while passes are put in order. */
  private record PassRows(Pass pass, List<Object[]> rows) {}

  @Override
  public Integer call() {
    refuseNonsense();
    SkyQuestion asked = subject.question(sky, place);
    SkyRun run = new SkyRun(asked.legs(), asked.earth(), spec.commandLine().getErr());
    List<PassRows> found = run.each((trajectory, leg) -> track(trajectory, leg, asked));
    List<PassRows> inOrder = FoundPasses.inOrder(found, PassRows::pass);
    TableWriter table = new TableWriter("track", columns(asked.mission()));
    PrintWriter out = spec.commandLine().getOut();
    if (directory != null) {
      inOrder.forEach(pass -> write(table, pass, out));
      out.flush();
      return ExitCode.DONE;
    }
    List<Object[]> rows = inOrder.stream().flatMap(pass -> pass.rows().stream()).toList();
    table.write(format.format(), rows, out);
    return ExitCode.DONE;
  }

  private void write(TableWriter table, PassRows pass, PrintWriter out) {
    String aos = pass.pass().aos().truncatedTo(ChronoUnit.SECONDS).toString();
    String name = pass.pass().objectId() + "-" + pass.pass().site() + "-" + aos;
    Path file = directory.resolve(name.replaceAll("[^A-Za-z0-9.-]", "_") + ".csv");
    StringWriter text = new StringWriter();
    table.write(OutputFormat.CSV, pass.rows(), new PrintWriter(text));
    try {
      Files.createDirectories(directory);
      Files.writeString(file, text.toString(), StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      throw BadInput.of("the file is there already", file.toString(), "name another folder");
    } catch (IOException e) {
      throw new CouldNot(file + " could not be written: " + e.getMessage(), e);
    }
    out.println(file);
  }

  private void refuseNonsense() {
    if (!(stepSeconds >= 0.001 && stepSeconds <= 86400)) {
      throw new ParameterException(
          spec.commandLine(), "--step is " + stepSeconds + "; it must lie between 0.001 and 86400");
    }
    refuseNonsense("--frequency-mhz", frequencyMhz);
    refuseNonsense("--downlink-mhz", downlinkMhz);
    refuseNonsense("--uplink-mhz", uplinkMhz);
  }

  private void refuseNonsense(String option, Double megahertz) {
    if (megahertz != null && !(megahertz > 0 && megahertz <= 1e6)) {
      throw new ParameterException(
          spec.commandLine(),
          option + " is " + megahertz + "; it must lie above 0 and at most at 1000000");
    }
  }

  private List<Column> columns(boolean withSite) {
    List<Column> columns = new ArrayList<>(COLUMNS);
    if (withSite) {
      columns.add(1, Column.text("site"));
    }
    if (frequencyMhz != null) {
      columns.add(Column.number("dopplerHz", 3));
    }
    if (downlinkMhz != null) {
      columns.add(Column.number("receiveHz", 1));
    }
    if (uplinkMhz != null) {
      columns.add(Column.number("transmitHz", 1));
    }
    columns.add(Column.text("sunlit"));
    return columns;
  }

  private List<PassRows> track(Trajectory trajectory, Leg leg, SkyQuestion asked) {
    List<PassRows> all = new ArrayList<>();
    long count = 0;
    for (SkyQuestion.Place place : asked.places()) {
      Site site = place.site();
      for (Pass pass : Passes.find(trajectory, site, place.mask(), leg.from(), leg.to())) {
        double seconds = Duration.between(pass.aos(), pass.los()).toMillis() / 1e3;
        count += (long) (seconds / stepSeconds) + 1;
        if (count > MOST_ROWS) {
          throw new CouldNot(
              "more than "
                  + MOST_ROWS
                  + " rows for "
                  + pass.objectId()
                  + "; choose a longer --step",
              null);
        }
        all.add(new PassRows(pass, rows(trajectory, site, pass, asked.mission())));
      }
    }
    return all;
  }

  private List<Object[]> rows(Trajectory trajectory, Site site, Pass pass, boolean withSite) {
    List<Object[]> rows = new ArrayList<>();
    Instant start = wholeMillisecond(pass.aos());
    for (long i = 0; ; i++) {
      Instant time = start.plusNanos(Math.round(i * stepSeconds * 1e9));
      if (time.isAfter(pass.los())) {
        return rows;
      }
      Look look = Looks.at(trajectory, site, time);
      List<Object> row = row(pass.objectId(), time, look, Eclipses.sunlitAt(trajectory, time));
      if (withSite) {
        row.add(1, site.name());
      }
      rows.add(row.toArray());
    }
  }

  /** Rows are computed for the time that is printed. */
  private static Instant wholeMillisecond(Instant time) {
    Instant earlier = time.truncatedTo(ChronoUnit.MILLIS);
    return earlier.equals(time) ? time : earlier.plusMillis(1);
  }

  private List<Object> row(String object, Instant time, Look look, boolean sunlit) {
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
    double arrives = 1 - look.rangeRateMetersPerSecond() / LIGHT_METERS_PER_SECOND;
    if (downlinkMhz != null) {
      row.add(downlinkMhz * 1e6 * arrives);
    }
    if (uplinkMhz != null) {
      row.add(uplinkMhz * 1e6 / arrives);
    }
    row.add(sunlit);
    return row;
  }
}

package hark.cli;

import hark.evidence.Entry;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code hark log MISSION KIND key=value …}: appends an entry to the journal. */
@Command(
    name = "log",
    description = {
      "Append an entry to the journal; prints its number when it is on disk.",
      "Kinds and keys:",
      "  nothing-heard  station, from, to (or pass=AOS), frequency_hz, window_hz,",
      "                 object, offset_s, noise_db,",
      "                 way=decoder|ear|waterfall|recording",
      "  heard          station, from, to (or pass=AOS), level_db, level_sd_db,",
      "                 frequency_hz, call_sign, object,",
      "                 frequency_sd_hz, form=carrier|morse|frames|fragment",
      "  telemetry      at, volts, amps (positive into the battery), battery_c,",
      "                 resets, uptime_s, beacon_counter, each with _sd;",
      "                 mode=boot|safe|nominal",
      "  station-check  station, at, result=heard|missed, level_db, expected_db,",
      "                 same_hand=yes|no, same_band=yes|no",
      "  outside-report place=LAT,LON or station, from, to (or pass=AOS),",
      "                 heard=yes|no, sensitivity_db (than our first station),",
      "                 clock_sd_s, trust (0 to 1)",
      "  object         at, object, verdict=confirmed|excluded,",
      "                 source (doppler, neighbour, catalogue, operator; else hearsay)",
      "  doppler        at, object, station, file",
      "  search-result  file, detected=yes|no, station, from, to (or pass=AOS),",
      "                 level_db_hz, upper_limit_db_hz, object, offset_s;",
      "                 without station and times it weighs nothing",
      "  motion         at, tumble_s, tumble_sd_s, decay=faster|slower|same, source",
      "  separation     at, state=confirmed|unknown, file",
      "  command-sent   station, at, command, power_w, repeats,",
      "                 acknowledged=yes|no",
      "  not-listened   station, from, to (or pass=AOS), why",
      "  note           at, text",
      "  correction     of=N, then the keys that replace (key= takes one away),",
      "                 or withdrawn=yes"
    },
    mixinStandardHelpOptions = true)
final class LogCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private EarthOption earth;

  @Parameters(index = "0", paramLabel = "MISSION", description = "The mission folder.")
  private Path folder;

  @Parameters(index = "1", paramLabel = "KIND", description = "What sort of entry.")
  private String kind;

  @Parameters(index = "2..*", arity = "0..*", paramLabel = "key=value", description = "Its keys.")
  private List<String> pairs = List.of();

  @Option(
      names = "--at",
      paramLabel = "T",
      description = "When it happened, UTC (default: the mission's own clock, else now).")
  private Instant at;

  @Option(names = "--who", paramLabel = "W", description = "Who writes this.")
  private String who;

  @Option(names = "--note", paramLabel = "N", description = "Words beside it.")
  private String note;

  @Override
  public Integer call() {
    MissionRecord mission = MissionRecord.read(folder);
    Clock clock = Main.of(spec).clock();
    Instant time = at == null ? mission.now(clock) : at;
    Instant before = mission.now(clock);
    Entry entry = mission.log(clock, earth.earth(), time, kind, keys());
    PrintWriter out = spec.commandLine().getOut();
    out.println(entry.number());
    out.flush();
    remark(mission, before, mission.now(clock));
    return ExitCode.DONE;
  }

  /** A mission's own clock goes on with its record; whoever moves it is told. */
  private void remark(MissionRecord mission, Instant before, Instant after) {
    if (mission.mission().now().isPresent() && after.isAfter(before)) {
      spec.commandLine()
          .getErr()
          .println("The mission's own clock goes on to " + UtcTime.print(after) + ".");
    }
  }

  private Map<String, String> keys() {
    Map<String, String> keys = new TreeMap<>();
    List<Problem> problems = new ArrayList<>();
    for (String pair : pairs) {
      int equals = pair.indexOf('=');
      if (equals < 1) {
        problems.add(
            new Problem("'" + pair + "' is not key=value", "argument", "write it as key=" + pair));
      } else {
        put(keys, pair.substring(0, equals), pair.substring(equals + 1), problems);
      }
    }
    if (who != null) {
      put(keys, "who", who, problems);
    }
    if (note != null) {
      put(keys, "note", note, problems);
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return keys;
  }

  private static void put(
      Map<String, String> keys, String key, String value, List<Problem> problems) {
    if (keys.putIfAbsent(key, value) != null) {
      problems.add(new Problem(key + " is given twice", "key " + key, "leave one out"));
    }
  }
}

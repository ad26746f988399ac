package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.journal.Journal;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** log, journal, brief, assess and note at the command line, on a copy of the demo. */
class RecordCommandsTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T00:00:00Z"), ZoneOffset.UTC);

  /** Soon after separation and a short way ahead: the assessment is quick then. */
  private static final List<String> QUICK =
      List.of("--now", "2026-10-06T08:00:00Z", "--days", "0.2");

  @TempDir private Path folder;
  private Path mission;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void copyTheDemo() {
    mission = folder.resolve("demo");
    assertEquals(ExitCode.DONE, run("demo", mission.toString()));
  }

  private int run(String... args) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    return Main.run(CLOCK, new PrintWriter(out), new PrintWriter(err), args);
  }

  private int log(String... args) {
    return run(
        Stream.concat(Stream.of("log", mission.toString()), Stream.of(args))
            .toArray(String[]::new));
  }

  private int quick(String command, String... more) {
    List<String> args = new ArrayList<>(List.of(command, mission.toString()));
    args.addAll(QUICK);
    args.addAll(List.of(more));
    return run(args.toArray(String[]::new));
  }

  private long entries() {
    try (Journal journal = Journal.openExisting(mission.resolve("journal.db"))) {
      return journal.lastNumber();
    }
  }

  @Test
  void logPrintsTheNumberOfWhatIsOnDisk() {
    long before = entries();
    assertEquals(
        ExitCode.DONE, log("telemetry", "volts=7.1", "--who", "scribe", "--note", "clear"));
    assertEquals(before + 1 + System.lineSeparator(), out.toString());
    assertEquals(before + 1, entries());
    run("journal", mission.toString());
    assertTrue(out.toString().lines().reduce((a, b) -> b).orElseThrow().contains("volts=7.1"));
    assertTrue(out.toString().contains("scribe"));
  }

  @Test
  void aPassIsFoundByItsAosAndSettledToTheMillisecond() {
    assertEquals(
        ExitCode.DONE,
        log("nothing-heard", "station=Saltmere", "pass=2026-10-12T09:30:20Z", "way=ear"));
    String last = Journal.read(mission.resolve("journal.db")).get((int) entries() - 1).toString();
    assertTrue(last.matches(".*from=2026-10-12T09:\\d\\d:\\d\\d\\.\\d{3}Z.*"), last);
    assertFalse(last.contains("pass="), last);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "nothing-herd station=Saltmere",
        "nothing-heard station=Saltmere pass=2026-10-12T15:00:00Z",
        "nothing-heard station=Nowhere from=2026-10-12T09:30:20Z to=2026-10-12T09:39:00Z",
        "telemetry volts=NaN",
        "telemetry volts=7 at=2026-10-01T00:00:00Z",
        "telemetry volts=7 at=yesterday",
        "telemetry volts=7 volts=8",
        "telemetry 7.1",
        "correction of=999 volts=7",
        "command-sent station=Saltmere",
        "note"
      })
  void badInputLeavesTheJournalUntouched(String entry) throws IOException {
    long before = entries();
    byte[] bytes = Files.readAllBytes(mission.resolve("journal.db"));
    assertEquals(ExitCode.BAD_INPUT, log(entry.split(" ")));
    assertEquals("", out.toString());
    assertFalse(err.toString().contains("Exception"), err.toString());
    assertEquals(before, entries());
    assertEquals(bytes.length, Files.readAllBytes(mission.resolve("journal.db")).length);
  }

  @Test
  void anEntryTheMissionsClockHasNotReachedMovesItOnAndSaysSo() {
    assertEquals(ExitCode.DONE, log("note", "text=later", "--at", "2026-10-20T00:00:00Z"));
    assertTrue(err.toString().contains("clock goes on to 2026-10-20T00:02:00.000Z"));
    assertEquals(ExitCode.DONE, log("note", "text=second", "--at", "2026-10-19T00:00:00Z"));
    assertFalse(err.toString().contains("clock goes on"), err.toString());
    assertEquals(
        Instant.parse("2026-10-20T00:02:00Z"),
        MissionRecord.read(mission).now(Clock.fixed(Instant.EPOCH, ZoneOffset.UTC)));
  }

  @Test
  void journalsListInEveryFormAndVerify() throws IOException {
    assertEquals(ExitCode.DONE, run("journal", mission.toString(), "--format", "json"));
    JsonNode list = new ObjectMapper().readTree(out.toString()).get("entries");
    assertEquals(entries(), list.size());
    assertEquals("Saltmere", list.get(0).get("keys").get("station").textValue());
    assertEquals(ExitCode.DONE, run("journal", mission.toString(), "list", "--format", "csv"));
    assertEquals(entries() + 1, out.toString().lines().count());
    assertEquals(ExitCode.DONE, run("journal", mission.toString(), "verify"));
    assertTrue(out.toString().contains("the chain holds"));
    assertEquals(ExitCode.DONE, run("journal", mission.toString(), "head", "--format", "json"));
    JsonNode head = new ObjectMapper().readTree(out.toString()).get("head").get(0);
    assertEquals(64, head.get("hash").textValue().length());
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"export", "import", "backup"})
  void whatAJournalCannotDoYetIsRefusedByName(String action) {
    assertEquals(ExitCode.BAD_INPUT, run("journal", mission.toString(), action));
    assertTrue(err.toString().contains("journal " + action + " comes in a later edition"));
  }

  @Test
  void aFileThatIsNoJournalIsBadInput() throws IOException {
    Files.delete(mission.resolve("journal.db"));
    Files.writeString(mission.resolve("journal.db"), "not a database, only words ".repeat(99));
    assertEquals(ExitCode.BAD_INPUT, run("journal", mission.toString()));
    assertTrue(err.toString().contains("not a Hark journal"), err.toString());
    assertEquals(ExitCode.BAD_INPUT, log("telemetry", "volts=7"));
  }

  @Test
  void theBriefPrintsOneScreenAsOfTheTimeAsked() {
    assertEquals(ExitCode.DONE, quick("brief"), err.toString());
    assertTrue(
        out.toString().startsWith("Corncrake · 6 Oct 2026 08:00Z · never heard in 3 h 34 m"));
    assertTrue(out.toString().contains("What still fits"));
    assertTrue(out.toString().lines().allMatch(line -> line.length() <= 100));
  }

  @Test
  void assessPrintsOneJsonDocumentAndNothingElse() throws IOException {
    assertEquals(ExitCode.DONE, quick("assess", "--format", "json", "--seed", "3"));
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals("2026-10-06T08:00:00.000Z", json.get("now").textValue());
    assertEquals(3, json.get("seed").intValue());
    assertEquals(ExitCode.BAD_INPUT, quick("assess", "--format", "table"));
  }

  @Test
  void runbookEntriesAreWrittenAndNeverOverwritten() throws IOException {
    assertEquals(ExitCode.DONE, quick("note"));
    Path first = Path.of(out.toString().strip());
    assertEquals(mission.resolve("entries/corncrake-20261006T080000Z.md"), first);
    Files.writeString(first, "signed by hand");
    assertEquals(ExitCode.DONE, quick("note"));
    assertEquals("signed by hand", Files.readString(first));
    Path second = Path.of(out.toString().strip());
    assertTrue(Files.readString(second).startsWith("# Contact lost: Corncrake"));
    assertEquals(ExitCode.BAD_INPUT, quick("note", "--out", first.toString()));
    assertEquals("signed by hand", Files.readString(first));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"--days=0", "--days=NaN", "--days=400", "--members=0", "--now=tomorrow"})
  void optionsOutOfRangeAreWrongUsage(String option) {
    assertEquals(ExitCode.BAD_INPUT, run("brief", mission.toString(), option));
    assertFalse(err.toString().contains("Exception"), err.toString());
  }

  @Test
  void everyCommandAcceptsASeed() {
    assertEquals(ExitCode.DONE, run("journal", mission.toString(), "--seed", "7"));
    assertEquals(ExitCode.DONE, run("check", mission.toString(), "--seed", "7"));
  }
}

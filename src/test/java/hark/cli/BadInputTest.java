package hark.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a tired hand may give the commands: each is refused with what, where and mend, and the
 * journal of the mission keeps every byte.
 */
class BadInputTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T00:00:00Z"), ZoneOffset.UTC);
  private static final String ORBIT = "orbit/launch-731.tle";
  private static final String MISSION = "mission.yaml";
  private static final int NOISE_BYTES = 10_000_000;

  @TempDir private Path folder;
  private Path mission;
  private byte[] journalBefore;
  private long entriesBefore;

  private record Ran(int code, String out, String err) {}

  @BeforeEach
  void copyTheDemo() throws IOException {
    mission = folder.resolve("demo");
    assertEquals(ExitCode.DONE, run("demo", mission.toString()).code());
    journalBefore = Files.readAllBytes(journal());
    entriesBefore = Journal.read(journal()).size();
    assertTrue(entriesBefore > 10);
  }

  /** Of every case, whatever it was. */
  @AfterEach
  void theJournalKeepsEveryByte() throws IOException {
    assertArrayEquals(journalBefore, Files.readAllBytes(journal()));
  }

  private Path journal() {
    return mission.resolve("journal.db");
  }

  private static Ran run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(CLOCK, new PrintWriter(out), new PrintWriter(err), args);
    return new Ran(code, out.toString(), err.toString());
  }

  /** What one line on stderr must hold; the mend stands last and is never left out. */
  private record Words(String where, String what, String mend) {
    boolean areIn(String line) {
      int middle = line.lastIndexOf(" \u00b7 ");
      return middle > 0
          && line.contains(where)
          && line.substring(0, middle).contains(what)
          && line.substring(middle + 3).contains(mend)
          && line.length() > middle + 3;
    }
  }

  private static void refused(Words words, String... args) {
    Ran ran = run(args);
    String told = Arrays.toString(args) + "\n" + ran.err();
    assertEquals(ExitCode.BAD_INPUT, ran.code(), told);
    assertEquals("", ran.out(), told);
    assertFalse(ran.err().contains("Exception") || ran.err().contains("\tat "), told);
    assertTrue(ran.err().lines().anyMatch(words::areIn), () -> words + " from " + told);
    assertTrue(ran.err().length() < 20_000, "a message is not a flood");
  }

  /** A mission that cannot be read is refused by everything that reads it, in the same words. */
  private void missionRefused(Words words) throws IOException {
    String at = mission.toString();
    refused(words, "check", at);
    refused(words, "log", at, "telemetry", "volts=7");
    refused(words, "brief", at);
    refused(words, "assess", at);
    refused(words, "note", at);
    refused(words, "passes", at);
    assertEquals(entriesBefore, Journal.read(journal()).size());
    assertFalse(Files.exists(mission.resolve("entries")));
  }

  private void logRefused(Words words, String... entry) {
    List<String> args = new ArrayList<>(List.of("log", mission.toString()));
    args.addAll(List.of(entry));
    refused(words, args.toArray(String[]::new));
    assertEquals(entriesBefore, Journal.read(journal()).size());
  }

  private void elementsRefused(Words words) {
    String file = mission.resolve(ORBIT).toString();
    refused(words, "passes", "--elements", file, "--site", "48.9,8.4,115");
    refused(words, "ephemeris", "--elements", file);
  }

  /** Changes a file of the mission; returns file:line of the change. */
  private String change(String file, String from, String to) throws IOException {
    Path path = mission.resolve(file);
    String text = Files.readString(path);
    int begin = text.indexOf(from);
    assertTrue(begin >= 0, from);
    Files.writeString(path, text.substring(0, begin) + to + text.substring(begin + from.length()));
    return path + ":" + (1 + text.substring(0, begin).chars().filter(c -> c == '\n').count());
  }

  private String write(String file, String text) throws IOException {
    return Files.writeString(mission.resolve(file), text).toString();
  }

  private String noise(String file) throws IOException {
    byte[] bytes = new byte[NOISE_BYTES];
    new SplittableRandom(7).nextBytes(bytes);
    return Files.write(mission.resolve(file), bytes).toString();
  }

  private String lineOne() throws IOException {
    return Files.readAllLines(mission.resolve(ORBIT)).get(1);
  }

  @Test
  void aWrongChecksum() throws IOException {
    String line = lineOne();
    int last = line.charAt(68) - '0';
    String where = change(ORBIT, line, line.substring(0, 68) + (last + 1) % 10);
    Words words = new Words(where, "checksum", "copy");
    elementsRefused(words);
    missionRefused(words);
  }

  @Test
  void aTruncatedLine() throws IOException {
    String where = change(ORBIT, lineOne(), lineOne().substring(0, 40));
    Words words = new Words(where, "40", "copy");
    elementsRefused(words);
    missionRefused(words);
  }

  @Test
  void aWrongUnit() throws IOException {
    String where = change(MISSION, "capacity_Ah: 2.6", "capacity_mAh: 2600");
    missionRefused(new Words(where, "capacity_mAh", "capacity_Ah"));
  }

  @Test
  void aNumberInAnotherUnit() throws IOException {
    String where = change(MISSION, "capacity_Ah: 2.6", "capacity_Ah: 2600");
    missionRefused(new Words(where, "2600", "milliampere"));
  }

  @Test
  void aValueThatIsNotANumber() throws IOException {
    logRefused(new Words("volts", "NaN", "unit"), "telemetry", "volts=NaN");
    String where = change(MISSION, "mass_kg: 2.7", "mass_kg: .nan");
    missionRefused(new Words(where, "nan", "number"));
  }

  @Test
  void aBadDate() throws IOException {
    logRefused(new Words("at", "yesterday", "2026"), "telemetry", "volts=7", "at=yesterday");
    String where = change(MISSION, "2026-10-06T04:26:00Z", "2026-13-06T04:26:00Z");
    missionRefused(new Words(where, "2026-13-06", "2026-"));
  }

  @Test
  void aDuplicateStation() throws IOException {
    String where = change(MISSION, "name: Cinderholm", "name: Saltmere");
    missionRefused(new Words(where, "Saltmere", "name"));
  }

  @Test
  void aCyclicGate() throws IOException {
    String tree =
        """
        hark: 1
        events:
          E: { title: event, branch: power, probability: 0.1, onset: separation, effect: { kind: none } }
        gates:
          A: { title: one, or: [E, B] }
          B: { title: other, or: [A] }
        top: A
        """;
    String file = write("causes.yaml", tree);
    refused(new Words(file, "itself", ""), "faulttree", file);
    missionRefused(new Words(file, "itself", ""));
  }

  @Test
  void aMissingFile() throws IOException {
    Files.delete(mission.resolve(ORBIT));
    elementsRefused(new Words(ORBIT, "no such file", "path"));
    missionRefused(new Words(mission.resolve(MISSION) + ":", ORBIT, "save"));
    Files.delete(mission.resolve(MISSION));
    missionRefused(new Words(MISSION, "there is no mission.yaml", "write it"));
    refused(new Words("none.yaml", "no such file", "path"), "faulttree", "none.yaml");
  }

  @Test
  void anEmptyFile() throws IOException {
    Words words = new Words(write(ORBIT, ""), "empty", "elements");
    elementsRefused(words);
    missionRefused(words);
    refused(new Words("causes.yaml", "empty", ""), "faulttree", write("causes.yaml", ""));
    missionRefused(new Words("causes.yaml", "empty", ""));
    write(MISSION, "");
    missionRefused(new Words(MISSION, "empty", ""));
  }

  @Test
  void tenMegabytesOfNoise() throws IOException {
    elementsRefused(new Words(noise(ORBIT), "not text", "elements"));
    missionRefused(new Words(ORBIT, "", ""));
    String causes = noise("causes.yaml");
    refused(new Words(causes, "", ""), "faulttree", causes);
    missionRefused(new Words("causes.yaml", "", ""));
    noise(MISSION);
    missionRefused(new Words(MISSION, "", ""));
  }

  @Test
  void anEntryBeforeSeparation() {
    Words words = new Words("from", "separation", "");
    logRefused(
        words,
        "nothing-heard",
        "station=Saltmere",
        "from=2026-10-06T04:00:00Z",
        "to=2026-10-06T04:10:00Z");
    logRefused(
        new Words("at", "separation", ""), "telemetry", "volts=7", "at=2026-10-01T00:00:00Z");
  }

  @Test
  void anUnknownKind() {
    logRefused(new Words("kind", "nothing-herd", "nothing-heard"), "nothing-herd");
    logRefused(new Words("command", "command", ""), "command-sent", "station=Saltmere");
  }

  @Test
  void aMalformedJournal() throws IOException {
    String file = write("journal.db", "not a database, only words ".repeat(99));
    journalBefore = Files.readAllBytes(journal());
    journalRefused(file);
  }

  @Test
  void noiseAsAJournal() throws IOException {
    String file = noise("journal.db");
    journalBefore = Files.readAllBytes(journal());
    journalRefused(file);
  }

  private void journalRefused(String file) {
    String at = mission.toString();
    Words words = new Words(file, "not a Hark journal", "");
    refused(words, "log", at, "telemetry", "volts=7");
    refused(words, "brief", at);
    refused(words, "note", at);
    for (String action : List.of("list", "verify", "head")) {
      refused(words, "journal", at, action);
    }
  }
}

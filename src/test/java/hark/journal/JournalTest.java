package hark.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.evidence.Entry;
import hark.evidence.EvidenceBook;
import hark.evidence.EvidenceBook.Draft;
import hark.evidence.EvidenceContext;
import hark.problem.BadInput;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Append-only, numbered, chained; wrong files are refused in words and left alone. */
class JournalTest {
  private static final Instant NOW = Instant.parse("2026-11-14T09:30:00.123456789Z");

  @TempDir private Path folder;
  private Path path;

  @BeforeEach
  void name() {
    path = folder.resolve("journal.db");
  }

  private static Draft draft(String kind, Map<String, String> keys) {
    return EvidenceBook.draft(List.of(), kind, keys, EvidenceContext.alreadyChecked(NOW));
  }

  private static Draft volts(String volts) {
    return draft("telemetry", Map.of("volts", volts));
  }

  private void threeEntries() {
    try (Journal journal = Journal.open(path)) {
      journal.append(volts("7"), NOW, "scribe", "first");
      journal.append(volts("6.5"), NOW, "", "");
      journal.append(draft("note", Map.of("text", "rain\n\"here\" ≥ 2 mm")), NOW, "", "");
    }
  }

  private void sql(String... statements) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + path);
        Statement statement = connection.createStatement()) {
      for (String each : statements) {
        statement.execute(each);
      }
    }
  }

  @Test
  void entriesComeBackAsTheyWereWritten() {
    try (Journal journal = Journal.open(path)) {
      Entry written = journal.append(volts("7.05"), NOW, "scribe", "weak");
      assertEquals(1, written.number());
      assertEquals(List.of(written), journal.list());
    }
    assertEquals(NOW, Journal.read(path).get(0).recordedAt());
  }

  @Test
  void aCorrectionKeepsItsOwnDateAndTheKeysItReplaces() {
    try (Journal journal = Journal.open(path)) {
      journal.append(volts("7"), NOW, "", "");
      Map<String, String> keys = Map.of("of", "1", "at", "2026-11-07T00:00:00Z");
      EvidenceContext context = EvidenceContext.alreadyChecked(NOW.plusSeconds(60));
      Draft correction = EvidenceBook.draft(journal.list(), "correction", keys, context);
      Entry written = journal.append(correction, NOW, "", "");
      assertEquals(written, journal.list().get(1));
      assertEquals(NOW.plusSeconds(60), journal.list().get(1).evidence().at());
    }
  }

  @Test
  void numbersRiseAcrossTwoOpenJournalsAndEachSeesTheOther() {
    try (Journal one = Journal.open(path);
        Journal other = Journal.open(path)) {
      assertEquals(0, other.lastNumber());
      assertEquals(1, one.append(volts("7"), NOW, "", "").number());
      assertEquals(1, other.lastNumber());
      assertEquals(2, other.append(volts("7"), NOW, "", "").number());
      assertEquals(2, one.lastNumber());
      assertTrue(one.verify().fault().isEmpty());
    }
  }

  @Test
  void readingAJournalThatIsNotThereDoesNotMakeIt() {
    assertTrue(Journal.read(path).isEmpty());
    assertFalse(Files.exists(path));
  }

  @Test
  void rowsCanNeitherBeChangedNorDeleted() {
    threeEntries();
    assertThrows(SQLException.class, () -> sql("UPDATE entry SET who = 'x' WHERE number = 1"));
    assertThrows(SQLException.class, () -> sql("DELETE FROM entry WHERE number = 3"));
    assertEquals(3, Journal.read(path).size());
  }

  @Test
  void aSoundChainVerifiesAndItsHeadMovesWithEveryEntry() {
    threeEntries();
    try (Journal journal = Journal.open(path)) {
      Journal.Verification before = journal.verify();
      assertTrue(before.fault().isEmpty());
      assertEquals(3, before.entries());
      journal.append(volts("7"), NOW, "", "");
      assertFalse(journal.head().hash().equals(before.head().hash()));
    }
  }

  @Test
  void aChangedRowIsFound() throws SQLException {
    threeEntries();
    sql("DROP TRIGGER no_update", "UPDATE entry SET note = 'never' WHERE number = 2");
    assertFault("entry 2 was changed after it was written");
  }

  @Test
  void aRemovedRowIsFound() throws SQLException {
    threeEntries();
    sql("DROP TRIGGER no_delete", "DELETE FROM entry WHERE number = 2");
    assertFault("entry 3 comes where entry 2 should be");
  }

  @Test
  void aRowMadeAnewWithItsOwnHashBreaksTheNext() throws SQLException {
    threeEntries();
    sql("DROP TRIGGER no_update", "UPDATE entry SET hash = zeroblob(32) WHERE number = 2");
    assertFault("entry 2 was changed after it was written");
  }

  private void assertFault(String what) {
    try (Journal journal = Journal.open(path)) {
      assertEquals(what, journal.verify().fault().orElseThrow().what());
    }
  }

  @Test
  void aFileThatIsNotADatabaseIsRefusedAndLeftAlone() throws Exception {
    byte[] text = "hark: 1\nspacecraft:\n".repeat(100).getBytes(StandardCharsets.UTF_8);
    assertRefusedAndLeftAlone(text, "not a Hark journal");
  }

  @Test
  void tenMegabytesOfNoiseAreRefusedAndLeftAlone() throws Exception {
    byte[] noise = new byte[10_000_000];
    new SplittableRandom(4).nextBytes(noise);
    assertRefusedAndLeftAlone(noise, "not a Hark journal");
  }

  @Test
  void anEmptyFileIsRefusedAndLeftAlone() throws Exception {
    assertRefusedAndLeftAlone(new byte[0], "a journal never is");
  }

  private void assertRefusedAndLeftAlone(byte[] content, String words) throws Exception {
    Files.write(path, content);
    BadInput bad = assertThrows(BadInput.class, () -> Journal.open(path));
    assertTrue(bad.getMessage().contains(words), bad.getMessage());
    assertArrayEquals(content, Files.readAllBytes(path));
  }

  @Test
  void anotherProgramsDatabaseIsRefused() throws SQLException {
    sql("CREATE TABLE entry (number INTEGER)");
    BadInput bad = assertThrows(BadInput.class, () -> Journal.open(path));
    assertTrue(bad.getMessage().contains("not a Hark journal"), bad.getMessage());
  }

  @Test
  void aNewerFormatIsRefused() throws SQLException {
    threeEntries();
    sql("PRAGMA user_version = 2");
    BadInput bad = assertThrows(BadInput.class, () -> Journal.open(path));
    assertTrue(bad.getMessage().contains("format 2"), bad.getMessage());
  }

  @Test
  void aLockedJournalFailsInWordsAndIsWholeAfterwards() throws SQLException {
    threeEntries();
    try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + path);
        Statement statement = other.createStatement();
        Journal journal = Journal.open(path)) {
      statement.execute("BEGIN IMMEDIATE");
      Draft draft = volts("7");
      JournalUnavailable failure =
          assertThrows(JournalUnavailable.class, () -> journal.append(draft, NOW, "", ""));
      assertTrue(failure.getMessage().contains("another program"), failure.getMessage());
      statement.execute("ROLLBACK");
      assertEquals(4, journal.append(draft, NOW, "", "").number());
    }
  }

  @Test
  void aFolderThatIsNotThereFailsInWords() {
    Path nowhere = folder.resolve("nowhere").resolve("journal.db");
    assertThrows(JournalUnavailable.class, () -> Journal.open(nowhere));
  }

  @Test
  void aTextWithoutEndIsRefusedAndTheJournalUntouched() {
    try (Journal journal = Journal.open(path)) {
      Draft draft = volts("7");
      String endless = "x".repeat(Journal.MOST_TEXT + 1);
      assertThrows(BadInput.class, () -> journal.append(draft, NOW, "", endless));
      assertEquals(0, journal.lastNumber());
    }
  }

  @Test
  void whatComesTwiceUnderOneTokenIsWrittenOnceEvenAfterTheFileWasClosed() {
    String token = "3f1c2b6e-0000-4000-8000-000000000001";
    try (Journal journal = Journal.open(path)) {
      journal.append(volts("7"), NOW, "", "");
      assertEquals(java.util.Optional.empty(), journal.delivered(token));
      assertEquals(2, journal.appendOnce(token, volts("6.9"), NOW, "", "").number());
      assertEquals(2, journal.appendOnce(token, volts("6.9"), NOW, "", "").number());
      assertEquals(3, journal.appendOnce(token + "x", volts("6.9"), NOW, "", "").number());
    }
    try (Journal journal = Journal.open(path)) {
      assertEquals(java.util.Optional.of(2), journal.delivered(token));
      assertEquals(2, journal.appendOnce(token, volts("6.9"), NOW, "", "").number());
      assertEquals(3, journal.list().size());
      assertTrue(journal.verify().fault().isEmpty());
    }
  }

  @Test
  void aTokenIsTakenOnceByManyAtTheSameTime() throws Exception {
    try (Journal one = Journal.open(path);
        Journal other = Journal.open(path)) {
      java.util.concurrent.ExecutorService crew =
          java.util.concurrent.Executors.newFixedThreadPool(8);
      List<java.util.concurrent.Callable<Integer>> sending = new java.util.ArrayList<>();
      for (int i = 0; i < 24; i++) {
        Journal journal = i % 2 == 0 ? one : other;
        sending.add(() -> journal.appendOnce("token-001", volts("7"), NOW, "", "").number());
      }
      for (java.util.concurrent.Future<Integer> each : crew.invokeAll(sending)) {
        assertEquals(1, each.get());
      }
      crew.shutdown();
      assertEquals(1, one.list().size());
    }
  }
}

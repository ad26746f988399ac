package hark.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program that appends is killed (SIGKILL where the system has it) again and again; nothing it
 * acknowledged is lost and the chain holds. A kill tests the program's crash, not a power cut: for
 * that the journal relies on SQLite's synchronous=FULL.
 */
class JournalCrashTest {
  private static final int KILLS = 8;
  private static final int MOST_LINES = 400;
  private static final long SEED = 20_261_114;

  @TempDir private Path folder;

  @Test
  void noAcknowledgedEntryIsLostWhenTheWriterIsKilled() throws Exception {
    Path path = folder.resolve("journal.db");
    SplittableRandom random = new SplittableRandom(SEED);
    int acknowledged = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      int lines = random.nextInt(1, MOST_LINES);
      int last = appendAndKill(path, lines);
      assertTrue(last > acknowledged, "numbers rise over a kill");
      acknowledged = last;
      check(path, acknowledged);
    }
  }

  @Test
  void aKillWhileTheJournalIsMadeLeavesNoneOrASoundOne() throws Exception {
    for (int kill = 0; kill < KILLS; kill++) {
      Path path = folder.resolve("made-" + kill + ".db");
      Process child = start(path);
      Thread.sleep(60L * kill);
      child.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
      try (Journal journal = Journal.open(path)) {
        assertEquals(Optional.empty(), journal.verify().fault());
      }
    }
  }

  private void check(Path path, int acknowledged) {
    try (Journal journal = Journal.openExisting(path)) {
      Journal.Verification verification = journal.verify();
      assertEquals(Optional.empty(), verification.fault());
      List<Entry> entries = journal.list();
      assertTrue(entries.size() >= acknowledged, entries.size() + " of " + acknowledged);
      for (Entry entry : entries) {
        assertEquals("line " + entry.number(), ((Evidence.Note) entry.evidence()).text());
      }
    }
  }

  /** Lets a child append, kills it after so many lines, and gives the last number it said. */
  private int appendAndKill(Path path, int lines) throws IOException, InterruptedException {
    Process child = start(path);
    int last = 0;
    try (BufferedReader said = child.inputReader(StandardCharsets.UTF_8)) {
      String line = said.readLine();
      for (int i = 0; line != null; i++) {
        if (i == lines) {
          child.toHandle().destroyForcibly(); // the process itself would close its output unread
        }
        last = Integer.parseInt(line);
        line = said.readLine();
      }
    }
    assertTrue(child.waitFor(10, TimeUnit.SECONDS));
    return last;
  }

  private Process start(Path path) throws IOException {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    return new ProcessBuilder(
            java.toString(),
            "-Xmx128m",
            "-cp",
            System.getProperty("java.class.path"),
            AppendUntilKilled.class.getName(),
            path.toString())
        .redirectError(Files.createTempFile(folder, "child", ".err").toFile())
        .start();
  }
}

package hark.journal;

import hark.evidence.EvidenceBook;
import hark.evidence.EvidenceContext;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** A program that appends for ever and says each number once it is on disk. */
final class AppendUntilKilled {
  private AppendUntilKilled() {}

  /** Appends to the journal named by the first argument until somebody kills it. */
  public static void main(String[] args) {
    Instant at = Instant.parse("2026-11-14T09:30:00Z");
    try (Journal journal = Journal.open(Path.of(args[0]))) {
      while (true) {
        long next = journal.lastNumber() + 1;
        Map<String, String> keys = Map.of("text", "line " + next);
        EvidenceBook.Draft draft =
            EvidenceBook.draft(List.of(), "note", keys, EvidenceContext.alreadyChecked(at));
        System.out.println(journal.append(draft, at, "child", "").number());
        System.out.flush();
      }
    }
  }
}

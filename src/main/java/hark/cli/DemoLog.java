package hark.cli;

import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import hark.evidence.Entry;
import hark.evidence.EvidenceBook;
import hark.evidence.EvidenceBook.Draft;
import hark.evidence.EvidenceContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The demo's record as its invented crew wrote it, one JSON object a line. It goes the same way as
 * anything logged: through {@link EvidenceBook#draft}.
 */
final class DemoLog {
  private static final ObjectReader READER =
      JsonMapper.builder().addModule(new JavaTimeModule()).build().readerFor(Line.class);

  private DemoLog() {}

  /**
   * One line of the file.
   *
   * @param recorded when it was written down
   * @param keys as on the command line of {@code hark log}
   * @param note left out when nothing was added
   */
  record Line(Instant recorded, String who, String kind, Map<String, String> keys, String note) {
    Line {
      note = note == null ? "" : note;
    }
  }

  /** Takes the next checked entry and gives it its number. */
  interface Book {
    Entry append(Draft draft, Instant recordedAt, String who, String note);
  }

  /** All lines, in the order written. */
  static List<Line> lines(String text) {
    List<Line> lines = new ArrayList<>();
    for (String line : text.lines().toList()) {
      try {
        lines.add(READER.readValue(line));
      } catch (IOException e) {
        throw new UncheckedIOException("the demo's own log is damaged: " + line, e);
      }
    }
    return List.copyOf(lines);
  }

  /**
   * Replays lines into a book.
   *
   * @param context what the mission knows; its time is replaced by that of each line
   */
  static List<Entry> replay(List<Line> lines, EvidenceContext context, Book book) {
    List<Entry> entries = new ArrayList<>();
    for (Line line : lines) {
      Draft draft = EvidenceBook.draft(entries, line.kind(), line.keys(), at(line, context));
      entries.add(book.append(draft, line.recorded(), line.who(), line.note()));
    }
    return List.copyOf(entries);
  }

  /** A book that keeps entries in memory and numbers them from 1. */
  static Book inMemory() {
    List<Entry> kept = new ArrayList<>();
    return (draft, recordedAt, who, note) -> {
      int number = kept.size() + 1;
      Entry entry = new Entry(number, recordedAt, who, note, draft.keys(), draft.evidence());
      kept.add(entry);
      return entry;
    };
  }

  private static EvidenceContext at(Line line, EvidenceContext context) {
    return new EvidenceContext(
        line.recorded(),
        context.earliest(),
        context.latest(),
        context.stations(),
        context.objects(),
        context.passes());
  }
}

package hark.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.evidence.EvidenceBook.Draft;
import hark.evidence.EvidenceContext;
import hark.evidence.EvidenceText;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The record on disk. It only grows: an entry is corrected by another entry. Safe for several
 * threads and for several programs at once.
 */
public final class Journal implements AutoCloseable {
  /** Longest name of who wrote an entry, characters. */
  public static final int MOST_WHO = 200;

  /** Longest note and longest value of a key, characters. */
  public static final int MOST_TEXT = 20_000;

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final TypeReference<TreeMap<String, String>> KEYS = new TypeReference<>() {};
  private static final String SELECT =
      "SELECT number, recorded_at, at, who, note, kind, keys, previous, hash FROM entry";

  private final Path path;
  private final Connection connection;

  private Journal(Path path, Connection connection) {
    this.path = path;
    this.connection = connection;
  }

  /** Where the chain stands: the last number (0 when empty) and its hash in hex. */
  public record Head(int number, String hash) {}

  /**
   * What a check of the whole chain found.
   *
   * @param fault the first thing wrong, in words; empty when all is well
   */
  public record Verification(int entries, Head head, Optional<Problem> fault) {}

  /**
   * Opens a journal, making it when there is none.
   *
   * @throws BadInput when the file is not a journal, is damaged, or has a newer format
   * @throws JournalUnavailable when it cannot be opened now
   */
  public static Journal open(Path path) {
    return new Journal(path, JournalFile.open(path));
  }

  /** All entries of a journal; none when there is no file, which is then not made. */
  public static List<Entry> read(Path path) {
    if (!Files.exists(path)) {
      return List.of();
    }
    try (Journal journal = openExisting(path)) {
      return journal.list();
    }
  }

  /** Opens a journal that must be there. */
  public static Journal openExisting(Path path) {
    if (!Files.exists(path)) {
      throw BadInput.of(
          "there is no journal yet", path.toString(), "the first `hark log` makes it");
    }
    return new Journal(path, JournalFile.openExisting(path));
  }

  /**
   * Appends an entry and returns it when it is on disk.
   *
   * @param who may be empty
   * @param note may be empty
   * @throws BadInput when a text is too long; the journal is untouched then
   */
  public Entry append(Draft draft, Instant recordedAt, String who, String note) {
    return append(draft, recordedAt, who, note, Optional.empty());
  }

  /**
   * Appends an entry unless one came under the same token already; that one's number is then
   * returned and nothing is written. Token and entry reach the disk together or not at all.
   *
   * @param token of the sender, who may send again when no answer came
   */
  public Entry appendOnce(String token, Draft draft, Instant recordedAt, String who, String note) {
    return append(draft, recordedAt, who, note, Optional.of(token));
  }

  /** The number of the entry that came under a token, if one did. */
  public synchronized Optional<Integer> delivered(String token) {
    try {
      return Deliveries.find(connection, token);
    } catch (SQLException e) {
      throw JournalFile.failure(path, e);
    }
  }

  private synchronized Entry append(
      Draft draft, Instant recordedAt, String who, String note, Optional<String> token) {
    refuseLong(draft, who, note);
    try (Statement statement = connection.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      boolean done = false;
      try {
        Optional<Integer> earlier =
            token.isPresent() ? Deliveries.find(connection, token.get()) : Optional.empty();
        if (earlier.isPresent()) {
          return new Entry(earlier.get(), recordedAt, who, note, draft.keys(), draft.evidence());
        }
        Head head = readHead();
        Row row = row(head.number() + 1, draft, recordedAt, who, note);
        insert(row, HexFormat.of().parseHex(head.hash()));
        if (token.isPresent()) {
          Deliveries.add(connection, token.get(), row.number());
        }
        statement.execute("COMMIT");
        done = true;
        return new Entry(row.number(), recordedAt, who, note, draft.keys(), draft.evidence());
      } finally {
        if (!done) {
          statement.execute("ROLLBACK");
        }
      }
    } catch (SQLException e) {
      throw JournalFile.failure(path, e);
    }
  }

  /** All entries in the order of their numbers, corrections among them. */
  public synchronized List<Entry> list() {
    List<Entry> entries = new ArrayList<>();
    walk((row, previous, hash) -> entries.add(entry(row)));
    return List.copyOf(entries);
  }

  /** Number of the last entry, 0 when there is none. Cheap: made for asking again and again. */
  public long lastNumber() {
    return head().number();
  }

  /** The end of the chain. Keep it elsewhere: only so can a cut tail be noticed. */
  public synchronized Head head() {
    try {
      return readHead();
    } catch (SQLException e) {
      throw JournalFile.failure(path, e);
    }
  }

  /** Recomputes the whole chain. Finds changed, exchanged and missing rows, not a cut tail. */
  public synchronized Verification verify() {
    ChainCheck check = new ChainCheck(path);
    walk(check::row);
    return new Verification(check.rows(), head(), check.fault());
  }

  @Override
  public synchronized void close() {
    try {
      connection.close();
    } catch (SQLException e) {
      throw JournalFile.failure(path, e);
    }
  }

  /** Takes one row with its stored hashes. */
  @FunctionalInterface
  interface RowTaker {
    void row(Row row, byte[] previous, byte[] hash);
  }

  private void walk(RowTaker taker) {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(SELECT + " ORDER BY number")) {
      while (rows.next()) {
        Row row =
            new Row(
                rows.getInt(1),
                rows.getString(2),
                rows.getString(3),
                rows.getString(4),
                rows.getString(5),
                rows.getString(6),
                rows.getString(7));
        taker.row(row, rows.getBytes(8), rows.getBytes(9));
      }
    } catch (SQLException e) {
      throw JournalFile.failure(path, e);
    }
  }

  private Head readHead() throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet last =
            statement.executeQuery("SELECT number, hash FROM entry ORDER BY number DESC LIMIT 1")) {
      return last.next()
          ? new Head(last.getInt(1), HexFormat.of().formatHex(last.getBytes(2)))
          : new Head(0, HexFormat.of().formatHex(Chain.start()));
    }
  }

  private void insert(Row row, byte[] previous) throws SQLException {
    String sql = "INSERT INTO entry VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)";
    try (PreparedStatement insert = connection.prepareStatement(sql)) {
      insert.setInt(1, row.number());
      List<String> texts =
          Arrays.asList(row.recordedAt(), row.at(), row.who(), row.note(), row.kind(), row.keys());
      for (int i = 0; i < texts.size(); i++) {
        insert.setString(i + 2, texts.get(i));
      }
      insert.setBytes(8, previous);
      insert.setBytes(9, Chain.hash(previous, row));
      insert.executeUpdate();
    }
  }

  private static Row row(int number, Draft draft, Instant recordedAt, String who, String note) {
    try {
      String keys = JSON.writeValueAsString(new TreeMap<>(draft.keys()));
      String at = draft.evidence().at().toString();
      return new Row(number, recordedAt.toString(), at, who, note, draft.kind(), keys);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a map of texts is always JSON", e);
    }
  }

  private Entry entry(Row row) {
    String where = path + ", entry " + row.number();
    try {
      Map<String, String> keys = JSON.readValue(row.keys(), KEYS);
      EvidenceContext context = EvidenceContext.alreadyChecked(Instant.parse(row.at()));
      Evidence evidence = EvidenceText.parse(row.kind(), keys, context);
      Instant recordedAt = Instant.parse(row.recordedAt());
      return new Entry(row.number(), recordedAt, row.who(), row.note(), keys, evidence);
    } catch (BadInput bad) {
      throw new BadInput(
          bad.problems().stream()
              .map(p -> new Problem(p.what(), where + ", " + p.where(), p.mend()))
              .toList());
    } catch (JsonProcessingException | DateTimeException e) {
      throw BadInput.of("the entry cannot be read", where, "run `hark journal MISSION verify`");
    }
  }

  private static void refuseLong(Draft draft, String who, String note) {
    List<Problem> problems = new ArrayList<>();
    refuseLong("who", who, MOST_WHO, problems);
    refuseLong("note", note, MOST_TEXT, problems);
    draft.keys().forEach((key, value) -> refuseLong("key " + key, value, MOST_TEXT, problems));
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  private static void refuseLong(String where, String text, int most, List<Problem> problems) {
    if (text.length() > most) {
      problems.add(
          new Problem(
              "the text has " + text.length() + " characters and may have " + most,
              where,
              "shorten it, or keep it in a file and name the file"));
    }
  }
}

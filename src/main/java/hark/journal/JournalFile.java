package hark.journal;

import hark.problem.BadInput;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Makes, opens and recognises the file. */
final class JournalFile {
  /** "Hark" in ASCII: marks the file as a journal. */
  private static final int APPLICATION_ID = 0x4861726b;

  /** Format this edition writes; a larger one is left alone. */
  private static final int FORMAT = 1;

  /** How long to wait for another program to finish writing, ms. */
  private static final int BUSY_MILLIS = 5_000;

  private static final String TABLE =
      """
      CREATE TABLE entry (
        number INTEGER PRIMARY KEY,
        recorded_at TEXT NOT NULL,
        at TEXT NOT NULL,
        who TEXT NOT NULL,
        note TEXT NOT NULL,
        kind TEXT NOT NULL,
        keys TEXT NOT NULL,
        previous BLOB NOT NULL,
        hash BLOB NOT NULL
      ) STRICT""";

  private static final String REFUSE =
      " ON entry BEGIN SELECT RAISE(ABORT, 'a journal only grows'); END";

  private JournalFile() {}

  /** Opens the journal, making it first when there is no file. */
  static Connection open(Path path) {
    if (!Files.exists(path)) {
      make(path);
    }
    return openExisting(path);
  }

  /** Opens a file that is there, and refuses what is not a journal of this format. */
  static Connection openExisting(Path path) {
    try {
      if (Files.isRegularFile(path) && Files.size(path) == 0) {
        throw BadInput.of(
            "the file is empty, and a journal never is",
            path.toString(),
            "put back a copy, or remove it if nothing was ever written");
      }
      Connection connection = connect(path);
      try {
        recognise(connection, path);
        return connection;
      } catch (SQLException | RuntimeException e) {
        connection.close();
        throw e;
      }
    } catch (SQLException e) {
      throw failure(path, e);
    } catch (IOException e) {
      throw new JournalUnavailable(path + " could not be opened: " + e.getMessage(), e);
    }
  }

  private static void recognise(Connection connection, Path path) throws SQLException {
    int id = pragma(connection, "application_id");
    if (id != APPLICATION_ID) {
      throw BadInput.of(
          "this database is not a Hark journal",
          path.toString(),
          "move it elsewhere, or name the right mission folder");
    }
    int format = pragma(connection, "user_version");
    if (format > FORMAT) {
      throw BadInput.of(
          "the journal has format " + format + " and this edition reads format " + FORMAT,
          path.toString(),
          "use a newer edition of Hark");
    }
  }

  /**
   * Makes the file beside its place and links it there whole, so that a kill at any moment leaves
   * either no journal or a sound one, and two programs cannot make it twice.
   */
  private static void make(Path path) {
    Path folder = path.toAbsolutePath().getParent();
    try {
      Path draft = Files.createTempFile(folder, "journal", ".new");
      try {
        fill(draft);
        put(draft, path);
        syncFolder(folder);
      } finally {
        Files.deleteIfExists(draft);
      }
    } catch (SQLException e) {
      throw failure(path, e);
    } catch (IOException e) {
      throw new JournalUnavailable(path + " could not be made: " + e.getMessage(), e);
    }
  }

  private static void fill(Path draft) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + draft);
        Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA synchronous = FULL");
      statement.execute("BEGIN IMMEDIATE");
      statement.execute("PRAGMA application_id = " + APPLICATION_ID);
      statement.execute("PRAGMA user_version = " + FORMAT);
      statement.execute(TABLE);
      statement.execute("CREATE TRIGGER no_update BEFORE UPDATE" + REFUSE);
      statement.execute("CREATE TRIGGER no_delete BEFORE DELETE" + REFUSE);
      statement.execute("COMMIT");
    }
  }

  private static void put(Path draft, Path path) throws IOException {
    try {
      Files.createLink(path, draft);
    } catch (FileAlreadyExistsException e) {
      // another program made it in the meantime: that one counts
    } catch (UnsupportedOperationException e) {
      Files.move(draft, path);
    }
  }

  /** The name itself must be on disk too. Folders cannot be synced on every system. */
  private static void syncFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // the file's content is safe; only a power cut in this second could lose its name
    }
  }

  private static Connection connect(Path path) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(BUSY_MILLIS);
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    return DriverManager.getConnection("jdbc:sqlite:" + path, config.toProperties());
  }

  private static int pragma(Connection connection, String name) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet result = statement.executeQuery("PRAGMA " + name)) {
      return result.next() ? result.getInt(1) : 0;
    }
  }

  /** A failure of the database in words: bad input when the file is wrong, else unavailable. */
  static RuntimeException failure(Path path, SQLException cause) {
    SQLiteErrorCode code =
        cause instanceof SQLiteException s ? s.getResultCode() : SQLiteErrorCode.SQLITE_ERROR;
    int primary = code.code & 0xff;
    if (primary == SQLiteErrorCode.SQLITE_NOTADB.code) {
      return BadInput.of(
          "this file is not a Hark journal",
          path.toString(),
          "move it elsewhere, or name the right mission folder");
    }
    if (primary == SQLiteErrorCode.SQLITE_CORRUPT.code) {
      return BadInput.of(
          "the journal's file is damaged",
          path.toString(),
          "leave it as it is, copy it with its -wal file, and put back the last good copy");
    }
    return new JournalUnavailable(path + " " + reason(primary) + "; nothing was changed", cause);
  }

  private static String reason(int primary) {
    if (primary == SQLiteErrorCode.SQLITE_BUSY.code
        || primary == SQLiteErrorCode.SQLITE_LOCKED.code) {
      return "is in use by another program that did not let go within " + BUSY_MILLIS / 1000 + " s";
    }
    if (primary == SQLiteErrorCode.SQLITE_FULL.code) {
      return "could not be written: the disk is full";
    }
    if (primary == SQLiteErrorCode.SQLITE_READONLY.code) {
      return "may not be written: the file or its folder is read-only";
    }
    if (primary == SQLiteErrorCode.SQLITE_CANTOPEN.code) {
      return "could not be opened: look at the folder and its permissions";
    }
    return "could not be read or written (SQLite " + primary + ")";
  }
}

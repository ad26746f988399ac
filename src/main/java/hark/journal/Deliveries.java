package hark.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;

/**
 * Which entry came under which token, in a table beside the entries: it takes part in their
 * transaction and stays out of their chain. A file without it is a journal all the same.
 */
final class Deliveries {
  private static final String TABLE =
      "CREATE TABLE IF NOT EXISTS delivery (token TEXT PRIMARY KEY, number INTEGER NOT NULL)"
          + " STRICT";

  private Deliveries() {}

  /** The number of the entry that came under a token. */
  static Optional<Integer> find(Connection connection, String token) throws SQLException {
    if (!isThere(connection)) {
      return Optional.empty();
    }
    try (PreparedStatement find =
        connection.prepareStatement("SELECT number FROM delivery WHERE token = ?")) {
      find.setString(1, token);
      try (ResultSet found = find.executeQuery()) {
        return found.next() ? Optional.of(found.getInt(1)) : Optional.empty();
      }
    }
  }

  /** Notes a token; to be called inside the entry's transaction. */
  static void add(Connection connection, String token, int number) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(TABLE);
    }
    try (PreparedStatement add =
        connection.prepareStatement("INSERT INTO delivery VALUES (?, ?)")) {
      add.setString(1, token);
      add.setInt(2, number);
      add.executeUpdate();
    }
  }

  private static boolean isThere(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet tables =
            statement.executeQuery(
                "SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = 'delivery'")) {
      return tables.next();
    }
  }
}

package hark.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A table of an outside authority; refused when it does not say where it comes from. */
public final class ReferenceTable {
  private final List<Map<String, String>> rows;

  private ReferenceTable(List<Map<String, String>> rows) {
    this.rows = rows;
  }

  /** Reads {@code reference/NAME} from the test resources. */
  public static ReferenceTable read(String name) {
    List<String> lines = lines(name);
    for (String header : List.of("# source", "# frame/units", "# tolerance")) {
      if (lines.stream().noneMatch(line -> line.startsWith(header))) {
        throw new IllegalArgumentException(name + " has no line '" + header + "'");
      }
    }
    List<String> data = lines.stream().filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
    String[] keys = data.get(0).split(",");
    List<Map<String, String>> rows = new ArrayList<>();
    for (String line : data.subList(1, data.size())) {
      String[] cells = line.split(",", -1);
      Map<String, String> row = new HashMap<>();
      for (int i = 0; i < keys.length; i++) {
        row.put(keys[i], cells[i]);
      }
      rows.add(row);
    }
    return new ReferenceTable(rows);
  }

  /** All rows. */
  public List<Map<String, String>> rows() {
    return rows;
  }

  /** A number of a row. */
  public static double number(Map<String, String> row, String key) {
    return Double.parseDouble(row.get(key));
  }

  private static List<String> lines(String name) {
    try (var stream = ReferenceTable.class.getResourceAsStream("/reference/" + name)) {
      return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
          .lines()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package hark.orbit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A table of outside numbers; refuses one that does not say where it comes from. */
public final class ReferenceTable {
  private final List<Map<String, String>> rows;

  private ReferenceTable(List<Map<String, String>> rows) {
    this.rows = rows;
  }

  /** Rows by column name. */
  public List<Map<String, String>> rows() {
    return rows;
  }

  /** A number of a row. */
  public static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** From the tests' own resources, below {@code reference/}. */
  public static ReferenceTable read(String name) {
    return of(name, text(name));
  }

  /** A resource below {@code reference/} as text. */
  public static String text(String name) {
    try (var in = ReferenceTable.class.getResourceAsStream("/reference/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(name, e);
    }
  }

  private static ReferenceTable of(String name, String text) {
    List<String> lines = text.lines().toList();
    for (String key : List.of("# source:", "# frame/units:", "# tolerance:")) {
      if (lines.stream().noneMatch(line -> line.startsWith(key))) {
        throw new IllegalArgumentException(name + " does not say its " + key);
      }
    }
    List<String> data = lines.stream().filter(line -> !line.startsWith("#")).toList();
    List<String> columns = Arrays.asList(data.get(0).split(","));
    List<Map<String, String>> rows = new ArrayList<>();
    for (String line : data.subList(1, data.size())) {
      String[] values = line.split(",", -1);
      Map<String, String> row = new HashMap<>();
      for (int i = 0; i < values.length; i++) {
        row.put(columns.get(i), values[i]);
      }
      rows.add(row);
    }
    return new ReferenceTable(rows);
  }
}

package hark.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Prints rows as a table for people, as JSON or as CSV, all from the same values.
 *
 * <p>A row holds one value for each column: {@link Instant} (written in UTC to the millisecond),
 * {@link Double} (rounded to the column's decimals; NaN counts as missing), {@link Integer}, {@link
 * Long}, {@link Boolean}, {@link String} or null for missing. JSON is {@code {"key":[{…},…]}} and
 * nothing else.
 */
final class TableWriter {
  private static final String MISSING = "–";

  private final String key;
  private final List<Column> columns;

  /**
   * One column.
   *
   * @param name heading and JSON key
   * @param decimals of numbers; ignored for anything else
   */
  record Column(String name, int decimals) {
    static Column text(String name) {
      return new Column(name, 0);
    }

    static Column number(String name, int decimals) {
      return new Column(name, decimals);
    }
  }

  /**
   * A writer.
   *
   * @param key name of the array in the JSON document
   */
  TableWriter(String key, List<Column> columns) {
    this.key = key;
    this.columns = List.copyOf(columns);
  }

  /** Prints all rows. */
  void write(OutputFormat format, List<Object[]> rows, PrintWriter out) {
    switch (format) {
      case TABLE -> writeTable(rows, out);
      case JSON -> writeJson(rows, out);
      case CSV -> writeCsv(rows, out);
    }
    out.flush();
  }

  private void writeJson(List<Object[]> rows, PrintWriter out) {
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, false);
      json.setPrettyPrinter(new RowALine());
      json.writeStartObject();
      json.writeArrayFieldStart(key);
      for (Object[] row : rows) {
        writeObject(json, row);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    out.println();
  }

  private void writeObject(JsonGenerator json, Object[] row) throws IOException {
    json.writeStartObject();
    for (int i = 0; i < columns.size(); i++) {
      json.writeFieldName(columns.get(i).name());
      Object value = row[i];
      if (isMissing(value)) {
        json.writeNull();
      } else if (value instanceof Double || value instanceof Integer || value instanceof Long) {
        json.writeNumber(plain(value, i));
      } else if (value instanceof Boolean flag) {
        json.writeBoolean(flag);
      } else {
        json.writeString(plain(value, i));
      }
    }
    json.writeEndObject();
  }

  private void writeCsv(List<Object[]> rows, PrintWriter out) {
    out.println(String.join(",", columns.stream().map(column -> quoted(column.name())).toList()));
    for (Object[] row : rows) {
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < columns.size(); i++) {
        cells.add(isMissing(row[i]) ? "" : quoted(plain(row[i], i)));
      }
      out.println(String.join(",", cells));
    }
  }

  private static String quoted(String text) {
    boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
  }

  private void writeTable(List<Object[]> rows, PrintWriter out) {
    int[] widths = columns.stream().mapToInt(column -> column.name().length()).toArray();
    boolean[] numeric = new boolean[columns.size()];
    List<String[]> cells = new ArrayList<>();
    for (Object[] row : rows) {
      String[] line = new String[columns.size()];
      for (int i = 0; i < line.length; i++) {
        line[i] = isMissing(row[i]) ? MISSING : plain(row[i], i);
        widths[i] = Math.max(widths[i], line[i].length());
        numeric[i] |= row[i] instanceof Number;
      }
      cells.add(line);
    }
    printLine(columns.stream().map(Column::name).toArray(String[]::new), widths, numeric, out);
    cells.forEach(line -> printLine(line, widths, numeric, out));
  }

  private static void printLine(String[] cells, int[] widths, boolean[] numeric, PrintWriter out) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.length; i++) {
      String space = " ".repeat(widths[i] - cells[i].length());
      line.append(i == 0 ? "" : "  ");
      line.append(numeric[i] ? space + cells[i] : cells[i] + space);
    }
    out.println(line.toString().stripTrailing());
  }

  private static boolean isMissing(Object value) {
    return value == null || (value instanceof Double number && !Double.isFinite(number));
  }

  private String plain(Object value, int column) {
    if (value instanceof Instant time) {
      return UtcTime.print(time);
    }
    if (value instanceof Double number) {
      BigDecimal rounded =
          BigDecimal.valueOf(number)
              .setScale(columns.get(column).decimals(), RoundingMode.HALF_EVEN);
      return rounded.toPlainString();
    }
    return value.toString();
  }

  /** One row a line: short files that people can still read and compare. */
  private static final class RowALine extends MinimalPrettyPrinter {
    private static final long serialVersionUID = 1L;

    @Override
    public void beforeArrayValues(JsonGenerator json) throws IOException {
      json.writeRaw('\n');
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
      json.writeRaw(",\n");
    }
  }
}

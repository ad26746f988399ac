package hark.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import hark.evidence.Entry;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** The record as people take it elsewhere: every entry as written, corrections among them. */
public final class JournalText {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> COLUMNS =
      List.of("number", "at", "kind", "keys", "who", "note", "recordedAt");

  private JournalText() {}

  /** One document: {@code {"entries":[…]}}. */
  public static String json(List<Entry> entries) {
    ObjectNode document = JsonNodeFactory.instance.objectNode();
    var list = document.putArray("entries");
    entries.forEach(entry -> list.add(node(entry)));
    return text(document) + "\n";
  }

  /** An entry a line, in the order of the numbers: what another journal could be filled from. */
  public static String lines(List<Entry> entries) {
    StringBuilder lines = new StringBuilder();
    entries.forEach(entry -> lines.append(text(node(entry))).append('\n'));
    return lines.toString();
  }

  /**
   * A table after RFC 4180, its keys as JSON in one column. A cell that a spreadsheet would take
   * for a formula gets an apostrophe before it.
   */
  public static String csv(List<Entry> entries) {
    CsvSchema.Builder schema = CsvSchema.builder();
    COLUMNS.forEach(schema::addColumn);
    StringWriter out = new StringWriter();
    try (SequenceWriter rows =
        new CsvMapper().writer(schema.build().withLineSeparator("\r\n")).writeValues(out)) {
      rows.write(COLUMNS);
      for (Entry entry : entries) {
        rows.write(row(entry));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static List<String> row(Entry entry) {
    List<String> cells = new ArrayList<>();
    ObjectNode node = node(entry);
    for (String column : COLUMNS) {
      String cell =
          node.get(column).isValueNode() ? node.get(column).asText() : text(node.get(column));
      boolean formula = !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0;
      cells.add(formula ? "'" + cell : cell);
    }
    return cells;
  }

  private static ObjectNode node(Entry entry) {
    JsonFields fields = new JsonFields(JsonNodeFactory.instance.objectNode());
    fields.node().put("number", entry.number());
    fields.time("at", entry.evidence().at());
    fields.text("kind", entry.evidence().kind());
    JsonFields keys = fields.object("keys");
    new TreeMap<>(entry.keys()).forEach(keys::text);
    fields.text("who", entry.who());
    fields.text("note", entry.note());
    fields.time("recordedAt", entry.recordedAt());
    return fields.node();
  }

  private static String text(Object node) {
    try {
      return JSON.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree is always JSON", e);
    }
  }
}

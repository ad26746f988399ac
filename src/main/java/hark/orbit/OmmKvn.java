package hark.orbit;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads CCSDS OMM in lines {@code KEY = VALUE}, one message after another. Source: CCSDS 502.0-B-3,
 * sections 4 and 7; a unit in square brackets after a value is passed over.
 */
final class OmmKvn {
  static final String FIRST_KEY = "CCSDS_OMM_VERS";

  private final String fileName;
  private final ElementProblems problems;
  private final List<ElementSet> sets = new ArrayList<>();
  private ObjectNode message;
  private int messageLine;

  private OmmKvn(String fileName) {
    this.fileName = fileName;
    this.problems = new ElementProblems(fileName);
  }

  static List<ElementSet> parse(String fileName, String text) {
    return new OmmKvn(fileName).read(text.lines().toList());
  }

  private List<ElementSet> read(List<String> lines) {
    int i = 0;
    for (; i < lines.size() && !problems.isFull(); i++) {
      String line = lines.get(i).strip();
      if (!line.isEmpty() && !line.startsWith("COMMENT")) {
        take(i + 1, line);
      }
    }
    finish();
    problems.throwIfAny(i >= lines.size());
    return List.copyOf(sets);
  }

  private void take(int number, String line) {
    int equals = line.indexOf('=');
    if (equals < 1) {
      problems.add(number, "this is not KEY = VALUE", "a remark begins with COMMENT");
      return;
    }
    String key = line.substring(0, equals).strip();
    String value = line.substring(equals + 1).strip().replaceAll("\\s*\\[[^\\]]*\\]$", "");
    if (key.equals(FIRST_KEY)) {
      finish();
      message = JsonNodeFactory.instance.objectNode();
      messageLine = number;
    } else if (message == null) {
      problems.add(number, key + " stands before " + FIRST_KEY, "begin each message with it");
    } else {
      message.put(key, value);
    }
  }

  private void finish() {
    if (message != null) {
      new OmmFields(fileName, messageLine, message, problems).read().ifPresent(sets::add);
      message = null;
    }
  }
}

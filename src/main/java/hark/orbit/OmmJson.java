package hark.orbit;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Reads CCSDS OMM as JSON: one object or an array of them. */
final class OmmJson {
  private final String fileName;
  private final ElementProblems problems;
  private final List<ElementSet> sets = new ArrayList<>();

  private OmmJson(String fileName) {
    this.fileName = fileName;
    this.problems = new ElementProblems(fileName);
  }

  static List<ElementSet> parse(String fileName, String text) {
    return new OmmJson(fileName).read(text);
  }

  private List<ElementSet> read(String text) {
    boolean whole = true;
    try (JsonParser parser = new ObjectMapper().createParser(text)) {
      whole = readAll(parser);
    } catch (JsonProcessingException e) {
      problems.add(line(e.getLocation()), "this is not JSON: " + e.getOriginalMessage(), "");
    } catch (IOException e) {
      throw new IllegalStateException("text in memory could not be read", e);
    }
    if (sets.isEmpty() && problems.count() == 0) {
      problems.add(1, "the file has no element set", "give OMM objects in the array");
    }
    problems.throwIfAny(whole);
    return List.copyOf(sets);
  }

  private boolean readAll(JsonParser parser) throws IOException {
    while (parser.nextToken() != null) {
      if (problems.isFull()) {
        return false;
      }
      if (parser.currentToken() == JsonToken.START_OBJECT) {
        int line = line(parser.currentTokenLocation());
        JsonNode object = parser.readValueAsTree();
        new OmmFields(fileName, line, object, problems).read().ifPresent(sets::add);
      } else if (parser.currentToken() != JsonToken.START_ARRAY
          && parser.currentToken() != JsonToken.END_ARRAY) {
        problems.add(
            line(parser.currentTokenLocation()),
            "an OMM object was expected, found " + parser.getText(),
            "give one object or an array of objects");
      }
    }
    return true;
  }

  private static int line(JsonLocation location) {
    return location == null ? 1 : location.getLineNr();
  }
}

package hark.orbit;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads CCSDS OMM as XML: one {@code <omm>}, or several in an {@code <ndm>} (CCSDS 505.0-B-3). No
 * document type, no entities of the file's own, nothing fetched from outside.
 */
final class OmmXml {
  /** Such a message nests six deep. */
  private static final int DEEPEST = 20;

  private final String fileName;
  private final ElementProblems problems;
  private final List<ElementSet> sets = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private ObjectNode message;
  private int messageLine;

  private OmmXml(String fileName) {
    this.fileName = fileName;
    this.problems = new ElementProblems(fileName);
  }

  static List<ElementSet> parse(String fileName, String text) {
    return new OmmXml(fileName).read(text);
  }

  private List<ElementSet> read(String document) {
    boolean whole = true;
    try {
      XMLStreamReader reader = factory().createXMLStreamReader(new StringReader(document));
      try {
        whole = readAll(reader);
      } finally {
        reader.close();
      }
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 1 : e.getLocation().getLineNumber();
      String first = e.getMessage().lines().reduce((a, b) -> b).orElse("").strip();
      problems.add(line, "this is not XML that can be read: " + first, "export it again");
    }
    if (sets.isEmpty() && problems.count() == 0) {
      problems.add(1, "the file has no omm element", "give OMM, one or several in an ndm");
    }
    problems.throwIfAny(whole);
    return List.copyOf(sets);
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    return factory;
  }

  private boolean readAll(XMLStreamReader reader) throws XMLStreamException {
    int depth = 0;
    while (reader.hasNext()) {
      if (problems.isFull()) {
        return false;
      }
      int line = reader.getLocation().getLineNumber();
      switch (reader.next()) {
        case XMLStreamConstants.DTD -> {
          problems.add(line, "the message declares a document type", "take the DOCTYPE out");
          return false;
        }
        case XMLStreamConstants.START_ELEMENT -> {
          if (++depth > DEEPEST) {
            problems.add(line, "elements nest deeper than " + DEEPEST, "this is no OMM");
            return false;
          }
          begin(reader.getLocalName(), line);
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA ->
            text.append(reader.getText());
        case XMLStreamConstants.END_ELEMENT -> {
          depth--;
          end(reader.getLocalName());
        }
        default -> {
          // remarks and instructions say nothing about an orbit
        }
      }
    }
    return true;
  }

  private void begin(String name, int line) {
    text.setLength(0);
    if (name.equals("omm")) {
      message = JsonNodeFactory.instance.objectNode();
      messageLine = line;
    }
  }

  private void end(String name) {
    if (name.equals("omm")) {
      new OmmFields(fileName, messageLine, message, problems).read().ifPresent(sets::add);
      message = null;
    } else if (message != null && !text.toString().isBlank()) {
      message.put(name, text.toString().strip());
    }
    text.setLength(0);
  }
}

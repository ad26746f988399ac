package hark.orbit;

import hark.problem.BadInput;
import java.io.StringReader;
import java.util.Locale;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** What is checked of a CCSDS message before its reader sees it: size, document type, nesting. */
final class MessageText {
  private static final int LONGEST_CHARACTERS = 8 * 1024 * 1024;

  /** Such messages nest eight deep at most. */
  private static final int DEEPEST = 20;

  private MessageText() {}

  /**
   * Refuses what no honest message needs: a document type may name files and nest entities.
   *
   * @param mend what to do about a message that is too long
   */
  static void refuseDanger(String fileName, String text, String mend) {
    if (text.length() > LONGEST_CHARACTERS) {
      throw BadInput.of(
          "the file has " + text.length() + " characters, the limit is " + LONGEST_CHARACTERS,
          fileName,
          mend);
    }
    String upper = text.toUpperCase(Locale.ROOT);
    if (upper.contains("<!DOCTYPE") || upper.contains("<!ENTITY")) {
      throw BadInput.of(
          "the message declares a document type, which is not read",
          fileName,
          "take the DOCTYPE out; such a message needs none");
    }
    if (text.stripLeading().startsWith("<")) {
      refuseDepth(fileName, text);
    }
  }

  private static void refuseDepth(String fileName, String text) {
    XMLInputFactory factory = XMLInputFactory.newFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(text));
      int depth = 0;
      while (reader.hasNext()) {
        int event = reader.next();
        depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
        depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
        if (depth > DEEPEST) {
          throw BadInput.of(
              "elements nest deeper than " + DEEPEST,
              fileName + ":" + reader.getLocation().getLineNumber(),
              "this is no such message; export it again");
        }
      }
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 1 : e.getLocation().getLineNumber();
      throw BadInput.of(
          "this is not XML that can be read: " + lastLine(e.getMessage()),
          fileName + ":" + line,
          "export it again");
    }
  }

  private static String lastLine(String message) {
    return message.lines().reduce((a, b) -> b).orElse("").strip();
  }
}

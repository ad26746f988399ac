package hark.orbit;

import hark.problem.BadInput;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads files of element sets: two-line elements (with or without name lines, Alpha-5 numbers) and
 * CCSDS OMM as KVN, XML (one or several messages) and JSON (one object or an array); and states, as
 * CCSDS OPM and OEM in KVN and XML. The form is recognised by content.
 */
public final class ElementSets {
  /** Longest text accepted, characters: twice a whole public catalogue as JSON. */
  public static final int MAX_CHARACTERS = 64 * 1024 * 1024;

  private static final int LOOK_CHARACTERS = 4096;
  private static final String MEND =
      "give two-line elements, OMM as KVN, XML or JSON, or a state as OPM or OEM";

  private ElementSets() {}

  /**
   * Reads all sets of a file, in its order.
   *
   * @param fileName only for messages
   * @throws BadInput with every problem of the file (the first fifty, when there are more)
   */
  public static List<ElementSet> parse(String fileName, String text) {
    return parse(fileName, text, DragBody.USUAL, EarthModel.bundled());
  }

  /**
   * The same for files that may hold states.
   *
   * @param body what the air acts on, where a message does not say
   * @param earth turns the frames of states into ours
   */
  public static List<ElementSet> parse(
      String fileName, String text, DragBody body, EarthModel earth) {
    refuseWhatIsNotText(fileName, text);
    String start = text.substring(0, Math.min(text.length(), LOOK_CHARACTERS)).stripLeading();
    if (start.startsWith("\uFEFF")) {
      return parse(fileName, text.stripLeading().substring(1), body, earth);
    }
    if (start.startsWith("{") || start.startsWith("[")) {
      return OmmJson.parse(fileName, text);
    }
    if (StateMessages.isIn(start)) {
      return StateMessages.parse(fileName, text, body, earth);
    }
    if (start.startsWith("<")) {
      return OmmXml.parse(fileName, text);
    }
    if (start.startsWith(OmmKvn.FIRST_KEY) || start.contains("\n" + OmmKvn.FIRST_KEY)) {
      return OmmKvn.parse(fileName, text);
    }
    return TleFile.parse(fileName, text);
  }

  /** One set from its two lines, for tests and demonstrations. */
  public static ElementSet ofLines(String line1, String line2) {
    return parse("lines", line1 + "\n" + line2 + "\n").get(0);
  }

  /**
   * One set for each object: the newest that is not from after a time, or else its first after it.
   * Objects stay in the order in which they first appear.
   */
  public static List<ElementSet> inForce(List<ElementSet> sets, Instant time) {
    Map<String, ElementSet> chosen = new LinkedHashMap<>();
    for (ElementSet set : sets) {
      chosen.merge(set.objectId(), set, (a, b) -> isBetter(b, a, time) ? b : a);
    }
    return List.copyOf(chosen.values());
  }

  private static boolean isBetter(ElementSet one, ElementSet other, Instant time) {
    boolean early = !one.epoch().isAfter(time);
    boolean otherEarly = !other.epoch().isAfter(time);
    if (early != otherEarly) {
      return early;
    }
    return early ? one.epoch().isAfter(other.epoch()) : one.epoch().isBefore(other.epoch());
  }

  private static void refuseWhatIsNotText(String fileName, String text) {
    if (text.length() > MAX_CHARACTERS) {
      throw BadInput.of(
          "the file has " + text.length() + " characters, the limit is " + MAX_CHARACTERS,
          fileName,
          "keep only the objects you need");
    }
    if (text.isBlank()) {
      throw BadInput.of("the file is empty", fileName, MEND);
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c < ' ' && c != '\n' && c != '\r' && c != '\t') || c == '\uFFFD') {
        int line = 1 + (int) text.substring(0, i).chars().filter(each -> each == '\n').count();
        throw BadInput.of("the file is not text", fileName + ":" + line, MEND);
      }
    }
  }
}

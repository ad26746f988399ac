package hark.orbit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Writes element sets as CCSDS OMM in XML (CCSDS 505.0-B-3: one message, or several in an {@code
 * ndm}) and in the JSON that catalogues give out: an array of flat objects with the same keywords.
 */
public final class OmmText {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS", Locale.ROOT);

  private static final Set<String> META =
      Set.of(
          "OBJECT_NAME",
          "OBJECT_ID",
          "CENTER_NAME",
          "REF_FRAME",
          "TIME_SYSTEM",
          "MEAN_ELEMENT_THEORY");

  private static final Set<String> MEAN =
      Set.of(
          "EPOCH",
          "MEAN_MOTION",
          "ECCENTRICITY",
          "INCLINATION",
          "RA_OF_ASC_NODE",
          "ARG_OF_PERICENTER",
          "MEAN_ANOMALY");

  private OmmText() {}

  /** Keywords and values in the order of the standard, header left out. */
  static Map<String, String> fields(ElementSet set) {
    Map<String, String> f = new LinkedHashMap<>();
    f.put("OBJECT_NAME", set.name().orElse(set.objectId()));
    f.put("OBJECT_ID", "UNKNOWN");
    f.put("CENTER_NAME", "EARTH");
    f.put("REF_FRAME", "TEME");
    f.put("TIME_SYSTEM", "UTC");
    f.put("MEAN_ELEMENT_THEORY", "SGP4");
    f.put("EPOCH", time(set.epoch()));
    f.put("MEAN_MOTION", Double.toString(set.meanMotionRevPerDay()));
    f.put("ECCENTRICITY", Double.toString(set.eccentricity()));
    f.put("INCLINATION", Double.toString(set.inclinationDeg()));
    f.put("RA_OF_ASC_NODE", Double.toString(set.raanDeg()));
    f.put("ARG_OF_PERICENTER", Double.toString(set.perigeeArgumentDeg()));
    f.put("MEAN_ANOMALY", Double.toString(set.meanAnomalyDeg()));
    f.put("EPHEMERIS_TYPE", "0");
    f.put("CLASSIFICATION_TYPE", "U");
    f.put("NORAD_CAT_ID", set.objectId());
    f.put("ELEMENT_SET_NO", "999");
    f.put("REV_AT_EPOCH", "0");
    f.put("BSTAR", Double.toString(set.bstar()));
    f.put("MEAN_MOTION_DOT", Double.toString(set.halfMeanMotionDot()));
    f.put("MEAN_MOTION_DDOT", Double.toString(set.sixthMeanMotionDotDot()));
    return f;
  }

  /** All sets in one document. */
  public static String xml(List<ElementSet> sets, Instant created) {
    StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<ndm>\n");
    for (ElementSet set : sets) {
      text.append("<omm id=\"CCSDS_OMM_VERS\" version=\"3.0\">\n<header>");
      element(text, "CREATION_DATE", time(created));
      element(text, "ORIGINATOR", "HARK");
      text.append("</header>\n<body><segment><metadata>");
      Map<String, String> fields = fields(set);
      fields.forEach((key, value) -> ifIn(text, META.contains(key), key, value));
      text.append("</metadata>\n<data><meanElements>");
      fields.forEach((key, value) -> ifIn(text, MEAN.contains(key), key, value));
      text.append("</meanElements>\n<tleParameters>");
      fields.forEach(
          (key, value) -> ifIn(text, !META.contains(key) && !MEAN.contains(key), key, value));
      text.append("</tleParameters></data></segment></body>\n</omm>\n");
    }
    return text.append("</ndm>\n").toString();
  }

  private static void ifIn(StringBuilder text, boolean wanted, String key, String value) {
    if (wanted) {
      element(text, key, value);
    }
  }

  private static void element(StringBuilder text, String key, String value) {
    String safe = value.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    text.append('<').append(key).append('>').append(safe).append("</").append(key).append('>');
  }

  /** All sets in one array. */
  public static String json(List<ElementSet> sets, Instant created) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    for (ElementSet set : sets) {
      ObjectNode one = all.addObject();
      one.put("CCSDS_OMM_VERS", "3.0");
      one.put("CREATION_DATE", time(created));
      one.put("ORIGINATOR", "HARK");
      fields(set).forEach(one::put);
    }
    return all.toPrettyString() + "\n";
  }

  /** All sets as lines KEY = VALUE, one message after another. */
  public static String lines(List<ElementSet> sets, Instant created) {
    StringBuilder text = new StringBuilder();
    sets.forEach(set -> text.append(ElementText.omm(set, created, "")));
    return text.toString();
  }

  private static String time(Instant instant) {
    return TIME.format(LocalDateTime.ofInstant(instant, ZoneOffset.UTC));
  }
}

package hark.orbit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/**
 * Reads the keywords of one OMM object. Source: CCSDS 502.0-B-3, <i>Orbit Data Messages</i>,
 * section 4; numbers may be written as strings; the epoch is UTC.
 */
final class OmmFields {
  private static final String AGAIN = "export the object again from the source";

  private final String fileName;
  private final int line;
  private final JsonNode object;
  private final ElementProblems problems;

  OmmFields(String fileName, int line, JsonNode object, ElementProblems problems) {
    this.fileName = fileName;
    this.line = line;
    this.object = object;
    this.problems = problems;
  }

  Optional<ElementSet> read() {
    int before = problems.count();
    requireWord("CENTER_NAME", "EARTH");
    requireWord("REF_FRAME", "TEME");
    requireWord("TIME_SYSTEM", "UTC");
    requireTheory();
    String id = objectId();
    Instant epoch = epoch();
    ElementSet.Mean mean = mean();
    Optional<String> name = text("OBJECT_NAME");
    return problems.count() > before
        ? Optional.empty()
        : Optional.of(new ElementSet(id, name, epoch, mean, fileName + ":" + line));
  }

  private ElementSet.Mean mean() {
    return new ElementSet.Mean(
        number("MEAN_MOTION", 1e-9, 20),
        number("ECCENTRICITY", 0, 0.9999999),
        number("INCLINATION", 0, 180),
        number("RA_OF_ASC_NODE", 0, 360),
        number("ARG_OF_PERICENTER", 0, 360),
        number("MEAN_ANOMALY", 0, 360),
        number("BSTAR", -1e3, 1e3),
        numberOr("MEAN_MOTION_DOT", -1, 1),
        numberOr("MEAN_MOTION_DDOT", -1, 1));
  }

  private String objectId() {
    Optional<String> number = text("NORAD_CAT_ID").or(() -> text("OBJECT_ID"));
    if (number.isEmpty()) {
      problem("NORAD_CAT_ID is missing");
      return "";
    }
    String id = number.get();
    return id.matches("\\d{1,4}") ? "0".repeat(5 - id.length()) + id : id;
  }

  private Instant epoch() {
    Optional<String> text = text("EPOCH");
    if (text.isEmpty()) {
      problem("EPOCH is missing");
      return Instant.EPOCH;
    }
    try {
      String bare = text.get().endsWith("Z") ? text.get().replace("Z", "") : text.get();
      return LocalDateTime.parse(bare).toInstant(ZoneOffset.UTC);
    } catch (DateTimeParseException e) {
      problem("EPOCH '" + text.get() + "' is not a date like 2026-10-02T03:14:00.123456");
      return Instant.EPOCH;
    }
  }

  private void requireTheory() {
    Optional<String> theory = text("MEAN_ELEMENT_THEORY");
    if (theory.isPresent() && !theory.get().matches("(?i)SGP4|SGP4?/SDP4|SDP4|TLE")) {
      problem("MEAN_ELEMENT_THEORY is " + theory.get() + ", only SGP4 can be read");
    }
  }

  private void requireWord(String key, String expected) {
    Optional<String> found = text(key);
    if (found.isPresent() && !found.get().equalsIgnoreCase(expected)) {
      problem(key + " is " + found.get() + ", only " + expected + " can be read");
    }
  }

  private double numberOr(String key, double least, double most) {
    return text(key).isPresent() ? number(key, least, most) : 0;
  }

  private double number(String key, double least, double most) {
    Optional<String> text = text(key);
    if (text.isEmpty()) {
      problem(key + " is missing");
      return 0;
    }
    try {
      double value = Double.parseDouble(text.get());
      if (!(value >= least && value <= most)) {
        problem(key + " " + text.get() + " is outside " + least + "…" + most);
      }
      return value;
    } catch (NumberFormatException e) {
      problem(key + " '" + text.get() + "' is not a number");
      return 0;
    }
  }

  private Optional<String> text(String key) {
    JsonNode node = object.get(key);
    return node == null || node.isNull() || node.asText().isBlank()
        ? Optional.empty()
        : Optional.of(node.asText().strip());
  }

  private void problem(String what) {
    problems.add(line, what, AGAIN);
  }
}

package hark.evidence;

import hark.evidence.EvidenceContext.Span;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads what others heard and what was found in recordings. */
final class ReportText {
  private static final double MOST_SENSITIVITY_DB = 60;
  private static final double MOST_CLOCK_SECONDS = 3600;

  /** No carrier that a small ground station meets is stronger over its noise density, dB·Hz. */
  private static final double MOST_DB_HZ = 150;

  private ReportText() {}

  static Supplier<Evidence> outsideReport(KeyReader reader, EvidenceContext context) {
    Optional<OutsideReport.Place> place = place(reader);
    Optional<String> station = station(reader, context);
    if (station.isEmpty() && !reader.has("place") && !reader.has("station")) {
      reader.problem("place", "outside-report needs a place", "add place=LAT,LON or station=NAME");
    }
    Span span = Times.span(reader, context, station.orElse(""), Times.LONGEST_LISTENING);
    boolean heard = reader.requiredYesOrNo("heard");
    OptionalDouble sensitivity =
        reader.number("sensitivity_db", -MOST_SENSITIVITY_DB, MOST_SENSITIVITY_DB, "dB");
    OptionalDouble clock = reader.number("clock_sd_s", 0, MOST_CLOCK_SECONDS, "s");
    OptionalDouble trust = reader.number("trust", 0, 1, "(a share)");
    return () ->
        new OutsideReport(station, place, span.from(), span.to(), heard, sensitivity, clock, trust);
  }

  /** Beside a place any name will do; without one it must be a station of the mission. */
  private static Optional<String> station(KeyReader reader, EvidenceContext context) {
    return reader.has("place")
        ? reader.text("station")
        : reader.name("station", context.stations());
  }

  private static Optional<OutsideReport.Place> place(KeyReader reader) {
    Optional<String> text = reader.text("place");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String[] parts = text.get().split(",", -1);
    try {
      if (parts.length == 2) {
        double latitude = Double.parseDouble(parts[0].strip());
        double longitude = Double.parseDouble(parts[1].strip());
        return Optional.of(new OutsideReport.Place(latitude, longitude));
      }
    } catch (IllegalArgumentException e) {
      // told below, whatever was wrong with it
    }
    reader.problem(
        "place",
        "'" + text.get() + "' is not a place on Earth",
        "write degrees north and east, as place=51.4,-0.2");
    return Optional.empty();
  }

  static Supplier<Evidence> searchResult(KeyReader reader, EvidenceContext context) {
    String file = reader.requiredText("file");
    Optional<String> station = reader.name("station", context.stations());
    Span span = searched(reader, context, station);
    boolean detected = reader.requiredYesOrNo("detected");
    OptionalDouble level = reader.number("level_db_hz", -EvidenceText.MOST_DB, MOST_DB_HZ, "dB·Hz");
    OptionalDouble limit =
        reader.number("upper_limit_db_hz", -EvidenceText.MOST_DB, MOST_DB_HZ, "dB·Hz");
    Optional<String> object = reader.name("object", context.objects());
    double day = EvidenceText.DAY_SECONDS;
    double offset = reader.number("offset_s", -day, day, "s").orElse(0);
    return () ->
        new SearchResult(
            station, span.from(), span.to(), file, detected, level, limit, object, offset);
  }

  /** Station and span are said together or not at all. */
  private static Span searched(
      KeyReader reader, EvidenceContext context, Optional<String> station) {
    boolean timed = reader.has("from") || reader.has("to") || reader.has("pass");
    if (timed && !reader.has("station")) {
      reader.problem("station", "station is missing", "add station=NAME, where it was recorded");
    }
    if (timed || reader.has("station")) {
      return Times.span(reader, context, station.orElse(""), Times.LONGEST_LISTENING);
    }
    Instant at = Times.at(reader, context);
    return new Span(at, at);
  }
}

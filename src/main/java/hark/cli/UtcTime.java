package hark.cli;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import picocli.CommandLine.TypeConversionException;

/**
 * Times at the command line: UTC, ISO-8601 with Z, read with up to nine decimals, written to the
 * millisecond.
 */
final class UtcTime {
  private static final DateTimeFormatter MILLIS =
      new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

  private UtcTime() {}

  static Instant parse(String text) {
    try {
      if (!text.endsWith("Z")) {
        throw new TypeConversionException(
            "'" + text + "' is not a UTC time; write it like 2026-10-02T03:14:00Z");
      }
      return Instant.parse(text);
    } catch (DateTimeParseException e) {
      throw new TypeConversionException(
          "'" + text + "' is not a UTC time; write it like 2026-10-02T03:14:00Z");
    }
  }

  /** Written to the nearest millisecond. */
  static String print(Instant time) {
    return MILLIS.format(time.plusNanos(500_000).truncatedTo(ChronoUnit.MILLIS));
  }
}

package hark.document;

import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import hark.assessment.Assessment;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Window;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The windows of an assessment as a table: one a row, with the option planned or ranked first. */
public final class WindowTable {
  private static final DateTimeFormatter MILLIS =
      new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

  private static final List<String> COLUMNS =
      List.of(
          "station",
          "aos",
          "culmination",
          "los",
          "max_elevation_deg",
          "beacon_on",
          "beacon_on_error",
          "soc_p25",
          "soc_p50",
          "soc_p75",
          "minutes_since_sunrise",
          "unattended",
          "planned",
          "procedure",
          "heard_this_pass",
          "heard_this_pass_error",
          "cost_hours",
          "hazard",
          "why");

  private WindowTable() {}

  /** After RFC 4180, with a heading; probabilities as shares of 1, times in UTC. */
  public static String csv(Assessment assessment) {
    CsvSchema.Builder schema = CsvSchema.builder();
    COLUMNS.forEach(schema::addColumn);
    StringWriter out = new StringWriter();
    try (SequenceWriter rows =
        new CsvMapper()
            .writer(schema.build().withHeader().withLineSeparator("\r\n"))
            .writeValues(out)) {
      if (assessment.windows().isEmpty()) {
        return String.join(",", COLUMNS) + "\r\n";
      }
      for (Window window : assessment.windows()) {
        rows.write(row(window));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  /** The option the plan takes there, else the one ranked first. */
  public static Optional<Option> shown(Window window) {
    return window.options().stream()
        .filter(option -> window.planned().equals(Optional.of(option.procedure())))
        .findFirst()
        .or(() -> window.options().stream().min(Comparator.comparing(Option::rank)));
  }

  private static List<String> row(Window w) {
    Optional<Option> option = shown(w);
    return List.of(
        w.station(),
        time(w.aos()),
        time(w.culmination()),
        time(w.los()),
        number(w.maxElevationDeg(), 2),
        number(w.beaconOn(), 4),
        number(w.beaconOnError(), 4),
        number(w.socP25(), 3),
        number(w.socP50(), 3),
        number(w.socP75(), 3),
        number(w.minutesSinceSunrise(), 1),
        w.unattended() ? "yes" : "no",
        w.planned().isPresent() ? "yes" : "no",
        option.map(Option::procedure).orElse(""),
        option.map(o -> number(o.heardThisPass(), 4)).orElse(""),
        option.map(o -> number(o.heardThisPassError(), 4)).orElse(""),
        option.map(o -> number(o.costHours(), 2)).orElse(""),
        option.map(o -> number(o.hazard(), 4)).orElse(""),
        option.map(Option::why).orElse(""));
  }

  private static String time(Instant time) {
    return MILLIS.format(time);
  }

  private static String number(double value, int decimals) {
    return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}

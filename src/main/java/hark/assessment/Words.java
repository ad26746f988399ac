package hark.assessment;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Numbers and entries as words, the few that an assessment carries itself. */
final class Words {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

  private static final DateTimeFormatter DATE_AND_YEAR =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

  private Words() {}

  static String date(Instant time) {
    return DATE.format(time.atOffset(ZoneOffset.UTC));
  }

  static String dateAndYear(Instant time) {
    return DATE_AND_YEAR.format(time.atOffset(ZoneOffset.UTC));
  }

  static String seconds(Instant time) {
    return DateTimeFormatter.ISO_INSTANT.format(time.truncatedTo(ChronoUnit.SECONDS));
  }

  static String percent(double share) {
    if (share > 0 && share < 0.005) {
      return "under 1 %";
    }
    return Math.round(100 * share) + " %";
  }

  /** {@code from 61 % to 68 %}, or {@code a little} where rounding hides it. */
  static String change(double before, double after) {
    String from = percent(before);
    String to = percent(after);
    return from.equals(to) ? " a little" : " from " + from + " to " + to;
  }

  /** A share as people say it. */
  static String inTen(double share) {
    long tenths = Math.round(10 * share);
    if (tenths == 0) {
      long hundredths = Math.max(1, Math.round(100 * share));
      return hundredths + " of 100 cases that still fit";
    }
    return tenths == 10
        ? "nearly all cases that still fit"
        : tenths + " of 10 cases that still fit";
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String list(List<String> items) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    int last = items.size() - 1;
    return String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }

  /** Text with every decimal number in it cut to three significant digits. */
  static String rounded(String text) {
    return Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?")
        .matcher(text)
        .replaceAll(
            found ->
                new BigDecimal(found.group())
                    .round(new MathContext(3))
                    .stripTrailingZeros()
                    .toPlainString());
  }

  /** An entry in one line. */
  static String title(Entry entry) {
    Evidence evidence = entry.evidence();
    if (evidence instanceof Evidence.NothingHeard silence) {
      String way = silence.way().map(w -> ", " + w.name().toLowerCase(Locale.ROOT)).orElse("");
      return silence.station() + ": nothing heard" + way;
    }
    if (evidence instanceof Evidence.Heard heard) {
      String level =
          heard.levelDb().isPresent()
              ? String.format(Locale.ROOT, ", %.0f dB over noise", heard.levelDb().getAsDouble())
              : "";
      return heard.station() + ": heard" + level;
    }
    if (evidence instanceof Evidence.Telemetry telemetry) {
      return String.format(Locale.ROOT, "battery at %.2f V", telemetry.volts());
    }
    if (evidence instanceof Evidence.StationCheck check) {
      return check.station() + ": known satellite " + (check.heard() ? "heard" : "missed");
    }
    if (evidence instanceof Evidence.NotListened not) {
      return not.station() + ": nobody listened, " + not.why();
    }
    return evidence instanceof Evidence.Note note ? note.text() : evidence.kind();
  }
}

package hark.station;

import biweekly.ICalVersion;
import biweekly.io.CannotParseException;
import biweekly.io.ParseContext;
import biweekly.io.scribe.property.RecurrenceRuleScribe;
import biweekly.parameter.ICalParameters;
import biweekly.util.Frequency;
import biweekly.util.Recurrence;
import biweekly.util.com.google.ical.compat.javautil.DateIterator;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.regex.Pattern;

/**
 * A time that recurs by a rule of RFC 5545, all in UTC: {@code DTSTART} as date-time with {@code
 * Z}, {@code RRULE} and {@code DURATION}.
 *
 * @param start of the first one
 * @param rule how it recurs
 * @param length of each
 */
public record RecurringTime(Instant start, Recurrence rule, Duration length) {
  /** Times in one span that are looked at; an hourly rule over 60 days has 1440. */
  private static final int MOST = 10_000;

  private static final DateTimeFormatter UTC =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT);

  private static final Pattern SPACES = Pattern.compile("\\s+");
  private static final TimeZone ZONE = TimeZone.getTimeZone("UTC");
  private static final Set<Frequency> TOO_OFTEN = Set.of(Frequency.SECONDLY, Frequency.MINUTELY);

  private static final String MEND =
      "write it like 'DTSTART:20261005T180000Z RRULE:FREQ=WEEKLY;BYDAY=MO,WE DURATION:PT5H'";

  /** Refuses a length that is not positive. */
  public RecurringTime {
    if (length.isZero() || length.isNegative()) {
      throw new IllegalArgumentException("DURATION " + length + " is not positive; " + MEND);
    }
  }

  /**
   * Reads the three properties, separated by spaces or line ends, in any order.
   *
   * @throws IllegalArgumentException saying what was found and how to write it
   */
  public static RecurringTime parse(String text) {
    Map<String, String> parts = new HashMap<>();
    for (String part : SPACES.splitAsStream(text.strip()).toList()) {
      int colon = part.indexOf(':');
      String name = colon < 0 ? part : part.substring(0, colon).toUpperCase(Locale.ROOT);
      if (colon < 0 || !Set.of("DTSTART", "RRULE", "DURATION").contains(name)) {
        throw new IllegalArgumentException("'" + part + "' is no part of a rule; " + MEND);
      }
      if (parts.put(name, part.substring(colon + 1)) != null) {
        throw new IllegalArgumentException(name + " stands twice; " + MEND);
      }
    }
    for (String must : List.of("DTSTART", "RRULE", "DURATION")) {
      if (!parts.containsKey(must)) {
        throw new IllegalArgumentException("a rule without " + must + "; " + MEND);
      }
    }
    return new RecurringTime(
        start(parts.get("DTSTART")), rule(parts.get("RRULE")), length(parts.get("DURATION")));
  }

  private static Instant start(String word) {
    try {
      return LocalDateTime.parse(word, UTC).toInstant(ZoneOffset.UTC);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException("DTSTART '" + word + "' is no UTC time; " + MEND, e);
    }
  }

  private static Duration length(String word) {
    try {
      return Duration.ofMillis(biweekly.util.Duration.parse(word).toMillis());
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("DURATION '" + word + "' is none; " + MEND, e);
    }
  }

  private static Recurrence rule(String word) {
    ParseContext context = new ParseContext();
    context.setVersion(ICalVersion.V2_0);
    Recurrence rule;
    try {
      rule =
          new RecurrenceRuleScribe()
              .parseText(word, null, new ICalParameters(), context)
              .getValue();
    } catch (CannotParseException e) {
      throw new IllegalArgumentException("RRULE '" + word + "' cannot be read; " + MEND, e);
    }
    boolean strange =
        rule == null || !context.getWarnings().isEmpty() || !rule.getXRules().isEmpty();
    if (strange || rule.getFrequency() == null) {
      throw new IllegalArgumentException("RRULE '" + word + "' cannot be read; " + MEND);
    }
    if (TOO_OFTEN.contains(rule.getFrequency())) {
      throw new IllegalArgumentException(
          "RRULE '" + word + "' recurs more often than hourly; " + MEND);
    }
    return rule;
  }

  /** Its stretches that may reach into the time between, whole. */
  List<Stretch> between(Instant begin, Instant end) {
    List<Stretch> stretches = new ArrayList<>();
    DateIterator times = rule.getDateIterator(Date.from(start), ZONE);
    Instant earliest = begin.minus(length).minusSeconds(1);
    if (earliest.isAfter(start)) {
      times.advanceTo(Date.from(earliest));
    }
    while (times.hasNext() && stretches.size() < MOST) {
      Instant from = times.next().toInstant();
      if (!from.isBefore(end)) {
        break;
      }
      stretches.add(new Stretch(from, from.plus(length)));
    }
    return stretches;
  }
}

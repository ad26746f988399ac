package hark.station;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of the week, UTC: on each of some days in a row, from one time of day to another; past
 * midnight when the second is not after the first.
 *
 * @param first first day
 * @param last last day, Sunday to Monday included
 * @param to time of day; 00:00 means the end of the day
 */
public record WeeklyTime(DayOfWeek first, DayOfWeek last, LocalTime from, LocalTime to) {
  private static final Pattern FORM =
      Pattern.compile(
          "(?<first>[A-Za-z]{3})(-(?<last>[A-Za-z]{3}))?\\s+"
              + "(?<from>\\d{1,2}:\\d{2})\\s*-\\s*(?<to>\\d{1,2}:\\d{2})");

  private static final String MEND = "write it like 'Mon 18:00-23:00' or 'Sat-Sun 08:00-24:00'";

  private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

  /**
   * Reads {@code Mon 18:00-23:00} or {@code Mon-Fri 20:00-02:00}.
   *
   * @throws IllegalArgumentException saying what was found and how to write it
   */
  public static WeeklyTime parse(String text) {
    Matcher parts = FORM.matcher(text.strip());
    if (!parts.matches()) {
      throw new IllegalArgumentException("'" + text + "' is no time of the week; " + MEND);
    }
    DayOfWeek first = day(parts.group("first"));
    DayOfWeek last = parts.group("last") == null ? first : day(parts.group("last"));
    return new WeeklyTime(first, last, time(parts.group("from")), time(parts.group("to")));
  }

  private static DayOfWeek day(String word) {
    int place = DAYS.indexOf(word.toLowerCase(Locale.ROOT));
    if (place < 0) {
      throw new IllegalArgumentException("'" + word + "' is no day of the week; " + MEND);
    }
    return DayOfWeek.of(place + 1);
  }

  private static LocalTime time(String word) {
    int colon = word.indexOf(':');
    int hour = Integer.parseInt(word.substring(0, colon));
    int minute = Integer.parseInt(word.substring(colon + 1));
    boolean endOfDay = hour == 24 && minute == 0;
    if (!endOfDay && (hour > 23 || minute > 59)) {
      throw new IllegalArgumentException("'" + word + "' is no time of day; " + MEND);
    }
    return endOfDay ? LocalTime.MIDNIGHT : LocalTime.of(hour, minute);
  }

  /** Its stretches that may reach into the time between, whole. */
  List<Stretch> between(Instant begin, Instant end) {
    List<Stretch> stretches = new ArrayList<>();
    LocalDate day = LocalDate.ofInstant(begin, ZoneOffset.UTC).minusDays(1);
    LocalDate last = LocalDate.ofInstant(end, ZoneOffset.UTC).plusDays(1);
    for (; !day.isAfter(last); day = day.plusDays(1)) {
      if (isOn(day.getDayOfWeek())) {
        Instant from = day.atTime(this.from).toInstant(ZoneOffset.UTC);
        Instant to = day.atTime(this.to).toInstant(ZoneOffset.UTC);
        stretches.add(new Stretch(from, to.isAfter(from) ? to : to.plus(Duration.ofDays(1))));
      }
    }
    return stretches;
  }

  private boolean isOn(DayOfWeek day) {
    int length = Math.floorMod(last.getValue() - first.getValue(), DAYS.size());
    return Math.floorMod(day.getValue() - first.getValue(), DAYS.size()) <= length;
  }
}

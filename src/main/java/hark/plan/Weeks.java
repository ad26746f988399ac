package hark.plan;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;

/**
 * Weeks, from Monday 00:00 UTC (ISO 8601) when nothing else is said, and the hours each leaves to
 * plan with: what is not spent yet in the running one, and of one that the horizon cuts off the
 * same share as of its days.
 *
 * @param weeks rising; the first is the running one
 */
record Weeks(List<Week> weeks) {
  private static final double WEEK_SECONDS = 7 * 86_400.0;

  /**
   * A week.
   *
   * @param spentHours on record, h
   * @param grantedHours left to plan with, h
   */
  record Week(Instant from, Instant to, double spentHours, double grantedHours) {}

  static Weeks of(Instant now, Instant end, PlanSettings settings) {
    List<Week> weeks = new ArrayList<>();
    Instant from = settings.weekBegins().map(begin -> lastBegin(begin, now)).orElse(monday(now));
    while (from.isBefore(end) && weeks.size() < Timetable.MOST_WEEKS) {
      Instant to = from.plus(Duration.ofDays(7));
      double spent = weeks.isEmpty() ? settings.spentHours() : 0;
      double share =
          to.isAfter(end) && !weeks.isEmpty()
              ? Duration.between(from, end).toMillis() / 1000.0 / WEEK_SECONDS
              : 1;
      double granted = Math.max(0, share * settings.hoursPerWeek() - spent);
      weeks.add(new Week(from, to, spent, granted));
      from = to;
    }
    return new Weeks(weeks);
  }

  private static Instant lastBegin(Instant begin, Instant now) {
    long seconds = Duration.between(begin, now).toSeconds();
    return begin.plusSeconds(seconds - Math.floorMod(seconds, (long) WEEK_SECONDS));
  }

  /** The Monday 00:00 UTC at or before a time. */
  static Instant monday(Instant time) {
    return LocalDate.ofInstant(time, ZoneOffset.UTC)
        .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))
        .atStartOfDay()
        .toInstant(ZoneOffset.UTC);
  }

  /** Index of the week in which a time lies. */
  int index(Instant time) {
    int index = 0;
    while (index + 1 < weeks.size() && !time.isBefore(weeks.get(index).to())) {
      index++;
    }
    return index;
  }

  double[] grantedHours() {
    return weeks.stream().mapToDouble(Week::grantedHours).toArray();
  }
}

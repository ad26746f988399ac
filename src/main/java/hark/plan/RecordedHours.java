package hark.plan;

import hark.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** What sitting at a station has cost, by the same rules by which a plan counts hours. */
public final class RecordedHours {
  /** Entries of one pass lie this close together. Common practice: a pass lasts a quarter hour. */
  private static final Duration ONE_PASS = Duration.ofMinutes(20);

  private static final Duration ONE_SITTING = Duration.ofMinutes(150);

  private RecordedHours() {}

  /**
   * Hours of the running calendar week, which begins on Monday 00:00 UTC.
   *
   * @param sat times at which somebody, or the station by itself, listened or sent, in any order
   */
  public static double thisWeek(Station station, List<Instant> sat, Instant now) {
    Instant monday = Weeks.monday(now);
    List<Instant> times =
        sat.stream().filter(t -> !t.isBefore(monday) && !t.isAfter(now)).sorted().toList();
    double hours = 0;
    Instant last = null;
    for (Instant time : times) {
      Duration since = last == null ? Duration.ofDays(7) : Duration.between(last, time);
      if (since.compareTo(ONE_PASS) < 0) {
        continue;
      }
      double night =
          Nights.isNight(time, station.site().longitudeDeg()) ? station.cost().nightFactor() : 1;
      double session = since.compareTo(ONE_SITTING) > 0 ? station.cost().sessionHours() : 0;
      hours += night * (session + station.cost().passHours());
      last = time;
    }
    return hours;
  }
}

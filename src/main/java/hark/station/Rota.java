package hark.station;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Times that come again and again, and times that come once.
 *
 * @param weekly by day of the week and time of day, UTC
 * @param rules recurring by RFC 5545
 * @param once single stretches
 */
public record Rota(List<WeeklyTime> weekly, List<RecurringTime> rules, List<Stretch> once) {
  /** At no time. */
  public static final Rota NEVER = new Rota(List.of(), List.of(), List.of());

  /** Keeps its own copies. */
  public Rota {
    weekly = List.copyOf(weekly);
    rules = List.copyOf(rules);
    once = List.copyOf(once);
  }

  /** True when it names no time at all. */
  public boolean isEmpty() {
    return weekly.isEmpty() && rules.isEmpty() && once.isEmpty();
  }

  /**
   * All stretches that reach into the time between, whole, rising, those that touch joined. A rule
   * that runs at all hours is cut a day or so beyond both ends.
   */
  public List<Stretch> between(Instant begin, Instant end) {
    List<Stretch> all = new ArrayList<>();
    weekly.forEach(each -> all.addAll(each.between(begin, end)));
    rules.forEach(each -> all.addAll(each.between(begin, end)));
    all.addAll(once);
    List<Stretch> reach = new ArrayList<>(Stretch.merged(all));
    reach.removeIf(each -> !each.meets(begin, end));
    return reach;
  }

  /** True when all of the time between lies in it. */
  public boolean covers(Instant begin, Instant end) {
    return between(begin, end).stream().anyMatch(each -> each.covers(begin, end));
  }

  /** True when any of the time between lies in it. */
  public boolean meets(Instant begin, Instant end) {
    return !between(begin, end).isEmpty();
  }
}

package hark.station;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A stretch of time, its end not included. */
public record Stretch(Instant from, Instant to) {
  /** Refuses an end that is not after the start. */
  public Stretch {
    if (!from.isBefore(to)) {
      throw new IllegalArgumentException("from " + from + " is not before " + to);
    }
  }

  /** True when all of the time between lies in it. */
  public boolean covers(Instant begin, Instant end) {
    return !begin.isBefore(from) && !end.isAfter(to);
  }

  /** True when any time between lies in it. */
  public boolean meets(Instant begin, Instant end) {
    return begin.isBefore(to) && end.isAfter(from);
  }

  /** The same times in rising order, those that touch or overlap joined. */
  static List<Stretch> merged(List<Stretch> stretches) {
    List<Stretch> merged = new ArrayList<>();
    List<Stretch> rising = new ArrayList<>(stretches);
    rising.sort(Comparator.comparing(Stretch::from));
    for (Stretch next : rising) {
      Stretch last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last == null || next.from().isAfter(last.to())) {
        merged.add(next);
      } else if (next.to().isAfter(last.to())) {
        merged.set(merged.size() - 1, new Stretch(last.from(), next.to()));
      }
    }
    return merged;
  }
}

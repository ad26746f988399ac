package hark.signal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * What one station measured during one pass.
 *
 * @param station its name in the mission
 * @param points in the order of time, at least one
 * @param origin where they were read, for messages
 */
public record DopplerCurve(String station, List<DopplerPoint> points, String origin) {
  /** A longer silence than this begins another pass: no pass of a low orbit is so long. */
  static final Duration GAP = Duration.ofMinutes(25);

  /** Refuses an empty curve and points out of order. */
  public DopplerCurve {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a curve without points");
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).time().isBefore(points.get(i - 1).time())) {
        throw new IllegalArgumentException("points out of order at " + points.get(i).time());
      }
    }
  }

  /** The same points, one curve for each pass. */
  public List<DopplerCurve> passes() {
    List<DopplerCurve> passes = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= points.size(); i++) {
      boolean ends =
          i == points.size()
              || Duration.between(points.get(i - 1).time(), points.get(i).time()).compareTo(GAP)
                  > 0;
      if (ends) {
        passes.add(new DopplerCurve(station, points.subList(first, i), origin));
        first = i;
      }
    }
    return passes;
  }
}

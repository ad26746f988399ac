package hark.orbit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How well sets foretell the next ones, measured against what is published: all of the usual spread
 * times one factor. The published spread counts as some steps already seen, so that two sets that
 * happen to agree promise little.
 *
 * @param factor 1 as published; 2 means twice as far off
 * @param steps so many were measured; another plane is left out, and a jump along the track counts
 *     as five spreads: it may be a manoeuvre, or a source that is much worse than believed
 * @param perDaySeconds root mean square of lateness by days; NaN without a step
 */
public record SetScale(double factor, int steps, double perDaySeconds) {
  /** Weight of the published spread, in steps. Judged. */
  public static final int PUBLISHED_STEPS = 4;

  /** Over the sets of one object or of several. */
  public static SetScale of(List<ElementSet> sets, StateSpread usual, EarthModel earth) {
    Map<String, List<ElementSet>> byObject = new LinkedHashMap<>();
    for (ElementSet set : sets) {
      if (!set.isState()) {
        byObject.computeIfAbsent(set.objectId(), id -> new ArrayList<>()).add(set);
      }
    }
    double sum = 0;
    double rate = 0;
    int count = 0;
    for (List<ElementSet> ofOne : byObject.values()) {
      for (SetStep step : SetHistory.steps(ofOne, usual, earth)) {
        if (Math.abs(step.crossMeters()) <= SetStep.JUMP_CROSS_METERS) {
          double most = Math.min(SetStep.JUMP_SIGMAS, Math.abs(step.sigmas()));
          sum += most * most;
          rate += Math.pow(step.lateSeconds() / step.days(), 2);
          count++;
        }
      }
    }
    double factor = Math.sqrt((PUBLISHED_STEPS + sum) / (PUBLISHED_STEPS + count));
    return new SetScale(factor, count, Math.sqrt(rate / count));
  }
}

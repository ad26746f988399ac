package hark.ensemble;

import hark.orbit.ElementSet;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * An object that may be ours.
 *
 * @param objectId catalogue number, or {@link #NONE} for none of the catalogued ones
 * @param sets its element sets, or those of the likeliest object for {@link #NONE}
 * @param prior weight before any evidence, 0…1
 */
public record Candidate(
    String objectId, List<ElementSet> sets, OrbitSource.AlongTrack alongTrack, double prior) {
  /** Stands for an object that no candidate is. */
  public static final String NONE = "none";

  /** An object nobody follows flies near the others; how far away nobody knows: this much wider. */
  private static final double NONE_WIDER = 20;

  /** Refuses a candidate without elements. */
  public Candidate {
    if (sets.isEmpty()) {
      throw new IllegalArgumentException("candidate " + objectId + " has no element set");
    }
    sets = List.copyOf(sets);
  }

  /** The set to use at a time, among those known by now: the one whose epoch is nearest. */
  public ElementSet setAt(Instant time, Instant now) {
    return sets.stream()
        .filter(set -> !set.epoch().isAfter(now))
        .min(Comparator.comparing(set -> Duration.between(set.epoch(), time).abs()))
        .orElse(sets.get(sets.size() - 1));
  }

  /** Standard deviation of the along-track error at a time, s. */
  public double sdSeconds(Instant time, Instant now) {
    ElementSet set = setAt(time, now);
    double ageDays = Math.abs(Duration.between(set.epoch(), time).toMillis()) / 86_400_000.0;
    double sd = alongTrack.of(set).sdSeconds(ageDays);
    return objectId.equals(NONE) ? NONE_WIDER * sd : sd;
  }
}

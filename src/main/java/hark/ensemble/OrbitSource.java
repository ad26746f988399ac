package hark.ensemble;

import hark.orbit.ElementSet;
import java.util.List;
import java.util.Map;

/**
 * Element sets from one source and which of their objects may be ours.
 *
 * @param sets newest first for each object
 * @param alongTrack spread of the along-track error
 * @param candidates object id to prior weight; what is missing to 1 belongs to none of them
 */
public record OrbitSource(
    List<ElementSet> sets, AlongTrack alongTrack, Map<String, Double> candidates) {
  /** σ² = initial² + (perDay·d)² + (perDay2·d²)², s, with d the age of the set in days. */
  public record AlongTrack(double initialSeconds, double perDaySeconds, double perDay2Seconds) {
    /** Standard deviation at an age, s. */
    public double sdSeconds(double ageDays) {
      double linear = perDaySeconds * ageDays;
      double quadratic = perDay2Seconds * ageDays * ageDays;
      return Math.sqrt(initialSeconds * initialSeconds + linear * linear + quadratic * quadratic);
    }
  }
}

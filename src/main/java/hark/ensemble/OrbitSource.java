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
 * @param listensMhz by object, the bands (lowest, highest) in which another crew's receiver listens
 *     there, MHz; one that is not named may listen anywhere
 */
public record OrbitSource(
    List<ElementSet> sets,
    AlongTrack alongTrack,
    Map<String, Double> candidates,
    Map<String, List<double[]>> listensMhz) {
  /** A source whose neighbours may listen anywhere. */
  public OrbitSource(List<ElementSet> sets, AlongTrack alongTrack, Map<String, Double> candidates) {
    this(sets, alongTrack, candidates, Map.of());
  }

  /** σ² = initial² + (perDay·d)² + (perDay2·d²)², s, with d the age of the set in days. */
  public record AlongTrack(double initialSeconds, double perDaySeconds, double perDay2Seconds) {
    /**
     * For published sets of small satellites at about 400 km: 10 to 30 km after a day, 20 to 70 km
     * after two. Source: Riesing, SSC15-VIII-5 (2015); 30 km are 3.9 s.
     */
    public static final AlongTrack PUBLISHED = new AlongTrack(1.5, 2, 0.5);

    /** All of it wider or narrower. */
    public AlongTrack times(double factor) {
      return new AlongTrack(
          factor * initialSeconds, factor * perDaySeconds, factor * perDay2Seconds);
    }

    /** Standard deviation at an age, s. */
    public double sdSeconds(double ageDays) {
      double linear = perDaySeconds * ageDays;
      double quadratic = perDay2Seconds * ageDays * ageDays;
      return Math.sqrt(initialSeconds * initialSeconds + linear * linear + quadratic * quadratic);
    }

    /** The spread of one set: a state brings its own, published elements have the source's. */
    public AlongTrack of(ElementSet set) {
      return set.spread()
          .map(s -> new AlongTrack(s.initialSeconds(), s.perDaySeconds(), s.perDay2Seconds()))
          .orElse(this);
    }
  }
}

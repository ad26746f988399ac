package hark.orbit;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How fast an orbit sinks and when it may end, for near-circular orbits. Height is lost at a rate
 * that grows as the air thickens: dx/dt = k·exp(x/H), which ends after H/k·(1 − exp(−x/H)).
 *
 * @param heightMeters mean height over the equator's radius at the last set
 * @param metersPerDay lost now
 * @param measured true when the mean motions of several sets say so, false when only drag terms do
 * @param soonestDays to the end with twice the air; infinite when it does not sink
 * @param latestDays with half of it
 */
public record Decay(
    double heightMeters,
    double metersPerDay,
    boolean measured,
    double soonestDays,
    double latestDays) {
  private static final double DAY = 86400.0;

  /** The Sun's eleven years change the air at 500 km by ten; a mean over years less. Judged. */
  private static final double AIR_FACTOR = 2;

  /** The air thins by e over 45 to 70 km between 300 and 600 km; from memory. */
  private static final double SCALE_HEIGHT_METERS = 60e3;

  /** Below this an orbit lasts hours. */
  private static final double END_HEIGHT_METERS = 120e3;

  /** Mean motions must span so many days before their slope says more than drag terms. Judged. */
  private static final double LEAST_SPAN_DAYS = 2;

  /** From the published sets of one object. */
  public static Decay of(List<ElementSet> sets, EarthModel earth) {
    ElementSet last =
        sets.stream().max(java.util.Comparator.comparing(ElementSet::epoch)).orElseThrow();
    MeanOrbit orbit = MeanOrbit.of(last, earth);
    OptionalDouble slope = slope(sets, earth);
    double loss = slope.orElse(orbit.lossMetersPerSecond() * DAY);
    double room = orbit.heightMeters() - END_HEIGHT_METERS;
    double days = loss > 0 && room > 0 ? life(loss, room) : Double.POSITIVE_INFINITY;
    return new Decay(
        orbit.heightMeters(), loss, slope.isPresent(), days / AIR_FACTOR, days * AIR_FACTOR);
  }

  private static double life(double metersPerDay, double room) {
    return SCALE_HEIGHT_METERS / metersPerDay * -Math.expm1(-room / SCALE_HEIGHT_METERS);
  }

  /** Loss of height by the straight line through mean heights, m/day. */
  private static OptionalDouble slope(List<ElementSet> sets, EarthModel earth) {
    List<ElementSet> published = sets.stream().filter(set -> !set.isState()).toList();
    int n = published.size();
    if (n < 3) {
      return OptionalDouble.empty();
    }
    double[] days = new double[n];
    double[] height = new double[n];
    double meanDay = 0;
    double meanHeight = 0;
    double first = Double.POSITIVE_INFINITY;
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      ElementSet set = published.get(i);
      days[i] = Trajectory.between(published.get(0).epoch(), set.epoch()) / DAY;
      height[i] = MeanOrbit.of(set, earth).heightMeters();
      meanDay += days[i] / n;
      meanHeight += height[i] / n;
      first = Math.min(first, days[i]);
      last = Math.max(last, days[i]);
    }
    if (last - first < LEAST_SPAN_DAYS) {
      return OptionalDouble.empty();
    }
    double top = 0;
    double bottom = 0;
    for (int i = 0; i < n; i++) {
      top += (days[i] - meanDay) * (height[i] - meanHeight);
      bottom += (days[i] - meanDay) * (days[i] - meanDay);
    }
    return OptionalDouble.of(-top / bottom);
  }
}

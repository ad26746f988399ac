package hark.plan;

import hark.ensemble.Particles;
import java.util.Arrays;
import java.util.List;

/**
 * Chance of having heard something by the end of each window, for one possibility and a choice of
 * what to do. A station that is deaf is deaf in all its windows: misses multiply within a station,
 * and only then its health enters.
 */
final class HeardBy {
  private final List<Integer> stationOf;
  private final int stations;

  HeardBy(List<Integer> stationOf) {
    this.stationOf = stationOf;
    this.stations = stationOf.stream().mapToInt(Integer::intValue).max().orElse(-1) + 1;
  }

  /**
   * Chance that nothing has been heard, after each window.
   *
   * @param chance of hearing in each window given a working station and no slip; 0 where nobody
   *     listens
   * @param works chance that each station works
   */
  double[] missed(double[] chance, double[] works) {
    double[] byStation = new double[stations];
    Arrays.fill(byStation, 1);
    double[] missed = new double[chance.length];
    double all = 1;
    for (int w = 0; w < chance.length; w++) {
      if (chance[w] > 0) {
        byStation[stationOf.get(w)] *= 1 - Particles.noSlip() * chance[w];
        all = product(byStation, works);
      }
      missed[w] = all;
    }
    return missed;
  }

  private double product(double[] byStation, double[] works) {
    double product = 1;
    for (int s = 0; s < stations; s++) {
      product *= 1 - works[s] * (1 - byStation[s]);
    }
    return product;
  }
}

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
  private final int[] stationOf;
  private final int stations;

  HeardBy(List<Integer> stationOf) {
    this.stationOf = stationOf.stream().mapToInt(Integer::intValue).toArray();
    this.stations = Arrays.stream(this.stationOf).max().orElse(-1) + 1;
  }

  /**
   * Chance that nothing has been heard, after each window.
   *
   * @param chance of hearing in each window given a working station and no slip; 0 where nobody
   *     listens
   * @param works chance that each station works
   */
  double[] missed(double[] chance, double[] works) {
    Sum sum = new Sum();
    sum.begin(works);
    double[] missed = new double[chance.length];
    for (int w = 0; w < chance.length; w++) {
      if (chance[w] > 0) {
        sum.listen(w, chance[w]);
      }
      missed[w] = sum.missed();
    }
    return missed;
  }

  /** Windows listened to one after the other, for one possibility at a time. */
  final class Sum {
    private final double[] byStation = new double[stations];
    private double[] works;
    private double missed;

    /** Begins anew. */
    void begin(double[] chanceThatWorks) {
      works = chanceThatWorks;
      missed = 1;
      Arrays.fill(byStation, 1);
    }

    /** Listens in a window; returns the chance that this is the first time something is heard. */
    double listen(int window, double chance) {
      byStation[stationOf[window]] *= 1 - Particles.noSlip() * chance;
      double before = missed;
      missed = 1;
      for (int s = 0; s < stations; s++) {
        missed *= 1 - works[s] * (1 - byStation[s]);
      }
      return before - missed;
    }

    /** Chance that nothing has been heard so far. */
    double missed() {
      return missed;
    }
  }
}

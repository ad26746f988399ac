package hark.trial.score;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;

/** Where a figure lies in 99 of 100 trials if beliefs are right. */
public final class Bands {
  /** Half of what lies outside on each side. */
  static final double TAIL = 0.005;

  private static final int MOST_CELLS = 20;
  private static final int LEAST_CELLS = 4;
  private static final int RANKS_A_CELL = 5;

  private Bands() {}

  /** Counts of successes in {@code n} trials, {@code [lowest, highest]}. */
  static int[] binomial(int n, double probability) {
    if (n == 0) {
      return new int[] {0, 0};
    }
    BinomialDistribution counts = new BinomialDistribution(n, probability);
    return new int[] {
      counts.inverseCumulativeProbability(TAIL), counts.inverseCumulativeProbability(1 - TAIL)
    };
  }

  /**
   * Counts of successes when each trial has its own probability, {@code [lowest, highest]}: the
   * Poisson binomial distribution, by adding one trial after the other.
   */
  static int[] counts(double[] probabilities) {
    double[] chance = new double[probabilities.length + 1];
    chance[0] = 1;
    for (int k = 0; k < probabilities.length; k++) {
      double p = Math.max(0, Math.min(1, probabilities[k]));
      for (int count = k + 1; count > 0; count--) {
        chance[count] = chance[count] * (1 - p) + chance[count - 1] * p;
      }
      chance[0] *= 1 - p;
    }
    return new int[] {reaching(chance, TAIL), reaching(chance, 1 - TAIL)};
  }

  private static int reaching(double[] chance, double level) {
    double sum = 0;
    for (int count = 0; count < chance.length; count++) {
      sum += chance[count];
      if (sum >= level) {
        return count;
      }
    }
    return chance.length - 1;
  }

  /** Cells into which so many ranks are counted. */
  static int cells(int ranks) {
    return Math.max(LEAST_CELLS, Math.min(MOST_CELLS, ranks / RANKS_A_CELL));
  }

  /** Pearson's sum over even cells; evenly spread ranks give chi-squared less one degree. */
  static double unevenness(double[] ranks) {
    int cells = cells(ranks.length);
    int[] counts = new int[cells];
    for (double rank : ranks) {
      counts[(int) Math.min(cells - 1, rank * cells)]++;
    }
    double expected = (double) ranks.length / cells;
    double sum = 0;
    for (int count : counts) {
      sum += (count - expected) * (count - expected) / expected;
    }
    return sum;
  }

  /** Highest unevenness of evenly spread ranks in 99 of 100 trials. */
  static double mostUneven(int ranks) {
    return new ChiSquaredDistribution(cells(ranks) - 1.0)
        .inverseCumulativeProbability(1 - 2 * TAIL);
  }
}

package hark.plan;

import hark.ensemble.Particles;

/** Mutual information between heard or not and the explanation, in bits. */
final class Information {
  private Information() {}

  /**
   * The information of an outcome about which event set is true.
   *
   * @param chance of the outcome, by particle
   * @param sets number of event sets
   */
  static double bits(Particles particles, double[] chance, int sets) {
    double[] sum = new double[sets];
    int[] count = new int[sets];
    double mean = 0;
    for (int p = 0; p < chance.length; p++) {
      sum[particles.set(p)] += chance[p];
      count[particles.set(p)]++;
      mean += chance[p] / chance.length;
    }
    double expected = 0;
    for (int s = 0; s < sets; s++) {
      if (count[s] > 0) {
        expected += (double) count[s] / chance.length * entropy(sum[s] / count[s]);
      }
    }
    return Math.max(0, entropy(mean) - expected);
  }

  /** Entropy of a yes-or-no with chance {@code p}, bits. */
  static double entropy(double p) {
    if (p <= 0 || p >= 1) {
      return 0;
    }
    return -(p * Math.log(p) + (1 - p) * Math.log1p(-p)) / Math.log(2);
  }
}

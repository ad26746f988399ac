package hark.trial.score;

/** Places of a truth in what was believed. Evenly spread between 0 and 1 if beliefs are right. */
public final class Ranks {
  /** Less than this is not believed of any answer; scores would be infinite. */
  public static final double LEAST = 1e-6;

  private Ranks() {}

  /** The standard normal distribution function. */
  public static double normalBelow(double z) {
    return 0.5 * org.hipparchus.special.Erf.erfc(-z / Math.sqrt(2));
  }

  /** Logarithm of what a yes-or-no belief gave to the truth. */
  public static double logGiven(double probability, boolean truth) {
    double given = truth ? probability : 1 - probability;
    return Math.log(Math.max(LEAST, Math.min(1, given)));
  }

  /**
   * Randomised place of a category among ordered categories.
   *
   * @param u even between 0 and 1
   */
  public static double ofCategory(double[] probabilities, int truth, double u) {
    double below = 0;
    for (int k = 0; k < truth; k++) {
      below += probabilities[k];
    }
    return Math.max(0, Math.min(1, below + u * probabilities[truth]));
  }

  /** Weight of the values below the truth, and a share {@code u} of the weight that equals it. */
  public static double ofValue(double[] values, double[] weights, double truth, double u) {
    double below = 0;
    double total = 0;
    for (int k = 0; k < values.length; k++) {
      total += weights[k];
      below += values[k] < truth ? weights[k] : values[k] == truth ? u * weights[k] : 0;
    }
    return total > 0 ? Math.min(1, below / total) : u;
  }
}

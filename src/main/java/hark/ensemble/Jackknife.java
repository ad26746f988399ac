package hark.ensemble;

import java.util.function.Function;

/**
 * Monte-Carlo standard errors: every number is computed again with one group of bodies left out.
 */
final class Jackknife {
  private final Weights whole;
  private final Weights[] without;

  Jackknife(Population population, double[] likelihood) {
    whole = Weights.of(population, likelihood, Weights.NO_GROUP);
    without = new Weights[Draws.GROUPS];
    for (int group = 0; group < Draws.GROUPS; group++) {
      without[group] = Weights.of(population, likelihood, group);
    }
  }

  Weights whole() {
    return whole;
  }

  /** Standard errors of the numbers a function makes of the weights. */
  double[] errors(Function<Weights, double[]> numbers) {
    double[][] replicate = new double[without.length][];
    for (int group = 0; group < without.length; group++) {
      replicate[group] = numbers.apply(without[group]);
    }
    return spread(replicate);
  }

  /** Standard error from leave-one-group-out values, {@code [group][number]}. */
  static double[] spread(double[][] replicate) {
    int groups = replicate.length;
    double[] errors = new double[replicate[0].length];
    for (int k = 0; k < errors.length; k++) {
      double mean = 0;
      for (double[] row : replicate) {
        mean += row[k] / groups;
      }
      double sum = 0;
      for (double[] row : replicate) {
        sum += (row[k] - mean) * (row[k] - mean);
      }
      errors[k] = Math.sqrt(sum * (groups - 1) / groups);
    }
    return errors;
  }
}

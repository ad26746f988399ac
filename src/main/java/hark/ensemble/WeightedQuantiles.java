package hark.ensemble;

import java.util.Arrays;

/**
 * Quantiles of values that carry weights, none of them negative. Values are counted into narrow
 * classes first; only those classes are put in order in which a quantile lies.
 */
final class WeightedQuantiles {
  private static final int CLASSES = 512;

  /** Sums of weights are rounded. */
  private static final double ROUNDING = 1e-12;

  private final double[] values;
  private final double[] weights;
  private final int[] classOf;
  private final double[] weightOf = new double[CLASSES];

  private WeightedQuantiles(double[] values, double[] weights, double least, double most) {
    this.values = values;
    this.weights = weights;
    classOf = new int[values.length];
    double scale = most > least ? (CLASSES - 1) / (most - least) : 0;
    for (int k = 0; k < values.length; k++) {
      classOf[k] = (int) ((values[k] - least) * scale);
      weightOf[classOf[k]] += weights[k];
    }
  }

  /**
   * For each level the least value up to which so much of the weight lies.
   *
   * @param values at least one, none NaN or negative
   * @param weights not negative, by value
   * @param levels rising, 0…1
   */
  static double[] of(double[] values, double[] weights, double[] levels) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double total = 0;
    for (int k = 0; k < values.length; k++) {
      least = Math.min(least, values[k]);
      most = Math.max(most, values[k]);
      total += weights[k];
    }
    double[] wanted = new double[levels.length];
    for (int l = 0; l < wanted.length; l++) {
      wanted[l] = (levels[l] - ROUNDING) * total;
    }
    double[] result = new double[levels.length];
    Arrays.fill(result, most);
    new WeightedQuantiles(values, weights, least, most).find(wanted, result);
    return result;
  }

  private void find(double[] wanted, double[] result) {
    double below = 0;
    int level = 0;
    for (int c = 0; c < CLASSES && level < wanted.length; c++) {
      double upTo = below + weightOf[c];
      if (upTo >= wanted[level]) {
        level = findInside(c, below, wanted, level, result);
      }
      below = upTo;
    }
  }

  /** Finds all levels that lie in a class; returns the first one that does not. */
  private int findInside(int c, double below, double[] wanted, int first, double[] result) {
    long[] order = inOrder(c);
    double sum = below;
    int level = first;
    for (long packed : order) {
      int k = (int) packed;
      sum += weights[k];
      while (level < wanted.length && sum >= wanted[level]) {
        result[level++] = values[k];
      }
    }
    if (level == first) {
      // the class's own sum was rounded up: its last value is the one
      result[level++] = values[(int) order[order.length - 1]];
    }
    return level;
  }

  /**
   * Values of a class, rising: value and index packed into one number, so that a plain sort does.
   */
  private long[] inOrder(int c) {
    long[] order = new long[values.length];
    int count = 0;
    for (int k = 0; k < values.length; k++) {
      if (classOf[k] == c) {
        order[count++] = ((long) Float.floatToIntBits((float) values[k]) << 32) | k;
      }
    }
    order = Arrays.copyOf(order, count);
    Arrays.sort(order);
    return order;
  }
}

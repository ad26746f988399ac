package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Quantiles by classes against putting everything in order. */
class WeightedQuantilesTest {
  private static final double[] LEVELS = {0.05, 0.25, 0.5, 0.75, 0.95, 1};

  private static double[] plainly(double[] values, double[] weights) {
    int[] order =
        IntStream.range(0, values.length)
            .boxed()
            .sorted(Comparator.comparingDouble(k -> values[k]))
            .mapToInt(Integer::intValue)
            .toArray();
    double total = IntStream.of(order).mapToDouble(k -> weights[k]).sum();
    double[] result = new double[LEVELS.length];
    for (int l = 0; l < LEVELS.length; l++) {
      double sum = 0;
      int place = -1;
      while (sum < (LEVELS[l] - 1e-12) * total) {
        sum += weights[order[++place]];
      }
      result[l] = values[order[place]];
    }
    return result;
  }

  @Test
  void equalsPuttingEverythingInOrder() {
    SplittableRandom random = new SplittableRandom(1);
    for (int turn = 0; turn < 200; turn++) {
      double[] values = new double[1 + random.nextInt(400)];
      double[] weights = new double[values.length];
      for (int k = 0; k < values.length; k++) {
        // many full, many empty, and crowds in between
        double u = random.nextDouble();
        double crowd = 0.7f + 1e-4f * (float) random.nextInt(20);
        values[k] = u < 0.2 ? 0 : u < 0.4 ? 1 : u < 0.7 ? (float) crowd : (float) u;
        weights[k] = random.nextInt(4) == 0 ? 0 : Math.pow(random.nextDouble(), 8);
      }
      weights[0] = 0.1;
      assertArrayEquals(plainly(values, weights), WeightedQuantiles.of(values, weights, LEVELS));
    }
  }

  @Test
  void oneValueIsEveryQuantile() {
    double[] result = WeightedQuantiles.of(new double[] {0.4}, new double[] {3}, LEVELS);
    assertArrayEquals(new double[] {0.4, 0.4, 0.4, 0.4, 0.4, 0.4}, result);
  }

  @Test
  void equalValuesAreEveryQuantile() {
    double[] result = WeightedQuantiles.of(new double[] {1, 1}, new double[] {0, 3}, LEVELS);
    assertArrayEquals(new double[] {1, 1, 1, 1, 1, 1}, result);
  }
}

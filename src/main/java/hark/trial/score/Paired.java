package hark.trial.score;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/**
 * A figure of campaigns with its interval of 95 % from resampling whole campaigns, so that what two
 * rules share in one campaign stays together.
 */
public record Paired(double value, double low, double high) {
  private static final int RESAMPLES = 1000;
  private static final long SEED = 20_261_125;

  /** The mean of a number. */
  static Paired mean(List<Followed> all, ToDoubleFunction<Followed> number) {
    double[] values = all.stream().mapToDouble(number).toArray();
    double[] ones = new double[values.length];
    Arrays.fill(ones, 1);
    return ratio(values, ones);
  }

  /** The ratio of the sums of two numbers. */
  static Paired ratio(
      List<Followed> all, ToDoubleFunction<Followed> above, ToDoubleFunction<Followed> below) {
    return ratio(
        all.stream().mapToDouble(above).toArray(), all.stream().mapToDouble(below).toArray());
  }

  private static Paired ratio(double[] above, double[] below) {
    SplittableRandom random = new SplittableRandom(SEED);
    double[] again = new double[RESAMPLES];
    for (int r = 0; r < again.length; r++) {
      double up = 0;
      double down = 0;
      for (int k = 0; k < above.length; k++) {
        int at = random.nextInt(above.length);
        up += above[at];
        down += below[at];
      }
      again[r] = up / down;
    }
    Arrays.sort(again);
    int tail = RESAMPLES / 40;
    return new Paired(
        Arrays.stream(above).sum() / Arrays.stream(below).sum(),
        again[tail],
        again[RESAMPLES - 1 - tail]);
  }
}

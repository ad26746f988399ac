package hark.bench;

import java.util.Arrays;
import java.util.Locale;

/**
 * Times two ways to the same answer, turn by turn in one process, and prints how much faster the
 * first is. Medians, so that a busy machine disturbs little.
 */
final class Ratio {
  private static final int WARM_UPS = 30;
  private static final int ROUNDS = 31;
  private static final double NANOS_A_MILLISECOND = 1e6;

  private Ratio() {}

  /** Runs both; what they return is added up so that nothing can be left out. */
  static double measure(String title, Work ours, Work twin) {
    double kept = 0;
    for (int i = 0; i < WARM_UPS; i++) {
      kept += ours.run() + twin.run();
    }
    long[] oursNanos = new long[ROUNDS];
    long[] twinNanos = new long[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      long start = System.nanoTime();
      kept += ours.run();
      long middle = System.nanoTime();
      kept += twin.run();
      oursNanos[i] = middle - start;
      twinNanos[i] = System.nanoTime() - middle;
    }
    double ratio = median(twinNanos) / median(oursNanos);
    System.out.printf(
        Locale.ROOT,
        "%s: ours %.2f ms, twin %.2f ms, ratio %.1f (answers sum to %.3f)%n",
        title,
        median(oursNanos) / NANOS_A_MILLISECOND,
        median(twinNanos) / NANOS_A_MILLISECOND,
        ratio,
        kept);
    return ratio;
  }

  /** The middle one of an odd number of times. */
  static double median(long[] nanos) {
    long[] sorted = nanos.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  /** One way to the answer. */
  interface Work {
    double run();
  }
}

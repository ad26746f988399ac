package hark.trial.score;

/**
 * One figure and where it should lie.
 *
 * @param what is measured
 * @param of which quantity
 * @param count how many campaigns or ranks it rests on
 * @param expected its value if beliefs are right, on average
 * @param low lower end of the band of 99 %
 * @param high upper end of it
 */
public record Figure(
    What what, String of, int count, double value, double expected, double low, double high) {
  /** What a figure measures. */
  public enum What {
    /** Truths against the mean posterior, in numbers of campaigns. */
    CALIBRATION,
    /** Truths in a bin of the posterior, in numbers of campaigns. */
    RELIABILITY,
    /** Truths inside a central interval, share. */
    COVERAGE,
    /** Unevenness of ranks, Pearson's sum. */
    RANKS
  }

  /** Whether it lies in its band. */
  public boolean inside() {
    return value >= low - 1e-12 && value <= high + 1e-12;
  }

  static Figure counted(What what, String of, double[] probabilities, int truths) {
    double expected = 0;
    for (double p : probabilities) {
      expected += p;
    }
    int[] band = Bands.counts(probabilities);
    return new Figure(what, of, probabilities.length, truths, expected, band[0], band[1]);
  }

  static Figure coverage(String of, double[] ranks, double level) {
    int inside = 0;
    for (double rank : ranks) {
      inside += Math.abs(rank - 0.5) <= level / 2 ? 1 : 0;
    }
    int n = ranks.length;
    int[] band = Bands.binomial(n, level);
    String name = String.format(java.util.Locale.ROOT, "%s, %.0f %%", of, 100 * level);
    return new Figure(
        What.COVERAGE,
        name,
        n,
        (double) inside / n,
        level,
        (double) band[0] / n,
        (double) band[1] / n);
  }

  static Figure ranks(String of, double[] ranks) {
    double most = Bands.mostUneven(ranks.length);
    return new Figure(
        What.RANKS,
        of,
        ranks.length,
        Bands.unevenness(ranks),
        Bands.cells(ranks.length) - 1.0,
        0,
        most);
  }
}

package hark.link;

import org.hipparchus.special.Erf;

/**
 * The standard normal distribution function, fast: cubic Hermite interpolation in a table with step
 * 1/32 over −8.5…8.5. Absolute error below 4e-9 everywhere; relative error below 2e-5 down to −8.
 */
public final class NormalCurve {
  private static final double EDGE = 8.5;
  private static final int PER_UNIT = 32;
  private static final double[] TABLE = table();

  private NormalCurve() {}

  /** Probability that a standard normal number is at most {@code x}; NaN for NaN. */
  public static double below(double x) {
    if (!(x > -EDGE)) {
      return Double.isNaN(x) ? Double.NaN : 0;
    }
    if (x >= EDGE) {
      return 1;
    }
    double scaled = (x + EDGE) * PER_UNIT;
    int cell = (int) scaled;
    double t = scaled - cell;
    double s = 1 - t;
    int at = 2 * cell;
    return s * s * ((1 + 2 * t) * TABLE[at] + t * TABLE[at + 1])
        + t * t * ((1 + 2 * s) * TABLE[at + 2] - s * TABLE[at + 3]);
  }

  /** Pairs of value and slope per cell. */
  private static double[] table() {
    int knots = (int) (2 * EDGE * PER_UNIT) + 1;
    double[] table = new double[2 * knots];
    for (int k = 0; k < knots; k++) {
      double x = -EDGE + (double) k / PER_UNIT;
      table[2 * k] = 0.5 * Erf.erfc(-x / Math.sqrt(2));
      table[2 * k + 1] = Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI) / PER_UNIT;
    }
    return table;
  }
}

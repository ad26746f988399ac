package hark.link;

import org.hipparchus.special.Gamma;

/**
 * The energy detector, exactly: {@code looks} squared envelopes of noise, or of noise and a steady
 * signal, are added and compared with a threshold (square-law detector with non-coherent
 * integration; for {@code looks} = time × bandwidth it is the detector of Urkowitz, Proc. IEEE
 * 55(4), 1967). It bounds what listening without knowledge of the waveform can do. Takes
 * microseconds to milliseconds: use it to prepare thresholds, not inside kernels.
 */
public final class EnergyDetector {
  /** Terms of the Poisson sum left out on either side weigh less than a normal's beyond this. */
  private static final double SPREADS = 14;

  private static final int BISECTIONS = 80;

  /** SNRs searched for, dB. */
  private static final double LOWEST_SNR_DB = -60;

  private static final double HIGHEST_SNR_DB = 60;

  private EnergyDetector() {}

  /**
   * Threshold on the sum in units where noise alone is chi-squared with {@code 2·looks} degrees of
   * freedom.
   *
   * @param falseAlarm probability that noise alone passes, in (0, 1)
   */
  public static double threshold(double falseAlarm, int looks) {
    requireProbability(falseAlarm);
    requireLooks(looks);
    double low = 0;
    double high = 4 * looks + 200;
    while (Gamma.regularizedGammaQ(looks, high / 2) > falseAlarm) {
      high *= 2;
    }
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = 0.5 * (low + high);
      if (Gamma.regularizedGammaQ(looks, middle / 2) > falseAlarm) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  /**
   * Probability of detection of a steady signal.
   *
   * @param snrDb signal over noise of one look, dB
   */
  public static double probability(double falseAlarm, int looks, double snrDb) {
    double noncentrality = 2 * looks * Math.pow(10, snrDb / 10);
    return marcumQ(looks, Math.sqrt(noncentrality), Math.sqrt(threshold(falseAlarm, looks)));
  }

  /**
   * Probability of detection of a burst by its energy (Urkowitz).
   *
   * @param timeBandwidth duration times bandwidth, a whole number of at least 1
   * @param energyOverN0Db energy of the burst over the noise density, dB
   */
  public static double urkowitz(double falseAlarm, int timeBandwidth, double energyOverN0Db) {
    return probability(falseAlarm, timeBandwidth, energyOverN0Db - 10 * Math.log10(timeBandwidth));
  }

  /** Signal over noise of one look that is detected with probability {@code detected}, dB. */
  public static double requiredSnrDb(double falseAlarm, int looks, double detected) {
    requireProbability(detected);
    double root = Math.sqrt(threshold(falseAlarm, looks));
    double low = LOWEST_SNR_DB;
    double high = HIGHEST_SNR_DB;
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = 0.5 * (low + high);
      double a = Math.sqrt(2 * looks * Math.pow(10, middle / 10));
      if (marcumQ(looks, a, root) < detected) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  /**
   * Generalised Marcum function {@code Q_m(a, b)}: the chance that a non-central chi-squared number
   * with {@code 2m} degrees of freedom and non-centrality {@code a²} exceeds {@code b²}. Poisson
   * mixture of gamma tails; absolute error below 1e-10.
   */
  public static double marcumQ(int m, double a, double b) {
    requireLooks(m);
    double mean = 0.5 * a * a;
    double x = 0.5 * b * b;
    if (x == 0) {
      return 1;
    }
    double spread = SPREADS * Math.sqrt(mean) + SPREADS * SPREADS;
    int first = (int) Math.max(0, mean - spread);
    int last = (int) (mean + spread);
    double weight = Math.exp(logPoisson(mean, first));
    double tail = Gamma.regularizedGammaQ(m + first, x);
    double logStep = logPoisson(x, m + first);
    double sum = 0;
    for (int k = first; k <= last; k++) {
      sum += weight * tail;
      weight *= mean / (k + 1);
      tail = Math.min(1, tail + Math.exp(logStep));
      logStep += Math.log(x / (m + k + 1));
    }
    return Math.min(1, sum);
  }

  private static double logPoisson(double mean, int k) {
    return mean == 0
        ? (k == 0 ? 0 : Double.NEGATIVE_INFINITY)
        : k * Math.log(mean) - mean - Gamma.logGamma(k + 1.0);
  }

  private static void requireProbability(double value) {
    if (!(value > 0 && value < 1)) {
      throw new IllegalArgumentException("probability " + value + " is not between 0 and 1");
    }
  }

  private static void requireLooks(int looks) {
    if (looks < 1) {
      throw new IllegalArgumentException("looks " + looks + " is below 1");
    }
  }
}

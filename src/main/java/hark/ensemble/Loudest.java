package hark.ensemble;

import hark.link.Detector;
import hark.link.NormalCurve;
import java.util.stream.IntStream;

/**
 * The level of the loudest of several fading bursts, dB over noise, as a mixture of two normals:
 * one for bursts that see the same of the antenna's pattern, one for bursts that each see another
 * part.
 *
 * <p>A crew writes down the best it noticed. With several bursts that lies above the mean level of
 * the strongest: 4 dB of pattern make it 2 to 5 dB. Bursts that are weaker on the mean count for
 * less than one, by the mean of the larger of two normals (Clark 1961); mean and spread of the
 * largest of so many are those of order statistics (Harter 1961); both from memory, checked against
 * samples.
 *
 * @param bestDb mean level of the strongest burst
 * @param bursts how many count beside each other, at least 1
 * @param coherence share of the case in which all see the same fade, 0…1
 * @param fadeDb spread of the pattern
 */
record Loudest(double bestDb, double bursts, double coherence, double fadeDb) {
  /** A burst weaker by d spreads counts exp(−{@value}·d). */
  static final double WEAKER = 1.27;

  private static final double[] COUNT = {1, 2, 3, 4, 5, 6, 8, 10, 15, 20, 50};
  private static final double[] LOG_STEP =
      IntStream.range(1, COUNT.length)
          .mapToDouble(k -> Math.log(COUNT[k] / COUNT[k - 1]))
          .toArray();

  private static final double[] MEAN = {
    0, 0.564, 0.846, 1.029, 1.163, 1.267, 1.424, 1.539, 1.736, 1.867, 2.249
  };
  private static final double[] SPREAD = {
    1, 0.826, 0.748, 0.701, 0.669, 0.645, 0.610, 0.587, 0.549, 0.525, 0.464
  };

  /**
   * Adds to {@code counts}, for many nodes at once, how much a burst counts beside the loudest.
   *
   * @param best level of the loudest at each node
   * @param level of the burst, no infinities
   * @param perDb one over the spread of the pattern
   */
  static void count(float[] best, float[] level, float[] perDb, float[] counts) {
    for (int n = 0; n < counts.length; n++) {
      // exp(−u) as ((1 − u/128)/(1 + u/128))⁶⁴, without a branch: error below 1e-4
      float u = (float) (WEAKER / 128) * (best[n] - level[n]) * perDb[n];
      float above = 0.5f * (1 - u + Math.abs(1 - u)) / (1 + u);
      above *= above;
      above *= above;
      above *= above;
      above *= above;
      above *= above;
      counts[n] += above * above;
    }
  }

  /**
   * Density of a level that was read off, given that the loudest burst was noticed, 1/dB.
   *
   * @param readSdDb spread of the reading itself
   */
  double density(double levelDb, double readSdDb, Detector detector) {
    double mean = at(MEAN);
    double spread = at(SPREAD);
    double apartMean = bestDb + fadeDb * mean;
    double apartSd = fadeDb * spread;
    // of bursts that fade together it is the luckiest try that is noticed
    Detector tries =
        new Detector(
            detector.thresholdDb() - detector.widthDb() * mean, detector.widthDb() * spread);
    double joint =
        coherence * joint(levelDb, bestDb, fadeDb, readSdDb, tries)
            + (1 - coherence) * joint(levelDb, apartMean, apartSd, readSdDb, detector);
    double noticed =
        coherence * tries.fadedProbability(bestDb, fadeDb)
            + (1 - coherence) * detector.fadedProbability(apartMean, apartSd);
    return noticed > 0 ? joint / noticed : 0;
  }

  /** Density of the reading and of being noticed: all normal, so in closed form. */
  private static double joint(
      double levelDb, double meanDb, double sdDb, double readSdDb, Detector detector) {
    double variance = sdDb * sdDb + readSdDb * readSdDb;
    double gain = sdDb * sdDb / variance;
    double meant = meanDb + gain * (levelDb - meanDb);
    double left = sdDb * readSdDb / Math.sqrt(variance);
    // Math.hypot would cost more than all the rest
    double width = Math.sqrt(detector.widthDb() * detector.widthDb() + left * left);
    return Normal.density(levelDb, meanDb, Math.sqrt(variance))
        * NormalCurve.below((meant - detector.thresholdDb()) / width);
  }

  private double at(double[] table) {
    int k = 0;
    while (k < COUNT.length - 2 && bursts > COUNT[k + 1]) {
      k++;
    }
    double part = Math.log(bursts / COUNT[k]) / LOG_STEP[k];
    return table[k] + Math.min(1, part) * (table[k + 1] - table[k]);
  }
}

package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hark.link.Detector;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The closed form against bursts that are drawn one by one. */
class LoudestTest {
  private static final double FADE_DB = 4;
  private static final double READ_DB = 2;
  private static final Detector DETECTOR = new Detector(10, 1);

  /** Counts the bursts as the ear does. */
  private static Loudest loudest(double bestDb, double slopeDb, int bursts, double coherence) {
    double count = 0;
    for (int k = 0; k < bursts; k++) {
      count += Math.exp(-Loudest.WEAKER * slopeDb * k / FADE_DB);
    }
    return new Loudest(bestDb, count, coherence, FADE_DB);
  }

  /** Mean and spread of the level written down, when anything was noticed. */
  private static double[] drawn(double bestDb, double slopeDb, int bursts, boolean together) {
    SplittableRandom random = new SplittableRandom(7);
    double sum = 0;
    double squares = 0;
    int heard = 0;
    for (int trial = 0; trial < 200_000; trial++) {
      double best = Double.NEGATIVE_INFINITY;
      double common = FADE_DB * gaussian(random);
      for (int k = 0; k < bursts; k++) {
        double level = bestDb - slopeDb * k + (together ? common : FADE_DB * gaussian(random));
        boolean noticed = level + DETECTOR.widthDb() * gaussian(random) > DETECTOR.thresholdDb();
        best = noticed ? Math.max(best, level) : best;
      }
      if (best > Double.NEGATIVE_INFINITY) {
        double read = best + READ_DB * gaussian(random);
        sum += read;
        squares += read * read;
        heard++;
      }
    }
    double mean = sum / heard;
    return new double[] {mean, Math.sqrt(squares / heard - mean * mean)};
  }

  private static double gaussian(SplittableRandom random) {
    double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
    return radius * Math.cos(2 * Math.PI * random.nextDouble());
  }

  @ParameterizedTest(name = "best {0} dB, {1} dB a burst, {2} bursts, together {3}")
  @CsvSource({
    "12,0,1,false",
    "12,0,5,false",
    "6,0,5,false",
    "14,1,6,false",
    "9,3,4,false",
    "12,0,5,true",
    "4,0,8,false",
    "18,0.5,10,false"
  })
  void levelsHaveTheMeanAndSpreadOfDrawnOnes(
      double bestDb, double slopeDb, int bursts, boolean together) {
    Loudest loudest = loudest(bestDb, slopeDb, bursts, together ? 1 : 0);
    double step = 0.05;
    double sum = 0;
    double mean = 0;
    double squares = 0;
    for (double level = -30; level < 60; level += step) {
      double weight = step * loudest.density(level, READ_DB, DETECTOR);
      sum += weight;
      mean += weight * level;
      squares += weight * level * level;
    }
    double[] truth = drawn(bestDb, slopeDb, bursts, together);
    assertEquals(1, sum, 0.01, "a density");
    double halfADecibel = 0.5;
    assertEquals(truth[0], mean, halfADecibel);
    assertEquals(truth[1], Math.sqrt(squares - mean * mean), halfADecibel);
  }

  @Test
  void burstsCountByTheExponentialOfHowMuchWeakerTheyAre() {
    float[] best = {5, 5, 5, 5};
    float[] level = {5, 3, -15, -1e4f};
    float[] counts = {1, 0, 0, 0};
    Loudest.count(best, level, new float[] {0.5f, 0.25f, 0.25f, 0.25f}, counts);
    assertEquals(2, counts[0], 1e-6);
    assertEquals(Math.exp(-Loudest.WEAKER * 0.5), counts[1], 1e-4);
    assertEquals(Math.exp(-Loudest.WEAKER * 5), counts[2], 1e-4);
    assertEquals(0, counts[3], 0);
  }
}

package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A guide's density is that of the rows it draws, and its fit goes where the evidence is. */
class GuideTest {
  private static final int ROWS = 40_000;

  /** Evidence in three numbers: a reading of the first plus the second, narrow around 2. */
  private static double residual(double[] z) {
    return (z[0] + z[1] - 2) / 0.2;
  }

  private static double[] evenRow(SplittableRandom random) {
    double[] row = new double[5];
    for (int d = 0; d < row.length; d++) {
      row[d] = Draws.inside(random.nextDouble());
    }
    return row;
  }

  private static RowGuide fitted(SplittableRandom random, double even) {
    GuideFit fit = new GuideFit(3);
    for (int k = 0; k < 80; k++) {
      double[] z = new double[3];
      for (int d = 0; d < 3; d++) {
        z[d] = RowGuide.standard(random.nextDouble());
      }
      double off = residual(z);
      fit.add(z, Math.exp(-0.5 * off * off), new double[] {off});
    }
    return new RowGuide(fit.guide(), new int[] {4, 1, 2}, new double[] {0, 0, even});
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void rowsWeighedByPriorOverDensityAreThePriorAgain(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    RowGuide guide = fitted(random, 0);
    double one = 0;
    double below = 0;
    double aimed = 0;
    for (int k = 0; k < ROWS; k++) {
      double[] row = evenRow(random);
      guide.guide(random.nextDouble(), row);
      double weight = 1 / guide.density(row);
      one += weight / ROWS;
      below += row[1] < 0.3 ? weight / ROWS : 0;
      double off = residual(new double[] {RowGuide.standard(row[4]), RowGuide.standard(row[1])});
      aimed += Math.abs(off) < 2 ? 1.0 / ROWS : 0;
    }
    double threeErrors = 0.03;
    assertEquals(1, one, threeErrors);
    assertEquals(0.3, below, threeErrors);
    assertTrue(aimed > 0.25, "share of rows near the reading: " + aimed + ", 11 % by the prior");
  }

  @ParameterizedTest(name = "even share {0}")
  @ValueSource(doubles = {0, 0.5})
  void theDensityIntegratesToOneOverThePrior(double even) {
    SplittableRandom random = new SplittableRandom(7);
    RowGuide guide = fitted(random, even);
    double sum = 0;
    for (int k = 0; k < 4 * ROWS; k++) {
      sum += guide.density(evenRow(random)) / (4 * ROWS);
    }
    double fewPercent = 0.05;
    assertEquals(1, sum, fewPercent);
  }
}

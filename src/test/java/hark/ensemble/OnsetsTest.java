package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Onsets are drawn where they matter; the weights make up for it. */
class OnsetsTest {
  private static final double DAY = 86_400;

  private static final OnsetProposal PROPOSAL =
      new OnsetProposal(DAY, new double[] {1.3 * DAY, 1.5 * DAY, 1.8 * DAY}, 7 * DAY);

  @ParameterizedTest(name = "share drawn evenly {0}")
  @ValueSource(doubles = {0, 0.5})
  void weightedDrawsHaveThePriorsMoments(double even) {
    SplittableRandom random = new SplittableRandom(7);
    int draws = 400_000;
    double weight = 0;
    double mean = 0;
    double beforeNow = 0;
    for (int k = 0; k < draws; k++) {
      double onset = PROPOSAL.onset(random.nextDouble(), even);
      double w = OnsetProposal.prior(onset, 0) / PROPOSAL.density(onset, even);
      weight += w / draws;
      mean += w * onset / draws;
      beforeNow += onset < 7 * DAY ? w / draws : 0;
    }
    double onePercent = 0.01;
    assertEquals(1, weight, onePercent);
    assertEquals(15 * DAY, mean, onePercent * 15 * DAY);
    assertEquals(7.0 / 30, beforeNow, onePercent);
  }

  @Test
  void atLeastATenthOfThePriorIsKeptEverywhere() {
    for (double onset = 0; onset < OnsetProposal.SPAN_SECONDS; onset += 3600) {
      assertTrue(PROPOSAL.density(onset, 0) >= 0.1 / OnsetProposal.SPAN_SECONDS * 0.999);
    }
  }

  @Test
  void aConstantHazardIsADensityOverTheSpan() {
    double sum = 0;
    double step = 600;
    for (double t = step / 2; t < OnsetProposal.SPAN_SECONDS; t += step) {
      sum += OnsetProposal.prior(t, 0.4) * step;
    }
    assertEquals(1, sum, 1e-6);
    assertTrue(OnsetProposal.prior(0, 0.4) > OnsetProposal.prior(OnsetProposal.SPAN_SECONDS, 0.4));
  }
}

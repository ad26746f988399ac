package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** More bodies where the weight is, and the same answer. */
class RefinementTest {
  private static SmallCase lowVoltageThenSilent(int bodies, long seed) {
    SmallCase mission = new SmallCase();
    mission.bodiesPerSet = bodies;
    mission.seed = seed;
    return mission
        .heard(SmallCase.NEAR, 0)
        .volts(mission.pass(SmallCase.NEAR, 0).aos().plusSeconds(60), 7.3)
        .nothing(SmallCase.NEAR, 2)
        .nothing(SmallCase.FAR, 3)
        .nothing(SmallCase.NEAR, 4);
  }

  private static Posterior posterior(SmallCase mission) {
    return mission.with(workers -> Posterior.of(mission.input(), workers));
  }

  @Test
  void setsThatCarryWeightStandOnEnoughDifferentBodies() {
    Posterior posterior = posterior(lowVoltageThenSilent(60, 1));
    double[] effective = posterior.effectiveBodies();
    double[] weights = posterior.setWeights();
    for (int s = 0; s < weights.length; s++) {
      if (weights[s] >= Refinement.FULL_WEIGHT) {
        assertTrue(
            effective[s] >= Refinement.FLOOR,
            posterior.sets().get(s).causes() + " stands on " + effective[s]);
      }
    }
  }

  @Test
  void guidedRowsGiveWhatManyRowsOfThePriorGive() {
    double[] few = new double[6];
    double[] many = new double[6];
    for (long seed = 1; seed <= 2; seed++) {
      Posterior guided = posterior(lowVoltageThenSilent(60, seed));
      Posterior plain = posterior(lowVoltageThenSilent(480, seed));
      for (int c = 0; c < few.length; c++) {
        few[c] += guided.causes().get(c).posterior() / 2;
        many[c] += plain.causes().get(c).posterior() / 2;
      }
    }
    // hearings are those of the same seeds; what is left is the noise of a few hundred bodies
    double relative = 0.12;
    double absolute = 0.01;
    for (int c = 0; c < few.length; c++) {
      assertEquals(many[c], few[c], absolute + relative * many[c], "cause " + c);
    }
  }

  @Test
  void withoutEvidenceNothingMoreIsDrawn() {
    SmallCase mission = new SmallCase();
    int first = 7 * 60 + 6;
    assertTrue(posterior(mission).bodies() <= first, "bodies " + posterior(mission).bodies());
  }
}

package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The posterior without any look ahead is the diagnosis's own. */
class PosteriorTest {
  private static SmallCase heardThenSilent() {
    return new SmallCase()
        .heard(SmallCase.NEAR, 0)
        .nothing(SmallCase.NEAR, 2)
        .nothing(SmallCase.FAR, 3);
  }

  @Test
  void itSaysWhatTheDiagnosisSays() {
    SmallCase mission = heardThenSilent();
    Posterior lean = mission.with(workers -> Posterior.of(mission.input(), workers));
    Diagnosis whole = mission.diagnose();
    // bodies of less than a ten-millionth are not looked ahead and dropped from the diagnosis
    double dropped = 1e-4;
    assertArrayEquals(whole.setWeights(), lean.setWeights(), dropped);
    assertArrayEquals(whole.objects(), lean.objects(), dropped);
    assertArrayEquals(whole.stations(), lean.stations(), dropped);
    for (int c = 0; c < whole.causes().size(); c++) {
      assertEquals(whole.causes().get(c).posterior(), lean.causes().get(c).posterior(), dropped);
    }
  }

  @Test
  void chargeNowIsThatOfTheFanAtNow() {
    SmallCase mission = heardThenSilent();
    Posterior lean = mission.with(workers -> Posterior.of(mission.input(), workers));
    double[] soc = lean.chargeNow()[0];
    double[] weight = lean.chargeNow()[1];
    double total = Arrays.stream(weight).sum();
    assertEquals(1 - lean.remainder(), total, 1e-9);
    double seconds = mission.input().seconds(mission.now);
    EnergyFan.Point point =
        mission.energy().stream().filter(p -> p.seconds() == seconds).findFirst().orElseThrow();
    double below = 0;
    for (int b = 0; b < soc.length; b++) {
      below += soc[b] <= point.soc()[2] ? weight[b] / total : 0;
    }
    assertTrue(Math.abs(below - 0.5) < 0.05, "share below the fan's median: " + below);
  }

  @Test
  void bodiesSharedByMembersCountOnce() {
    SmallCase mission = heardThenSilent();
    Posterior lean = mission.with(workers -> Posterior.of(mission.input(), workers));
    double[] effective = lean.effectiveBodies();
    double[] weights = lean.setWeights();
    for (int s = 0; s < effective.length; s++) {
      assertTrue(effective[s] <= lean.bodies() + 1e-9, "set " + s + ": " + effective[s]);
      assertTrue(weights[s] == 0 || effective[s] >= 1 - 1e-9, "set " + s + ": " + effective[s]);
    }
  }
}

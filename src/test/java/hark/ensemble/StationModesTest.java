package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.link.Way;
import hark.station.StationFault;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What stations may have wrong, and what evidence says of it. */
class StationModesTest {
  private static final int DEAD = 0;
  private static final int NEAR = 0;
  private static final int FAR = 1;

  @Test
  void modesSumToOneAndKeepThePriorOfWorking() {
    List<StationMode> modes = StationModes.of(new SmallCase().input(), NEAR);
    assertEquals(1, modes.stream().mapToDouble(StationMode::prior).sum(), 1e-12);
    assertTrue(modes.get(0).works());
    assertEquals(0.93, modes.get(0).prior(), 1e-12);
  }

  @Test
  void whatMakesNoDifferenceTakesNoShare() {
    // the beacon is linear: a circular antenna loses the same with either hand
    List<StationMode> modes = StationModes.of(new SmallCase().input(), NEAR);
    assertFalse(has(modes, StationFault.WRONG_HAND));
    assertTrue(has(modes, StationFault.WRONG_SET), "two objects are catalogued");
    assertTrue(has(modes, StationFault.POINTING), "60° off a beam of 40°");
  }

  private static boolean has(List<StationMode> modes, StationFault fault) {
    return modes.stream().anyMatch(mode -> mode.fault().equals(Optional.of(fault)));
  }

  @Test
  void worksAndFaultsSumToOneWhateverWasHeard() {
    Posterior posterior =
        posterior(
            new SmallCase()
                .heard(SmallCase.FAR, 0)
                .nothing(SmallCase.NEAR, 2)
                .nothing(SmallCase.FAR, 3));
    for (int s = 0; s < 2; s++) {
      double faults = posterior.stationFaults().get(s).values().stream().mapToDouble(p -> p).sum();
      assertEquals(1, posterior.stations()[s] + faults, 1e-6);
    }
  }

  @Test
  void withoutEvidenceFaultsHaveTheirPriors() {
    Posterior posterior = posterior(new SmallCase());
    for (StationMode mode : StationModes.of(posterior.input(), NEAR)) {
      mode.fault()
          .ifPresent(
              fault ->
                  assertEquals(mode.prior(), posterior.stationFaults().get(NEAR).get(fault), 1e-6));
    }
  }

  @Test
  void aWideSilenceSpeaksAgainstAWrongFrequencyAndNotAgainstDeafness() {
    double narrow = frequencyAgainstDeaf(Way.DECODER, 3000);
    double wide = frequencyAgainstDeaf(Way.DECODER, 25_000);
    double prior = StationFault.FREQUENCY.usualShare() / StationFault.DEAF.usualShare();
    assertEquals(prior, narrow, 0.02 * prior, "10 kHz off in a window of 3 kHz is deafness");
    assertTrue(wide < 0.75 * prior, "in a wide window it would have been heard: " + wide);
  }

  private static double frequencyAgainstDeaf(Way way, double windowHz) {
    SmallCase mission = new SmallCase().heard(SmallCase.FAR, 0);
    mission.nothing(SmallCase.NEAR, 1, way, windowHz);
    Map<StationFault, Double> faults = posterior(mission).stationFaults().get(NEAR);
    return faults.get(StationFault.FREQUENCY) / faults.get(StationFault.DEAF);
  }

  @Test
  void somethingHeardClearsAStationOfDeafnessAndNotOfMilderFaults() {
    SmallCase mission = new SmallCase().heard(SmallCase.NEAR, 0).heard(SmallCase.NEAR, 2);
    mission.nothing(SmallCase.NEAR, 3).nothing(SmallCase.NEAR, 4);
    Posterior posterior = posterior(mission);
    // each time it may have been something else, 0.02 of the windows, spread over 30 dB
    double deaf = posterior.stationFaults().get(NEAR).get(StationFault.DEAF);
    assertTrue(deaf < 2e-3, "deaf " + deaf);
    // milder faults could have let two passes through, and explain the two silences
    double works = posterior.stations()[NEAR];
    assertTrue(works + deaf < 0.999, "works " + works);
  }

  /** A deaf station explains its own silences, all of them, and none of another's. */
  @Test
  void silencesThatAlternateBetweenStationsExonerateBothAndAccuseTheSpacecraft() {
    int[][] orders = {{0, 0, 0, 0}, {0, 1, 0, 1}};
    double[] dead = new double[2];
    double[] near = new double[2];
    for (int k = 0; k < orders.length; k++) {
      SmallCase mission = new SmallCase().heard(SmallCase.FAR, 0);
      for (int i = 0; i < orders[k].length; i++) {
        mission.nothing(orders[k][i] == 0 ? SmallCase.NEAR : SmallCase.FAR, 2 + i);
      }
      Posterior posterior = posterior(mission);
      dead[k] = posterior.causes().get(DEAD).posterior();
      near[k] = posterior.stations()[NEAR];
    }
    assertTrue(near[0] < 0.75, "four silences of one station make it suspect: " + near[0]);
    assertTrue(near[1] > near[0] + 0.1, near[0] + " to " + near[1]);
    assertTrue(dead[1] > 1.1 * dead[0], dead[0] + " to " + dead[1]);
  }

  @Test
  void silenceAtOneStationLeavesTheHealthOfTheOtherButForExplainingAway() {
    double before = posterior(new SmallCase().heard(SmallCase.FAR, 0)).stations()[FAR];
    SmallCase mission = new SmallCase().heard(SmallCase.FAR, 0);
    mission.nothing(SmallCase.NEAR, 2).nothing(SmallCase.NEAR, 3);
    Posterior after = posterior(mission);
    assertEquals(before, after.stations()[FAR], 0.01);
    assertTrue(after.stations()[NEAR] < 0.9);
  }

  private static Posterior posterior(SmallCase mission) {
    return mission.with(workers -> Posterior.of(mission.input(), workers));
  }
}

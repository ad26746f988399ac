package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.link.Way;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The truths of the design, on an invented small mission. */
class DiagnosisTest {
  private static final int DEAD = 0;
  private static final int LOST = 1;
  private static final int WEAK = 2;
  private static final int DEAF = 3;
  private static final int CHARGE_PATH = 4;

  private static SmallCase heardThenSilent() {
    return new SmallCase()
        .heard(SmallCase.NEAR, 0)
        .nothing(SmallCase.NEAR, 2)
        .nothing(SmallCase.FAR, 3)
        .nothing(SmallCase.NEAR, 4);
  }

  @Test
  void withoutEvidenceWeightsAreThePriors() {
    Diagnosis diagnosis = new SmallCase().diagnose();
    double[] weights = diagnosis.setWeights();
    for (int s = 0; s < weights.length; s++) {
      double prior = diagnosis.sets().get(s).prior();
      assertEquals(prior, weights[s], 1e-12, "set " + diagnosis.sets().get(s).causes());
    }
    assertEquals(1, Arrays.stream(weights).sum() + diagnosis.remainder(), 1e-12);
  }

  @Test
  void explanationsSumToOneWithTheRemainder() {
    Diagnosis diagnosis = heardThenSilent().diagnose();
    assertEquals(1, Arrays.stream(diagnosis.setWeights()).sum() + diagnosis.remainder(), 1e-12);
    assertTrue(diagnosis.remainder() > 0);
    assertTrue(diagnosis.remainderBound() >= diagnosis.remainder() / 2);
  }

  @Test
  void silenceNeverRaisesAnAudibleCauseAgainstAMuteOne() {
    SmallCase mission = new SmallCase().heard(SmallCase.NEAR, 0);
    double before = oddsOfWeakAgainstDead(mission.diagnose());
    for (int n = 2; n < 6; n++) {
      mission.nothing(SmallCase.NEAR, n);
      double after = oddsOfWeakAgainstDead(mission.diagnose());
      // members are drawn anew with the whole evidence: a few percent of noise beside a clear fall
      assertTrue(
          after < before * 1.05,
          "silence " + n + " raised weak against dead: " + before + " to " + after);
      before = after;
    }
  }

  private static double oddsOfWeakAgainstDead(Diagnosis diagnosis) {
    double[] weights = diagnosis.setWeights();
    return weights[1 + WEAK] / weights[1 + DEAD];
  }

  @Test
  void theOrderOfEntriesInTheJournalIsIrrelevant() {
    SmallCase straight = heardThenSilent();
    SmallCase turned = new SmallCase();
    for (int k = straight.evidence.size() - 1; k >= 0; k--) {
      turned.add(straight.evidence.get(k).evidence());
    }
    turned.evidence.sort(java.util.Comparator.comparing(entry -> entry.evidence().at()));
    assertArrayEquals(straight.diagnose().setWeights(), turned.diagnose().setWeights(), 0);
  }

  @Test
  void theNumberOfThreadsChangesNothing() {
    SmallCase one = heardThenSilent();
    one.threads = 1;
    SmallCase three = heardThenSilent();
    three.threads = 3;
    assertArrayEquals(one.diagnose().setWeights(), three.diagnose().setWeights(), 0);
  }

  @Test
  void aSelfCheckMovesItsStationAndTheRestOnlyByExplainingAway() {
    Diagnosis without = heardThenSilent().diagnose();
    SmallCase checked = heardThenSilent();
    checked.check(SmallCase.NEAR, 4, true);
    Diagnosis with = checked.diagnose();
    assertTrue(
        with.stations()[0] > without.stations()[0], "the station that was checked is trusted more");
    double farMoved = Math.abs(with.stations()[1] - without.stations()[1]);
    double nearMoved = Math.abs(with.stations()[0] - without.stations()[0]);
    assertTrue(
        farMoved < nearMoved,
        "the other station moves less: " + farMoved + " against " + nearMoved);
    assertTrue(
        with.causes().get(DEAD).posterior() > without.causes().get(DEAD).posterior(),
        "a working station leaves the blame to the spacecraft");
  }

  @Test
  void aCheckWithoutAnyOtherEvidenceLeavesTheCausesAlone() {
    Diagnosis without = new SmallCase().diagnose();
    Diagnosis with = new SmallCase().check(SmallCase.NEAR, 1, true).diagnose();
    assertArrayEquals(without.setWeights(), with.setWeights(), 1e-12);
    assertTrue(with.stations()[0] > without.stations()[0]);
  }

  @Test
  void moreSensitiveListeningMovesMore() {
    double moved = deadAfterTwoSilences(Way.DECODER, 3000);
    double movedMore = deadAfterTwoSilences(Way.RECORDING, 10000);
    // rows differ between the two: the difference must stand clear of their noise
    assertTrue(movedMore > moved * 1.2, moved + " against " + movedMore);
  }

  private static double deadAfterTwoSilences(Way way, double windowHz) {
    return new SmallCase()
        .heard(SmallCase.NEAR, 0)
        .nothing(SmallCase.NEAR, 2, way, windowHz)
        .nothing(SmallCase.NEAR, 4, way, windowHz)
        .diagnose()
        .causes()
        .get(DEAD)
        .posterior();
  }

  @Test
  void causesThatSilenceAlikeAreFoundAsOneGroup() {
    List<SharedLikelihood> groups = heardThenSilent().diagnose().sharedLikelihoods();
    assertTrue(
        groups.stream()
            .anyMatch(
                group -> group.causes().containsAll(List.of(DEAD, LOST)) && !group.harmless()),
        groups.toString());
    assertTrue(
        groups.stream()
            .noneMatch(group -> group.causes().contains(DEAD) && group.causes().contains(WEAK)));
  }

  @Test
  void theOddsWithinAGroupStayThoseOfThePrior() {
    Diagnosis diagnosis = heardThenSilent().diagnose();
    double[] weights = diagnosis.setWeights();
    double prior = diagnosis.sets().get(1 + DEAD).prior() / diagnosis.sets().get(1 + LOST).prior();
    assertEquals(prior, weights[1 + DEAD] / weights[1 + LOST], 1e-9 * prior);
  }

  @Test
  void aDeafReceiverCannotBeToldByListening() {
    Diagnosis diagnosis = heardThenSilent().diagnose();
    double[] weights = diagnosis.setWeights();
    double prior = diagnosis.sets().get(1 + DEAF).prior() / diagnosis.sets().get(0).prior();
    // the same likelihood: only the onset's importance weights make a difference, and it is small
    assertEquals(prior, weights[1 + DEAF] / weights[0], 0.05 * prior);
  }

  @Test
  void alternatingStationsBlameTheSpacecraftMoreThanOneStationAlone() {
    SmallCase one =
        new SmallCase()
            .heard(SmallCase.FAR, 0)
            .nothing(SmallCase.NEAR, 2)
            .nothing(SmallCase.NEAR, 3);
    SmallCase both =
        new SmallCase()
            .heard(SmallCase.FAR, 0)
            .nothing(SmallCase.NEAR, 2)
            .nothing(SmallCase.FAR, 3);
    assertTrue(one.diagnose().stations()[0] < both.diagnose().stations()[0]);
  }

  @Test
  void bitsAddUpToTheWholeMovement() {
    Diagnosis diagnosis = heardThenSilent().diagnose();
    double[][] bits = diagnosis.bits();
    assertEquals(4, bits.length);
    double sum = 0;
    for (double[] row : bits) {
      sum += row[DEAD];
    }
    double posterior = diagnosis.causes().get(DEAD).posterior();
    double bitsNow = Math.log(posterior / (1 - posterior)) / Math.log(2);
    assertTrue(sum > 0.5, "three silences speak for a dead transmitter");
    assertTrue(bitsNow - sum < 0, "they began from a prior below even odds");
  }

  @Test
  void anEmptyBatteryReadInTelemetrySpeaksForTheChargePath() {
    SmallCase mission = new SmallCase().heard(SmallCase.NEAR, 0);
    var contact = mission.pass(SmallCase.NEAR, 3);
    mission.heard(SmallCase.NEAR, 3);
    double before = mission.diagnose().causes().get(CHARGE_PATH).posterior();
    mission.volts(contact.culmination(), 6.6);
    double after = mission.diagnose().causes().get(CHARGE_PATH).posterior();
    assertTrue(after > before, before + " to " + after);
  }

  @Test
  void halvingAndDoublingAPriorBracketsThePosterior() {
    CauseMarginal dead = heardThenSilent().diagnose().causes().get(DEAD);
    assertTrue(dead.ifPriorHalved() < dead.posterior() && dead.posterior() < dead.ifPriorDoubled());
  }

  @Test
  void doublingAPriorInTheMissionGivesWhatTheBandSaid() {
    CauseMarginal band = heardThenSilent().diagnose().causes().get(DEAD);
    SmallCase doubled = heardThenSilent();
    Cause dead = doubled.causes.get(DEAD);
    doubled.causes.set(
        DEAD,
        SmallCase.cause(dead.id(), 2 * dead.probability(), dead.onset(), dead.effects().get(0)));
    double posterior = doubled.diagnose().causes().get(DEAD).posterior();
    // the remainder and the pairs make the two differ a little
    assertEquals(posterior, band.ifPriorDoubled(), 0.02);
  }

  @Test
  void evidenceThatFitsIsNoMisfitAndEvidenceThatCannotBeIs() {
    assertTrue(heardThenSilent().diagnose().misfit() > 0.01);
    SmallCase impossible = new SmallCase().heard(SmallCase.NEAR, 0);
    impossible.volts(impossible.pass(SmallCase.NEAR, 0).culmination(), 4.1);
    assertTrue(impossible.diagnose().misfit() < 0.01);
  }

  @Test
  void quantilesOfTheBatteryAreOrderedAndStatesSumToOne() {
    for (EnergyFan.Point point : heardThenSilent().energy()) {
      for (int k = 1; k < point.soc().length; k++) {
        assertTrue(point.soc()[k - 1] <= point.soc()[k]);
      }
      assertEquals(1, Arrays.stream(point.states()).sum(), 1e-9);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {3, 4})
  void theSameSeedGivesTheSameBytes(long seed) {
    SmallCase a = heardThenSilent();
    a.seed = seed;
    SmallCase b = heardThenSilent();
    b.seed = seed;
    assertArrayEquals(a.diagnose().setWeights(), b.diagnose().setWeights(), 0);
  }

  @Test
  void shownErrorsAgreeWithTheSpreadOverEightSeeds() {
    int seeds = 8;
    double[] dead = new double[seeds];
    double[] weak = new double[seeds];
    double[] shown = new double[2];
    for (int seed = 0; seed < seeds; seed++) {
      SmallCase mission = heardThenSilent();
      mission.seed = 100 + seed;
      List<CauseMarginal> causes = mission.diagnose().causes();
      dead[seed] = causes.get(DEAD).posterior();
      weak[seed] = causes.get(WEAK).posterior();
      shown[0] += causes.get(DEAD).error() / seeds;
      shown[1] += causes.get(WEAK).error() / seeds;
    }
    double ratioDead = shown[0] / sd(dead);
    double ratioWeak = shown[1] / sd(weak);
    assertTrue(ratioDead > 0.5 && ratioDead < 2, "dead: shown over seen " + ratioDead);
    assertTrue(ratioWeak > 0.5 && ratioWeak < 2, "weak: shown over seen " + ratioWeak);
  }

  private static double sd(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    double sum = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(sum / (values.length - 1));
  }

  @Test
  void windowsBeginAfterNowAndHoldEveryCandidatesPass() {
    SmallCase mission = new SmallCase();
    Diagnosis diagnosis = mission.diagnose();
    assertTrue(diagnosis.windows().size() >= 6, "two stations for a day");
    for (SkyWindow window : diagnosis.windows()) {
      assertTrue(diagnosis.input().instant(window.to()).isAfter(mission.now));
      assertTrue(window.passes().stream().anyMatch(java.util.Optional::isPresent));
      assertTrue(Duration.ofSeconds((long) (window.to() - window.from())).toMinutes() < 25);
    }
  }
}

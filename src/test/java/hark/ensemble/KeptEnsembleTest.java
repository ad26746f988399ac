package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.evidence.CommandSent;
import hark.evidence.Entry;
import hark.station.Pass;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** An ensemble that is kept gives what one made for the record gives, whatever was asked before. */
class KeptEnsembleTest {
  private static final int BODIES = 600;

  /** Differences of so many of their own errors are chance. */
  private static final double FOUR_ERRORS = 4;

  /** Hearings are drawn once for all and their error is not in the one stated. */
  private static final double HEARINGS_ERROR = 0.02;

  /** A loud beacon: unlucky hearings, of which either has few, do not decide. */
  private static SmallCase loud() {
    SmallCase mission = new SmallCase();
    mission.requiredSnrDb = -4;
    return mission;
  }

  private static SmallCase silent() {
    return loud()
        .heard(SmallCase.NEAR, 0)
        .volts(new SmallCase().pass(SmallCase.NEAR, 0).culmination(), 7.6)
        .nothing(SmallCase.NEAR, 2)
        .nothing(SmallCase.FAR, 3)
        .check(SmallCase.NEAR, 3, true)
        .nothing(SmallCase.NEAR, 4);
  }

  private static SmallCase commanded() {
    SmallCase mission = loud().heard(SmallCase.NEAR, 0).nothing(SmallCase.NEAR, 2);
    Pass sending = mission.pass(SmallCase.NEAR, 3);
    mission.add(
        new CommandSent(
            SmallCase.NEAR,
            sending.culmination(),
            "reset",
            OptionalDouble.empty(),
            OptionalInt.of(3),
            Optional.empty()));
    return mission.heard(SmallCase.NEAR, 4);
  }

  private static KeptEnsemble kept(int bodies, Workers workers) {
    SmallCase large = loud();
    large.bodiesPerSet = bodies;
    return KeptEnsemble.of(large.input(), workers);
  }

  private static Posterior ask(KeptEnsemble kept, SmallCase record, Workers workers) {
    return kept.posterior(record.now, record.evidence, workers);
  }

  private static double[] causes(Posterior posterior) {
    return posterior.causes().stream().mapToDouble(CauseMarginal::posterior).toArray();
  }

  private static void assertAgree(SmallCase record) {
    Posterior made = record.with(workers -> Posterior.of(record.input(), workers));
    Posterior kept = record.with(workers -> ask(kept(BODIES, workers), record, workers));
    for (int c = 0; c < record.causes.size(); c++) {
      CauseMarginal a = made.causes().get(c);
      CauseMarginal b = kept.causes().get(c);
      double allowed = FOUR_ERRORS * Math.hypot(a.error(), b.error()) + HEARINGS_ERROR;
      assertEquals(a.posterior(), b.posterior(), allowed, record.causes.get(c).id());
    }
    assertArrayEquals(made.stations(), kept.stations(), 0.05, "stations");
    assertArrayEquals(made.objects(), kept.objects(), 0.07, "objects");
  }

  @Test
  void agreesWithADiagnosisMadeForTheRecord() {
    assertAgree(silent());
  }

  @Test
  void agreesAfterACommand() {
    assertAgree(commanded());
  }

  @Test
  void withoutEvidenceEverySetKeepsItsPrior() {
    SmallCase empty = loud();
    Posterior posterior = empty.with(workers -> ask(kept(60, workers), empty, workers));
    double rounding = 1e-12;
    double[] priors = posterior.sets().stream().mapToDouble(EventSet::prior).toArray();
    assertArrayEquals(priors, posterior.setWeights(), rounding);
  }

  @Test
  void threadsAndWhatWasAskedBeforeChangeNothing() {
    SmallCase other = loud().heard(SmallCase.FAR, 1).nothing(SmallCase.NEAR, 4);
    double[] alone = loud().with(workers -> causes(ask(kept(60, workers), silent(), workers)));
    SmallCase three = loud();
    three.threads = 3;
    double[][] after =
        three.with(
            workers -> {
              KeptEnsemble kept = kept(60, workers);
              ask(kept, commanded(), workers);
              ask(kept, other, workers);
              return new double[][] {
                causes(ask(kept, silent(), workers)), causes(ask(kept, silent(), workers))
              };
            });
    assertArrayEquals(alone, after[0]);
    assertArrayEquals(alone, after[1]);
  }

  @Test
  void anEarlierTimeIsAskedOfTheSameBodies() {
    SmallCase early = silent();
    early.now = early.pass(SmallCase.NEAR, 4).los().plusSeconds(3600);
    Posterior made = early.with(workers -> Posterior.of(early.input(), workers));
    Posterior kept = early.with(workers -> ask(kept(BODIES, workers), early, workers));
    double wide = 0.12;
    assertArrayEquals(causes(made), causes(kept), wide);
    assertTrue(Arrays.stream(kept.chargeNow()[0]).allMatch(soc -> soc >= 0 && soc <= 1));
  }

  @Test
  void membersThatShareAWayAreWeighedAsIfAlone() {
    SmallCase record = silent();
    double rounding = 1e-12;
    record.with(
        workers -> {
          DiagnosisInput input = record.input();
          Weighed alone = Weighed.of(input, Sky.of(input), workers);
          Weighing each = weighing(input, alone);
          each.run(workers);
          Weighing shared = weighing(input, alone);
          shared.runShared(workers);
          for (int c = 0; c <= alone.clues().size(); c++) {
            for (int m = 0; m < alone.population().members.size(); m++) {
              double expected = each.prefix[c][m];
              assertEquals(expected, shared.prefix[c][m], rounding * (1 + expected));
            }
          }
          assertArrayEquals(each.nodeShare[7], shared.nodeShare[7], 1e-6f);
          assertArrayEquals(each.works[1][7], shared.works[1][7], 1e-6f);
          return 0;
        });
  }

  private static Weighing weighing(DiagnosisInput input, Weighed known) {
    Weigher weigher = new Weigher(input, known.ear(), known.population().bodies.size());
    return new Weighing(2, known.population(), known.clues(), known.nodes(), weigher);
  }

  @Test
  void looksAheadWithTheSameBodies() {
    SmallCase record = silent();
    Instant horizon = record.now.plusSeconds(43_200);
    record.with(
        workers -> {
          Diagnosis diagnosis =
              kept(60, workers).diagnosis(record.now, horizon, record.evidence, workers);
          List<EnergyFan.Point> fan = diagnosis.energy(workers);
          assertTrue(
              fan.get(fan.size() - 1).seconds() <= diagnosis.input().seconds(horizon), "in time");
          for (int w = 0; w < diagnosis.windows().size(); w++) {
            double[] on = diagnosis.beaconOn(w);
            assertTrue(on[0] >= 0 && on[0] <= 1, "window " + w);
          }
          return 0;
        });
  }

  @Test
  void refusesATimeBeyondItsEnd() {
    List<Entry> nothing = List.of();
    Instant late = new SmallCase().now.plusSeconds(40 * 86_400);
    new SmallCase()
        .with(
            workers -> {
              KeptEnsemble kept = kept(60, workers);
              return assertThrows(
                  IllegalArgumentException.class, () -> kept.posterior(late, nothing, workers));
            });
  }
}

package hark.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Posterior;
import hark.ensemble.Workers;
import hark.evidence.EvidenceBook;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import java.time.Instant;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** The demo's percentages stand on enough different bodies. */
class DemoBodiesTest {
  /**
   * Half the floor of 40: the last round may still move weights a little, and where nothing is
   * wrong it is luck in hearing that fits, which no guide of bodies finds faster.
   */
  private static final double HELD = 20;

  private static final double CARRIES = 0.02;

  @Test
  void eventSetsOfTwoPercentAndMoreStandOnManyBodies() {
    DemoMission demo = DemoMission.load();
    Mission mission = demo.mission();
    Instant now = mission.now().orElseThrow();
    ExecutorService executor = Executors.newFixedThreadPool(2);
    try {
      DiagnosisInput input =
          Assessor.input(
              mission,
              EvidenceBook.effective(demo.entries(), now),
              AssessmentRequest.at(now),
              EarthModel.bundled());
      Posterior posterior = Posterior.of(input, new Workers(executor, 2));
      double[] weights = posterior.setWeights();
      double[] effective = posterior.effectiveBodies();
      for (int s = 0; s < weights.length; s++) {
        assertTrue(
            weights[s] < CARRIES || effective[s] >= HELD,
            posterior.sets().get(s).causes() + " of " + weights[s] + " stands on " + effective[s]);
      }
    } finally {
      executor.shutdownNow();
    }
  }
}

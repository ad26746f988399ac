package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.ensemble.CauseMarginal;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.KeptEnsemble;
import hark.ensemble.Posterior;
import hark.ensemble.Workers;
import hark.evidence.EvidenceBook;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.plan.PlanOutcome;
import hark.plan.PlanSettings;
import hark.plan.Planner;
import java.time.Instant;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** A kept ensemble answers for the demo's record, and a plan can be made of its answer. */
class DemoKeptTest {
  private static final int BODIES = 300;
  private static final double FOUR_ERRORS = 4;

  /** Few bodies stand behind a cause here, and their error is itself uncertain. */
  private static final double FEW_BODIES = 0.03;

  @Test
  void agreesWithTheDiagnosisAndCanBePlannedWith() {
    DemoMission demo = DemoMission.load();
    Mission mission = demo.mission();
    Instant now = mission.now().orElseThrow();
    AssessmentRequest usual = AssessmentRequest.at(now);
    AssessmentRequest large =
        new AssessmentRequest(now, usual.horizonDays(), BODIES, usual.seed(), 2);
    EarthModel earth = EarthModel.bundled();
    DiagnosisInput input =
        Assessor.input(mission, EvidenceBook.effective(demo.entries(), now), usual, earth);
    DiagnosisInput more = Assessor.input(mission, input.evidence(), large, earth);
    ExecutorService executor = Executors.newFixedThreadPool(2);
    try {
      Workers workers = new Workers(executor, 2);
      Posterior made = Posterior.of(input, workers);
      Diagnosis kept =
          KeptEnsemble.of(more, workers).diagnosis(now, input.end(), input.evidence(), workers);
      for (int c = 0; c < input.causes().size(); c++) {
        CauseMarginal a = made.causes().get(c);
        CauseMarginal b = kept.causes().get(c);
        double allowed = FOUR_ERRORS * Math.hypot(a.error(), b.error()) + FEW_BODIES;
        assertEquals(a.posterior(), b.posterior(), allowed, input.causes().get(c).id());
      }
      PlanOutcome plan =
          Planner.plan(
              kept,
              mission.procedures(),
              new PlanSettings(mission.crewHoursPerWeek(), mission.hazardLimit()),
              workers);
      assertTrue(plan.heardByHorizon() > 0.5 && plan.heardByHorizon() < 0.95);
    } finally {
      executor.shutdownNow();
    }
  }
}

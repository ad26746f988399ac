package hark.trial.follow;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.ensemble.Diagnosis;
import hark.ensemble.Workers;
import hark.evidence.Entry;
import hark.trial.campaign.SameThread;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Diagnoses of one scene, each from the beginning. */
final class Minds implements Mind {
  private static final double DAY = 86_400;

  private final Scene scene;
  private final FollowSettings settings;

  Minds(Scene scene, FollowSettings settings) {
    this.scene = scene;
    this.settings = settings;
  }

  @Override
  public Diagnosis of(List<Entry> record, Instant now, Instant end, long seed) {
    double days = Duration.between(now, end).toMillis() / (1000 * DAY);
    AssessmentRequest request = new AssessmentRequest(now, days, settings.members(), seed, 1);
    return Diagnosis.of(
        Assessor.input(scene.mission(), record, request, scene.earth()),
        new Workers(new SameThread(), 1));
  }
}

package hark.console;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.AssessmentFixture;
import hark.evidence.Entry;
import hark.mission.FolderSource;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.problem.Problem;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The demo's files with an invented reckoning over them: its first cause is five times as likely
 * now as the file's array shortfall is at the start, so that a test can see a prior arrive.
 */
final class FixturePapers {
  static final FolderSource DEMO = ResourceFolder.of("hark/demo");

  static final Problem TREE =
      new Problem(
          "the fault tree counts as silent what is heard", "causes.yaml: gates", "join them");

  /** How long a reckoning takes. */
  volatile Duration pause = Duration.ZERO;

  private final MissionPapers papers =
      new MissionPapers(DEMO, Missions.read(DEMO), this::assess, () -> List.of(TREE));

  MissionPapers papers() {
    return papers;
  }

  private MissionModel.Worked assess(Mission mission, List<Entry> entries, Instant now) {
    try {
      Thread.sleep(pause.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    double prior =
        mission.causes().stream()
            .filter(cause -> cause.id().equals("array_shortfall"))
            .findFirst()
            .orElseThrow()
            .probability();
    Assessment base = AssessmentFixture.sandpiper().build();
    Assessment changed =
        AssessmentFixture.sandpiper()
            .causes(base.causes().stream().map(cause -> moved(cause, prior)).toList())
            .build();
    return new MissionModel.Worked(changed, Optional.empty());
  }

  private static CauseView moved(CauseView cause, double prior) {
    if (!cause.id().equals("uv_loop")) {
      return cause;
    }
    return new CauseView(
        cause.id(),
        cause.title(),
        cause.branch(),
        prior,
        Math.min(0.9, 5 * prior),
        cause.later(),
        cause.error(),
        cause.ifPriorHalved(),
        cause.ifPriorDoubled(),
        cause.inseparableGroup(),
        cause.selfRecovery(),
        cause.mechanism(),
        cause.signature(),
        cause.detail());
  }
}

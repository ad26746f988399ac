package hark.cli;

import hark.assessment.Assessment;
import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.assessment.EnergyDesk;
import hark.assessment.Examination;
import hark.mission.Mission;
import java.nio.file.Path;
import java.time.Instant;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Options shared by the commands that assess a mission; use as a mixin. */
final class AssessOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Mixin private EarthOption earth;

  @Parameters(paramLabel = "MISSION", description = "The mission folder.")
  private Path folder;

  @Option(
      names = "--now",
      paramLabel = "T",
      description =
          "Assess as of this time, UTC; later entries are ignored (default: the mission's own clock,"
              + " else now).")
  private Instant now;

  @Option(
      names = "--days",
      paramLabel = "D",
      description = "How far to look ahead, days up to 60 (default: ${DEFAULT-VALUE}).")
  private double days = AssessmentRequest.USUAL_HORIZON_DAYS;

  @Mixin private DrawOptions draws;

  /** The mission that was named. */
  MissionRecord read() {
    return MissionRecord.read(folder);
  }

  /** The time to assess at. */
  Instant now(MissionRecord mission) {
    return now == null ? mission.now(Main.of(command).clock()) : now;
  }

  /** Assesses the mission with its journal, and keeps what answers further questions. */
  Examination examine(MissionRecord mission) {
    return Assessor.examine(
        mission.mission(), mission.entries(), request(now(mission)), earth.earth());
  }

  /** The same as if the mission file said something else. */
  Examination examine(MissionRecord record, Mission instead) {
    return Assessor.examine(instead, record.entries(), request(now(record)), earth.earth());
  }

  /** Assesses the mission with its journal. */
  Assessment assess(MissionRecord mission) {
    return assess(mission, 0);
  }

  /** The same with returns followed for so many days; 0 leaves that out. */
  Assessment assess(MissionRecord mission, int recoveryDays) {
    Examination examined = examine(mission);
    Assessment assessment = examined.assessment();
    return recoveryDays == 0
        ? assessment
        : assessment.with(examined.energy().longLook(recoveryDays));
  }

  /** The electrical system of the mission with its journal. */
  EnergyDesk energy(MissionRecord mission) {
    AssessmentRequest request = request(now(mission));
    return Assessor.energy(mission.mission(), mission.entries(), request, earth.earth());
  }

  private AssessmentRequest request(Instant at) {
    int threads = AssessmentRequest.at(at).threads();
    try {
      return new AssessmentRequest(at, days, draws.members(), draws.seed(), threads);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(command.commandLine(), e.getMessage(), e);
    }
  }
}

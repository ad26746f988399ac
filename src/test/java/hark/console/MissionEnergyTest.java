package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.assessment.WhatIf;
import hark.mission.FolderSource;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.EarthModel;
import hark.problem.BadInput;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class MissionEnergyTest {
  private static final String CAPACITY = "spacecraft.battery.cell.capacity_Ah";

  private final AtomicBoolean gone = new AtomicBoolean();
  private final FolderSource disk = new Vanishing(ResourceFolder.of("hark/demo"), gone);

  @Test
  void aWhatIfGoesOnFromTheMissionTheConsoleBeganWith() {
    Mission mission = Missions.read(disk);
    FrozenFolder frozen = new FrozenFolder(disk);
    AssessmentRequest request = new AssessmentRequest(mission.now().orElseThrow(), 0.5, 30, 1, 1);
    MissionEnergy energy =
        new MissionEnergy(
            Assessor.energy(mission, List.of(), request, EarthModel.bundled()), frozen);
    gone.set(true);
    WhatIf what = energy.whatIf(Map.of(CAPACITY, "0.5"));
    assertTrue(what.sentence().contains("0.5 Ah"), what.sentence());
    assertThrows(BadInput.class, () -> energy.whatIf(Map.of(CAPACITY, "-1")));
    assertTrue(energy.numbers().stream().anyMatch(number -> number.key().equals(CAPACITY)));
    assertEquals(energy.report(), energy.report());
    assertThrows(BadInput.class, () -> Missions.read(disk), "the disk is really empty");
  }

  /** A folder whose files somebody deletes while the console runs. */
  private record Vanishing(FolderSource files, AtomicBoolean gone) implements FolderSource {
    @Override
    public String label(String relativePath) {
      return files.label(relativePath);
    }

    @Override
    public Optional<String> text(String relativePath) {
      return gone.get() ? Optional.empty() : files.text(relativePath);
    }

    @Override
    public List<String> list(String directory) {
      return gone.get() ? List.of() : files.list(directory);
    }
  }
}

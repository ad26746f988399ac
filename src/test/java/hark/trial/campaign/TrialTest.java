package hark.trial.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Cause;
import hark.ensemble.OrbitSource;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.EarthModel;
import hark.problem.BadInput;
import hark.trial.score.Outcome;
import hark.trial.score.Report;
import hark.trial.score.ReportText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Trials are the same whatever thread works on them and wherever they were interrupted. */
class TrialTest {
  @TempDir private static Path folder;
  private static final Mission MISSION = small();

  /** The demo with one object, one station, two likely causes: quick, and contact is lost soon. */
  private static Mission small() {
    Mission demo = Missions.read(ResourceFolder.of("hark/demo"), Map.of());
    OrbitSource first = demo.sources().get(0);
    List<Cause> causes =
        demo.causes().stream()
            .filter(cause -> List.of("transmitter_dead", "charge_path").contains(cause.id()))
            .map(TrialTest::likely)
            .toList();
    return demo.with(causes, demo.procedures())
        .elsewhere(
            demo.name(),
            List.of(new OrbitSource(first.sets(), first.alongTrack(), Map.of("97311", 1.0))),
            demo.stations().subList(0, 1));
  }

  private static Cause likely(Cause cause) {
    return Certain.cause(cause, 0.7, Cause.Onset.SEPARATION);
  }

  private static Trial trial(int campaigns, long seed) {
    Settings settings = new Settings(campaigns, 2, seed, Settings.Kind.SAME, 60, false);
    return new Trial(MISSION, settings, EarthModel.bundled());
  }

  private static String report(Trial trial, List<Outcome> outcomes) {
    return ReportText.json(Report.of(trial.subject(), outcomes, List.of()));
  }

  @Test
  void threadsAndInterruptionsChangeNothing() throws IOException {
    Trial whole = trial(3, 7);
    String expected = report(whole, whole.run(Optional.empty(), false, 1, done -> {}));
    Path file = folder.resolve("results.jsonl");
    trial(2, 7).run(Optional.of(file), false, 2, done -> {});
    // a crash tore the last line
    String text = Files.readString(file);
    Files.writeString(file, text.substring(0, text.length() - 40));
    Trial resumed = trial(3, 7);
    assertEquals(expected, report(resumed, resumed.run(Optional.of(file), true, 2, done -> {})));
    assertEquals(4, Files.readAllLines(file).size());
  }

  @Test
  void anotherSeedGivesOtherCampaigns() {
    Trial one = trial(1, 7);
    Trial other = trial(1, 8);
    assertTrue(
        !report(one, one.run(Optional.empty(), false, 1, done -> {}))
            .equals(report(other, other.run(Optional.empty(), false, 1, done -> {}))));
  }

  @Test
  void resultsOfAnotherTrialAreRefused() {
    Path file = folder.resolve("other.jsonl");
    trial(1, 7).run(Optional.of(file), false, 1, done -> {});
    Trial again = trial(1, 7);
    BadInput there =
        assertThrows(BadInput.class, () -> again.run(Optional.of(file), false, 1, done -> {}));
    assertTrue(there.problems().get(0).line().contains("--resume"));
    Trial other = trial(1, 9);
    assertThrows(BadInput.class, () -> other.run(Optional.of(file), true, 1, done -> {}));
  }
}

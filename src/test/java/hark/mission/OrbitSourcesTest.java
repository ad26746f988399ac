package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.OrbitSource;
import hark.orbit.ElementSet;
import hark.problem.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the orbits of a mission come from: files, folders of many dates, a deployer's state. */
class OrbitSourcesTest {
  private static final String STATE =
      """
      CCSDS_OPM_VERS = 3.0
      CREATION_DATE = 2026-03-07T00:00:00
      ORIGINATOR = DEPLOYER
      OBJECT_NAME = KITTIWAKE
      OBJECT_ID = 2026-031Z
      CENTER_NAME = EARTH
      REF_FRAME = TEME
      TIME_SYSTEM = UTC
      EPOCH = 2026-03-07T00:30:00
      X = 6878.0
      Y = 0.0
      Z = 0.0
      X_DOT = 0.0
      Y_DOT = -0.9786
      Z_DOT = 7.5407
      """;

  private final TextFolder good = TextFolder.kittiwake();

  private static OrbitSource source(TextFolder folder) {
    return Missions.read(folder).sources().get(0);
  }

  private TextFolder inFolder() {
    return good.without("orbit/shared.tle")
        .with("orbit/sets/a.tle", good.files().get("orbit/shared.tle"))
        .replacing("file: orbit/shared.tle", "folder: orbit/sets");
  }

  @Test
  void aFolderGivesTheSetsOfAllItsFilesAndEachSetOnce() {
    List<ElementSet> once = source(good).sets();
    TextFolder twice = inFolder().with("orbit/sets/b.tle", good.files().get("orbit/shared.tle"));
    assertEquals(once, source(inFolder()).sets());
    assertEquals(once, source(twice).sets());
  }

  @Test
  void aStateServesBesideTheCatalogueUnderTheNumberItWillHave() {
    TextFolder folder =
        inFolder()
            .with("orbit/sets/deployer.opm", STATE)
            .replacing(
                "folder: orbit/sets",
                "folder: orbit/sets\n      same_as: { 2026-031Z: \"91001\" }");
    List<ElementSet> sets = source(folder).sets();
    List<ElementSet> ours = sets.stream().filter(s -> s.objectId().equals("91001")).toList();
    assertEquals(3, ours.size());
    assertTrue(ours.get(2).isState(), "the oldest");
    assertFalse(ours.get(0).isState());
    // the spacecraft's own mass and area: 1.3 kg and 0.015 m² at 500 km, half as much air again
    double pull = ours.get(2).spread().orElseThrow().perDay2Seconds();
    assertTrue(pull > 0.1 && pull < 0.8, "s a day squared: " + pull);
  }

  @Test
  void withoutAnAlongTrackSpreadSuccessiveSetsScaleThePublishedOne() {
    ResourceFolder demo = ResourceFolder.of("hark/demo");
    String yaml = demo.text("mission.yaml").orElseThrow();
    String bare = yaml.replaceAll("(?m)^      along_track_s: .*\\n", "");
    assertTrue(bare.length() < yaml.length());
    TextFolder folder =
        good.with("mission.yaml", bare)
            .with("orbit/launch-731.tle", demo.text("orbit/launch-731.tle").orElseThrow());
    // four candidates, two steps each, all but in agreement (0.1 spreads): √((4 + 0) / (4 + 8))
    double factor = Math.sqrt(4 / 12.0);
    assertEquals(2 * factor, source(folder).alongTrack().perDaySeconds(), 0.02);
    assertEquals(1.5 * factor, source(folder).alongTrack().initialSeconds(), 0.02);
    assertEquals(2, source(folder.with("mission.yaml", yaml)).alongTrack().perDaySeconds(), 1e-9);
  }

  @Test
  void whatIsWrongIsSaid() {
    said(inFolder().without("orbit/sets/a.tle"), "there are no files in 'orbit/sets'");
    said(
        good.replacing("file: orbit/shared.tle", "file: orbit/shared.tle\n      folder: orbit"),
        "there is a file and a folder");
    said(good.replacing("file: orbit/shared.tle", "folder: ../x"), "leads out of the mission");
    said(
        good.replacing("file: orbit/shared.tle", "file: orbit/shared.tle\n      same_as: 3"),
        "expected what a message calls an object and its number");
  }

  private static void said(TextFolder folder, String words) {
    BadInput bad = assertThrows(BadInput.class, () -> Missions.read(folder));
    assertTrue(bad.problems().stream().anyMatch(p -> p.what().contains(words)), bad.getMessage());
  }
}

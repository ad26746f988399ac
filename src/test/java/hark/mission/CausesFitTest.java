package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Cause;
import hark.fault.FaultTree;
import hark.fault.FaultTrees;
import hark.problem.Problem;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CausesFitTest {
  private final TextFolder bodyMounted = TextFolder.kittiwake();
  private final TextFolder withPanel =
      bodyMounted.replacing("        deployed: false", "        deployed: true");

  private static String causes(String effect) {
    return "hark: 1\nevents:\n  own: { title: own, branch: power, probability: 0.1, effect: { "
        + effect
        + " } }\ngates:\n  generation: { or: [own, array_shortfall, arrays_stowed, charge_path] }\n";
  }

  private static List<String> ids(Mission mission) {
    return mission.causes().stream().map(Cause::id).toList();
  }

  @Test
  void stowedArraysBelongToPanelsThatUnfold() {
    Mission mission = Missions.read(withPanel);
    assertTrue(ids(mission).contains("arrays_stowed"));
    assertTrue(mission.tree().events().containsKey("arrays_stowed"));
    assertEquals(List.of(), Missions.check(withPanel).notes());
  }

  @Test
  void withoutPanelsTheCauseIsLeftOutAndTheTreeStaysSound() {
    MissionCheck check = Missions.check(bodyMounted);
    Mission mission = check.orThrow();
    assertFalse(ids(mission).contains("arrays_stowed"));
    assertFalse(mission.tree().events().containsKey("arrays_stowed"));
    assertEquals(List.of(), FaultTrees.problems(mission.tree(), id -> id));
    assertEquals(
        List.of("array_shortfall", "charge_path"),
        mission.tree().gates().get("generation").inputs());
    assertEquals(1, check.notes().size());
    Problem note = check.notes().get(0);
    assertTrue(note.what().contains("'arrays stowed' is left out"), note.line());
    assertTrue(note.where().contains("events.arrays_stowed"), note.line());
    assertEquals(List.of(), check.warnings());
  }

  @Test
  void aCauseThatDoesMoreThanStowPanelsStays() {
    String yaml = causes("panels_stowed: true, antenna_stowed_dB: 12");
    assertTrue(ids(Missions.read(bodyMounted.with("causes.yaml", yaml))).contains("own"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "face_lost: +X|",
        "array_string_lost: C|",
        "face_lost: +x|did you mean '+X'?",
        "array_string_lost: D|'D' is no string",
      })
  void whatIsLostMustBeThere(String effect, String word) {
    List<Problem> problems =
        Missions.check(bodyMounted.with("causes.yaml", causes(effect))).problems();
    assertEquals(word == null ? 0 : 1, problems.size(), problems::toString);
    if (word != null) {
      assertTrue(problems.get(0).line().contains(word), problems.get(0).line());
      assertTrue(
          problems.get(0).where().startsWith("causes.yaml:3 events.own.effect."),
          problems.get(0).line());
    }
  }

  /** The smaller tree against the whole one with the event at probability 0, solved exactly. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "or: [a, gone, g]|and: [b, gone]",
        "and: [a, g]|or: [gone, b]",
        "at_least: [2, a, b, g]|not: gone",
        "at_least: [2, a, b, gone]|or: [a, b]",
        "or: [a, g]|at_least: [2, b, gone]",
        "or: [a, g]|at_least: [2, b, c, gone]",
        "and: [a, g, gone]|or: [b, c]",
        "or: [gone, g]|and: [gone, b]",
        "not: g|and: [gone, b]",
        "or: [a, g]|not: gone",
      })
  void aSmallerTreeMeansTheSame(String top, String gate) {
    String yaml =
        "hark: 1\nevents: { a: { probability: 0.1 }, b: { probability: 0.2 }, c: { probability: 0.3 },"
            + " gone: { probability: 0 } }\ngates:\n  top: { "
            + top
            + " }\n  g: { "
            + gate
            + " }\ntop: top\n";
    FaultTree whole = CausesFile.treeAlone("t.yaml", yaml, 1);
    FaultTree smaller = TreeWithout.events(whole, Set.of("gone"));
    assertEquals(List.of(), FaultTrees.problems(smaller, id -> id));
    assertEquals(
        FaultTrees.solve(whole, 9).probability(),
        FaultTrees.solve(smaller, 9).probability(),
        1e-15);
  }
}

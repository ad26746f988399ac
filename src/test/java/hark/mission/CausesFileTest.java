package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Cause;
import hark.ensemble.Effect;
import hark.ensemble.Uncertain;
import hark.fault.FaultTree;
import hark.fault.FaultTree.Join;
import hark.fault.FaultTrees;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CausesFileTest {
  private static String told(String yaml) {
    BadInput bad = assertThrows(BadInput.class, () -> CausesFile.read("causes.yaml", yaml));
    return String.join("\n", bad.problems().stream().map(Problem::line).toList());
  }

  private static Cause cause(CausesFile file, String id) {
    return file.causes().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void aSingleKeyOverridesAStockEventAndLeavesTheRest() {
    CausesFile file =
        CausesFile.read(
            "causes.yaml", "hark: 1\nevents:\n  transmitter_dead: { probability: 0.2 }\n");
    Cause stock = cause(CausesFile.stock(), "transmitter_dead");
    Cause own = cause(file, "transmitter_dead");
    assertEquals(0.2, own.probability());
    assertEquals(stock.mechanism(), own.mechanism());
    assertEquals(stock.effects(), own.effects());
    assertEquals(0.2, file.tree().events().get("transmitter_dead").probability());
    assertEquals(CausesFile.stock().causes().size(), file.causes().size());
  }

  @Test
  void aHazardTakesThePlaceOfAProbability() {
    CausesFile file =
        CausesFile.read("c.yaml", "hark: 1\nevents: { latch_up: { hazard_per_day: 0.01 } }\n");
    assertEquals(1 - Math.exp(-0.3), cause(file, "latch_up").probability(), 1e-12);
  }

  @Test
  void aMissionAddsAnEventAndHangsItOnAGate() {
    String yaml =
        """
        hark: 1
        events:
          heater_on:
            title: heater stays on
            branch: power
            probability: 0.05
            onset: first_eclipse
            effect: { parasitic_load_W: { median: 1, factor: 2 }, parasitic_load_when_off: true }
            clears_on: [power_cycle, watchdog]
        gates:
          distribution: { or: [parasitic_load, heater_on] }
        """;
    CausesFile file = CausesFile.read("causes.yaml", yaml);
    Cause own = cause(file, "heater_on");
    assertEquals(
        List.of(new Effect.ParasiticLoad(new Uncertain.LogNormal(1, 2), true)), own.effects());
    assertEquals(Cause.Onset.FIRST_ECLIPSE, own.onset());
    assertEquals(
        List.of("parasitic_load", "heater_on"), file.tree().gates().get("distribution").inputs());
    assertEquals(
        "power is there and is drained or withheld",
        file.tree().gates().get("distribution").title());
    // the three that the gate no longer names are told
    assertEquals(3, file.warnings().size(), file.warnings().toString());
    assertTrue(file.warnings().get(0).what().contains("'threshold_wrong' stands under no gate"));
  }

  @Test
  void everyProblemIsToldAtOnceWithFileLineAndKey() {
    String yaml =
        """
        hark: 1
        events:
          latch_up: { probabilty: 0.1 }
          boot_loop: { probability: 30 }
          beacon_off: { onset: reset }
          off_frequency: { effect: { off_frequency_hz: 3 } }
          computer_hung: { clears_on: [powercycle] }
          spare: { title: spare, branch: powr, probability: 0.1, effect: {} }
        gates:
          antenna: { or: [antenna_stowd] }
          orbit: { or: [station] }
          station: { and: [orbit] }
        extra: 1
        """;
    String all = told(yaml);
    for (String expected :
        List.of(
            "causes.yaml:3 events.latch_up.probabilty: 'probabilty' is not a key here · did you"
                + " mean 'probability'?",
            "causes.yaml:4 events.boot_loop.probability: found 30, expected a number from 0 to 1 ·"
                + " this looks like percent; the key wants 0.3",
            "causes.yaml:5 events.beacon_off.onset: onset 'reset' is part of the format and not yet",
            "causes.yaml:6 events.off_frequency.effect.off_frequency_hz: 'off_frequency_hz' is not"
                + " a key here · did you mean 'off_frequency_Hz'?",
            "causes.yaml:7 events.computer_hung.clears_on[0]: found 'powercycle', expected"
                + " power_cycle",
            "causes.yaml:8 events.spare.branch: found 'powr', expected power",
            "causes.yaml:8 events.spare.effect: the event has no effect",
            "causes.yaml:10 gates.antenna: input 'antenna_stowd' is neither a gate nor an event ·"
                + " did you mean 'antenna_stowed'?",
            "gate feeds itself: orbit → station → orbit",
            "causes.yaml:13 extra: 'extra' is not a key here")) {
      assertTrue(all.contains(expected), expected + "\nis missing in\n" + all);
    }
  }

  @Test
  void aSureEventIsRefused() {
    assertTrue(
        told("hark: 1\nevents: { latch_up: { probability: 1 } }\n").contains("sure to happen"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''|the file is empty",
        "'events: {}'|the key is missing",
        "'hark: 2'|expected a whole number from 1 to 1",
        "'hark: 1\nevents: [a]'|expected",
        "'hark: 1\nevents: { latch_up: 3 }'|expected keys with values",
        "'hark: 1\nevents: { latch_up: {probability: .nan} }'|expected a number",
      })
  void brokenFilesAreToldInWords(String yaml, String expected) {
    assertTrue(told(yaml).contains(expected), told(yaml));
  }

  @Test
  void aTreeAloneNeedsNoKeysOfTheDiagnosis() {
    String yaml =
        """
        hark: 1
        events: { a: { probability: 0.1 }, b: { hazard_per_day: 0.24 }, c: { probability: 0.3 } }
        gates:
          top: { or: [two, never] }
          two: { at_least: [2, a, b, c] }
          other: { at_least: 2, of: [a, b, c] }
          never: { and: [a, no_a] }
          no_a: { not: a }
        top: top
        """;
    FaultTree tree = CausesFile.treeAlone("t.yaml", yaml, 10);
    double b = 1 - Math.exp(-0.1);
    assertEquals(b, tree.events().get("b").probability(), 1e-15);
    assertEquals(Join.NOT, tree.gates().get("no_a").join());
    assertEquals(tree.gates().get("two").inputs(), tree.gates().get("other").inputs());
    double twoOfThree = 0.1 * b * 0.7 + 0.1 * (1 - b) * 0.3 + 0.9 * b * 0.3 + 0.1 * b * 0.3;
    assertEquals(twoOfThree, FaultTrees.solve(tree, 9).probability(), 1e-12);
  }

  @Test
  void aTreeAloneMustNameItsTop() {
    BadInput bad =
        assertThrows(
            BadInput.class,
            () ->
                CausesFile.treeAlone("t.yaml", "hark: 1\nevents: { a: { probability: 1 } }\n", 1));
    assertEquals("t.yaml:1 top: the key is missing · add it here", bad.problems().get(0).line());
  }
}

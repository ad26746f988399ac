package hark.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTree.Join;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class FaultTreesTest {
  private static final double ROUNDING = 1e-12;

  static java.util.stream.LongStream seeds() {
    return java.util.stream.LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void probabilityIsThatOfTheTruthTable(long seed) {
    FaultTree tree = Trees.random(seed, true);
    double expected = new TruthTable(tree).probability("", 0);
    assertEquals(expected, FaultTrees.solve(tree, 99).probability(), ROUNDING);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void probabilityOfEveryGateIsThatOfATreeItTops(long seed) {
    FaultTree tree = Trees.random(seed, true);
    FaultTrees.probabilities(tree)
        .forEach(
            (id, probability) -> {
              FaultTree below = new FaultTree(id, tree.gates(), tree.events());
              double expected = new TruthTable(below).probability("", 0);
              assertEquals(expected, probability, ROUNDING, id);
            });
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void minimalSetsAreThoseOfTheTruthTable(long seed) {
    FaultTree tree = Trees.random(seed, seed % 2 == 0);
    Solution.CutSets sets = FaultTrees.solve(tree, 99).cutSets();
    Set<Set<String>> listed = new HashSet<>();
    sets.sets().forEach(set -> listed.add(new TreeSet<>(set.events())));
    assertEquals(new TruthTable(tree).minimalSets(), listed);
    assertEquals(listed.size(), sets.count());
    assertEquals(sets.count(), sets.byOrder().values().stream().mapToLong(n -> n).sum());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void importanceFollowsItsDefinitions(long seed) {
    FaultTree tree = Trees.random(seed, true);
    TruthTable table = new TruthTable(tree);
    double top = table.probability("", 0);
    for (Solution.Importance i : FaultTrees.solve(tree, 99).importance()) {
      double sure = table.probability(i.event(), 1);
      double never = table.probability(i.event(), 0);
      assertEquals(sure - never, i.birnbaum(), ROUNDING);
      if (top > 1e-6) {
        double digits = 1e-9;
        assertEquals(i.probability() * (sure - never) / top, i.criticality(), digits);
        assertEquals((top - never) / top, i.fussellVesely(), digits);
        assertEquals(sure / top, i.riskAchievementWorth(), digits * Math.max(1, sure / top));
        double ratio = never == 0 ? Double.POSITIVE_INFINITY : top / never;
        assertEquals(ratio, i.riskReductionWorth(), never == 0 ? 0 : digits * ratio);
      }
    }
  }

  @Test
  void orIsNeverLessLikelyThanItsLikeliestInput() {
    FaultTree tree =
        Trees.start().event("a", 0.2).event("b", 0.7).gate("g", Join.OR, "a", "b").top("g");
    assertEquals(0.76, FaultTrees.solve(tree, 9).probability(), ROUNDING);
  }

  @Test
  void setsAboveTheOrderAskedForAreLeftOutAndTheProbabilityStaysExact() {
    Solution all = FaultTrees.solve(Trees.pressureTank(5e-6), 99);
    Solution short1 = FaultTrees.solve(Trees.pressureTank(5e-6), 1);
    assertEquals(all.probability(), short1.probability());
    assertEquals(Map.of(1, 2L), short1.cutSets().byOrder());
    assertEquals(List.of("K2"), short1.cutSets().sets().get(0).events());
  }

  @Test
  void onlyTheLikeliestSetsAreListedWhenFewAreAskedFor() {
    Solution all = FaultTrees.solve(Trees.pressureTank(5e-6), 99);
    Solution few = FaultTrees.solve(Trees.pressureTank(5e-6), 99, 3);
    assertEquals(5, few.cutSets().count());
    assertEquals(all.cutSets().sets().subList(0, 3), few.cutSets().sets());
    List<Double> sorted =
        new ArrayList<>(all.cutSets().sets().stream().map(s -> s.probability()).toList());
    sorted.sort((a, b) -> Double.compare(b, a));
    assertEquals(sorted, all.cutSets().sets().stream().map(s -> s.probability()).toList());
  }

  @Test
  void nuisancesCountAsFalseAndAppearInNoSet() {
    Trees trees = Trees.start().event("a", 0.2).gate("g", Join.OR, "a", "n");
    FaultTree drawn = trees.top("g");
    drawn.events().put("n", BasicEvent.nuisance("n", "wrong object"));
    Solution solved = FaultTrees.solve(drawn, 9);
    assertEquals(0.2, solved.probability());
    assertEquals(1, solved.cutSets().count());
    assertEquals(1, solved.importance().size());
    assertThrows(IllegalArgumentException.class, () -> new BasicEvent("n", "n", 0.1, true));
  }

  @Test
  void anEventThatNeverHappensLeavesRatiosUndefined() {
    FaultTree tree = Trees.start().event("a", 0).gate("g", Join.OR, "a").top("g");
    Solution.Importance only = FaultTrees.solve(tree, 9).importance().get(0);
    assertEquals(1, only.birnbaum());
    assertTrue(Double.isNaN(only.riskAchievementWorth()));
  }

  @Test
  void everyFlawIsToldAtOnce() {
    FaultTree tree =
        Trees.start()
            .event("a", 0.1)
            .event("b", 0.1)
            .event("both", 0.1)
            .gate("both", Join.OR, "a")
            .gate("c1", Join.OR, "c2")
            .gate("c2", Join.AND, "a", "c1")
            .gate("unknown", Join.OR, "a", "nowhere")
            .atLeast("many", 3, "a", "b")
            .atLeast("few", 0, "a", "b")
            .gate("not", Join.NOT, "a", "b")
            .gate("none", Join.OR)
            .gate("twice", Join.OR, "a", "a")
            .top("absent");
    List<String> told =
        FaultTrees.problems(tree, id -> "x.yaml " + id).stream().map(Problem::line).toList();
    String all = String.join("\n", told);
    for (String expected :
        List.of(
            "x.yaml absent: top 'absent' is neither a gate nor an event",
            "x.yaml both: 'both' is both a gate and an event",
            "x.yaml c1: gate feeds itself: c1 → c2 → c1",
            "x.yaml unknown: input 'nowhere' is neither a gate nor an event",
            "x.yaml many: at least 3 of 2 inputs",
            "x.yaml few: at least 0 of 2 inputs",
            "x.yaml not: not-gate with 2 inputs",
            "x.yaml none: gate without inputs",
            "x.yaml twice: input 'a' stands twice")) {
      assertTrue(all.contains(expected), expected + " is missing in\n" + all);
    }
    assertEquals(9, told.size(), all);
    assertThrows(BadInput.class, () -> FaultTrees.solve(tree, 9));
  }

  @ParameterizedTest
  @CsvSource({"1000, 0", "1001, 1", "200000, 1"})
  void chainsOfGatesAreHeldToTheirDepth(int gates, int flaws) {
    Trees trees = Trees.start().event("a", 0.1);
    for (int g = 0; g < gates; g++) {
      trees.gate("g" + g, Join.OR, g + 1 < gates ? "g" + (g + 1) : "a");
    }
    FaultTree tree = trees.top("g0");
    List<Problem> problems = FaultTrees.problems(tree, id -> id);
    assertTrue(flaws == 0 ? problems.isEmpty() : !problems.isEmpty());
    if (flaws == 0) {
      assertEquals(0.1, FaultTrees.solve(tree, 9).probability(), ROUNDING);
    }
  }

  @ParameterizedTest
  @CsvSource({"OR, 1, 3000", "AND, 3000, 1"})
  void theLargestTreesAreSolved(Join join, int order, long sets) {
    Trees trees = Trees.start();
    String[] ids = new String[3000];
    double expected = 1;
    for (int e = 0; e < ids.length; e++) {
      ids[e] = "e" + e;
      double p = join == Join.OR ? 1e-4 : 0.9999;
      trees.event(ids[e], p);
      expected *= 0.9999;
    }
    Solution solved = FaultTrees.solve(trees.gate("g", join, ids).top("g"), 9999);
    double thousandsOfRoundings = 1e-11;
    assertEquals(
        join == Join.OR ? 1 - expected : expected, solved.probability(), thousandsOfRoundings);
    assertEquals(Map.of(order, sets), solved.cutSets().byOrder());
  }

  @Test
  void gatesOverTheSameThreeThousandEventsAreJoinedWithoutExhaustingTheStack() {
    Trees trees = Trees.start();
    String[] ids = new String[3000];
    for (int e = 0; e < ids.length; e++) {
      ids[e] = "e" + e;
      trees.event(ids[e], 1e-4);
    }
    FaultTree tree =
        trees
            .gate("any", Join.OR, ids)
            .atLeast("two", 2, ids)
            .gate("none", Join.NOT, "any")
            .gate("t", Join.OR, "two", "none")
            .top("t");
    double none = Math.pow(0.9999, 3000);
    double one = 3000 * 1e-4 * Math.pow(0.9999, 2999);
    assertEquals(1 - one, FaultTrees.solve(tree, 2).probability(), 1e-11);
    FaultTree both = new FaultTree("b", tree.gates(), tree.events());
    both.gates().put("b", new FaultTree.Gate("b", "b", Join.AND, 0, List.of("any", "two")));
    assertEquals(1 - none - one, FaultTrees.solve(both, 2).probability(), 1e-11);
  }

  @Test
  void countsOfSetsDoNotOverflow() {
    Trees trees = Trees.start();
    String[] rows = new String[20];
    for (int r = 0; r < rows.length; r++) {
      String[] row = new String[20];
      for (int c = 0; c < row.length; c++) {
        row[c] = "e" + r + "_" + c;
        trees.event(row[c], 0.01);
      }
      rows[r] = "r" + r;
      trees.gate(rows[r], Join.OR, row);
    }
    // 20^20 sets of order 20
    Solution solved = FaultTrees.solve(trees.gate("g", Join.AND, rows).top("g"), 99, 5);
    assertEquals(Map.of(20, Long.MAX_VALUE), solved.cutSets().byOrder());
    assertEquals(Long.MAX_VALUE, solved.cutSets().count());
    assertEquals(5, solved.cutSets().sets().size());
    assertEquals(Math.pow(1 - Math.pow(0.99, 20), 20), solved.probability(), 1e-25);
  }

  @Test
  void aDiagramThatGrowsBeyondItsLimitIsRefusedInWords() {
    NodeTable nodes = new NodeTable(10);
    BadInput bad =
        assertThrows(
            BadInput.class,
            () -> {
              for (int v = 0; v < 20; v++) {
                nodes.node(v, 0, 1);
              }
            });
    assertTrue(bad.problems().get(0).what().contains("more than 10 nodes"));
    assertEquals(10, nodes.size());
  }
}

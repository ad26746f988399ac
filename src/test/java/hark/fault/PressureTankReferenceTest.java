package hark.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Pressure tank: structure from Vesely et al., NUREG-0492, and NASA's Fault Tree Handbook with
 * Aerospace Applications (2002).
 */
class PressureTankReferenceTest {
  private static final double TEN_DIGITS = 5e-10;

  private final Solution solved = FaultTrees.solve(Trees.pressureTank(5e-6), 99);

  @Test
  void topProbabilityIsExact() {
    assertEquals(3.501334916e-5, solved.probability(), 3.5e-5 * TEN_DIGITS);
    // published with fewer digits
    assertEquals(3.5013348e-5, solved.probability(), 2e-12);
  }

  @Test
  void anotherRelayGivesTheOtherProbability() {
    double other = FaultTrees.solve(Trees.pressureTank(3e-5), 99).probability();
    assertEquals(3.501584875e-5, other, 3.5e-5 * TEN_DIGITS);
  }

  @Test
  void cutSetsAreTheFiveOfTheHandbook() {
    Set<Set<String>> sets = new HashSet<>();
    solved.cutSets().sets().forEach(set -> sets.add(new TreeSet<>(set.events())));
    Set<Set<String>> handbook =
        Set.of(Set.of("T"), Set.of("K2"), Set.of("S", "S1"), Set.of("S", "K1"), Set.of("S", "R"));
    assertEquals(handbook, sets);
    assertEquals(List.of("K2"), solved.cutSets().sets().get(0).events());
  }

  @Test
  void importanceIsThatOfAnIndependentComputation() {
    assertEquals(.856812, of("K2").fussellVesely(), 5e-7);
    assertEquals(.142798, of("T").fussellVesely(), 5e-7);
    assertEquals(3.85543e-4, of("S").fussellVesely(), 5e-10);
    assertEquals(28560.5, of("T").riskAchievementWorth(), 0.05);
    assertEquals(28560.5, of("K2").riskAchievementWorth(), 0.05);
    assertEquals(4.85505, of("S").riskAchievementWorth(), 5e-6);
    // worked by hand: what is left without K2 is T ∨ S·(S1 ∨ K1 ∨ R)
    double below = 1 - (1 - 3e-5) * (1 - 5e-6) * (1 - 1e-4);
    double withoutK2 = 5e-6 + 1e-4 * below * (1 - 5e-6);
    assertEquals(3.501334916e-5 / withoutK2, of("K2").riskReductionWorth(), 1e-8);
    // the independent computation gave 6.98383, rounded from fewer digits
    assertEquals(6.98383, of("K2").riskReductionWorth(), 2e-5);
    assertEquals(1.16659, of("T").riskReductionWorth(), 5e-6);
    assertEquals("K2", solved.importance().get(0).event());
  }

  private Solution.Importance of(String event) {
    return solved.importance().stream()
        .filter(i -> i.event().equals(event))
        .findFirst()
        .orElseThrow();
  }
}

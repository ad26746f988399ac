package hark.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;

/** Plans against the best of all plans, on cases small enough to try every one. */
class SearchTest {
  private static final int CASES = 400;

  /**
   * How far the worst of the cases stays below the best plan there is, as a share of its objective.
   */
  private static final double LARGEST_GAP = 0.07;

  /** Of a hundred cases so many are equal to the best plan. */
  private static final double EQUAL_SHARE = 0.97;

  private record Gaps(int equal, double largest, double mean) {}

  private static Gaps gaps(BiFunction<Search, PlanProblem, int[]> rule) {
    int equal = 0;
    double largest = 0;
    double sum = 0;
    for (int seed = 0; seed < CASES; seed++) {
      PlanProblem problem = SmallProblem.random(seed).problem();
      int[] choice = rule.apply(new Search(problem, Search.USUAL_WIDTH), problem);
      assertTrue(problem.effort().fits(choice, problem.limits()), "breaks a limit: case " + seed);
      double best = problem.objective(SmallProblem.best(problem));
      double gap = (best - problem.objective(choice)) / best;
      assertTrue(gap > -1e-9, "better than the best of all: case " + seed);
      equal += gap < 1e-9 ? 1 : 0;
      largest = Math.max(largest, gap);
      sum += gap;
    }
    return new Gaps(equal, largest, sum / CASES);
  }

  @Test
  void onSmallCasesTheCoverIsTheBestPlanOrNearlySo() {
    Gaps gaps = gaps((search, problem) -> search.cover(problem.nothing()));
    assertTrue(gaps.largest() < LARGEST_GAP, gaps.toString());
    assertTrue(gaps.equal() >= EQUAL_SHARE * CASES, gaps.toString());
  }

  @Test
  void lookingAheadIsNotWorseThanCoveringAndGoingForTheNextBestIs() {
    Gaps cover = gaps((search, problem) -> search.cover(problem.nothing()));
    Gaps ahead = gaps((search, problem) -> search.lookAhead(problem.nothing()));
    Gaps next = gaps((search, problem) -> search.nextBest(problem.nothing()));
    assertTrue(ahead.mean() <= cover.mean() + 1e-12, ahead + " against " + cover);
    assertTrue(next.mean() > 10 * cover.mean(), next + " against " + cover);
  }

  @Test
  void greedyListeningKeepsTheClassicalBound() {
    // Nemhauser, Wolsey, Fisher 1978 (from memory): greedy finds at least 1 − 1/e of the best plan
    // of
    // so many windows, for windows of equal cost and gains that only shrink
    for (int seed = 0; seed < CASES; seed++) {
      SmallProblem small = SmallProblem.random(seed);
      for (int w = 0; w < small.days.length; w++) {
        small.sessionHours[w] = 0;
        small.passHours[w] = 1;
        small.moves.get(w).replaceAll(move -> Move.listening());
      }
      small.limits = Limits.hours(3, 2);
      small.price = 0;
      PlanProblem problem = small.problem();
      int[] greedy = problem.nothing();
      new Search(problem, 0).extend(greedy);
      double best = problem.objective(SmallProblem.best(problem));
      assertTrue(problem.objective(greedy) >= (1 - 1 / Math.E) * best - 1e-9, "case " + seed);
    }
  }

  @Test
  void anHourThatIsNotWorthItsPriceIsNotPlanned() {
    float[][][] heard = {{{0.5f}}, {{0.001f}}};
    SmallProblem small = SmallProblem.of(new double[] {1}, heard, 1, 10);
    small.price = 0.01;
    PlanProblem problem = small.problem();
    int[] choice = new Search(problem, 5).cover(problem.nothing());
    assertEquals(0, choice[0]);
    assertEquals(-1, choice[1]);
  }
}

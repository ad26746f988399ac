package hark.plan;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Textbook cases of search and troubleshooting, asked of the planner itself. */
class TextbookReferenceTest {
  /**
   * Many small looks, each into one of the boxes; a look of effort {@code step} into the right box
   * detects with 1 − exp(−step).
   */
  private static double[] split(double[] prior, double effort, double step) {
    int looks = (int) Math.round(effort / step);
    float detects = (float) -Math.expm1(-step);
    float[][][] heard = new float[looks][prior.length][prior.length];
    for (float[][] window : heard) {
      for (int box = 0; box < prior.length; box++) {
        window[box][box] = detects;
      }
    }
    SmallProblem small = SmallProblem.of(prior, heard, step, effort);
    small.earlyDays = Double.POSITIVE_INFINITY;
    PlanProblem problem = small.problem();
    int[] choice = problem.nothing();
    new Search(problem, 0).extend(choice);
    double[] spent = new double[prior.length + 1];
    for (int box : choice) {
      spent[box] += step;
    }
    spent[prior.length] = problem.worth(choice, PlanProblem.VALUE).found();
    return spent;
  }

  @Test
  void effortIsSplitAsKoopmanAndStoneDo() {
    // z = max(0, ln(p/λ)): (.7,.3), E=2 → (1.42365,.57635), found .662833. Source: arithmetic from
    // the formula of Koopman and Stone for exponential detection
    double[] two = split(new double[] {0.7, 0.3}, 2, 0.01);
    double oneLook = 0.01 + 1e-9;
    assertArrayEquals(new double[] {1.42365, 0.57635, 0.662833}, two, oneLook);
    assertEquals(0.662833, two[2], 1e-4);
    // (.6,.3,.1), E=1.5 → (1.09657,.40343,0), .499184
    double[] three = split(new double[] {0.6, 0.3, 0.1}, 1.5, 0.01);
    assertArrayEquals(new double[] {1.09657, 0.40343, 0, 0.499184}, three, oneLook);
    assertEquals(0.499184, three[3], 1e-4);
  }

  @Test
  void troubleshootingGoesByChanceOverCost() {
    // A(.5, 10), B(.3, 2), C(.2, 1): best C, B, A, expected cost 7.6. Source: Heckerman, Breese,
    // Rommelse, CACM 38(3) 1995
    double[] cost = {10, 2, 1};
    float[][][] heard = {{{1, 0, 0}}, {{0, 1, 0}}, {{0, 0, 1}}};
    SmallProblem small = SmallProblem.of(new double[] {0.5, 0.3, 0.2}, heard, 0, 100);
    small.passHours = cost;
    small.earlyDays = Double.POSITIVE_INFINITY;
    PlanProblem problem = small.problem();
    Search search = new Search(problem, 0);
    int[] choice = problem.nothing();
    search.extend(choice);
    List<Integer> order = search.order().stream().map(step -> step[0]).toList();
    assertEquals(List.of(2, 1, 0), order);
    double expected = 0;
    double missed = 1;
    int[] begun = problem.nothing();
    for (int repair : order) {
      expected += missed * cost[repair];
      begun[repair] = 0;
      missed = 1 - problem.worth(begun, PlanProblem.VALUE).found();
    }
    assertEquals(7.6, expected, 1e-6);
  }

  @Test
  void aMissMovesBeliefAsBayesSays() {
    // (.5,.3,.2), POD .8 in the first box → (.1667,.5,.3333). Source: USCG Theory of Search 1996,
    // the arithmetic of POC after a miss
    float[][][] heard = {{{0.8f, 0, 0}}};
    SmallProblem small = SmallProblem.of(new double[] {0.5, 0.3, 0.2}, heard, 1, 1);
    double[] missed = small.problem().missed(new int[] {0}, PlanProblem.VALUE, 3);
    double sum = 0.5 * missed[0] + 0.3 * missed[1] + 0.2 * missed[2];
    assertArrayEquals(
        new double[] {0.16667, 0.5, 0.33333},
        new double[] {0.5 * missed[0] / sum, 0.3 * missed[1] / sum, 0.2 * missed[2] / sum},
        1e-4);
  }

  /** A hung computer that a reset brings back, and one that nothing brings back. */
  private static PlanProblem resets(double received) {
    float[][][] heard = new float[4][][];
    for (int w = 0; w < heard.length; w++) {
      heard[w] = new float[][] {{0, 0}, {0, 0}};
    }
    SmallProblem small = SmallProblem.of(new double[] {0.6, 0.4}, heard, 1, 100);
    for (List<Move> moves : small.moves) {
      moves.set(1, new Move(Move.Kind.COMMAND, 0.5, false, 0, 0, Move.listening().settles()));
    }
    small.earlyDays = Double.POSITIVE_INFINITY;
    small.commands =
        (sent, half) -> {
          // after the first reset that is received the first possibility sends in every window
          List<double[]> rows = new ArrayList<>();
          double left = 1;
          for (PlanProblem.Sent one : sent) {
            rows.add(new double[] {0.6 * left * received, one.window()});
            left *= 1 - received;
          }
          rows.add(new double[] {-0.6 * (1 - left), Integer.MAX_VALUE});
          double[] weight = rows.stream().mapToDouble(row -> row[0]).toArray();
          double[][] works = new double[weight.length][];
          Arrays.fill(works, new double[] {1});
          return new Rows(
              weight,
              works,
              (w, m) -> {
                float[] back = new float[weight.length];
                for (int r = 0; r < back.length; r++) {
                  back[r] = w > rows.get(r)[1] ? 0.9f : 0;
                }
                return back;
              });
        };
    return small.problem();
  }

  @Test
  void aSecondCommandIsWorthWhatTheFirstLeaves() {
    // by hand: received .5 each; after the first, windows 1…3 are left, after the second only 2 and
    // 3
    PlanProblem problem = resets(0.5);
    double after = 1 - Math.pow(0.1, 3);
    double once = problem.worth(new int[] {1, 0, 0, 0}, PlanProblem.VALUE).found();
    assertEquals(0.6 * 0.5 * after, once, 1e-6);
    double twice = problem.worth(new int[] {1, 1, 0, 0}, PlanProblem.VALUE).found();
    assertEquals(0.6 * (0.5 * after + 0.25 * (1 - Math.pow(0.1, 2))), twice, 1e-6);
  }

  @Test
  void commandsAreAddedWhileTheyAddAndListeningFollowsThem() {
    PlanProblem problem = resets(0.5);
    List<CommandChoice.Candidate> candidates = new ArrayList<>();
    for (int w = 0; w < 4; w++) {
      double alone = 0.6 * 0.5 * (1 - Math.pow(0.1, 3 - w));
      candidates.add(
          new CommandChoice.Candidate(
              new PlanProblem.Sent(w, 1), "reset", alone, 0, alone - 0.01 * w, 0.001));
    }
    Search search = new Search(problem, 5);
    int[] listening = search.cover(problem.nothing());
    assertArrayEquals(problem.nothing(), listening, "nothing can be heard without a command");
    int[] choice = new CommandChoice(problem, search, candidates, 0.2).with(listening);
    assertEquals(1, choice[0], "the earliest reset comes first");
    assertTrue(problem.sent(choice).size() >= 2, Arrays.toString(choice));
    assertTrue(choice[3] >= 0, "somebody listens afterwards");
    int[] none = new CommandChoice(problem, search, candidates, 0.0005).with(listening);
    assertEquals(0, problem.sent(none).size(), "nothing is sent above the hazard limit");
  }
}

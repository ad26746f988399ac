package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import hark.orbit.ReferenceTable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The weighting against worked Bayes examples: one member for each hypothesis, weighed by misses.
 */
class WeightsReferenceTest {
  private static final double ARITHMETIC = 1e-12;

  private static double[] posterior(double[] prior, double[] likelihood) {
    List<EventSet> sets = new ArrayList<>();
    List<Member> members = new ArrayList<>();
    for (int h = 0; h < prior.length; h++) {
      sets.add(new EventSet(h == 0 ? List.of() : List.of(h - 1), prior[h]));
      members.add(new Member(h, 0, 0, new double[0], 1, RadioTimeline.UNHARMED));
    }
    Population population = new Population(sets, members, List.of(), new Draws(Draws.GROUPS, 1, 1));
    return Weights.of(population, likelihood, Weights.NO_GROUP).set();
  }

  @Test
  void oneMissMovesTheWeightAsTheTextbookSays() {
    // (.5,.3,.2), POD of the first .8: p' = p(1 − POD)/(1 − Σ p·POD) = (.1667, .5, .3333). Source:
    // search theory after
    // Koopman and Stone, as in USCG Theory of Search 1996; arithmetic.
    double[] posterior = posterior(new double[] {0.5, 0.3, 0.2}, new double[] {1 - 0.8, 1, 1});
    double fourDigits = 5e-5;
    assertEquals(0.1667, posterior[0], fourDigits);
    assertEquals(0.5, posterior[1], fourDigits);
    assertEquals(0.3333, posterior[2], fourDigits);
  }

  @Test
  void repeatedMissesAgreeWithTheTable() {
    Map<String, List<Map<String, String>>> groups = new HashMap<>();
    for (Map<String, String> row : ReferenceTable.read("search/bayes.csv").rows()) {
      groups
          .computeIfAbsent(row.get("case") + row.get("misses"), key -> new ArrayList<>())
          .add(row);
    }
    assertFalse(groups.isEmpty());
    double[] varying = {1, 1, 1, 1};
    List<String> inOrder = groups.keySet().stream().sorted().toList();
    for (String key : inOrder) {
      List<Map<String, String>> rows = groups.get(key);
      double[] prior = column(rows, "prior");
      double[] pd = column(rows, "pd");
      double[] likelihood = new double[pd.length];
      for (int h = 0; h < pd.length; h++) {
        if (key.startsWith("constant")) {
          likelihood[h] = Math.pow(1 - pd[h], ReferenceTable.number(rows.get(h), "misses"));
        } else {
          varying[h] *= 1 - pd[h];
          likelihood[h] = varying[h];
        }
      }
      double[] found = posterior(prior, likelihood);
      double[] expected = column(rows, "posterior");
      for (int h = 0; h < found.length; h++) {
        assertEquals(expected[h], found[h], ARITHMETIC, key + " " + rows.get(h).get("hypothesis"));
      }
    }
  }

  private static double[] column(List<Map<String, String>> rows, String name) {
    return rows.stream().mapToDouble(row -> ReferenceTable.number(row, name)).toArray();
  }

  @Test
  void whatIsLeftOutKeepsItsShareAsRemainder() {
    List<EventSet> sets =
        List.of(
            new EventSet(List.of(), 0.7),
            new EventSet(List.of(0), 0.2),
            new EventSet(List.of(0, 1), 0.06));
    List<Member> members = new ArrayList<>();
    for (int h = 0; h < sets.size(); h++) {
      members.add(new Member(h, 0, 0, new double[h], 1, RadioTimeline.UNHARMED));
    }
    Population population = new Population(sets, members, List.of(), new Draws(Draws.GROUPS, 1, 1));
    // evidence says nothing: the remainder is what the priors leave, 1 − .96
    Weights weights = Weights.of(population, new double[] {0.5, 0.5, 0.5}, Weights.NO_GROUP);
    assertEquals(0.04, weights.remainder(), ARITHMETIC);
    assertEquals(0.7, weights.set()[0], ARITHMETIC);
  }
}

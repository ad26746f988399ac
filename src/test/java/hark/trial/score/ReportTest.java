package hark.trial.score;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures must stay inside their bands when beliefs are right and leave them when they are not. */
class ReportTest {
  private static final Report.Subject SUBJECT =
      new Report.Subject(
          "Test",
          14,
          1,
          "same",
          60,
          List.of("a", "b", "c"),
          List.of("load"),
          List.of("1", "2"),
          List.of("Here"));

  /**
   * Outcomes of invented campaigns.
   *
   * @param believed turns the true chance into what is believed
   * @param narrow ranks crowd at the ends when above 0: intervals are too narrow
   */
  private static List<Outcome> outcomes(
      long seed, int count, java.util.function.DoubleUnaryOperator believed, double narrow) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Outcome> outcomes = new ArrayList<>();
    for (int k = 1; k <= count; k++) {
      double[] after = new double[3];
      boolean[] begun = new boolean[3];
      double[] ranks = new double[3];
      for (int c = 0; c < 3; c++) {
        double chance = Math.pow(random.nextDouble(), 2 + c);
        begun[c] = random.nextDouble() < chance;
        after[c] = believed.applyAsDouble(chance);
        double[] noOrYes = {1 - after[c], after[c]};
        ranks[c] = Ranks.ofCategory(noOrYes, begun[c] ? 1 : 0, random.nextDouble());
      }
      double first = random.nextDouble();
      int object = random.nextDouble() < first ? 0 : 1;
      double[] objects = {first, 1 - first};
      double[] stations = {0.9};
      double place = random.nextDouble();
      double charge = place + narrow * (place < 0.5 ? -place : 1 - place);
      outcomes.add(
          new Outcome(
              k,
              3,
              20,
              1,
              1,
              0.4,
              false,
              new double[] {0.1, 0.1, 0.1},
              after,
              begun,
              0,
              objects,
              object,
              stations,
              new boolean[] {random.nextDouble() < 0.9},
              charge,
              new double[] {random.nextDouble()},
              List.of(new Outcome.OnsetRank(0, random.nextDouble())),
              ranks,
              Ranks.ofCategory(objects, object, random.nextDouble()),
              50,
              random.nextDouble()));
    }
    return outcomes;
  }

  private static Report report(List<Outcome> outcomes) {
    return Report.of(SUBJECT, outcomes, List.of());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void rightBeliefsStayInsideTheBands(long seed) {
    Report report = report(outcomes(seed, 1000, p -> p, 0));
    int byChance = 3; // of some forty figures, each outside once in a hundred trials
    assertTrue(report.figures().size() > 30, "figures " + report.figures().size());
    assertTrue(report.outside().size() <= byChance, report.outside().toString());
    assertTrue(report.causeGain().value() > 0);
  }

  @Test
  void tooSureBeliefsLeaveTheBands() {
    Report report = report(outcomes(1, 1000, p -> p > 0.5 ? Math.sqrt(p) : p * p, 0));
    assertTrue(has(report, Figure.What.RELIABILITY), "reliability must tell");
    assertTrue(has(report, Figure.What.RANKS), "ranks must tell");
  }

  @Test
  void beliefsThatAreTooHighAltogetherLeaveTheBands() {
    Report report = report(outcomes(1, 1000, p -> Math.min(1, 1.3 * p), 0));
    assertTrue(has(report, Figure.What.CALIBRATION), "the mean posterior must tell");
  }

  @Test
  void narrowIntervalsLeaveTheBands() {
    Report report = report(outcomes(1, 1000, p -> p, 0.3));
    assertTrue(
        report.outside().stream()
            .anyMatch(f -> f.what() == Figure.What.COVERAGE && f.of().startsWith("state")));
  }

  private static boolean has(Report report, Figure.What what) {
    return report.outside().stream().anyMatch(f -> f.what() == what);
  }

  /** Equal chances make the Poisson binomial the binomial distribution. */
  @Test
  void countsOfEqualChancesAreBinomial() {
    double[] same = new double[500];
    java.util.Arrays.fill(same, 0.13);
    assertArrayEquals(Bands.binomial(500, 0.13), Bands.counts(same));
  }

  @Test
  void aSureChanceLeavesNoRoom() {
    assertArrayEquals(new int[] {2, 2}, Bands.counts(new double[] {1, 0, 1, 0}));
  }

  @Test
  void ranksOfValuesCountWeightBelow() {
    double[] values = {1, 2, 3};
    double[] weights = {0.2, 0.3, 0.5};
    assertEquals(0.2, Ranks.ofValue(values, weights, 1.5, 0.7), 1e-12);
    assertEquals(0.2 + 0.7 * 0.3, Ranks.ofValue(values, weights, 2, 0.7), 1e-12);
  }

  @Test
  void bothFormsNameWhatLiesOutside() {
    Report report = report(outcomes(1, 1000, p -> Math.min(1, 1.3 * p), 0));
    String markdown = ReportText.markdown(report);
    assertTrue(markdown.contains("**outside**"), markdown);
    assertTrue(ReportText.json(report).contains("\"inside\" : false"));
  }
}

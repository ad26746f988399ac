package hark.trial.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FollowReportTest {
  private static final FollowReport.Subject SUBJECT =
      new FollowReport.Subject(
          "Test", 30, 1, "same", 5, List.of("somewhere"), List.of("hark", "every"), List.of());

  private static RuleRun run(String rule, boolean regained, double days, double hours) {
    return new RuleRun(rule, regained, days, hours, 1, 4, 2, 1, false, regained);
  }

  private static List<Followed> followed() {
    SplittableRandom random = new SplittableRandom(3);
    List<Followed> all = new ArrayList<>();
    for (int k = 1; k <= 200; k++) {
      double hours = 20 * random.nextDouble();
      boolean lost = k % 4 == 0;
      all.add(
          new Followed(
              k,
              0,
              5,
              2,
              List.of("charge_path"),
              List.of(
                  run("hark", !lost, lost ? 30 : 2, 0.5 * hours),
                  run("every", !lost && k % 4 != 1, lost ? 30 : 3, hours),
                  run("oracle", k % 8 != 0, 1, 0.5))));
    }
    return all;
  }

  @Test
  void campaignsNeverRegainedCountWithTheirWholeLength() {
    FollowReport report = FollowReport.of(SUBJECT, followed());
    FollowReport.Row plan = report.rules().get(0);
    assertEquals(0.75, plan.regained().value(), 1e-12);
    assertEquals(0.75 * 2 + 0.25 * 30, plan.days().value(), 1e-9);
    assertEquals(2, plan.medianDays(), 1e-12);
    assertEquals(0.125, report.none().value(), 1e-12);
  }

  /** Hours differ wildly between campaigns, their ratio never: pairing must see that. */
  @Test
  void whatIsTheSameInEveryCampaignHasNoInterval() {
    FollowReport report = FollowReport.of(SUBJECT, followed());
    FollowReport.Versus versus = report.against().get(0);
    assertEquals(0.5, versus.hours().value(), 1e-12);
    assertEquals(versus.hours().low(), versus.hours().high(), 1e-12);
    assertEquals(0.25, versus.moreRegained().value(), 1e-12);
    double binomial = 1.96 * Math.sqrt(0.25 * 0.75 / 200);
    double aSixthOfIt = 0.012;
    assertEquals(0.25 + binomial, versus.moreRegained().high(), aSixthOfIt);
    assertEquals(0.25 - binomial, versus.moreRegained().low(), aSixthOfIt);
  }

  @Test
  void theTableNamesEveryRule() {
    String text = FollowText.markdown(FollowReport.of(SUBJECT, followed()));
    assertTrue(text.contains("| hark |") && text.contains("| oracle |"));
    assertTrue(text.contains("hark against every"));
  }
}

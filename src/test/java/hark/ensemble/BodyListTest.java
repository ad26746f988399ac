package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The same possibilities under another prior: who keeps the draw, who loses it. */
class BodyListTest {
  private static final SmallCase CASE = new SmallCase();
  private static final BodyList LIST = CASE.diagnose().bodyList();

  private static BodyPrior prior(List<String> keys, Uncertain... numbers) {
    return new BodyPrior(keys, List.of(numbers), values -> CASE.bodies.model());
  }

  @Test
  void aNumberThatWasUncertainKeepsItsQuantile() {
    BodyPrior wider = prior(List.of("area", "soc"), Uncertain.of(1), new Uncertain.Uniform(0, 1));
    for (int body = 0; body < LIST.count(); body += 11) {
      double before = LIST.values(body, CASE.input().body()).get("soc");
      double quantile = (before - 0.55) / (0.95 - 0.55);
      Map<String, Double> after = LIST.values(body, wider);
      assertEquals(quantile, after.get("soc"), 1e-9);
      assertEquals(1, after.get("area"), "certain now: no draw is left");
    }
  }

  @Test
  void aNumberThatIsUncertainOnlyNowGetsDrawsOfItsOwn() {
    Uncertain whole = new Uncertain.Uniform(0, 1);
    BodyPrior more = prior(List.of("soc", "new"), whole, whole);
    TreeSet<Double> drawn = new TreeSet<>();
    for (int body = 0; body < LIST.count(); body++) {
      Map<String, Double> values = LIST.values(body, more);
      drawn.add(values.get("new"));
      assertNotEquals(values.get("soc"), values.get("new"));
    }
    TreeSet<Double> known = new TreeSet<>();
    for (int body = 0; body < LIST.count(); body++) {
      known.add(LIST.values(body, CASE.input().body()).get("area"));
    }
    assertEquals(known.size(), drawn.size(), "one for each draw, shared like the others");
    assertTrue(drawn.first() < 0.2 && drawn.last() > 0.8);
  }

  @Test
  void theSameNumbersGiveTheModelsOfTheDiagnosis() {
    BodyList.Models again = LIST.models(CASE.input().body());
    for (int body = 0; body < LIST.count(); body += 5) {
      assertEquals(
          LIST.models().of(body).battery().socAtSeparation(),
          again.of(body).battery().socAtSeparation());
    }
  }

  @Test
  void aSampleOfAllHasTheWeightsOfAll() {
    BodyList.Sample all = LIST.sample(1_000_000);
    assertEquals(1, Arrays.stream(all.weight()).sum(), 1e-9);
    for (int k = 0; k < all.count(); k++) {
      assertEquals(LIST.weight(all.body()[k]), all.weight()[k], 1e-3 * all.weight()[k]);
    }
  }

  @Test
  void aSmallerSampleFollowsTheWeightsToWithinOnePick() {
    int picks = 50;
    BodyList.Sample some = LIST.sample(picks);
    assertTrue(some.count() <= picks);
    assertEquals(1, Arrays.stream(some.weight()).sum(), 1e-9);
    double sum = 0;
    double kept = 0;
    int k = 0;
    for (int body = 0; body < LIST.count(); body++) {
      sum += LIST.weight(body);
      if (k < some.count() && some.body()[k] == body) {
        kept += some.weight()[k++];
      }
      assertEquals(sum, kept, 1.0 / picks, "up to body " + body);
    }
  }
}

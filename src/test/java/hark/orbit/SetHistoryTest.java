package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Sets of one object made from a path that is known, with errors that are known. */
class SetHistoryTest {
  private static final EarthModel EARTH = EarthModel.bundled();
  private static final StateSpread USUAL = new StateSpread(1.5, 2, 0.5);

  private static final ElementSet BASE =
      ElementSets.ofLines(
          "1 97311U 26731B   26280.58472222  .00000600  00000-0  14000-3 0    30",
          "2 97311  97.4100 180.0000 0011300  74.2000 305.0000 15.19210000   211");

  /** The same motion, said at a later epoch, running late by so much. */
  static ElementSet restated(ElementSet set, double days, double lateSeconds) {
    Trajectory path = Trajectory.of(set, EARTH);
    Instant epoch = path.instantAt(days * 86400);
    List<double[]> rows = new ArrayList<>();
    for (int i = 0; i <= 1440; i++) {
      double[] six = new double[6];
      path.teme(days * 86400 + 60.0 * i, six);
      rows.add(six);
    }
    MeanFit fit = MeanFit.of(epoch, new PathTable(0, 60, rows), set.bstar(), EARTH);
    ElementSet again =
        new ElementSet(set.objectId(), Optional.empty(), epoch, fit.mean(), "restated");
    return again.corrected(-lateSeconds / again.periodSeconds() * 360, 0, 1);
  }

  @Test
  void aSetThatSaysTheSameAgainIsNoStep() {
    SetStep step = SetHistory.step(BASE, restated(BASE, 3, 0), USUAL, EARTH);
    double fiveHundredths = 0.05;
    assertEquals(3, step.days(), 1e-6);
    assertEquals(0, step.lateSeconds(), fiveHundredths);
    assertEquals(0, step.crossMeters(), 300);
    assertFalse(step.isJump());
  }

  @Test
  void latenessComesBackFromSecondsToMinutes() {
    for (double late : new double[] {-240, -12, -1, 2.5, 30, 400}) {
      SetStep step = SetHistory.step(BASE, restated(BASE, 2, late), USUAL, EARTH);
      assertEquals(late, step.lateSeconds(), 0.05 + Math.abs(late) * 2e-3, "late " + late);
      // spread of a difference two days apart: √(2·1.5² + 4² + 2²) s
      assertEquals(step.lateSeconds() / Math.sqrt(24.5), step.sigmas(), 1e-9);
      assertEquals(Math.abs(late) > 5 * Math.sqrt(24.5), step.isJump(), "late " + late);
    }
  }

  @Test
  void aTurnedPlaneIsSeenAsideAndCountsAsAJump() {
    ElementSet turned = restated(BASE, 2, 0).corrected(0, 0.3, 1);
    SetStep step = SetHistory.step(BASE, turned, USUAL, EARTH);
    // 0.3° of node at 6886 km: up to 36 km aside, by latitude
    assertTrue(Math.abs(step.crossMeters()) < 37e3);
    assertEquals(Math.abs(step.crossMeters()) > 15e3 || Math.abs(step.sigmas()) > 5, step.isJump());
    double[] state = new double[6];
    Trajectory.of(BASE, EARTH).teme(2 * 86400, state);
    double latitude = Math.asin(state[2] / Trajectory.radius(state));
    double expected = Math.toRadians(0.3) * Trajectory.radius(state) * Math.cos(latitude);
    assertEquals(expected, Math.abs(step.crossMeters()), 0.1 * expected + 500);
  }

  @Test
  void setsThatErrAsPublishedKeepThePublishedSpreadAndWorseOnesWidenIt() {
    for (double scale : new double[] {0.2, 1, 3}) {
      SplittableRandom random = new SplittableRandom(42);
      List<ElementSet> sets = new ArrayList<>();
      // each set errs against the true motion by its own draw, independent of the others
      for (int i = 0; i <= 30; i++) {
        double sd = scale * SetHistory.spread(USUAL, 0.8) / Math.sqrt(2);
        double late =
            sd
                * Math.sqrt(-2 * Math.log(1 - random.nextDouble()))
                * Math.cos(2 * Math.PI * random.nextDouble());
        sets.add(restated(BASE, 0.01 + 0.8 * i, late));
      }
      SetScale found = SetScale.of(sets, USUAL, EARTH);
      double published = SetScale.PUBLISHED_STEPS;
      double expected = Math.sqrt((published + 30 * scale * scale) / (published + 30));
      assertEquals(expected, found.factor(), 0.25 * expected, "scale " + scale);
    }
  }

  @Test
  void aWrongMeanMotionIsTheDriftADay() {
    // 1e-5 of the mean motion: 0.864 s a day
    ElementSet fast = BASE.corrected(0, 0, 1 + 1e-5);
    List<ElementSet> sets = List.of(fast, restated(BASE, 2, 0));
    assertEquals(0.864, SetScale.of(sets, USUAL, EARTH).perDaySeconds(), 0.03);
  }

  @Test
  void aStateSaysNothingOfHowSetsForetell() {
    assertEquals(0, SetScale.of(List.of(BASE), USUAL, EARTH).steps());
    assertEquals(1, SetScale.of(List.of(BASE), USUAL, EARTH).factor(), 1e-12);
  }
}

package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The end of an orbit foretold from its first days, against the orbit flown to its end. */
class DecayTest {
  private static final EarthModel EARTH = EarthModel.bundled();
  private static final Instant START = Instant.parse("2026-10-06T00:00:00Z");

  private static double[] circular(double heightMeters) {
    double r = EarthModel.EQUATORIAL_RADIUS_METERS + heightMeters;
    double v = Math.sqrt(OrbitShape.MU / r);
    double tilt = Math.toRadians(51.6);
    return new double[] {r, 0, 0, 0, v * Math.cos(tilt), v * Math.sin(tilt)};
  }

  /** Sets of the first days of a flight. */
  private static List<ElementSet> sets(List<double[]> rows, DragBody body, int count) {
    List<ElementSet> sets = new ArrayList<>();
    for (int day = 0; day < count; day++) {
      List<double[]> one = rows.subList(1440 * day, 1440 * (day + 1) + 1);
      Instant epoch = START.plusSeconds(86400L * day);
      MeanFit fit = MeanFit.of(epoch, new PathTable(0, 60, one), body.bstar(), EARTH);
      sets.add(new ElementSet("x", Optional.empty(), epoch, fit.mean(), "flown"));
    }
    return sets;
  }

  @Test
  void theEndLiesInTheSpanForetoldFromFourDays() {
    for (double height : new double[] {300e3, 340e3}) {
      DragBody body = DragBody.of(1, 0.01);
      List<double[]> rows =
          new StateForces(START, EARTH).rows(0, circular(height), body, 60, 100 * 1440);
      double end = rows.size() / 1440.0;
      assertTrue(end < 99, "it comes down");
      Decay decay = Decay.of(sets(rows, body, 4), EARTH);
      assertTrue(decay.measured());
      double left = end - 3;
      assertTrue(
          decay.soonestDays() < left && left < decay.latestDays(),
          decay + " against " + left + " days");
    }
  }

  @Test
  void theRateIsThatOfTheFlight() {
    DragBody body = DragBody.of(1, 0.01);
    List<double[]> rows =
        new StateForces(START, EARTH).rows(0, circular(400e3), body, 60, 5 * 1440 + 1);
    List<ElementSet> sets = sets(rows, body, 4);
    double lost = height(rows, 0) - height(rows, 4 * 1440);
    Decay decay = Decay.of(sets, EARTH);
    assertEquals(lost / 4, decay.metersPerDay(), 0.1 * lost / 4);
    assertEquals(400e3, decay.heightMeters(), 12e3);
  }

  /** Mean distance from the centre over a revolution, m. */
  private static double height(List<double[]> rows, int from) {
    double sum = 0;
    for (int i = from; i < from + 92; i++) {
      sum += Trajectory.radius(rows.get(i)) / 92;
    }
    return sum;
  }

  @Test
  void withoutDragThereIsNoEnd() {
    ElementSet set =
        ElementSets.ofLines(
            "1 97311U 26731B   26280.58472222  .00000000  00000-0  00000-0 0    36",
            "2 97311  97.4100 180.0000 0011300  74.2000 305.0000 15.19210000   211");
    Decay decay = Decay.of(List.of(set), EARTH);
    assertFalse(decay.measured());
    assertTrue(Double.isInfinite(decay.soonestDays()));
  }
}

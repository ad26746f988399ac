package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The Sun in the frame that flies with the object, put together again from β and phase. */
class SunGeometryTest {
  private static final EarthModel EARTH = YearOrbits.EARTH;
  private static final ElementSet SET = YearOrbits.inclined("10000-3");

  private static SunGeometry day(ElementSet set) {
    return SunGeometry.along(Trajectory.of(set, EARTH), set.epoch(), 60, 1441);
  }

  @Test
  void phaseAndBetaGiveBackTheDirection() {
    double rounding = 1e-12;
    SunGeometry sun = day(SET);
    Trajectory trajectory = Trajectory.of(SET, EARTH);
    double[] s = new double[6];
    for (int k = 0; k < sun.size(); k += 7) {
      assertTrue(trajectory.teme(60.0 * k, s));
      double[] up = unit(new double[] {s[0], s[1], s[2]});
      double[] normal = unit(cross(up, new double[] {s[3], s[4], s[5]}));
      double[] ahead = cross(normal, up);
      double cosBeta = Math.sqrt(1 - sun.sinBeta()[k] * sun.sinBeta()[k]);
      double phase = sun.phaseRad()[k];
      for (int axis = 0; axis < 3; axis++) {
        double again =
            cosBeta * Math.cos(phase) * up[axis]
                - cosBeta * Math.sin(phase) * ahead[axis]
                + sun.sinBeta()[k] * normal[axis];
        assertEquals(sun.direction()[axis][k], again, rounding);
      }
    }
  }

  @Test
  void thePhaseRisesByATurnEachRevolution() {
    for (ElementSet set : List.of(SET, YearOrbits.dawnDusk("14000-3"))) {
      double[] phase = day(set).phaseRad();
      for (int k = 1; k < phase.length; k++) {
        assertTrue(phase[k] > phase[k - 1], set + " at " + k);
      }
      double turns = (phase[phase.length - 1] - phase[0]) / (2 * Math.PI);
      assertEquals(set.meanMotionRevPerDay(), turns, 0.05);
    }
  }

  /** Shadow lies about midnight: the middle of each eclipse has the phase of half a turn. */
  @Test
  void eclipsesAreCentredOnMidnight() {
    double oneDeg = 1;
    Trajectory trajectory = Trajectory.of(SET, EARTH);
    for (Eclipse eclipse : Eclipses.find(trajectory, SET.epoch(), SET.epoch().plusSeconds(20000))) {
      double middle =
          (trajectory.secondsAt(eclipse.penumbraEntry())
                  + trajectory.secondsAt(eclipse.penumbraExit()))
              / 2;
      SunGeometry there = SunGeometry.along(trajectory, trajectory.instantAt(middle), 60, 1);
      double deg = Math.toDegrees(SunGeometry.near(there.phaseRad()[0], Math.PI));
      assertEquals(180, deg, oneDeg);
    }
  }

  @Test
  void betaAtTheEpochIsThatOfTheYear() {
    double twentiethDeg = 0.05; // of the moment here, mean there
    for (ElementSet set : List.of(SET, YearOrbits.dawnDusk("14000-3"))) {
      double year = SunYear.of(set, EARTH, set.epoch(), 1).days().get(0).betaDeg();
      assertEquals(year, Math.toDegrees(Math.asin(day(set).sinBeta()[0])), twentiethDeg);
    }
  }

  @Test
  void theGridEndsWithTheElements() {
    double[] low = {51.64, 100, 0.001, 16.4};
    ElementSet set = YearOrbits.set("26080.50000000", low, "50000-2");
    Trajectory trajectory = Trajectory.of(set, EARTH);
    SunGeometry sun = SunGeometry.along(trajectory, set.epoch(), 60, 30 * 1440);
    assertTrue(sun.size() > 0 && sun.size() < 30 * 1440, "points " + sun.size());
    assertEquals(sun.size(), sun.direction()[2].length);
  }

  @Test
  void stepsTooLongToCountTurnsAreRefused() {
    Trajectory trajectory = Trajectory.of(SET, EARTH);
    assertThrows(
        IllegalArgumentException.class, () -> SunGeometry.along(trajectory, SET.epoch(), 3000, 10));
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double[] unit(double[] a) {
    double length = Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
    return new double[] {a[0] / length, a[1] / length, a[2] / length};
  }
}

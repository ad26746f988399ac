package hark.orbit;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.ShadowPart.Kind;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The closed forms of the shaded part of a circular orbit. */
class ShadowPartReferenceTest {
  private static final double RADIUS = 6378137;

  private static double part(Kind kind, double heightKm, double betaDeg) {
    double cap =
        ShadowPart.capRad(RADIUS, RADIUS + heightKm * 1000)
            + ShadowPart.tiltRad(kind, Sun.ASTRONOMICAL_UNIT_METERS);
    return ShadowPart.halfArcRad(cap, Math.toRadians(betaDeg)) / Math.PI;
  }

  @Test
  void allThreeShadowsAgreeWithTheTable() {
    double asPrinted = 1e-8;
    double oneMillionth = 1e-6;
    for (Map<String, String> row : ReferenceTable.read("eclipses/fraction_by_beta.csv").rows()) {
      double h = number(row, "h_km");
      double beta = number(row, "beta_deg");
      String what = h + " km, beta " + beta;
      assertEquals(number(row, "f_cyl_closed"), part(Kind.CYLINDER, h, beta), asPrinted, what);
      assertEquals(number(row, "f_cone_umbra"), part(Kind.UMBRA, h, beta), oneMillionth, what);
      assertEquals(
          number(row, "f_cone_umbra_plus_penumbra"),
          part(Kind.PENUMBRA, h, beta),
          oneMillionth,
          what);
    }
  }

  /**
   * Computed by an independent script from the closed form: height km, β* °, fraction at 0, 30,
   * 60°.
   */
  @Test
  void theCylinderHasTheScriptsLimitsAndFractions() {
    double[][] script = {
      {400, 70.218, .39010, .37220, .26333},
      {500, 68.019, .37788, .35773, .23072},
      {600, 66.067, .36704, .34482, .19873}
    };
    for (double[] row : script) {
      double cap = ShadowPart.capRad(RADIUS, RADIUS + row[0] * 1000);
      assertEquals(row[1], Math.toDegrees(cap), 5e-4);
      for (int k = 0; k < 3; k++) {
        assertEquals(row[2 + k], part(Kind.CYLINDER, row[0], 30 * k), 5e-6);
      }
      assertEquals(0, part(Kind.CYLINDER, row[0], row[1] + 0.001));
      assertTrue(part(Kind.CYLINDER, row[0], row[1] - 0.001) > 0);
    }
  }

  /** Periods min of circles, from the same script; flattening changes them by a thousandth. */
  @Test
  void periodsOfCirclesGiveTheirHeights() {
    double tenKm = 10e3;
    double twoThousandths = 2e-3;
    double[][] script = {{400, 92.560}, {500, 94.616}, {600, 96.687}};
    for (double[] row : script) {
      double[] orbit = {60, 0, 0.0001, 1440 / row[1]};
      ElementSet set = YearOrbits.set("26080.50000000", orbit, YearOrbits.NO_DRAG);
      SunDay day = SunYear.of(set, YearOrbits.EARTH, set.epoch(), 1).days().get(0);
      assertEquals(row[0] * 1000, day.heightMeters(), tenKm);
      assertEquals(60 * row[1], day.periodSeconds(), twoThousandths * 60 * row[1]);
    }
  }
}

package hark.orbit;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The shadowed part of circular orbits against closed form. */
class ShadowReferenceTest {
  private static final double RADIUS_KM = 6378.137;

  /** A day on which the Sun is one astronomical unit away. */
  private static final double UNIX_SECONDS =
      Trajectory.between(Instant.EPOCH, Instant.parse("2026-04-04T00:00:00Z"));

  private static final double TWENTY_MILLIONTHS = 2e-5;

  @Test
  void conesShadeThePartOfTheOrbitInTheTable() {
    int compared = 0;
    for (Map<String, String> row : ReferenceTable.read("eclipses/fraction_by_beta.csv").rows()) {
      double h = number(row, "h_km");
      double beta = number(row, "beta_deg");
      String what = "h " + h + " beta " + beta;
      double umbra = fraction(h, beta, -1);
      double both = fraction(h, beta, 1);
      assertEquals(number(row, "f_cone_umbra"), umbra, TWENTY_MILLIONTHS, what + " umbra");
      assertEquals(
          number(row, "f_cone_umbra_plus_penumbra"), both, TWENTY_MILLIONTHS, what + " penumbra");
      compared++;
    }
    assertTrue(compared > 100, "rows " + compared);
  }

  /** Values of a cylinder, computed from the closed form by an independent script. */
  @Test
  void theCylinderLiesBetweenTheCones() {
    double[][] published = {
      {400, 0, .39010}, {400, 30, .37220}, {400, 60, .26333},
      {500, 0, .37788}, {500, 30, .35773}, {500, 60, .23072},
      {600, 0, .36704}, {600, 30, .34482}, {600, 60, .19873}
    };
    for (double[] row : published) {
      double umbra = fraction(row[0], row[1], -1);
      double both = fraction(row[0], row[1], 1);
      assertTrue(umbra < row[2] && row[2] < both, row[0] + " km, beta " + row[1]);
      assertEquals(row[2], (umbra + both) / 2, 2e-4);
    }
  }

  /** Part of a circular orbit behind the limb: side −1 umbra, +1 umbra and penumbra. */
  private static double fraction(double heightKm, double betaDeg, int side) {
    double r = (RADIUS_KM + heightKm) * 1000;
    double[] sun = new double[3];
    Sun.position(UNIX_SECONDS, sun);
    double d = Math.sqrt(sun[0] * sun[0] + sun[1] * sun[1] + sun[2] * sun[2]);
    double[] s = {sun[0] / d, sun[1] / d, sun[2] / d};
    double across = Math.hypot(s[0], s[1]);
    double[] p = {-s[1] / across, s[0] / across, 0};
    double[] q = {-s[2] * p[1], s[2] * p[0], s[0] * p[1] - s[1] * p[0]};
    double beta = Math.toRadians(betaDeg);
    Shadow shadow = Shadow.ofSphere();
    DoubleUnaryOperator margin =
        angle -> {
          double[] at = new double[3];
          for (int i = 0; i < 3; i++) {
            double noon = Math.cos(beta) * s[i] - Math.sin(beta) * q[i];
            at[i] = r * (Math.cos(angle) * noon + Math.sin(angle) * p[i]);
          }
          shadow.look(UNIX_SECONDS, at);
          return shadow.marginRad() - side * shadow.sunRadiusRad();
        };
    if (margin.applyAsDouble(Math.PI) >= 0) {
      return 0;
    }
    return 1 - Roots.between(margin, 0, Math.PI, 1e-10) / Math.PI;
  }
}

package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.OrbitLifetime.Activity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrbitLifetimeReferenceTest {
  /**
   * MSISE-90, mean activity (F10.7 = 140, Ap = 15), total density as tabulated in the annex of
   * ECSS-E-10-04A, kg/m³. Within a third: that is what the simple law claims and what a life needs.
   */
  @ParameterizedTest
  @CsvSource({"200, 2.91e-10", "300, 2.58e-11", "400, 3.89e-12", "500, 7.30e-13", "600, 1.56e-13"})
  void densityIsThatOfTheStandardWithinAThird(double kilometers, double kilogramsPerCubicMeter) {
    double density = OrbitLifetime.density(1e3 * kilometers, Activity.MEAN);
    double aThird = 1 / 3.0 * kilogramsPerCubicMeter;
    assertEquals(kilogramsPerCubicMeter, density, aThird);
  }

  private static double sphereDays(double kilometers, double diameterMeters, double kilograms) {
    double area = Math.PI * diameterMeters * diameterMeters / 4;
    double drag = OrbitLifetime.DRAG_COEFFICIENT * area / kilograms;
    return new OrbitLifetime(1e3 * kilometers, drag).days(new Activity(185, 15));
  }

  /**
   * Starshine 3, a sphere of 37 inches and 91 kg at 470 km: 29 September 2001 to 22 January 2003,
   * 480 days (US Office of Naval Research, page on the satellite). The mean flux of those months,
   * about 185, is from memory.
   */
  @Test
  void aSphereLaunchedNearSolarMaximumLivesAsLongAsItDidWithinAThird() {
    assertEquals(480, sphereDays(470, 0.94, 91), 160);
  }

  /**
   * Starshine 1, a sphere of 0.48 m and 39 kg at 387 km: 5 June 1999 to 18 February 2000, 258 days;
   * mean flux about 160 (orbit and flux from memory). Within a half.
   */
  @Test
  void aSphereLetGoFromAShuttleLivesAsLongAsItDidWithinAHalf() {
    double area = Math.PI * 0.48 * 0.48 / 4;
    double drag = OrbitLifetime.DRAG_COEFFICIENT * area / 39;
    double days = new OrbitLifetime(387e3, drag).days(new Activity(160, 12));
    assertEquals(258, days, 129);
  }

  @Test
  void moreDragAndAMoreActiveSunEndItSooner() {
    OrbitLifetime body = new OrbitLifetime(480e3, 0.02);
    assertTrue(body.days(Activity.HIGH) < body.days(Activity.MEAN));
    assertTrue(body.days(Activity.MEAN) < body.days(Activity.LOW));
    double twice = new OrbitLifetime(480e3, 0.04).days(Activity.MEAN);
    assertEquals(body.days(Activity.MEAN) / 2, twice, 1e-9 * twice);
  }

  @Test
  void whatHardlySinksIsNotFollowedForEver() {
    assertEquals(
        OrbitLifetime.MOST_DAYS, new OrbitLifetime(1200e3, 0.01).days(Activity.HIGH), 1e-9);
    assertEquals(0, new OrbitLifetime(150e3, 0.01).days(Activity.HIGH));
    assertThrows(IllegalArgumentException.class, () -> new OrbitLifetime(500e3, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new OrbitLifetime(-1, 0.01));
  }
}

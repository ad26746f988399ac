package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.link.LinkBudget;
import hark.station.HorizonMask;
import hark.station.Look;
import hark.station.Station;
import org.junit.jupiter.api.Test;

/**
 * A rotator near the zenith against a hand computation. The object comes from the north, passes
 * straight overhead at 0 s and goes south, half a degree a second: its azimuth jumps by 180°.
 */
class KeyholeTest {
  private static final double RATE = 4;

  private static PassGeometry overhead() {
    Look[] looks = new Look[20];
    for (int k = 0; k < looks.length; k++) {
      double seconds = -94.5 + 10 * k;
      double elevation = 90 - 0.5 * Math.abs(seconds);
      looks[k] = new Look(seconds < 0 ? 0 : 180, elevation, 600_000, 0);
    }
    return new PassGeometry(-94.5, 10, looks, HorizonMask.flat(5));
  }

  private static double offAxisDeg(PassGeometry path, double seconds) {
    PassGeometry.Point there = new PassGeometry.Point();
    PassGeometry.Point aim = new PassGeometry.Point();
    path.at(seconds, there);
    path.aimAt(seconds, aim);
    return there.angleDeg(aim);
  }

  @Test
  void theAntennaLagsBehindTheJumpAsTheSphereSays() {
    PassGeometry path = overhead().steeredBy(new Station.Rotator(RATE, true));
    // 20 s after the zenith: 10° from it, 80° turned of the 180°, so 100° of azimuth to go.
    // cos θ = sin²80° + cos²80°·cos 100° = 0.9646, θ = 15.3°
    double hand =
        Math.toDegrees(
            Math.acos(
                Math.pow(Math.sin(Math.toRadians(80)), 2)
                    + Math.pow(Math.cos(Math.toRadians(80)), 2) * Math.cos(Math.toRadians(100))));
    double twoStepsOfTheRotator = 0.7;
    assertEquals(15.3, hand, 0.05);
    assertEquals(hand, offAxisDeg(path, 20), twoStepsOfTheRotator);
    // 12·(15.3/20)² = 7.0 dB for a beam of 20°
    double loss = LinkBudget.pointingLossDb(offAxisDeg(path, 20), 20);
    assertEquals(7.0, loss, 0.7);
  }

  @Test
  void itIsBackOnThePathWhenHalfARoundIsDone() {
    PassGeometry path = overhead().steeredBy(new Station.Rotator(RATE, true));
    assertEquals(0, offAxisDeg(path, -10), 0.01, "before the zenith");
    assertTrue(offAxisDeg(path, 35) > 5, "45 s are needed for 180°");
    assertEquals(0, offAxisDeg(path, 48), 0.01, "after them");
  }

  @Test
  void withoutAKeyholeOrFastEnoughNothingIsLost() {
    PassGeometry path = overhead();
    assertSame(path, path.steeredBy(new Station.Rotator(RATE, false)));
    assertSame(path, path.steeredBy(new Station.Rotator(181, true)));
  }
}

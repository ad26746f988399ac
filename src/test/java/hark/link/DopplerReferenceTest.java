package hark.link;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.ReferenceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DopplerReferenceTest {
  @Test
  void shiftFollowsTheTableToFirstOrder() {
    for (var row : ReferenceTable.read("link/doppler.csv").rows()) {
      double hz = number(row, "freq_hz");
      double shift = Doppler.shiftHz(hz, 1e3 * number(row, "range_rate_kms"));
      assertEquals(number(row, "downlink_first_order_hz"), shift, 1e-6);
      double secondOrderHz = 0.3 * hz / 437e6;
      assertEquals(number(row, "relativistic_radial_hz"), shift, secondOrderHz);
    }
  }

  @Test
  void receivesHighWhileItApproachesAndLowAfterwards() {
    for (var row : ReferenceTable.read("link/circular_overhead.csv").rows()) {
      double shift = Doppler.shiftHz(437e6, 1e3 * number(row, "range_rate_kms"));
      double time = number(row, "t_s");
      assertTrue(time == 0 ? shift == 0 : Math.signum(shift) == -Math.signum(time), row.toString());
    }
  }

  @ParameterizedTest
  @CsvSource({"145.9, 3.40, 0.005", "437, 10.18, 0.005", "2400, 55.9, 0.05"})
  void largestShiftOfACircularOrbitAt550KilometresIsThePublishedOne(
      double mhz, double khz, double roundingKhz) {
    double earthRadius = 6378.137e3;
    double radius = earthRadius + 550e3;
    double speed = Math.sqrt(3.986004418e14 / radius);
    double rangeRateAtHorizon = -speed * earthRadius / radius;
    assertEquals(khz, Doppler.shiftHz(mhz * 1e6, rangeRateAtHorizon) / 1e3, roundingKhz);
  }
}

package hark.link;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import hark.orbit.ReferenceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnergyDetectorReferenceTest {
  private static final double TEN_DIGITS = 1e-9;

  @Test
  void marcumFunctionFollowsTheTable() {
    for (var row : ReferenceTable.read("link/marcum_q.csv").rows()) {
      double ours =
          EnergyDetector.marcumQ((int) number(row, "m"), number(row, "a"), number(row, "b"));
      assertEquals(number(row, "q_integral"), ours, 1e-10, row.toString());
    }
  }

  @Test
  void detectionOfASteadySignalFollowsTheTable() {
    for (var row : ReferenceTable.read("link/energy_detector_pd.csv").rows()) {
      double falseAlarm = number(row, "pfa");
      int looks = (int) number(row, "n_looks");
      assertEquals(
          number(row, "threshold_chi2"), EnergyDetector.threshold(falseAlarm, looks), 1e-7);
      double ours = EnergyDetector.probability(falseAlarm, looks, number(row, "snr_db_per_look"));
      assertEquals(number(row, "pd_steady_poisson_sum"), ours, TEN_DIGITS, row.toString());
    }
  }

  @Test
  void urkowitzDetectorFollowsTheTable() {
    for (var row : ReferenceTable.read("link/urkowitz.csv").rows()) {
      double ours =
          EnergyDetector.urkowitz(
              number(row, "pfa"), (int) number(row, "TW"), number(row, "E_over_N0_db"));
      assertEquals(number(row, "pd"), ours, TEN_DIGITS, row.toString());
    }
  }

  @Test
  void requiredSignalFollowsTheTable() {
    for (var row : ReferenceTable.read("link/required_snr.csv").rows()) {
      double ours =
          EnergyDetector.requiredSnrDb(
              number(row, "pfa"), (int) number(row, "n_looks"), number(row, "pd"));
      assertEquals(number(row, "snr_db_exact"), ours, 1e-6, row.toString());
    }
  }

  @ParameterizedTest
  @CsvSource({
    // square law; 13.18349 dB is published for one look (radar texts), the others computed
    "0.9, 1e-6, 1, 13.18349",
    "0.9, 1e-6, 10, 5.267",
    "0.9, 1e-6, 100, -1.257",
    "0.5, 1e-6, 1, 11.243",
    "0.9, 1e-4, 1, 11.749"
  })
  void requiredSignalIsThePublishedOne(double pd, double pfa, int looks, double snrDb) {
    assertEquals(snrDb, EnergyDetector.requiredSnrDb(pfa, looks, pd), 0.0006);
  }

  @ParameterizedTest
  @CsvSource({"8, .2708", "10, .6161", "12, .9251"})
  void oneLookAtOneFalseAlarmInTenThousand(double snrDb, double pd) {
    assertEquals(pd, EnergyDetector.probability(1e-4, 1, snrDb), 5e-5);
  }

  @ParameterizedTest
  @CsvSource({"10, 12, .6698", "10, 14, .9586", "100, 16, .6651"})
  void urkowitzValues(int timeBandwidth, double energyDb, double pd) {
    // Urkowitz, Proc. IEEE 55(4), 1967, evaluated exactly
    assertEquals(pd, EnergyDetector.urkowitz(1e-3, timeBandwidth, energyDb), 5e-5);
  }
}

package hark.link;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.ReferenceTable;
import hark.station.Station.Polarisation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinkBudgetReferenceTest {
  private static final double TABLE_DB = 1e-5;

  @ParameterizedTest
  @CsvSource({
    "145.9, 1000, 135.68",
    "437, 500, 139.19",
    "437, 1000, 145.21",
    "437, 2000, 151.23",
    "2400, 1000, 160.00"
  })
  void freeSpaceLossIsThatOfItuRP525(double mhz, double km, double lossDb) {
    // ITU-R P.525-5: 32.4 + 20 log f + 20 log d, whose constant is rounded down by 0.05 dB
    double roundedConstantDb = 0.06;
    double ours = LinkBudget.freeSpaceLossDb(mhz * 1e6, km * 1e3);
    assertEquals(lossDb, ours, roundedConstantDb);
    assertEquals(32.4478 + 20 * Math.log10(mhz) + 20 * Math.log10(km), ours, 1e-4);
  }

  @Test
  void freeSpaceLossFollowsTheTable() {
    for (var row : ReferenceTable.read("link/fspl.csv").rows()) {
      double ours =
          LinkBudget.freeSpaceLossDb(number(row, "freq_hz"), 1e3 * number(row, "slant_km"));
      assertEquals(number(row, "fspl_db"), ours, TABLE_DB, row.toString());
    }
  }

  @Test
  void wholeBudgetsFollowTheTable() {
    for (var row : ReferenceTable.read("link/link_budget.csv").rows()) {
      double hz = number(row, "f_hz");
      double eirpDbm =
          Uplink.eirpDbm(number(row, "P_w"), number(row, "Gt_dbi")) - number(row, "tx_loss_db");
      assertEquals(number(row, "eirp_dbw") + 30, eirpDbm, TABLE_DB);
      double bitrate = number(row, "bitrate");
      double noise = LinkBudget.noisePowerDbm(number(row, "Tsys_k"), bitrate);
      double loss = LinkBudget.freeSpaceLossDb(hz, 1e3 * number(row, "range_km"));
      double misc = number(row, "misc_loss_db");
      double snr = LinkBudget.snrDb(eirpDbm, loss + misc, 0, number(row, "Gr_dbi"), noise);
      assertEquals(number(row, "EbN0_db"), snr, TABLE_DB);
      assertEquals(number(row, "CN0_dbhz"), snr + 10 * Math.log10(bitrate), TABLE_DB);
    }
  }

  @Test
  void noiseDensityAt290KelvinIsThePublishedOne() {
    // kT0 = -173.975 dBm/Hz
    assertEquals(-173.975, LinkBudget.noisePowerDbm(290, 1), 0.0005);
  }

  @Test
  void polarisationLosesHalfThePowerFromLinearToCircular() {
    assertEquals(
        3.01, LinkBudget.polarisationLossDb(Polarisation.LINEAR, Polarisation.RHCP), 0.001);
    assertEquals(
        3.01, LinkBudget.polarisationLossDb(Polarisation.LHCP, Polarisation.LINEAR), 0.001);
    assertEquals(0, LinkBudget.polarisationLossDb(Polarisation.RHCP, Polarisation.RHCP));
    assertEquals(20, LinkBudget.polarisationLossDb(Polarisation.RHCP, Polarisation.LHCP));
  }

  @Test
  void atmosphereGrowsTowardsTheHorizonAndNeverPassesItsCap() {
    assertEquals(0.05, LinkBudget.atmosphereLossDb(90), 1e-12);
    double before = 0;
    for (double elevation = 90; elevation >= -5; elevation -= 0.25) {
      double loss = LinkBudget.atmosphereLossDb(elevation);
      assertTrue(loss >= before && loss <= 1.5, "at " + elevation + "°: " + loss);
      before = loss;
    }
    assertEquals(1.5, before);
  }

  @Test
  void pointingLosesThreeDecibelsAtHalfTheBeamwidth() {
    assertEquals(3, LinkBudget.pointingLossDb(20, 40), 1e-12);
    assertEquals(3, LinkBudget.pointingLossDb(-20, 40), 1e-12);
    assertEquals(25, LinkBudget.pointingLossDb(170, 40), 1e-12);
  }

  @Test
  void aBurstsRecordsGiveTheSameAsTheirParts() {
    var burst = new LinkBudget.Burst(10, 437.2e6, 1200, Polarisation.LINEAR);
    var receiver = new LinkBudget.Receiver(12, 1500, 6, 40, Polarisation.RHCP);
    var geometry = new LinkBudget.Geometry(1e6, 30, 20);
    // by hand: 10 - (145.26 + 0.1 + 3.01) - 3 + 12 - (-166.839 + 30.792 + 6)
    assertEquals(0.68, LinkBudget.snrDb(burst, receiver, geometry), 0.01);
  }
}

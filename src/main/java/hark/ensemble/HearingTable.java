package hark.ensemble;

import hark.link.Detection;
import hark.link.Doppler;
import hark.link.LinkBudget;
import hark.station.AzimuthTable;
import hark.station.Station;
import java.util.List;

/**
 * What one hearing node would meet in one window under one way of listening, sampled every {@value
 * #STEP_SECONDS} s: level over noise and mistuning. Bodies only add their losses.
 */
final class HearingTable {
  static final double STEP_SECONDS = 10;

  private static final float BELOW_MASK = Float.NEGATIVE_INFINITY;

  private final double from;
  private final float[] snrDb;
  private final float[] offsetHz;
  private final float[] gate;
  private final double halfWidthHz;
  private final double bandwidthHz;

  private HearingTable(double from, int count, double halfWidthHz, double bandwidthHz) {
    this.from = from;
    this.snrDb = new float[count];
    this.offsetHz = new float[count];
    this.gate = new float[count];
    this.halfWidthHz = halfWidthHz;
    this.bandwidthHz = bandwidthHz;
  }

  /**
   * What a node is.
   *
   * @param lateSeconds the object comes so much later than predicted, s
   * @param radiatedDbm median over orientations, dBm
   * @param carrierErrorHz carrier minus nominal, Hz
   */
  record Node(int object, double lateSeconds, double radiatedDbm, double carrierErrorHz) {}

  static HearingTable of(
      SkyWindow window, Station station, BeaconRadio beacon, Listening listening, Node node) {
    int count = 2 + (int) Math.ceil((window.to() - window.from()) / STEP_SECONDS);
    HearingTable table =
        new HearingTable(window.from(), count, listening.windowHz(), beacon.bandwidthHz());
    PassGeometry real = window.paths().get(node.object());
    PassGeometry followed = window.paths().get(listening.tracked());
    Station.Receive receive = station.receive();
    double noiseDbm =
        LinkBudget.noisePowerDbm(receive.systemNoiseKelvin(), beacon.bandwidthHz())
            + listening.extraNoiseDb();
    double polarisationDb =
        LinkBudget.polarisationLossDb(beacon.polarisation(), receive.polarisation());
    double gainDbi = receive.gainDbi() + listening.extraGainDb();
    PassGeometry.Point there = new PassGeometry.Point();
    PassGeometry.Point aim = new PassGeometry.Point();
    for (int k = 0; k < count; k++) {
      double time = window.from() + k * STEP_SECONDS;
      real.at(time - node.lateSeconds(), there);
      if (there.aboveMaskDeg < 0) {
        table.snrDb[k] = BELOW_MASK;
        continue;
      }
      followed.at(time - listening.offsetSeconds(), aim);
      double elevation = there.elevationDeg();
      double pathDb =
          LinkBudget.freeSpaceLossDb(beacon.frequencyHz(), there.rangeMeters)
              + LinkBudget.atmosphereLossDb(elevation)
              + polarisationDb;
      double pointingDb = LinkBudget.pointingLossDb(there.angleDeg(aim), receive.beamwidthDeg());
      double noise = noiseDbm + noiseByAzimuth(receive.noiseByAzimuthDeg(), aim);
      table.snrDb[k] =
          (float) LinkBudget.snrDb(node.radiatedDbm(), pathDb, pointingDb, gainDbi, noise);
      double mistuned =
          Doppler.shiftHz(beacon.frequencyHz(), there.rangeRate)
              - Doppler.shiftHz(beacon.frequencyHz(), aim.rangeRate)
              + node.carrierErrorHz();
      table.offsetHz[k] = (float) mistuned;
      table.gate[k] = (float) Detection.inWindow(mistuned, table.halfWidthHz, table.bandwidthHz);
    }
    return table;
  }

  private static double noiseByAzimuth(List<double[]> rows, PassGeometry.Point aim) {
    if (rows.isEmpty()) {
      return 0;
    }
    return AzimuthTable.at(rows, aim.azimuthDeg());
  }

  /**
   * Level over noise at a time, dB, before the body's own losses; negative infinity below the mask.
   */
  double snrDbAt(double seconds) {
    double place = (seconds - from) / STEP_SECONDS;
    if (place < 0 || place > snrDb.length - 1) {
      return BELOW_MASK;
    }
    int k = Math.min(snrDb.length - 2, (int) place);
    float low = snrDb[k];
    float high = snrDb[k + 1];
    if (low == BELOW_MASK || high == BELOW_MASK) {
      return place - k < 0.5 ? low : high;
    }
    return low + (place - k) * (high - low);
  }

  /**
   * Share of the burst's band inside the band listened to at a time, 0…1, with the body's own
   * carrier shift.
   */
  double gateAt(double seconds, double shiftHz) {
    double place = (seconds - from) / STEP_SECONDS;
    int k = (int) Math.max(0, Math.min(snrDb.length - 1, Math.round(place)));
    return shiftHz == 0
        ? gate[k]
        : Detection.inWindow(offsetHz[k] + shiftHz, halfWidthHz, bandwidthHz);
  }
}

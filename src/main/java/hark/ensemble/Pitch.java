package hark.ensemble;

import java.util.List;

/**
 * A frequency measured at some time of a window: nominal carrier, its error, what befell the
 * transmitter, and the Doppler shift of the object at that time.
 *
 * @param hertz as measured
 * @param sdHertz give or take
 */
record Pitch(double hertz, double sdHertz) {
  /** Spread when none is written: a part in a million at 437 MHz, drift in the burst. Judged. */
  static final double USUAL_SD_HZ = 500;

  /** Frequencies of what is not ours may lie anywhere in so many Hz. Common practice. */
  static final double NOT_OURS_SPREAD_HZ = 20_000;

  /** Density of the frequency over the bursts that are met at a node, 1/Hz; 0 without any. */
  double density(Bursts bursts, HearingTable[] tables, List<BeaconRadio> beacons, int node) {
    double sum = 0;
    int met = 0;
    int first = 0;
    for (int s = 0; s < bursts.stretchEnd.length; s++) {
      int beacon = bursts.stretchBeacon[s];
      double apart = hertz - beacons.get(beacon).frequencyHz();
      for (int i = first; i < bursts.stretchEnd[s]; i++) {
        if (tables[beacon].gate(bursts, i, node) > 0) {
          double expected = tables[beacon].carrierHz(bursts, i, node);
          sum += Normal.density(apart, expected, sdHertz);
          met++;
        }
      }
      first = bursts.stretchEnd[s];
    }
    return met == 0 ? 0 : sum / met;
  }
}

package hark.ensemble;

import hark.link.Detector;
import java.util.Arrays;
import java.util.List;

/**
 * Mean levels of a member's bursts in a window at all nodes of one mode, worked out together
 * because they lie side by side.
 */
final class MetLevels {
  private final Bursts bursts;
  private final List<BeaconRadio> beacons;
  private final Detector[] steady;

  /** Loudest burst of each node, and the stretch that it lies in. */
  private final float[] best;

  private final int[] bestStretch;

  /** How many bursts count beside each other, by node. */
  private final float[] count;

  /** Levels; {@code tables} and {@code steady} detectors by beacon. */
  MetLevels(Bursts bursts, HearingTable[] tables, List<BeaconRadio> beacons, Detector[] steady) {
    this.bursts = bursts;
    this.beacons = beacons;
    this.steady = steady;
    int nodes = tables[0].nodes();
    float[] met = new float[bursts.count * nodes];
    best = new float[nodes];
    bestStretch = new int[nodes];
    Arrays.fill(best, HearingTable.FAR_BELOW);
    for (int s = 0, i = 0; s < bursts.stretchEnd.length; s++) {
      for (; i < bursts.stretchEnd[s]; i++) {
        tables[bursts.stretchBeacon[s]].met(bursts, i, met, i * nodes);
        for (int n = 0; n < nodes; n++) {
          float level = met[i * nodes + n];
          if (level > best[n]) {
            best[n] = level;
            bestStretch[n] = s;
          }
        }
      }
    }
    count = counts(met);
  }

  private float[] counts(float[] met) {
    float[] counts = new float[best.length];
    float[] perDb = new float[best.length];
    for (int n = 0; n < perDb.length; n++) {
      int beacon = bursts.stretchBeacon[bestStretch[n]];
      perDb[n] = (float) (1 / beacons.get(beacon).patternSdDb());
    }
    float[] row = new float[best.length];
    for (int i = 0; i < bursts.count; i++) {
      System.arraycopy(met, i * row.length, row, 0, row.length);
      Loudest.count(best, row, perDb, counts);
    }
    return counts;
  }

  /**
   * Density of the level that was read off the loudest burst noticed, at a node, 1/dB; 0 when none
   * is met above the mask and in the band.
   */
  double density(int node, double levelDb, double readSdDb) {
    if (best[node] <= HearingTable.FAR_BELOW) {
      return 0;
    }
    int beacon = bursts.stretchBeacon[bestStretch[node]];
    double sd = beacons.get(beacon).patternSdDb();
    return new Loudest(
            best[node], Math.max(1, count[node]), bursts.stretchCoherence[bestStretch[node]], sd)
        .density(levelDb, readSdDb, steady[beacon]);
  }
}

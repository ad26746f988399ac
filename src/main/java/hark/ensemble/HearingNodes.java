package hark.ensemble;

import java.util.List;
import java.util.SplittableRandom;

/**
 * The hearings of one group of bodies: which object it is, its along-track error, the transmitter's
 * power and frequency. A node is carried through all windows, or silences would be independent of
 * each other. Each object has the same number of nodes; their weights are its prior shared out
 * evenly.
 */
final class HearingNodes {
  final int count;
  final int[] object;
  final double[] weight;

  /** Along-track error in standard deviations of the set in use; positive comes late. */
  final double[] alongTrackZ;

  /** Quantile of radiated power, 0…1, the same for every beacon. */
  final double[] powerQuantile;

  /** Quantile of the carrier's error. */
  final double[] frequencyQuantile;

  HearingNodes(List<Candidate> candidates, int perObject, long seed, int group) {
    count = candidates.size() * perObject;
    object = new int[count];
    weight = new double[count];
    alongTrackZ = new double[count];
    powerQuantile = new double[count];
    frequencyQuantile = new double[count];
    for (int k = 0; k < candidates.size(); k++) {
      // the same quantiles for every object: differences between objects are then differences of
      // geometry
      SplittableRandom random = new SplittableRandom(seed * 7_368_787L + group * 104_729L + 5);
      double[] along = stratified(perObject, random);
      double[] power = stratified(perObject, random);
      double[] frequency = stratified(perObject, random);
      for (int q = 0; q < perObject; q++) {
        int node = k * perObject + q;
        object[node] = k;
        weight[node] = candidates.get(k).prior() / perObject;
        alongTrackZ[node] = Uncertain.StandardNormal.quantile(along[q]);
        powerQuantile[node] = power[q];
        frequencyQuantile[node] = frequency[q];
      }
    }
  }

  private static double[] stratified(int count, SplittableRandom random) {
    int[] order = Draws.permutation(count, random);
    double[] u = new double[count];
    for (int q = 0; q < count; q++) {
      u[q] = (order[q] + Math.min(1 - 1e-9, Math.max(1e-9, random.nextDouble()))) / count;
    }
    return u;
  }
}

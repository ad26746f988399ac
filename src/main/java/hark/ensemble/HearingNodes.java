package hark.ensemble;

/**
 * The hearings of one group of bodies: which object it is, its along-track error, the transmitter's
 * power and frequency. A node is carried through all windows, or silences would be independent of
 * each other.
 *
 * @param object index of the candidate, by node
 * @param weight prior weight, summing to 1 over the nodes
 * @param alongTrackZ along-track error in standard deviations of the set in use; positive comes
 *     late
 * @param powerQuantile quantile of radiated power, 0…1, the same for every beacon
 * @param frequencyQuantile quantile of the carrier's error
 * @param clockZ error of a station's clock in standard deviations, {@code [station][node]};
 *     positive is late
 * @param azimuthZ error of a station's azimuth in standard deviations, {@code [station][node]};
 *     positive is too far east
 */
record HearingNodes(
    int[] object,
    double[] weight,
    double[] alongTrackZ,
    double[] powerQuantile,
    double[] frequencyQuantile,
    double[][] clockZ,
    double[][] azimuthZ) {
  /** Room for so many. */
  static HearingNodes room(int count, int stations) {
    return new HearingNodes(
        new int[count],
        new double[count],
        new double[count],
        new double[count],
        new double[count],
        new double[stations][count],
        new double[stations][count]);
  }

  int count() {
    return object.length;
  }

  /** Copies a node of another set of nodes to a place in this one, with another weight. */
  void copy(HearingNodes from, int node, int to, double newWeight) {
    object[to] = from.object[node];
    weight[to] = newWeight;
    alongTrackZ[to] = from.alongTrackZ[node];
    powerQuantile[to] = from.powerQuantile[node];
    frequencyQuantile[to] = from.frequencyQuantile[node];
    for (int s = 0; s < clockZ.length; s++) {
      clockZ[s][to] = from.clockZ[s][node];
      azimuthZ[s][to] = from.azimuthZ[s][node];
    }
  }
}

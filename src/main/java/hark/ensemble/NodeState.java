package hark.ensemble;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Running likelihoods of one member at each node. A station's persistent health is summed out
 * exactly for each node: prior times likelihood of what it heard is kept for every mode apart.
 */
final class NodeState {
  private final HearingNodes nodes;

  /** Prior times likelihood by {@code [station][mode][node]}. */
  private final double[][][] joint;

  /** Their sums over the modes, {@code [station][node]}. */
  private final double[][] health;

  /** Prior weight times likelihood of each node. */
  private final double[] at;

  /** Work space. */
  private final double[] sum;

  NodeState(HearingNodes nodes, List<List<StationMode>> modes) {
    this.nodes = nodes;
    int count = nodes.count();
    at = nodes.weight().clone();
    sum = new double[count];
    joint = new double[modes.size()][][];
    health = new double[modes.size()][count];
    for (int s = 0; s < joint.length; s++) {
      joint[s] = new double[modes.get(s).size()][count];
      double all = 0;
      for (int m = 0; m < joint[s].length; m++) {
        Arrays.fill(joint[s][m], modes.get(s).get(m).prior());
        all += modes.get(s).get(m).prior();
      }
      Arrays.fill(health[s], all);
    }
  }

  /** Takes over another state of the same nodes and modes. */
  void copy(NodeState other) {
    System.arraycopy(other.at, 0, at, 0, at.length);
    for (int s = 0; s < joint.length; s++) {
      System.arraycopy(other.health[s], 0, health[s], 0, at.length);
      for (int m = 0; m < joint[s].length; m++) {
        System.arraycopy(other.joint[s][m], 0, joint[s][m], 0, at.length);
      }
    }
  }

  HearingNodes nodes() {
    return nodes;
  }

  /** What holds at every node alike. */
  void multiply(double likelihood) {
    for (int n = 0; n < at.length; n++) {
      at[n] *= likelihood;
    }
  }

  /** What depends on the node alone. */
  void multiplyNodes(IntToDoubleFunction likelihood) {
    for (int n = 0; n < at.length; n++) {
      at[n] *= likelihood.applyAsDouble(n);
    }
  }

  /** What depends on the health of a station alone, by mode. */
  void multiplyHealth(int station, double[] byMode) {
    Arrays.fill(sum, 0);
    for (int m = 0; m < byMode.length; m++) {
      scale(joint[station][m], byMode[m]);
      add(joint[station][m]);
    }
    renew(station);
  }

  /**
   * What depends on node and health of a station.
   *
   * @param byMode by {@code [mode][node]}; null for a mode with the same value at every node
   * @param otherwise that value
   */
  void multiply(int station, double[][] byMode, double otherwise) {
    if (otherwise == 1 && allNull(byMode)) {
      return;
    }
    Arrays.fill(sum, 0);
    for (int m = 0; m < byMode.length; m++) {
      double[] row = joint[station][m];
      double[] factor = byMode[m];
      if (factor == null) {
        scale(row, otherwise);
      } else {
        for (int n = 0; n < row.length; n++) {
          row[n] *= factor[n];
        }
      }
      add(row);
    }
    renew(station);
  }

  private static boolean allNull(double[][] rows) {
    for (double[] row : rows) {
      if (row != null) {
        return false;
      }
    }
    return true;
  }

  private static void scale(double[] row, double factor) {
    if (factor == 1) {
      return;
    }
    for (int n = 0; n < row.length; n++) {
      row[n] *= factor;
    }
  }

  private void add(double[] row) {
    for (int n = 0; n < row.length; n++) {
      sum[n] += row[n];
    }
  }

  private void renew(int station) {
    double[] before = health[station];
    for (int n = 0; n < at.length; n++) {
      at[n] = before[n] > 0 ? at[n] * (sum[n] / before[n]) : 0;
      before[n] = sum[n];
    }
  }

  /** The total if this were multiplied in, without doing so. */
  double totalIf(int station, double[][] byMode, double otherwise) {
    Arrays.fill(sum, 0);
    for (int m = 0; m < byMode.length; m++) {
      double[] row = joint[station][m];
      for (int n = 0; n < row.length; n++) {
        sum[n] += row[n] * (byMode[m] == null ? otherwise : byMode[m][n]);
      }
    }
    double total = 0;
    for (int n = 0; n < at.length; n++) {
      total += health[station][n] > 0 ? at[n] * (sum[n] / health[station][n]) : 0;
    }
    return total;
  }

  /** Prior weight times likelihood of a node. */
  double at(int node) {
    return at[node];
  }

  /** The same for all nodes; a copy. */
  double[] weights() {
    return at.clone();
  }

  double total() {
    double total = 0;
    for (double value : at) {
      total += value;
    }
    return total;
  }

  float[] shares() {
    double total = total();
    float[] shares = new float[at.length];
    for (int n = 0; n < shares.length; n++) {
      shares[n] = total > 0 ? (float) (at[n] / total) : 0;
    }
    return shares;
  }

  /** Chance that a station works as believed, by node. */
  float[] works(int station) {
    float[] works = new float[at.length];
    for (int n = 0; n < works.length; n++) {
      double all = health[station][n];
      works[n] = all > 0 ? (float) (joint[station][0][n] / all) : 0;
    }
    return works;
  }

  /** Chance of each mode of a station's health over all nodes; zeros when nothing is possible. */
  float[] modes(int station) {
    double total = total();
    float[] modes = new float[joint[station].length];
    if (!(total > 0)) {
      return modes;
    }
    for (int n = 0; n < at.length; n++) {
      double all = health[station][n];
      sum[n] = all > 0 ? at[n] / (total * all) : 0;
    }
    for (int m = 0; m < modes.length; m++) {
      double share = 0;
      for (int n = 0; n < at.length; n++) {
        share += sum[n] * joint[station][m][n];
      }
      modes[m] = (float) share;
    }
    return modes;
  }
}

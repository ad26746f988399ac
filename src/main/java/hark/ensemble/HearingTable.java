package hark.ensemble;

import hark.link.Detection;
import hark.link.Detector;
import java.util.Arrays;

/**
 * What hearing nodes would meet of one beacon in one window, under one way of listening and one
 * mode of the station's health, sampled every {@value #STEP_SECONDS} s: level over noise and
 * mistuning. Bodies only add their losses. Made by {@link HearingTables}. Samples of one time lie
 * side by side for all nodes, because a burst is asked of all of them.
 */
final class HearingTable {
  static final double STEP_SECONDS = 10;

  static final float BELOW_MASK = Float.NEGATIVE_INFINITY;

  static final float FAR_BELOW = -1e4f;

  /** A level so many widths below the threshold is not noticed: under 1e-9. */
  private static final double HOPELESS_WIDTHS = 6;

  private final int nodes;
  private final Met met;
  private final float[] snrDb;
  private final float[] levelDb;
  private final float[] offsetHz;
  private final float[] carrierHz;
  private final float[] gate;
  private final double lossDb;
  private final Band band;

  /** Whether the gate of any node is open for a carrier in place, by sample. */
  private final boolean[] open;

  /** Best level of any node, by sample. */
  private final float[] bestDb;

  /**
   * The band listened to.
   *
   * @param halfWidthHz of the band
   * @param bandwidthHz of the burst
   * @param attended share of the minutes in which somebody or something listens, 0…1
   */
  record Band(double halfWidthHz, double bandwidthHz, double attended) {
    /** Share of a burst so far from the middle that counts, 0…1. */
    double gate(double offsetHz) {
      return attended * Detection.inWindow(offsetHz, halfWidthHz, bandwidthHz);
    }
  }

  /**
   * What is met, by {@code [sample · nodes + node]}.
   *
   * @param snrDb level over noise; {@link #BELOW_MASK} where nothing is seen
   * @param levelDb the same with a number everywhere; see {@link #levels}
   * @param offsetHz carrier from the middle of the band
   * @param carrierHz carrier above the nominal frequency, whatever is listened to
   */
  record Met(float[] snrDb, float[] levelDb, float[] offsetHz, float[] carrierHz) {}

  /**
   * A table over samples by {@code [sample · nodes + node]}, which it keeps: tables of several
   * modes share what is the same.
   *
   * @param lossDb taken off every level
   */
  HearingTable(int nodes, Met met, double lossDb, Band band) {
    this.nodes = nodes;
    this.met = met;
    this.snrDb = met.snrDb();
    this.levelDb = met.levelDb();
    this.offsetHz = met.offsetHz();
    this.carrierHz = met.carrierHz();
    this.lossDb = lossDb;
    this.band = band;
    gate = new float[snrDb.length];
    bestDb = new float[snrDb.length / nodes];
    open = new boolean[bestDb.length];
    Arrays.fill(bestDb, BELOW_MASK);
    for (int i = 0; i < gate.length; i++) {
      gate[i] = snrDb[i] == BELOW_MASK ? 0 : (float) band.gate(offsetHz[i]);
      int k = i / nodes;
      bestDb[k] = Math.max(bestDb[k], snrDb[i]);
      open[k] |= gate[i] > 0;
    }
  }

  /**
   * Levels with a number everywhere: below the mask that of the neighbour in time, so that a pass
   * keeps its level up to its ends, and {@link #FAR_BELOW} where that is below the mask too.
   */
  static float[] levels(float[] snrDb, int nodes) {
    float[] levels = snrDb.clone();
    for (int i = 0; i < levels.length; i++) {
      if (snrDb[i] == BELOW_MASK) {
        float before = i < nodes ? BELOW_MASK : snrDb[i - nodes];
        float after = i + nodes < snrDb.length ? snrDb[i + nodes] : BELOW_MASK;
        levels[i] = Math.max(FAR_BELOW, Math.max(before, after));
      }
    }
    return levels;
  }

  /** The same met with a band of another width in the same place. */
  HearingTable within(double halfWidthHz) {
    Band other = new Band(halfWidthHz, band.bandwidthHz(), band.attended());
    return other.equals(band) ? this : new HearingTable(nodes, met, lossDb, other);
  }

  /** Number of nodes. */
  int nodes() {
    return nodes;
  }

  /** Whether any node might notice a burst; false saves the asking. */
  private boolean mayNotice(Bursts bursts, int i, Detector detector, float fadeDb) {
    int k = bursts.cell[i];
    if (k > bestDb.length - 2) {
      return false;
    }
    boolean tuned = bursts.shiftHz[i] != 0 || open[nearest(bursts, i)];
    double level = Math.max(bestDb[k], bestDb[k + 1]) + fadeDb - lossDb - bursts.lossDb[i];
    return tuned && level > detector.thresholdDb() - HOPELESS_WIDTHS * detector.widthDb();
  }

  private static int nearest(Bursts bursts, int i) {
    return bursts.cell[i] + (bursts.beyond[i] < 0.5f ? 0 : 1);
  }

  /**
   * Multiplies the chances that bursts are not noticed into {@code miss}, by node.
   *
   * @param first of the bursts
   * @param end of the bursts, exclusive
   * @param fadeDb added to every level
   */
  void miss(Bursts bursts, int first, int end, Detector detector, float fadeDb, float[] miss) {
    DetectionRow row = null;
    float[] shifted = null;
    for (int i = first; i < end; i++) {
      if (!mayNotice(bursts, i, detector, fadeDb)) {
        continue;
      }
      int near = nearest(bursts, i) * nodes;
      float loss = (float) (lossDb + bursts.lossDb[i] - fadeDb);
      row = row == null ? new DetectionRow(nodes, detector) : row;
      row.at(levelDb, bursts.cell[i] * nodes, bursts.beyond[i], loss);
      if (bursts.shiftHz[i] == 0) {
        row.miss(gate, near, miss);
      } else {
        shifted = shifted == null ? new float[nodes] : shifted;
        gates(near, bursts.shiftHz[i], shifted);
        row.miss(shifted, 0, miss);
      }
    }
  }

  /**
   * Levels of a burst over noise, dB, the member's own loss taken off, written to {@code into} from
   * a place on, by node; {@link #FAR_BELOW} where it is not met above the mask and in the band.
   */
  void met(Bursts bursts, int i, float[] into, int from) {
    if (bursts.cell[i] > bestDb.length - 2) {
      Arrays.fill(into, from, from + nodes, FAR_BELOW);
      return;
    }
    int low = bursts.cell[i] * nodes;
    int near = nearest(bursts, i) * nodes;
    float beyond = bursts.beyond[i];
    float loss = (float) (lossDb + bursts.lossDb[i]);
    float[] open = gate;
    if (bursts.shiftHz[i] != 0) {
      open = new float[nodes];
      gates(near, bursts.shiftHz[i], open);
      near = 0;
    }
    for (int n = 0; n < nodes; n++) {
      float before = levelDb[low + n];
      float level = before + beyond * (levelDb[low + nodes + n] - before) - loss;
      into[from + n] = open[near + n] > 0 ? level : FAR_BELOW;
    }
  }

  private void gates(int near, float shiftHz, float[] gates) {
    for (int n = 0; n < nodes; n++) {
      boolean seen = snrDb[near + n] != BELOW_MASK;
      gates[n] = seen ? (float) band.gate(offsetHz[near + n] + shiftHz) : 0;
    }
  }

  private static float edge(float beyond, float before, float after) {
    return beyond < 0.5f ? before : after;
  }

  /**
   * The same for several levels of fading, {@code [fade][node]}.
   *
   * @param fadeDb added to the level, rising
   */
  void miss(Bursts bursts, int i, Detector detector, double[] fadeDb, double[][] miss) {
    for (int n = 0; n < nodes; n++) {
      double open = gate(bursts, i, n);
      if (open > 0) {
        double snr = snrDb(bursts, i, n);
        for (int f = 0; f < fadeDb.length; f++) {
          miss[f][n] *= 1 - open * detector.probability(snr + fadeDb[f]);
        }
      }
    }
  }

  /**
   * Level of a burst over noise, dB, the member's own loss taken off; negative infinity below the
   * mask.
   */
  double snrDb(Bursts bursts, int i, int node) {
    int k = bursts.cell[i];
    if (k > bestDb.length - 2) {
      return BELOW_MASK;
    }
    float beyond = bursts.beyond[i];
    float low = snrDb[k * nodes + node];
    float high = snrDb[(k + 1) * nodes + node];
    double loss = lossDb + bursts.lossDb[i];
    if (low == BELOW_MASK || high == BELOW_MASK) {
      return edge(beyond, low, high) - loss;
    }
    return low + beyond * (high - low) - loss;
  }

  /**
   * What arrives of a burst above the mask is so far above the nominal frequency, Hz, with the
   * member's own carrier shift.
   */
  double carrierHz(Bursts bursts, int i, int node) {
    int low = Math.min(bursts.cell[i], bestDb.length - 2) * nodes + node;
    int high = low + nodes;
    float beyond = bursts.beyond[i];
    boolean both = snrDb[low] != BELOW_MASK && snrDb[high] != BELOW_MASK;
    float carrier =
        both
            ? carrierHz[low] + beyond * (carrierHz[high] - carrierHz[low])
            : snrDb[low] == BELOW_MASK ? carrierHz[high] : carrierHz[low];
    return carrier + bursts.shiftHz[i];
  }

  /**
   * Share of a burst's band inside the band listened to, 0…1, with the member's own carrier shift.
   */
  double gate(Bursts bursts, int i, int node) {
    int k = Math.min(bestDb.length - 1, nearest(bursts, i));
    float shift = bursts.shiftHz[i];
    return shift == 0 ? gate[k * nodes + node] : band.gate(offsetHz[k * nodes + node] + shift);
  }
}

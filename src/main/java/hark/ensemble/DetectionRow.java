package hark.ensemble;

import hark.link.Detector;

/**
 * The chance that one burst is missed, for a row of nodes at once. The innermost loops of the
 * weighing: short and without branches, because only those become instructions on many nodes at a
 * time. For one thread.
 */
final class DetectionRow {
  /**
   * The error function to 3e-7 (Hastings; Abramowitz and Stegun, 7.1.28): 1 − 1/(1 + a₁x + … +
   * a₆x⁶)¹⁶.
   */
  private static final float A1 = (float) 0.0705230784;

  private static final float A2 = (float) 0.0422820123;
  private static final float A3 = (float) 0.0092705272;
  private static final float A4 = (float) 0.0001520143;
  private static final float A5 = (float) 0.0002765672;
  private static final float A6 = (float) 0.0000430638;

  /** Numbers below the least normal one cost a hundred times as much as others. */
  private static final float LEAST = 1e-30f;

  private final float[] x;
  private final float[] y;
  private final float[] row;
  private final float thresholdDb;
  private final float perDb;

  /** For tables of so many nodes; one is used for burst after burst. */
  DetectionRow(int nodes, Detector detector) {
    x = new float[nodes];
    y = new float[nodes];
    row = new float[nodes];
    thresholdDb = (float) detector.thresholdDb();
    perDb = (float) (1 / (detector.widthDb() * Math.sqrt(2)));
  }

  /**
   * Levels of a burst, read along a straight line between two samples.
   *
   * @param levelDb of all samples, one row of nodes after the other; no infinities
   * @param low where the row of the sample before begins
   * @param beyond place between the two, 0…1
   * @param lossDb taken off every level
   */
  DetectionRow at(float[] levelDb, int low, float beyond, float lossDb) {
    // rows are copied, because loops over one index alone become wide instructions
    System.arraycopy(levelDb, low, x, 0, x.length);
    System.arraycopy(levelDb, low + x.length, row, 0, row.length);
    standardise(x, row, beyond, thresholdDb + lossDb, perDb);
    return this;
  }

  /**
   * Multiplies the chance to miss the burst into {@code miss}.
   *
   * @param gate share of the burst that is inside the band
   * @param near where its row begins
   */
  void miss(float[] gate, int near, float[] miss) {
    inner(x, y);
    outer(x, y);
    noticed(x, y);
    System.arraycopy(gate, near, row, 0, row.length);
    multiply(y, row, miss);
  }

  private static void standardise(
      float[] x, float[] after, float beyond, float threshold, float scale) {
    for (int n = 0; n < x.length; n++) {
      x[n] = (x[n] + beyond * (after[n] - x[n]) - threshold) * scale;
    }
  }

  private static void inner(float[] x, float[] y) {
    for (int n = 0; n < y.length; n++) {
      float a = Math.abs(x[n]);
      y[n] = A3 + a * (A4 + a * (A5 + a * A6));
    }
  }

  /** The polynomial to the fourth. */
  private static void outer(float[] x, float[] y) {
    for (int n = 0; n < y.length; n++) {
      float a = Math.abs(x[n]);
      float p = 1 + a * (A1 + a * (A2 + a * y[n]));
      p *= p;
      y[n] = p * p;
    }
  }

  /** The normal distribution function; its sign without a branch. */
  private static void noticed(float[] x, float[] y) {
    for (int n = 0; n < y.length; n++) {
      float p = y[n] * y[n];
      p *= p;
      y[n] = 0.5f + 0.5f * (1 - 1 / p) * (x[n] / (Math.abs(x[n]) + LEAST));
    }
  }

  private static void multiply(float[] noticed, float[] gate, float[] miss) {
    for (int n = 0; n < miss.length; n++) {
      miss[n] = miss[n] * (1 - gate[n] * noticed[n]) + LEAST;
    }
  }
}

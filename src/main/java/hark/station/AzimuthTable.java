package hark.station;

import java.util.List;

/** A number by azimuth: linear between rows of (azimuth in degrees, value), wrapping at north. */
public final class AzimuthTable {
  private static final double FULL_CIRCLE = 360;

  private AzimuthTable() {}

  /**
   * The value towards an azimuth.
   *
   * @param rows in rising azimuth 0…360 degrees, at least one
   * @param azimuthDeg any angle, degrees
   */
  public static double at(List<double[]> rows, double azimuthDeg) {
    double azimuth = azimuthDeg - FULL_CIRCLE * Math.floor(azimuthDeg / FULL_CIRCLE);
    int after = 0;
    while (after < rows.size() && rows.get(after)[0] <= azimuth) {
      after++;
    }
    double[] low = rows.get((after + rows.size() - 1) % rows.size());
    double[] high = rows.get(after % rows.size());
    double span = high[0] - low[0];
    double run = azimuth - low[0];
    span = span <= 0 ? span + FULL_CIRCLE : span;
    run = run < 0 ? run + FULL_CIRCLE : run;
    return low[1] + (high[1] - low[1]) * run / span;
  }
}

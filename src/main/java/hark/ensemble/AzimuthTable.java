package hark.ensemble;

import java.util.List;

/** A number by azimuth: linear between rows of (azimuth in degrees, value), wrapping at north. */
final class AzimuthTable {
  private AzimuthTable() {}

  /** The value towards an azimuth in 0…360 degrees; rows in rising azimuth, at least one. */
  static double at(List<double[]> rows, double azimuthDeg) {
    int after = 0;
    while (after < rows.size() && rows.get(after)[0] <= azimuthDeg) {
      after++;
    }
    double[] low = rows.get((after + rows.size() - 1) % rows.size());
    double[] high = rows.get(after % rows.size());
    double span = high[0] - low[0];
    double run = azimuthDeg - low[0];
    span = span <= 0 ? span + 360 : span;
    run = run < 0 ? run + 360 : run;
    return low[1] + (high[1] - low[1]) * run / span;
  }
}

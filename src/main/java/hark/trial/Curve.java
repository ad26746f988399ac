package hark.trial;

import java.util.List;

/** Open-circuit voltage of one cell; beyond empty and full its outer pieces go on. */
final class Curve {
  private final double[][] rows;

  Curve(List<double[]> rows) {
    this.rows = rows.toArray(double[][]::new);
  }

  /** Volts of a cell. */
  double volts(double soc) {
    int upper = upper(soc);
    double[] a = rows[upper - 1];
    double[] b = rows[upper];
    return a[1] + (b[1] - a[1]) * (soc - a[0]) / (b[0] - a[0]);
  }

  /** Joules in a cell for each coulomb of its capacity: the area under the curve from empty on. */
  double joules(double soc) {
    double sum = 0;
    int upper = upper(soc);
    for (int i = 1; i < upper; i++) {
      sum += (rows[i][0] - rows[i - 1][0]) * (rows[i][1] + rows[i - 1][1]) / 2;
    }
    double[] a = rows[upper - 1];
    return sum + (soc - a[0]) * (a[1] + volts(soc)) / 2;
  }

  /** Volts of the full cell. */
  double full() {
    return rows[rows.length - 1][1];
  }

  private int upper(double soc) {
    int upper = 1;
    while (upper < rows.length - 1 && soc > rows[upper][0]) {
      upper++;
    }
    return upper;
  }
}

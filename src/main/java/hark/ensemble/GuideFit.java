package hark.ensemble;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Fits a {@link Guide} to rows that were weighed. What sharp evidence asks for comes from a
 * straight line through the residuals (the update of an ensemble Kalman filter, Evensen 1994); the
 * kernels are those of adaptive importance sampling (Cappé et al. 2008), drawn in towards their
 * mean so that the spread stays (West 1993).
 */
final class GuideFit {
  private static final int CENTRES = 48;

  /** Rows that count as much as the straight line's covariance. */
  private static final double LINE_COUNTS_AS = 20;

  /** Residuals beyond so many deviations hardly shape the line. */
  private static final double NEAR_DEVIATIONS = 3;

  private static final double WIDER = 1.2;

  private final int dimensions;
  private final List<double[]> rows = new ArrayList<>();
  private final List<double[]> residuals = new ArrayList<>();
  private final List<Double> weights = new ArrayList<>();

  GuideFit(int dimensions) {
    this.dimensions = dimensions;
  }

  /** Adds a row with its weight and its residual for each sharp clue; NaN where it has none. */
  void add(double[] z, double weight, double[] residual) {
    rows.add(z);
    weights.add(weight);
    residuals.add(residual);
  }

  Guide guide() {
    RealMatrix precision = MatrixUtils.createRealIdentityMatrix(dimensions);
    double[] pull = new double[dimensions];
    int clues = residuals.isEmpty() ? 0 : residuals.get(0).length;
    for (int clue = 0; clue < clues; clue++) {
      addLine(clue, precision, pull);
    }
    RealMatrix line = new LUDecomposition(precision).getSolver().getInverse();
    double[] mean = line.operate(pull);
    Bell aimed = new Bell(mean, line.scalarMultiply(WIDER));
    double total = weights.stream().mapToDouble(Double::doubleValue).sum();
    if (!(total > 0)) {
      return new Guide(aimed, aimed, new double[0][], new double[0]);
    }
    return around(aimed, line, total);
  }

  private Guide around(Bell aimed, RealMatrix line, double total) {
    double[] mean = new double[dimensions];
    double squares = 0;
    for (int k = 0; k < rows.size(); k++) {
      double share = weights.get(k) / total;
      squares += share * share;
      for (int d = 0; d < dimensions; d++) {
        mean[d] += share * rows.get(k)[d];
      }
    }
    double effective = 1 / squares;
    RealMatrix shape = shape(mean, line, total, effective);
    // the normal rule of thumb for kernels (Silverman 1986)
    double width = Math.pow(4.0 / (dimensions + 2) / effective, 1.0 / (dimensions + 4));
    double h = Math.min(0.95, width);
    double drawnIn = Math.sqrt(1 - h * h);
    List<double[]> centres = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    pick(total, centres, shares);
    for (double[] centre : centres) {
      for (int d = 0; d < dimensions; d++) {
        centre[d] = mean[d] + drawnIn * (centre[d] - mean[d]);
      }
    }
    Bell kernel = new Bell(new double[dimensions], shape.scalarMultiply(h * h));
    return new Guide(
        aimed,
        kernel,
        centres.toArray(new double[0][]),
        shares.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private RealMatrix shape(double[] mean, RealMatrix line, double total, double effective) {
    double[][] sum = new double[dimensions][dimensions];
    for (int k = 0; k < rows.size(); k++) {
      double share = weights.get(k) / total;
      double[] z = rows.get(k);
      for (int a = 0; a < dimensions; a++) {
        for (int b = 0; b < dimensions; b++) {
          sum[a][b] += share * (z[a] - mean[a]) * (z[b] - mean[b]);
        }
      }
    }
    double seen = effective / (effective + LINE_COUNTS_AS);
    return new Array2DRowRealMatrix(sum).scalarMultiply(seen).add(line.scalarMultiply(1 - seen));
  }

  /** Systematic resampling: few centres stand for all. */
  private void pick(double total, List<double[]> centres, List<Double> shares) {
    double sum = 0;
    int next = 0;
    for (int k = 0; k < rows.size(); k++) {
      sum += weights.get(k) / total;
      int times = 0;
      while (next < CENTRES && sum * CENTRES > next + 0.5) {
        next++;
        times++;
      }
      if (times > 0) {
        centres.add(rows.get(k).clone());
        shares.add((double) times / CENTRES);
      }
    }
    double picked = next;
    shares.replaceAll(share -> share * CENTRES / picked);
  }

  /** A clue's straight line through the residuals, as precision and pull on the standard normal. */
  private void addLine(int clue, RealMatrix precision, double[] pull) {
    int size = dimensions + 1;
    double[][] normal = new double[size][size];
    double[] right = new double[size];
    for (int k = 0; k < rows.size(); k++) {
      double residual = residuals.get(k)[clue];
      if (Double.isNaN(residual)) {
        continue;
      }
      double[] x = withOne(rows.get(k));
      double near = nearness(residual);
      for (int a = 0; a < size; a++) {
        right[a] += near * x[a] * residual;
        for (int b = 0; b < size; b++) {
          normal[a][b] += near * x[a] * x[b];
        }
      }
    }
    for (int a = 0; a < size; a++) {
      normal[a][a] += 0.3;
    }
    double[] slope =
        new LUDecomposition(new Array2DRowRealMatrix(normal))
            .getSolver()
            .solve(MatrixUtils.createRealVector(right))
            .toArray();
    double noise = 1 + scatter(clue, slope);
    for (int a = 0; a < dimensions; a++) {
      pull[a] -= slope[a] * slope[dimensions] / noise;
      for (int b = 0; b < dimensions; b++) {
        precision.addToEntry(a, b, slope[a] * slope[b] / noise);
      }
    }
  }

  private double scatter(int clue, double[] slope) {
    double sum = 0;
    double total = 0;
    for (int k = 0; k < rows.size(); k++) {
      double residual = residuals.get(k)[clue];
      if (!Double.isNaN(residual)) {
        double[] x = withOne(rows.get(k));
        double off = residual;
        for (int a = 0; a < x.length; a++) {
          off -= slope[a] * x[a];
        }
        sum += nearness(residual) * off * off;
        total += nearness(residual);
      }
    }
    return total > 0 ? sum / total : 0;
  }

  private static double nearness(double residual) {
    double far = residual / NEAR_DEVIATIONS;
    return 1 / (1 + far * far);
  }

  private double[] withOne(double[] z) {
    double[] x = java.util.Arrays.copyOf(z, dimensions + 1);
    x[dimensions] = 1;
    return x;
  }
}

package hark.ensemble;

import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * A normal distribution of standardised draws, measured against the standard normal that they have
 * by the prior.
 */
final class Bell {
  private final double[] mean;
  private final double[][] root;
  private final double logDeterminant;

  /** Shapes: {@code mean[d]}, {@code covariance} d × d, positive definite. */
  Bell(double[] mean, RealMatrix covariance) {
    this.mean = mean;
    root = new CholeskyDecomposition(covariance, 1e-9, 1e-12).getL().getData();
    double sum = 0;
    for (int d = 0; d < mean.length; d++) {
      sum += Math.log(root[d][d]);
    }
    logDeterminant = sum;
  }

  /** The point that standard normal numbers {@code e} become. */
  double[] point(double[] e) {
    double[] z = new double[mean.length];
    for (int d = 0; d < z.length; d++) {
      z[d] = mean[d];
      for (int k = 0; k <= d; k++) {
        z[d] += root[d][k] * e[k];
      }
    }
    return z;
  }

  /** Density at a point moved by {@code offset}, over the standard normal density at the point. */
  double ratio(double[] z, double[] offset) {
    double quadratic = 0;
    double[] solved = new double[z.length];
    for (int d = 0; d < z.length; d++) {
      double rest = z[d] - offset[d] - mean[d];
      for (int k = 0; k < d; k++) {
        rest -= root[d][k] * solved[k];
      }
      solved[d] = rest / root[d][d];
      quadratic += z[d] * z[d] - solved[d] * solved[d];
    }
    return Math.exp(0.5 * quadratic - logDeterminant);
  }
}

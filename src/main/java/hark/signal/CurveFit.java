package hark.signal;

import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem.Evaluation;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/**
 * The best values of the unknowns near a starting point, and the evidence there by Laplace's
 * approximation: the logarithm of the chance of the measured points with all unknowns integrated
 * out, their posterior taken as normal.
 *
 * @param z the unknowns, in standard deviations of their priors
 * @param covariance of z
 * @param residualHz model minus measured, Hz
 * @param logEvidence natural logarithm, in 1/Hz a point
 */
record CurveFit(double[] z, RealMatrix covariance, double[] residualHz, double logEvidence) {
  private static final int MOST_EVALUATIONS = 200;
  private static final double CONVERGED = 1e-9;

  /** Fits from a start; the search may end short of convergence, its best is taken then. */
  static CurveFit from(CurveModel model, double[] start, double[] sigmaHz) {
    double[] zero = new double[sigmaHz.length + start.length];
    LeastSquaresProblem problem =
        LeastSquaresFactory.create(
            model,
            new ArrayRealVector(zero, false),
            new ArrayRealVector(start),
            (int iteration, Evaluation before, Evaluation now) ->
                Math.abs(before.getCost() - now.getCost()) <= CONVERGED * now.getCost(),
            MOST_EVALUATIONS,
            MOST_EVALUATIONS);
    double[] best = start;
    try {
      Optimum optimum = new LevenbergMarquardtOptimizer().optimize(problem);
      best = optimum.getPoint().toArray();
    } catch (MathIllegalStateException e) {
      // no better point within so many tries: judged where it began
    }
    return at(model, best, sigmaHz);
  }

  /** The evidence around given unknowns. */
  static CurveFit at(CurveModel model, double[] z, double[] sigmaHz) {
    return of(z, model.residualHz(z), model.slopesHz(z), sigmaHz);
  }

  /**
   * The same from residuals and slopes that are known.
   *
   * @param slopesHz derivative of each point's frequency by each unknown, Hz
   */
  static CurveFit of(double[] z, double[] residualHz, double[][] slopesHz, double[] sigmaHz) {
    RealMatrix normal = normal(slopesHz, sigmaHz, z.length);
    RealMatrix lower = new CholeskyDecomposition(normal, 1e-9, 0).getL();
    double log = 0;
    for (int j = 0; j < z.length; j++) {
      log -= Math.log(lower.getEntry(j, j)) + 0.5 * z[j] * z[j];
    }
    for (int i = 0; i < residualHz.length; i++) {
      double r = residualHz[i] / sigmaHz[i];
      log -= 0.5 * r * r + Math.log(sigmaHz[i] * Math.sqrt(2 * Math.PI));
    }
    return new CurveFit(z, MatrixUtils.inverse(normal), residualHz, log);
  }

  /** Inverse of the covariance: what the points say and, on the diagonal, the prior. */
  private static RealMatrix normal(double[][] slopesHz, double[] sigmaHz, int unknowns) {
    double[][] sum = new double[unknowns][unknowns];
    for (int j = 0; j < unknowns; j++) {
      sum[j][j] = 1;
    }
    for (int i = 0; i < slopesHz.length; i++) {
      double weight = 1 / (sigmaHz[i] * sigmaHz[i]);
      for (int j = 0; j < unknowns; j++) {
        for (int k = 0; k < unknowns; k++) {
          sum[j][k] += weight * slopesHz[i][j] * slopesHz[i][k];
        }
      }
    }
    return MatrixUtils.createRealMatrix(sum);
  }

  double sd(int unknown) {
    return Math.sqrt(covariance.getEntry(unknown, unknown));
  }

  /** Root mean square of the residuals, Hz. */
  double rmsHz() {
    double sum = 0;
    for (double each : residualHz) {
      sum += each * each;
    }
    return Math.sqrt(sum / residualHz.length);
  }
}

package hark.orbit;

import java.time.Instant;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Mean elements that follow a computed path best under SGP4: least squares of the positions at even
 * times, from the osculating elements at the epoch on.
 *
 * @param mean the elements at the epoch
 * @param rmsMeters distance left between path and elements
 */
record MeanFit(ElementSet.Mean mean, double rmsMeters) {
  private static final int POINTS = 120;
  private static final int MOST_EVALUATIONS = 60;
  private static final double CONVERGED = 1e-7;

  /** Natural sizes of the unknowns: rev/day, eccentricity twice, three angles in degrees, B*. */
  private static final double[] STEP = {1e-4, 1e-4, 1e-4, 1e-2, 1e-2, 1e-2, 1e-5};

  /**
   * Fits.
   *
   * @param epoch time of second 0 of the path
   * @param bstar drag term to begin with
   */
  static MeanFit of(Instant epoch, PathTable path, double bstar, EarthModel earth) {
    double[] state = new double[6];
    path.at(Math.max(0, path.startSeconds()), state);
    double[] start = osculating(state, bstar);
    // node and place on the orbit first: J2 alone moves mean motion by a thousandth
    Residuals residuals = new Residuals(epoch, path, earth, start);
    double[] best = new double[STEP.length];
    for (double share : new double[] {0.02, 0.2, 1}) {
      best = residuals.solve(best, share);
    }
    double[] left = residuals.of(best, 1);
    double sum = 0;
    for (double each : left) {
      sum += each * each;
    }
    return new MeanFit(residuals.mean(best), Math.sqrt(3 * sum / left.length));
  }

  /** Osculating elements in the order of the unknowns, the mean motion freed of J2's first term. */
  private static double[] osculating(double[] s, double bstar) {
    double r = Trajectory.radius(s);
    double v2 = s[3] * s[3] + s[4] * s[4] + s[5] * s[5];
    double a = 1 / (2 / r - v2 / OrbitShape.MU);
    double hx = s[1] * s[5] - s[2] * s[4];
    double hy = s[2] * s[3] - s[0] * s[5];
    double hz = s[0] * s[4] - s[1] * s[3];
    double h = Math.sqrt(hx * hx + hy * hy + hz * hz);
    double inclination = Math.acos(hz / h);
    double node = Math.atan2(hx, -hy);
    double along = s[0] * Math.cos(node) + s[1] * Math.sin(node);
    double up = s[2] / Math.max(1e-12, Math.sin(inclination));
    double across =
        Math.abs(Math.sin(inclination)) > 1e-6 ? up : s[1] * Math.cos(node) - s[0] * Math.sin(node);
    double place = Math.atan2(across, along);
    double radial = (s[0] * s[3] + s[1] * s[4] + s[2] * s[5]) / r;
    double eCos = h * h / OrbitShape.MU / r - 1;
    double eSin = radial * h / OrbitShape.MU;
    double ex = eCos * Math.cos(place) + eSin * Math.sin(place);
    double ey = eCos * Math.sin(place) - eSin * Math.cos(place);
    double e = Math.hypot(ex, ey);
    double perigee = Math.atan2(ey, ex);
    double truth = place - perigee;
    double eccentric =
        2
            * Math.atan2(
                Math.sqrt(1 - e) * Math.sin(truth / 2), Math.sqrt(1 + e) * Math.cos(truth / 2));
    double anomaly = eccentric - e * Math.sin(eccentric);
    // short-period part of the semi-major axis for near-circular orbits: J2 R²/a · 3/2 sin²i cos 2u
    double sin2 = Math.sin(inclination) * Math.sin(inclination);
    double re = MeanOrbit.EARTH_RADIUS_METERS;
    double aMean = a - 1.5 * 1.08263e-3 * re * re / a * sin2 * Math.cos(2 * place);
    double n = Math.sqrt(OrbitShape.MU / (aMean * aMean * aMean)) * 86400 / (2 * Math.PI);
    return new double[] {
      n,
      ex,
      ey,
      Math.toDegrees(inclination),
      Math.toDegrees(node),
      Math.toDegrees(perigee + anomaly),
      bstar
    };
  }

  /** Distances between path and elements. */
  private record Residuals(Instant epoch, PathTable path, EarthModel earth, double[] start) {
    ElementSet.Mean mean(double[] x) {
      double[] v = new double[STEP.length];
      for (int k = 0; k < v.length; k++) {
        v[k] = start[k] + x[k] * STEP[k];
      }
      double e = Math.min(0.99, Math.hypot(v[1], v[2]));
      double perigee = Math.toDegrees(Math.atan2(v[2], v[1]));
      return new ElementSet.Mean(
          Math.max(1e-3, v[0]),
          e,
          Math.max(0, Math.min(180, v[3])),
          ElementSet.turned(v[4]),
          ElementSet.turned(perigee),
          ElementSet.turned(v[5] - perigee),
          v[6],
          0,
          0);
    }

    /** Over the first share of the path, m; what SGP4 cannot follow counts as far away. */
    double[] of(double[] x, double share) {
      ElementSet set = new ElementSet("fit", java.util.Optional.empty(), epoch, mean(x), "fit");
      Trajectory trajectory = Trajectory.of(set, earth);
      double[] left = new double[3 * POINTS];
      double[] there = new double[6];
      double[] here = new double[6];
      double length = (path.endSeconds() - path.startSeconds()) * share;
      for (int i = 0; i < POINTS; i++) {
        double at = path.startSeconds() + length * i / (POINTS - 1.0) * (1 - 1e-9);
        path.at(at, here);
        boolean valid = trajectory.teme(at, there);
        for (int k = 0; k < 3; k++) {
          left[3 * i + k] = valid ? there[k] - here[k] : 1e7;
        }
      }
      return left;
    }

    double[] solve(double[] from, double share) {
      double[] zero = new double[3 * POINTS];
      LeastSquaresProblem problem =
          LeastSquaresFactory.create(
              point -> model(point.toArray(), share),
              new ArrayRealVector(zero, false),
              new ArrayRealVector(from),
              (int iteration, LeastSquaresProblem.Evaluation a, LeastSquaresProblem.Evaluation b) ->
                  Math.abs(a.getCost() - b.getCost()) <= CONVERGED * b.getCost(),
              MOST_EVALUATIONS,
              MOST_EVALUATIONS);
      try {
        return new LevenbergMarquardtOptimizer().optimize(problem).getPoint().toArray();
      } catch (MathRuntimeException e) {
        return from; // judged where it began; the distance left says how well
      }
    }

    private Pair<RealVector, RealMatrix> model(double[] x, double share) {
      double[][] slopes = new double[3 * POINTS][x.length];
      for (int k = 0; k < x.length; k++) {
        double[] up = x.clone();
        double[] down = x.clone();
        up[k] += 0.1;
        down[k] -= 0.1;
        double[] high = of(up, share);
        double[] low = of(down, share);
        for (int i = 0; i < high.length; i++) {
          slopes[i][k] = (high[i] - low[i]) / 0.2;
        }
      }
      return new Pair<>(
          new ArrayRealVector(of(x, share), false), new Array2DRowRealMatrix(slopes, false));
    }
  }
}

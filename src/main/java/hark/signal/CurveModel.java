package hark.signal;

import hark.link.LinkBudget;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * The frequencies a motion would have given, with a carrier and a drift for each curve and a clock
 * error for each station.
 *
 * <p>All unknowns are in standard deviations of their priors, in this order: the motion's, one
 * carrier a curve, one drift a curve, one clock error for each station whose clock is in doubt. The
 * vector is one row a point, (model − measured) / spread, then one row an unknown, which is its
 * prior. Clock error and lateness shift the same curve; only their priors and several stations tell
 * them apart.
 */
final class CurveModel implements MultivariateJacobianFunction {
  /** Step of the numerical derivatives, in standard deviations of the unknown. */
  private static final double STEP = 1e-3;

  private final Motion motion;
  private final WhoseQuestion question;
  private final Points points;
  private final double[] sigmaHz;
  private final int[] clock;
  private final int clocks;

  CurveModel(Motion motion, WhoseQuestion question, Points points, double[] sigmaHz) {
    this.motion = motion;
    this.question = question;
    this.points = points;
    this.sigmaHz = sigmaHz;
    List<Listener> listeners = question.listeners();
    clock = new int[listeners.size()];
    int next = 0;
    for (int s = 0; s < clock.length; s++) {
      int station = s;
      boolean used = Arrays.stream(points.listener()).anyMatch(each -> each == station);
      clock[s] = used && listeners.get(s).clockSdSeconds() > 0 ? next++ : -1;
    }
    clocks = next;
  }

  int unknowns() {
    return motion.size() + 2 * question.curves().size() + clocks;
  }

  int carrierAt(int curve) {
    return motion.size() + curve;
  }

  int driftAt(int curve) {
    return motion.size() + question.curves().size() + curve;
  }

  /** Place of a station's clock error among the unknowns; −1 when its clock is not in doubt. */
  int clockAt(int listener) {
    return clock[listener] < 0 ? -1 : unknowns() - clocks + clock[listener];
  }

  double clockSeconds(double[] z, int listener) {
    int at = clockAt(listener);
    return at < 0 ? 0 : z[at] * question.listeners().get(listener).clockSdSeconds();
  }

  double carrierHz(double[] z, int curve) {
    return question.carrier().centreHz() + z[carrierAt(curve)] * question.carrier().sdHz();
  }

  double driftHzPerSecond(double[] z, int curve) {
    return z[driftAt(curve)] * question.carrier().driftSdHzPerSecond();
  }

  /** Model minus measured, Hz, by point. */
  double[] residualHz(double[] z) {
    double[] rates = rates(z);
    double[] residual = new double[points.count()];
    for (int i = 0; i < residual.length; i++) {
      residual[i] = frequencyHz(z, i, rates[i]) - points.frequencyHz()[i];
    }
    return residual;
  }

  private double frequencyHz(double[] z, int point, double rangeRate) {
    int curve = points.curve()[point];
    double sent = carrierHz(z, curve) + driftHzPerSecond(z, curve) * points.fromMiddle()[point];
    return sent * (1 - rangeRate / LinkBudget.SPEED_OF_LIGHT);
  }

  private double[] rates(double[] z) {
    Motion.Path path = motion.path(Arrays.copyOf(z, motion.size()));
    double[] rates = new double[points.count()];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = rate(path, z, i);
    }
    return rates;
  }

  private double rate(Motion.Path path, double[] z, int point) {
    int listener = points.listener()[point];
    double trueSeconds = points.seconds()[point] - clockSeconds(z, listener);
    return path.rangeRate(question.listeners().get(listener), trueSeconds);
  }

  @Override
  public Pair<RealVector, RealMatrix> value(RealVector at) {
    double[] z = at.toArray();
    int n = points.count();
    double[] rows = new double[n + z.length];
    double[][] jacobian = new double[n + z.length][z.length];
    double[] residual = residualHz(z);
    double[][] slopes = slopesHz(z);
    for (int i = 0; i < n; i++) {
      rows[i] = residual[i] / sigmaHz[i];
      for (int j = 0; j < z.length; j++) {
        jacobian[i][j] = slopes[i][j] / sigmaHz[i];
      }
    }
    for (int j = 0; j < z.length; j++) {
      rows[n + j] = z[j];
      jacobian[n + j][j] = 1;
    }
    return new Pair<>(new ArrayRealVector(rows, false), new Array2DRowRealMatrix(jacobian, false));
  }

  /** Derivative of each point's frequency by each unknown, Hz, {@code [point][unknown]}. */
  double[][] slopesHz(double[] z) {
    double[][] slopes = new double[points.count()][z.length];
    double[] rates = rates(z);
    Carrier carrier = question.carrier();
    for (int i = 0; i < rates.length; i++) {
      // carrier and drift enter in proportion
      int curve = points.curve()[i];
      double factor = 1 - rates[i] / LinkBudget.SPEED_OF_LIGHT;
      slopes[i][carrierAt(curve)] = factor * carrier.sdHz();
      slopes[i][driftAt(curve)] = factor * carrier.driftSdHzPerSecond() * points.fromMiddle()[i];
    }
    for (int j = 0; j < z.length; j++) {
      boolean bent = j < motion.size() || j >= z.length - clocks;
      if (bent) {
        column(z, j, slopes);
      }
    }
    return slopes;
  }

  private void column(double[] z, int j, double[][] slopes) {
    double[] up = z.clone();
    double[] down = z.clone();
    up[j] += STEP;
    down[j] -= STEP;
    double[] high = residualHz(up);
    double[] low = residualHz(down);
    for (int i = 0; i < high.length; i++) {
      slopes[i][j] = (high[i] - low[i]) / (2 * STEP);
    }
  }
}

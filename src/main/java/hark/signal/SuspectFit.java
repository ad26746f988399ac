package hark.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * All that a set of curves says of one motion: its best fit, and its evidence summed over the fits
 * that differ and integrated over the spread of the points when nobody gave one.
 */
final class SuspectFit {
  /** Lateness is searched from starts so far apart, s: a curve bends over tens of seconds. */
  private static final double START_SPACING_SECONDS = 15;

  private static final double START_REACH_SD = 3.5;
  private static final int MOST_STARTS_EACH_SIDE = 30;
  private static final int KEPT_STARTS = 4;

  /** Points of a curve that are enough to find a start. */
  private static final int POINTS_TO_START = 40;

  /** Fits nearer than this are one, in standard deviations of the first unknown's posterior. */
  private static final double SAME_FIT_SD = 1;

  private static final int NOISE_ROUNDS = 3;
  private static final double NOISE_STEP = 0.1;
  private static final double NOISE_REACH_SD = 4;

  private final Motion motion;
  private final WhoseQuestion question;
  private final Points points;
  private double scaleHz;
  private CurveFit best;
  private CurveModel model;
  private double logEvidence;

  private SuspectFit(Motion motion, WhoseQuestion question, Points points) {
    this.motion = motion;
    this.question = question;
    this.points = points;
    this.scaleHz = question.noise().medianHz();
  }

  /** Fits lateness, searched over its prior. */
  static SuspectFit late(Motion.Late motion, WhoseQuestion question, Points points) {
    SuspectFit fit = new SuspectFit(motion, question, points);
    fit.run(fit.starts(motion.suspect().lateSdSeconds()));
    return fit;
  }

  /** Fits a motion from one start, as many unknowns as its model has. */
  static SuspectFit near(
      Motion motion, WhoseQuestion question, Points points, double[] motionStart) {
    SuspectFit fit = new SuspectFit(motion, question, points);
    int unknowns = new CurveModel(motion, question, points, fit.sigmaHz()).unknowns();
    fit.run(List.of(Arrays.copyOf(motionStart, unknowns)));
    return fit;
  }

  CurveFit best() {
    return best;
  }

  CurveModel model() {
    return model;
  }

  double logEvidence() {
    return logEvidence;
  }

  /** Spread of the points for which none was given, as it came out, Hz. */
  double scaleHz() {
    return scaleHz;
  }

  double[] sigmaHz() {
    double[] sigma = points.sigmaHz().clone();
    for (int i = 0; i < sigma.length; i++) {
      sigma[i] = Double.isNaN(sigma[i]) ? scaleHz : sigma[i];
    }
    return sigma;
  }

  private boolean noiseInDoubt() {
    return points.anyWithoutSpread() && question.noise().factor() > 1;
  }

  private void run(List<double[]> firstStarts) {
    List<double[]> starts = promising(firstStarts);
    for (int round = 0; round < (noiseInDoubt() ? NOISE_ROUNDS : 1); round++) {
      double[] sigma = sigmaHz();
      model = new CurveModel(motion, question, points, sigma);
      List<CurveFit> fits =
          starts.stream()
              .map(start -> CurveFit.from(model, start, sigma))
              .sorted(Comparator.comparingDouble(CurveFit::logEvidence).reversed())
              .toList();
      best = fits.get(0);
      List<CurveFit> different = different(fits);
      logEvidence = LogSum.of(different.stream().mapToDouble(CurveFit::logEvidence).toArray());
      starts = different.stream().limit(KEPT_STARTS).map(CurveFit::z).toList();
      if (noiseInDoubt()) {
        integrateNoise();
      }
    }
  }

  /** The best starts, judged by few points: a long curve is not fitted from every one of them. */
  private List<double[]> promising(List<double[]> starts) {
    Points few = points.thinned(POINTS_TO_START * question.curves().size());
    if (few.count() == points.count() || starts.size() <= KEPT_STARTS) {
      return starts;
    }
    double[] sigma = new double[few.count()];
    Arrays.fill(sigma, Math.max(scaleHz, question.noise().medianHz()));
    CurveModel rough = new CurveModel(motion, question, few, sigma);
    List<CurveFit> fits =
        starts.stream()
            .map(start -> CurveFit.from(rough, start, sigma))
            .sorted(Comparator.comparingDouble(CurveFit::logEvidence).reversed())
            .toList();
    return different(fits).stream().limit(KEPT_STARTS).map(CurveFit::z).toList();
  }

  private List<double[]> starts(double lateSdSeconds) {
    int unknowns = new CurveModel(motion, question, points, sigmaHz()).unknowns();
    double steps = Math.ceil(START_REACH_SD * lateSdSeconds / START_SPACING_SECONDS);
    int each = (int) Math.min(MOST_STARTS_EACH_SIDE, steps);
    List<double[]> starts = new ArrayList<>();
    for (int k = -each; k <= each; k++) {
      double[] z = new double[unknowns];
      z[0] = START_REACH_SD * k / each;
      starts.add(z);
    }
    return starts;
  }

  private static List<CurveFit> different(List<CurveFit> fits) {
    List<CurveFit> kept = new ArrayList<>();
    for (CurveFit fit : fits) {
      boolean known =
          kept.stream()
              .anyMatch(other -> Math.abs(other.z()[0] - fit.z()[0]) <= SAME_FIT_SD * other.sd(0));
      if (!known) {
        kept.add(fit);
      }
    }
    return kept;
  }

  /**
   * Replaces the evidence by its mean over the prior of the spread and the spread by its best
   * value. The fit is kept while the spread varies: it moves far less than the evidence does.
   */
  private void integrateNoise() {
    double width = Math.log(question.noise().factor());
    int steps = (int) Math.ceil(NOISE_REACH_SD * width / NOISE_STEP);
    double[] logs = new double[2 * steps + 1];
    double[] scales = new double[logs.length];
    double several = logEvidence - best.logEvidence();
    double[][] slopes = model.slopesHz(best.z());
    for (int k = 0; k < logs.length; k++) {
      double x = NOISE_REACH_SD * (k - steps) / steps;
      double density = Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI) * NOISE_REACH_SD / steps;
      scales[k] = question.noise().medianHz() * Math.exp(x * width);
      scaleHz = scales[k];
      CurveFit other = CurveFit.of(best.z(), best.residualHz(), slopes, sigmaHz());
      logs[k] = other.logEvidence() + Math.log(density) + several;
    }
    int top = 0;
    for (int k = 0; k < logs.length; k++) {
      top = logs[k] > logs[top] ? k : top;
    }
    scaleHz = scales[top];
    logEvidence = LogSum.of(logs);
    best = CurveFit.of(best.z(), best.residualHz(), slopes, sigmaHz());
  }

  /** Sums of numbers given by their logarithms. */
  static final class LogSum {
    private LogSum() {}

    static double of(double... logs) {
      double top = Arrays.stream(logs).max().orElse(Double.NEGATIVE_INFINITY);
      if (top == Double.NEGATIVE_INFINITY) {
        return top;
      }
      double sum = 0;
      for (double log : logs) {
        sum += Math.exp(log - top);
      }
      return top + Math.log(sum);
    }
  }
}

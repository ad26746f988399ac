package hark.signal;

import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.State;
import hark.orbit.Trajectory;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.hipparchus.linear.RealMatrix;

/**
 * An orbit corrected by curves: mean anomaly and node, and the mean motion when the passes span
 * long enough to show it. Fitted with the same carriers, drifts and clocks as {@link Whose}.
 *
 * @param elements the corrected set, at the epoch of the old one
 * @param meanAnomalyDeg correction and, beside it, its spread
 * @param meanMotionRatio relative correction of the mean motion; 0 with spread 0 when it was kept
 * @param rmsHz of the residuals
 * @param at the time of the last point, for which the spread below holds
 * @param alongTrackSdMeters spread of the place along the orbit then
 */
public record Refinement(
    ElementSet elements,
    double meanAnomalyDeg,
    double meanAnomalySdDeg,
    double raanDeg,
    double raanSdDeg,
    double meanMotionRatio,
    double meanMotionRatioSd,
    double rmsHz,
    Instant at,
    double alongTrackSdMeters) {
  /** Mean motion is fitted from so many curves on. */
  static final int CURVES_FOR_MEAN_MOTION = 3;

  /** And when the first and last are so far apart. */
  static final Duration SPAN_FOR_MEAN_MOTION = Duration.ofHours(10);

  /**
   * Spread of the node: early sets place the plane within some kilometres, and 0.05° is 6 km.
   * Judged.
   */
  static final double RAAN_SD_DEG = 0.05;

  /**
   * Corrects a suspect's orbit.
   *
   * @param question with the curves
   * @param suspect index among the suspects
   * @param perDaySeconds how much lateness may grow in a day by a wrong mean motion, one standard
   *     deviation
   */
  public static Refinement of(WhoseQuestion question, int suspect, double perDaySeconds) {
    Suspect whose = question.suspects().get(suspect);
    Points points = Points.of(question, KeptPoints.all(question.curves()));
    Motion.Late late = new Motion.Late(whose, question.earth(), points.start());
    SuspectFit first = SuspectFit.late(late, question, points);
    double period = whose.elements().periodSeconds();
    Motion.Corrected.Spread spread =
        new Motion.Corrected.Spread(
            whose.lateSdSeconds() / period * 360,
            RAAN_SD_DEG,
            showsMeanMotion(question) ? perDaySeconds / 86400 : 0);
    Motion.Corrected motion =
        new Motion.Corrected(whose.elements(), spread, question.earth(), points.start());
    // one who runs late has a mean anomaly that is too large
    double[] start = {-first.best().z()[0]};
    return result(question, motion, SuspectFit.near(motion, question, points, start));
  }

  private static boolean showsMeanMotion(WhoseQuestion question) {
    Duration span = Duration.between(first(question), last(question));
    return question.curves().size() >= CURVES_FOR_MEAN_MOTION
        && span.compareTo(SPAN_FOR_MEAN_MOTION) >= 0;
  }

  private static Instant first(WhoseQuestion question) {
    return question.curves().stream()
        .map(curve -> curve.points().get(0).time())
        .min(Instant::compareTo)
        .orElseThrow();
  }

  private static Instant last(WhoseQuestion question) {
    return question.curves().stream()
        .map(curve -> curve.points().get(curve.points().size() - 1).time())
        .max(Instant::compareTo)
        .orElseThrow();
  }

  private static Refinement result(
      WhoseQuestion question, Motion.Corrected motion, SuspectFit fit) {
    CurveFit best = fit.best();
    Motion.Corrected.Spread spread = motion.spread();
    boolean motionToo = motion.size() > 2;
    Instant at = last(question);
    return new Refinement(
        motion.elements(best.z()),
        best.z()[0] * spread.meanAnomalyDeg(),
        best.sd(0) * spread.meanAnomalyDeg(),
        best.z()[1] * spread.raanDeg(),
        best.sd(1) * spread.raanDeg(),
        motionToo ? best.z()[2] * spread.meanMotionRatio() : 0,
        motionToo ? best.sd(2) * spread.meanMotionRatio() : 0,
        best.rmsHz(),
        at,
        alongTrackSd(motion, best, at, question.earth()));
  }

  /** Spread along the velocity at a time, m, from the fit's covariance. */
  private static double alongTrackSd(
      Motion.Corrected motion, CurveFit fit, Instant at, EarthModel earth) {
    int count = motion.size();
    double[] slope = new double[count];
    State here = state(motion.elements(fit.z()), at, earth).orElse(null);
    if (here == null) {
      return Double.NaN;
    }
    for (int j = 0; j < count; j++) {
      double[] z = fit.z().clone();
      double step = 0.01;
      z[j] += step;
      State there = state(motion.elements(z), at, earth).orElse(here);
      slope[j] = along(here, there) / step;
    }
    RealMatrix covariance = fit.covariance();
    double variance = 0;
    for (int j = 0; j < count; j++) {
      for (int k = 0; k < count; k++) {
        variance += slope[j] * slope[k] * covariance.getEntry(j, k);
      }
    }
    return Math.sqrt(variance);
  }

  private static Optional<State> state(ElementSet elements, Instant at, EarthModel earth) {
    return Trajectory.of(elements, earth).temeAt(at);
  }

  /** Way from one place to another along the velocity at the first, m. */
  static double along(State from, State to) {
    double vx = from.vxMetersPerSecond();
    double vy = from.vyMetersPerSecond();
    double vz = from.vzMetersPerSecond();
    double speed = Math.sqrt(vx * vx + vy * vy + vz * vz);
    return ((to.xMeters() - from.xMeters()) * vx
            + (to.yMeters() - from.yMeters()) * vy
            + (to.zMeters() - from.zMeters()) * vz)
        / speed;
  }
}

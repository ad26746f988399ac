package hark.signal;

import hark.link.LinkBudget;
import hark.orbit.Trajectory;
import hark.station.Looks;
import java.time.Instant;

/**
 * What a suspect would have given on time, as its elements have it, with the carrier and drift of
 * the likeliest: for showing how far each suspect must run late to fit. Pure.
 */
public final class ExpectedCurve {
  private ExpectedCurve() {}

  /**
   * Frequencies received, Hz.
   *
   * @param suspect index among the suspects
   * @param curve index among the curves
   * @param seconds since the curve's first point
   */
  public static double[] onTime(
      WhoseQuestion question, WhoseAnswer answer, int suspect, int curve, double[] seconds) {
    DopplerCurve measured = question.curves().get(curve);
    WhoseAnswer.Found likeliest = answer.likeliest();
    Instant first = measured.points().get(0).time();
    Instant last = measured.points().get(measured.points().size() - 1).time();
    double half = java.time.Duration.between(first, last).toNanos() / 2e9;
    Listener listener = question.listeners().get(question.listenerOf(measured));
    Trajectory path = Trajectory.of(question.suspects().get(suspect).elements(), question.earth());
    double start = path.secondsAt(first);
    double[] hertz = new double[seconds.length];
    for (int i = 0; i < hertz.length; i++) {
      double rate =
          Looks.late(path, listener.site(), start + seconds[i], 0).rangeRateMetersPerSecond();
      double sent =
          likeliest.carrierHz()[curve] + likeliest.driftHzPerSecond()[curve] * (seconds[i] - half);
      hertz[i] = sent * (1 - rate / LinkBudget.SPEED_OF_LIGHT);
    }
    return hertz;
  }
}

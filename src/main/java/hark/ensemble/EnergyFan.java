package hark.ensemble;

import hark.power.BodyHistory;
import java.util.Arrays;
import java.util.List;

/** Weighted quantiles of the state of charge and shares of the bus states against time. */
public final class EnergyFan {
  /** The quantiles that are kept. */
  static final double[] LEVELS = {0.05, 0.25, 0.5, 0.75, 0.95};

  private EnergyFan() {}

  /**
   * One time.
   *
   * @param seconds since separation
   * @param soc state of charge at 5, 25, 50, 75 and 95 %
   * @param states shares of off, boot, safe, nominal; sum 1
   * @param transmitting share that runs a beacon and radiates
   */
  public record Point(double seconds, double[] soc, double[] states, double transmitting) {}

  static List<Point> of(Population population, double[] memberWeight, Workers workers) {
    double[] bodyWeight = new double[population.bodies.size()];
    double total = 0;
    for (int m = 0; m < memberWeight.length; m++) {
      bodyWeight[population.members.get(m).body()] += memberWeight[m];
      total += memberWeight[m];
    }
    BodyHistory first = population.bodies.get(0).history();
    Point[] points = new Point[first.soc().length];
    double sum = total;
    workers.each(
        points.length, g -> points[g] = point(population, memberWeight, bodyWeight, sum, g));
    return List.of(points);
  }

  private static Point point(
      Population population, double[] memberWeight, double[] bodyWeight, double total, int g) {
    BodyHistory first = population.bodies.get(0).history();
    double seconds = first.gridStart() + g * first.gridStep();
    double[] states = new double[4];
    double[] soc = new double[bodyWeight.length];
    for (int b = 0; b < bodyWeight.length; b++) {
      BodyHistory history = population.bodies.get(b).history();
      soc[b] = history.soc()[g];
      states[history.states()[g]] += bodyWeight[b] / total;
    }
    double transmitting = transmitting(population, memberWeight, seconds) / total;
    return new Point(seconds, quantiles(soc, bodyWeight), states, transmitting);
  }

  private static double transmitting(Population population, double[] memberWeight, double seconds) {
    double sum = 0;
    for (int m = 0; m < memberWeight.length; m++) {
      Member member = population.members.get(m);
      if (memberWeight[m] > 0 && member.radio().muteFrom() > seconds) {
        List<BodyHistory.BeaconSegment> segments =
            population.bodies.get(member.body()).history().segments();
        int s = Ear.Segments.firstEndingAfter(segments, seconds);
        boolean runs = s < segments.size() && segments.get(s).firstBurst() <= seconds;
        sum += runs ? memberWeight[m] : 0;
      }
    }
    return sum;
  }

  /** Weighted quantiles at {@link #LEVELS}. */
  static double[] quantiles(double[] values, double[] weights) {
    // value and index packed into one number, so that a plain sort does: values are never negative
    long[] order = new long[values.length];
    for (int k = 0; k < order.length; k++) {
      order[k] = ((long) Float.floatToIntBits((float) values[k]) << 32) | k;
    }
    Arrays.sort(order);
    double total = Arrays.stream(weights).sum();
    double[] result = new double[LEVELS.length];
    int level = 0;
    double sum = 0;
    for (long packed : order) {
      int k = (int) packed;
      sum += weights[k] / total;
      while (level < LEVELS.length && sum >= LEVELS[level] - 1e-12) {
        result[level++] = values[k];
      }
    }
    while (level < LEVELS.length) {
      result[level++] = values[(int) order[order.length - 1]];
    }
    return result;
  }
}

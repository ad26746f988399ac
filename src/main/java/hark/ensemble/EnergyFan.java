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

  /**
   * What a fan is made of: bodies up to now and beyond it, the latter null where no weight is left.
   */
  record Source(Population population, Body[] ahead, double[] memberWeight, double[] bodyWeight) {
    static Source of(Population population, Body[] ahead, double[] memberWeight) {
      return new Source(population, ahead, memberWeight, population.bodyWeights(memberWeight));
    }

    BodyHistory history(int body, boolean past) {
      return past ? population.bodies.get(body).history() : ahead[body].history();
    }
  }

  static List<Point> of(Source source, Workers workers) {
    int first = 0;
    while (source.ahead()[first] == null) {
      first++;
    }
    // the last grid time of the past is the first of what comes
    int past = source.history(first, true).soc().length - 1;
    int count = past + source.history(first, false).soc().length;
    int any = first;
    Point[] points = new Point[count];
    workers.each(
        count,
        g ->
            points[g] =
                g < past ? point(source, any, true, g) : point(source, any, false, g - past));
    return List.of(points);
  }

  private static Point point(Source source, int any, boolean past, int g) {
    BodyHistory grid = source.history(any, past);
    double seconds = grid.gridStart() + g * grid.gridStep();
    double total = Arrays.stream(source.bodyWeight()).sum();
    double[] states = new double[4];
    double[] soc = new double[source.bodyWeight().length];
    for (int b = 0; b < soc.length; b++) {
      if (source.ahead()[b] != null) {
        BodyHistory history = source.history(b, past);
        soc[b] = history.soc()[g];
        states[history.states()[g]] += source.bodyWeight()[b] / total;
      }
    }
    double transmitting = transmitting(source, past, seconds) / total;
    return new Point(seconds, quantiles(soc, source.bodyWeight()), states, transmitting);
  }

  private static double transmitting(Source source, boolean past, double seconds) {
    double sum = 0;
    double[] memberWeight = source.memberWeight();
    for (int m = 0; m < memberWeight.length; m++) {
      Member member = source.population().members.get(m);
      if (memberWeight[m] > 0 && member.radio().muteFrom() > seconds) {
        boolean runs =
            Ear.Segments.any(source.history(member.body(), past).segments(), seconds, seconds);
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

package hark.ensemble;

import hark.power.BodyHistory;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

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

  /** Times that are worked out together: one bit of a number each. */
  private static final int TOGETHER = Long.SIZE;

  static List<Point> of(Source source, Workers workers) {
    int[] alive =
        IntStream.range(0, source.ahead().length).filter(b -> source.ahead()[b] != null).toArray();
    // the last grid time of the past is the first of what comes
    int past = source.history(alive[0], true).soc().length - 1;
    int coming = source.history(alive[0], false).soc().length;
    Point[] points = new Point[past + coming];
    workers.eachBlock(
        past, TOGETHER, (from, to) -> new Stretch(source, alive, true, from, to).fill(points, 0));
    workers.eachBlock(
        coming,
        TOGETHER,
        (from, to) -> new Stretch(source, alive, false, from, to).fill(points, past));
    return List.of(points);
  }

  /** Some neighbouring times of the grid, past or coming. */
  private static final class Stretch {
    private final Source source;
    private final int[] alive;
    private final boolean past;
    private final int from;
    private final double[] seconds;
    private final double total;

    Stretch(Source source, int[] alive, boolean past, int from, int to) {
      this.source = source;
      this.alive = alive;
      this.past = past;
      this.from = from;
      BodyHistory grid = source.history(alive[0], past);
      seconds =
          IntStream.range(from, to)
              .mapToDouble(g -> grid.gridStart() + g * grid.gridStep())
              .toArray();
      total = Arrays.stream(source.bodyWeight()).sum();
    }

    void fill(Point[] points, int shift) {
      double[] weights = Arrays.stream(alive).mapToDouble(b -> source.bodyWeight()[b]).toArray();
      double[][] soc = new double[seconds.length][alive.length];
      double[][] states = new double[seconds.length][4];
      for (int k = 0; k < alive.length; k++) {
        BodyHistory history = source.history(alive[k], past);
        for (int j = 0; j < seconds.length; j++) {
          soc[j][k] = history.soc()[from + j];
          states[j][history.states()[from + j]] += weights[k] / total;
        }
      }
      double[] transmitting = transmitting();
      for (int j = 0; j < seconds.length; j++) {
        double[] quantiles = WeightedQuantiles.of(soc[j], weights, LEVELS);
        points[shift + from + j] =
            new Point(seconds[j], quantiles, states[j], transmitting[j] / total);
      }
    }

    /** Weight that radiates, by time; members share what their bodies do. */
    private double[] transmitting() {
      long[] runs = new long[source.ahead().length];
      for (int body : alive) {
        runs[body] = runs(source.history(body, past).segments());
      }
      double[] sum = new double[seconds.length];
      double[] memberWeight = source.memberWeight();
      for (int m = 0; m < memberWeight.length; m++) {
        Member member = source.population().members.get(m);
        if (memberWeight[m] > 0) {
          double muteFrom = member.radio().muteFrom();
          for (long left = runs[member.body()]; left != 0; left &= left - 1) {
            int j = Long.numberOfTrailingZeros(left);
            sum[j] += muteFrom > seconds[j] ? memberWeight[m] : 0;
          }
        }
      }
      return sum;
    }

    /** A bit for each time at which a beacon runs. */
    private long runs(List<BodyHistory.BeaconSegment> segments) {
      long bits = 0;
      int s = Ear.Segments.firstEndingAfter(segments, seconds[0]);
      for (int j = 0; j < seconds.length; j++) {
        while (s < segments.size() && segments.get(s).end() < seconds[j]) {
          s++;
        }
        boolean runs = s < segments.size() && segments.get(s).firstBurst() <= seconds[j];
        bits |= runs ? 1L << j : 0;
      }
      return bits;
    }
  }
}

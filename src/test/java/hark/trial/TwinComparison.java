package hark.trial;

import hark.power.BodyHistory;
import hark.power.Illumination;
import hark.power.PowerModel;
import hark.power.PowerModel.BusState;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import hark.power.SimulationRequest.TimedChange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One body by the simulation of {@code hark.power} and by the plain body, side by side.
 *
 * @param socErrors absolute differences of the state of charge on the grid, rising, 0…1
 * @param completeSeconds up to here both lists of edges are whole: the simulation lists no more
 *     than ten thousand transitions, and in a storm they end long before the run does
 * @param fastEdges switching on and off by the simulation, up to there
 * @param plainEdges the same by the plain body, up to there
 */
public record TwinComparison(
    double[] socErrors,
    double completeSeconds,
    List<Edge> fastEdges,
    List<Edge> plainEdges,
    BodyHistory fast,
    PlainHistory plain) {
  /** Transitions that the simulation lists, see {@link BodyHistory}. */
  private static final int FAST_LISTS = 10_000;

  /** The bus came on or went off. */
  public record Edge(double seconds, boolean on) {}

  /** Runs both. */
  public static TwinComparison of(
      PowerModel model, Illumination light, Setting setting, TimedChange... changes) {
    double[] none = {};
    SimulationRequest request =
        new SimulationRequest(
            setting.endSeconds(),
            0,
            setting.gridSeconds(),
            List.of(changes),
            none,
            none,
            setting.longestStepSeconds());
    BodyHistory fast = Simulation.run(model, light, request);
    PlainHistory plain =
        PlainBody.run(
            model,
            light,
            new PlainRequest(
                setting.endSeconds(),
                setting.plainStepSeconds(),
                setting.gridSeconds(),
                List.of(changes),
                List.of()));
    return of(fast, plain);
  }

  /**
   * How to run both.
   *
   * @param gridSeconds a whole number of plain steps, and the end a whole number of grid steps
   * @param longestStepSeconds of the simulation
   * @param plainStepSeconds 1 for the reference, 10 for the twin that speed is measured against
   */
  public record Setting(
      double endSeconds, double gridSeconds, double longestStepSeconds, double plainStepSeconds) {}

  /** Compares two runs over the same time on the same grid. */
  public static TwinComparison of(BodyHistory fast, PlainHistory plain) {
    int n = Math.min(fast.soc().length, plain.soc().length);
    double[] errors = new double[n];
    for (int i = 0; i < n; i++) {
      errors[i] = Math.abs(fast.soc()[i] - plain.soc()[i]);
    }
    Arrays.sort(errors);
    int listed = fast.transitions().size();
    double whole = (n - 1) * plain.gridSeconds();
    double complete = listed < FAST_LISTS ? whole : fast.transitions().get(listed - 1).seconds();
    List<Edge> fastEdges = new ArrayList<>();
    fast.transitions().forEach(t -> add(fastEdges, t.seconds(), t.to(), complete));
    List<Edge> plainEdges = new ArrayList<>();
    plain.transitions().forEach(t -> add(plainEdges, t.seconds(), t.to(), complete));
    return new TwinComparison(errors, complete, fastEdges, plainEdges, fast, plain);
  }

  private static void add(List<Edge> edges, double seconds, BusState to, double complete) {
    boolean on = to != BusState.OFF;
    boolean was = !edges.isEmpty() && edges.get(edges.size() - 1).on();
    if (on != was && seconds <= complete) {
      edges.add(new Edge(seconds, on));
    }
  }

  /** The error of the state of charge that a share of the grid does not exceed, 0…1. */
  public double socQuantile(double share) {
    return socErrors[(int) Math.min(socErrors.length - 1, Math.floor(share * socErrors.length))];
  }

  /** Lengths of the stretches in which the bus is on, s, in turn; the last may still go on. */
  public static double[] onSeconds(List<Edge> edges, double endSeconds) {
    List<Double> lengths = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i).on()) {
        double end = i + 1 < edges.size() ? edges.get(i + 1).seconds() : endSeconds;
        lengths.add(end - edges.get(i).seconds());
      }
    }
    return lengths.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Whole time on up to a time, s; not past {@link #completeSeconds}, where edges are missing. */
  public static double totalOn(List<Edge> edges, double endSeconds) {
    return Arrays.stream(onSeconds(edges, endSeconds)).sum();
  }

  /** Whole time on by the simulation, up to where both lists are whole, s. */
  public double fastOn() {
    return totalOn(fastEdges, completeSeconds);
  }

  /** Whole time on by the plain body, up to there, s. */
  public double plainOn() {
    return totalOn(plainEdges, completeSeconds);
  }

  /** In a line: quantiles of the error, edges, time on. */
  public String summary() {
    return String.format(
        "soc error median %.5f, 99 %% %.5f, most %.5f; edges %d / %d; on %.0f s / %.0f s of %.0f s",
        socQuantile(0.5),
        socQuantile(0.99),
        socQuantile(1),
        fastEdges.size(),
        plainEdges.size(),
        fastOn(),
        plainOn(),
        completeSeconds);
  }
}

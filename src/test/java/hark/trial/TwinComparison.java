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
 * @param fastEdges switching on and off by the simulation
 * @param plainEdges the same by the plain body
 */
public record TwinComparison(
    double[] socErrors,
    List<Edge> fastEdges,
    List<Edge> plainEdges,
    BodyHistory fast,
    PlainHistory plain) {

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
    List<Edge> fastEdges = new ArrayList<>();
    fast.transitions().forEach(t -> add(fastEdges, t.seconds(), t.to()));
    List<Edge> plainEdges = new ArrayList<>();
    plain.transitions().forEach(t -> add(plainEdges, t.seconds(), t.to()));
    return new TwinComparison(errors, fastEdges, plainEdges, fast, plain);
  }

  private static void add(List<Edge> edges, double seconds, BusState to) {
    boolean on = to != BusState.OFF;
    boolean was = !edges.isEmpty() && edges.get(edges.size() - 1).on();
    if (on != was) {
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

  /** Whole time on, s. */
  public static double totalOn(List<Edge> edges, double endSeconds) {
    return Arrays.stream(onSeconds(edges, endSeconds)).sum();
  }

  /** In a line: quantiles of the error, edges, time on. */
  public String summary(double endSeconds) {
    return String.format(
        "soc error median %.5f, 99 %% %.5f, most %.5f; edges %d / %d; on %.0f s / %.0f s",
        socQuantile(0.5),
        socQuantile(0.99),
        socQuantile(1),
        fastEdges.size(),
        plainEdges.size(),
        totalOn(fastEdges, endSeconds),
        totalOn(plainEdges, endSeconds));
  }
}

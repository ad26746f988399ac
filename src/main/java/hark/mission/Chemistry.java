package hark.mission;

import java.util.Arrays;
import java.util.List;

/** Cell chemistries whose open-circuit curve Hark brings along. */
enum Chemistry {
  /**
   * Lithium-ion with nickel-cobalt-aluminium cathode, full at 4.2 V: open-circuit voltage over
   * state of charge as in the battery example of the Modelica Standard Library.
   */
  LI_ION_NCA;

  private static final double NCA_FULL_VOLTS = 4.2;

  /** Rows of (state of charge, volts a cell). */
  List<double[]> openCircuit() {
    double[][] relative = {
      {0, .595}, {.05, .744}, {.10, .761}, {.20, .786}, {.30, .804}, {.40, .818},
      {.50, .835}, {.60, .855}, {.70, .888}, {.80, .926}, {.90, .964}, {1, 1}
    };
    return Arrays.stream(relative).map(r -> new double[] {r[0], NCA_FULL_VOLTS * r[1]}).toList();
  }
}

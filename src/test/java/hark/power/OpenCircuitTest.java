package hark.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class OpenCircuitTest {
  private final OpenCircuit pack = new OpenCircuit(OpenCircuit.liIonNca(), 2);

  /** Open-circuit table of {@code li_ion_nca}, Modelica Standard Library battery example. */
  @Test
  void twoCellsInSeriesShowTwiceThePublishedTable() {
    assertEquals(2 * 4.2 * 0.595, pack.voltsAt(0), 1e-12);
    assertEquals(2 * 4.2 * 0.744, pack.voltsAt(0.05), 1e-12);
    assertEquals(2 * 4.2 * 0.835, pack.voltsAt(0.5), 1e-12);
    assertEquals(2 * 4.2 * (0.888 + 0.926) / 2, pack.voltsAt(0.75), 1e-12);
    assertEquals(8.4, pack.voltsAt(1), 1e-12);
  }

  /** Low-rate discharge of a common NCA cell, which lies below the open-circuit curve. */
  @Test
  void aPublishedDischargeCurveLiesALittleBelowTheOpenCircuitCurve() {
    double[] discharge = {3.372, 3.449, 3.532, 3.602, 3.680, 3.764, 3.842, 3.936, 4.032};
    for (int i = 0; i < discharge.length; i++) {
      double cell = pack.voltsAt(0.2 + 0.1 * i) / 2;
      assertEquals(discharge[i], cell, 0.17);
    }
  }

  @Test
  void voltageAndChargeAreInversesBothWaysAndBeyondTheEnds() {
    for (double soc = -0.02; soc < 1.05; soc += 0.0137) {
      assertEquals(soc, pack.socAt(pack.voltsAt(soc)), 1e-12);
    }
  }

  @Test
  void energyIsTheIntegralOfVoltage() {
    double sum = 0;
    int parts = 100_000;
    for (int i = 0; i < parts; i++) {
      sum += pack.voltsAt((i + 0.5) / parts * 0.83) * 0.83 / parts;
    }
    assertEquals(sum, pack.joulePerCoulomb(0.83), 1e-6);
  }

  @Test
  void aTableThatDoesNotRiseOrDoesNotSpanIsRefused() {
    double[] empty = {0, 3};
    double[] full = {1, 4};
    assertThrows(IllegalArgumentException.class, () -> new OpenCircuit(List.of(empty), 1));
    assertThrows(IllegalArgumentException.class, () -> new OpenCircuit(List.of(full, empty), 1));
    double[] flat = {1, 3};
    assertThrows(IllegalArgumentException.class, () -> new OpenCircuit(List.of(empty, flat), 1));
    double[] half = {0.5, 4};
    assertThrows(IllegalArgumentException.class, () -> new OpenCircuit(List.of(empty, half), 1));
    double[] nan = {1, Double.NaN};
    assertThrows(IllegalArgumentException.class, () -> new OpenCircuit(List.of(empty, nan), 1));
  }
}

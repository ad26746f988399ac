package hark.power;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.ReferenceTable;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The sizing arithmetic of {@code reference/battery/energy_balance.csv}: arrays of the size it
 * gives hold the battery where it was, smaller ones do not, and an eclipse takes the energy it
 * says. The table's two path efficiencies differ; here both are the charger's, so the array is
 * sized anew by the same formula, which is first checked on the table's own row.
 */
class EnergyBalanceReferenceTest {
  private static final double CHARGER = 0.8;

  private static double arrayWatts(Map<String, String> row, double eclipsePath, double dayPath) {
    double eclipse = number(row, "Pe_w") * number(row, "Te_s") / eclipsePath;
    double day = number(row, "Pd_w") * number(row, "Td_s") / dayPath;
    return (eclipse + day) / number(row, "Td_s");
  }

  @Test
  void arraysOfTheSizeTheFormulaGivesJustHoldTheBattery() {
    for (Map<String, String> row : ReferenceTable.read("battery/energy_balance.csv").rows()) {
      double published = arrayWatts(row, number(row, "Xe"), number(row, "Xd"));
      assertEquals(number(row, "Psa_w"), published, 1e-6 * published);
      double enough = constantLoadArrayWatts(row);
      assertTrue(Math.abs(driftPerOrbit(row, enough)) < 1e-3, "balanced: " + row);
      assertTrue(driftPerOrbit(row, 0.97 * enough) < -1e-3, "three percent short: " + row);
      assertTrue(driftPerOrbit(row, 1.03 * enough) > 1e-3, "three percent over: " + row);
    }
  }

  @Test
  void anEclipseTakesTheEnergyThatTheTableSays() {
    for (Map<String, String> row : ReferenceTable.read("battery/energy_balance.csv").rows()) {
      double dayless = 0.9; // the table divides by its own efficiency of 0.9
      double wattHours = dayless * number(row, "batt_energy_per_eclipse_wh_eff0.9");
      double eclipse = number(row, "Te_s");
      double start = number(row, "Td_s");
      Bodies body = bodyOf(row, constantLoadArrayWatts(row));
      BodyHistory history =
          Simulation.run(
              body.model(),
              orbits(row, 1),
              request(start + eclipse, new double[] {start, start + eclipse}));
      double before = history.probes().get(0).soc();
      double after = history.probes().get(1).soc();
      double stored = storedWattHours(body, before) - storedWattHours(body, after);
      assertEquals(wattHours, stored, 0.01 * wattHours, "with one percent for its resistance");
    }
  }

  private static double constantLoadArrayWatts(Map<String, String> row) {
    double load = number(row, "Pe_w");
    return load * (number(row, "Te_s") + number(row, "Td_s")) / (number(row, "Td_s") * CHARGER);
  }

  private static double driftPerOrbit(Map<String, String> row, double arrayWatts) {
    double period = number(row, "Te_s") + number(row, "Td_s");
    int orbits = 10;
    Bodies body = bodyOf(row, arrayWatts);
    BodyHistory history =
        Simulation.run(
            body.model(),
            orbits(row, orbits),
            request(period * orbits, new double[] {0, period * orbits}));
    return (history.probes().get(1).soc() - history.probes().get(0).soc()) / orbits;
  }

  private static double storedWattHours(Bodies body, double soc) {
    PowerModel.Battery battery = body.model().battery();
    OpenCircuit curve = new OpenCircuit(battery.openCircuit(), battery.series());
    return curve.joulePerCoulomb(soc) * battery.cellCapacityAh() * battery.parallel();
  }

  private static Bodies bodyOf(Map<String, String> row, double arrayWatts) {
    Bodies body = new Bodies();
    double load = number(row, "Pe_w");
    body.charging = new PowerModel.Charging(PowerModel.Scheme.MPPT, CHARGER, 1e3, 8.4);
    body.parallel = 1;
    body.cellCapacityAh = number(row, "capacity_ah") * 4;
    body.cellResistanceOhm = 1e-4;
    body.socAtSeparation = 0.5;
    body.chargeMinC = -90;
    body.thresholds = new PowerModel.Thresholds(5, 5, 5, 5);
    body.loads = new PowerModel.Loads(load, load, load, load);
    body.quietSeconds = 1e9;
    body.thermal = new PowerModel.Thermal(1e15, 0.1, 0.5, 0.5, 1e15, 0.1);
    body.beacons = List.of();
    body.cellAreaSquareMeters *=
        arrayWatts / ArrayPower.fullSunWatts(body.model(), Bodies.SOLAR_CONSTANT);
    return body;
  }

  private static SimulationRequest request(double seconds, double[] probes) {
    return new SimulationRequest(seconds, 0, 600, List.of(), probes, new double[0]);
  }

  /** Day first, then eclipse; no penumbra, as in the table. */
  private static Illumination orbits(Map<String, String> row, int count) {
    double eclipse = number(row, "Te_s");
    double day = number(row, "Td_s");
    double[][] edges = new double[4][count];
    for (int i = 0; i < count; i++) {
      double entry = i * (day + eclipse) + day;
      edges[0][i] = entry;
      edges[1][i] = entry;
      edges[2][i] = entry + eclipse;
      edges[3][i] = entry + eclipse;
    }
    return new Illumination(edges, Bodies.SOLAR_CONSTANT);
  }
}

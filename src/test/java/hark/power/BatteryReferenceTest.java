package hark.power;

import static hark.orbit.ReferenceTable.number;
import static hark.power.BatteryRows.alwaysOn;
import static hark.power.BatteryRows.bodyOf;
import static hark.power.BatteryRows.name;
import static hark.power.BatteryRows.rowsOf;
import static hark.power.BatteryRows.settings;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * Closed forms for a battery with linear open-circuit voltage and series resistance, from {@code
 * reference/battery}. Charge and constant power run through the whole simulation, constant current
 * through the circuit alone, because no load on board is a constant current.
 */
class BatteryReferenceTest {
  private static final double ONE_IN_A_THOUSAND = 1e-3;
  private static final double WARM_CELSIUS = 25;

  /** Above the temperature at which the cells have their stated resistance. */
  private static final List<SimulationRequest.TimedChange> WARM =
      List.of(Bodies.at(0, new OnboardChange.TemperatureShift(10)));

  @Test
  void constantPowerDischargesAsLongAsTheClosedForm() {
    for (Map<String, String> row : rowsOf("CP_discharge")) {
      Map<String, Double> set = settings(row);
      Bodies body = bodyOf(row, set.get("s0"));
      double watts = set.get("P_W");
      body.wholeBus = alwaysOn(watts);
      body.cellAreaSquareMeters = 0;
      double seconds = number(row, "r1");
      BodyHistory history = run(body, Bodies.fullSun(), seconds + 60, new double[] {0, seconds});
      BodyHistory.Probe start = history.probes().get(0);
      BodyHistory.Probe end = history.probes().get(1);
      String name = name(row);
      assertEquals(set.get("s1"), end.soc(), 1e-5, name);
      assertEquals(number(row, "r2"), -start.batteryAmps(), 1e-6, name);
      assertEquals(number(row, "r3"), -end.batteryAmps(), 1e-4, name);
      double wattHours = watts * seconds / 3600;
      assertEquals(number(row, "r4"), wattHours, ONE_IN_A_THOUSAND * wattHours, name);
    }
  }

  @Test
  void chargeRunsAtTheCurrentLimitAndThenTapersAsTheClosedForm() {
    for (Map<String, String> row : rowsOf("CCCV_charge")) {
      Map<String, Double> set = settings(row);
      Bodies body = bodyOf(row, set.get("s0"));
      body.wholeBus = alwaysOn(0);
      body.cellAreaSquareMeters = 10; // far more than the limits let in
      body.charging =
          new PowerModel.Charging(PowerModel.Scheme.CC_CV, 1, set.get("I_A"), set.get("Vcv"));
      double total = number(row, "r1") + number(row, "r2");
      double[] times = DoubleStream.iterate(0, t -> t <= total + 600, t -> t + 60).toArray();
      BodyHistory history = run(body, Bodies.fullSun(), total + 600, times);
      ChargeCurve curve = ChargeCurve.of(history.probes(), set.get("I_A"), set.get("Icut_A"));
      String name = name(row);
      double oneStep = 60;
      assertEquals(number(row, "r1"), curve.limitedSeconds, oneStep, name);
      assertEquals(total, curve.cutSeconds, Math.max(oneStep, total * ONE_IN_A_THOUSAND), name);
      assertEquals(number(row, "r3"), curve.cutSoc, ONE_IN_A_THOUSAND, name);
      double wattHours = number(row, "r4");
      double[] none = new double[0];
      SimulationRequest untilCut = new SimulationRequest(total, 0, 600, WARM, none, none);
      EnergyBooks books = Simulation.energy(body.model(), Bodies.fullSun(), untilCut);
      assertEquals(wattHours, books.arrays() / 3600, ONE_IN_A_THOUSAND * wattHours, name);
    }
  }

  @Test
  void constantCurrentReachesTheLowVoltageAtTheClosedFormsTimeAndCharge() {
    for (Map<String, String> row : rowsOf("CC_discharge")) {
      Map<String, Double> set = settings(row);
      Bodies body = bodyOf(row, set.get("s0"));
      body.cellAreaSquareMeters = 0;
      Circuit circuit = new Circuit(body.model(), Bodies.fullSun());
      OpenCircuit curve = new OpenCircuit(body.wholeBattery.openCircuit(), 1);
      BodyState s = new BodyState(0, 0, 1);
      s.soc = set.get("s0");
      s.batteryC = WARM_CELSIUS;
      s.bus = PowerModel.BusState.NOMINAL;
      circuit.renew(s);
      double amps = set.get("I_A");
      double ohm = body.wholeBattery.cellResistanceOhm();
      double step = 1;
      double middle = amps * step / 2 / circuit.capacityCoulomb();
      do {
        s.loadWatts = amps * (curve.voltsAt(s.soc - middle) - amps * ohm);
        circuit.attempt(s, step);
        circuit.keep(s);
        s.seconds += step;
        circuit.measure(s);
      } while (circuit.busVolts > set.get("Vmin"));
      String name = name(row);
      assertEquals(number(row, "r1"), s.seconds, 2 * step, name);
      assertEquals(number(row, "r2"), s.soc, ONE_IN_A_THOUSAND, name);
      double wattHours = number(row, "r3");
      assertEquals(wattHours, s.loadJoule / 3600, ONE_IN_A_THOUSAND * wattHours, name);
    }
  }

  /** What a charge looks like from telemetry once a minute. */
  private static final class ChargeCurve {
    private double limitedSeconds;
    private double cutSeconds;
    private double cutSoc;

    private static ChargeCurve of(List<BodyHistory.Probe> probes, double limit, double cut) {
      ChargeCurve curve = new ChargeCurve();
      for (BodyHistory.Probe now : probes) {
        if (now.batteryAmps() >= limit - 1e-9) {
          curve.limitedSeconds = now.seconds();
        }
        if (now.batteryAmps() < cut) {
          curve.cutSeconds = now.seconds();
          curve.cutSoc = now.soc();
          return curve;
        }
      }
      assertTrue(false, "the charge never tapered to " + cut + " A");
      return curve;
    }
  }

  private static BodyHistory run(Bodies body, Illumination light, double seconds, double[] probes) {
    return Simulation.run(
        body.model(), light, new SimulationRequest(seconds, 0, 600, WARM, probes, new double[0]));
  }
}

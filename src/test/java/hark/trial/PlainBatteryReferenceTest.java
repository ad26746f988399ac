package hark.trial;

import static hark.orbit.ReferenceTable.number;
import static hark.power.BatteryRows.alwaysOn;
import static hark.power.BatteryRows.bodyOf;
import static hark.power.BatteryRows.name;
import static hark.power.BatteryRows.rowsOf;
import static hark.power.BatteryRows.settings;
import static org.junit.jupiter.api.Assertions.assertEquals;

import hark.power.Bodies;
import hark.power.OnboardChange;
import hark.power.PowerModel;
import hark.power.SimulationRequest.TimedChange;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Closed forms for a battery with linear open-circuit voltage and series resistance, from {@code
 * reference/battery}.
 */
class PlainBatteryReferenceTest {
  private static final double ONE_IN_A_THOUSAND = 1e-3;

  /** Above the temperature at which the cells have their stated resistance. */
  private static final TimedChange WARM = Bodies.at(0, new OnboardChange.TemperatureShift(10));

  @Test
  void constantPowerDischargesAsLongAsTheClosedForm() {
    for (Map<String, String> row : rowsOf("CP_discharge")) {
      Map<String, Double> set = settings(row);
      Bodies body = bodyOf(row, set.get("s0"));
      double watts = set.get("P_W");
      body.wholeBus = alwaysOn(watts);
      body.cellAreaSquareMeters = 0;
      PlainHistory history = run(body, number(row, "r1"));
      int end = history.soc().length - 1;
      assertEquals(set.get("s1"), history.soc()[end], ONE_IN_A_THOUSAND, name(row));
      assertEquals(number(row, "r2"), -history.amps()[0], 1e-6, name(row));
      double oneStepOfCurrent = 1e-3;
      assertEquals(number(row, "r3"), -history.amps()[end], oneStepOfCurrent, name(row));
      double wattHours = number(row, "r4");
      double onePartInAThousand = ONE_IN_A_THOUSAND * wattHours;
      assertEquals(wattHours, history.books().loads() / 3600, onePartInAThousand, name(row));
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
          new PowerModel.Charging(
              PowerModel.Scheme.CC_CV,
              1,
              set.get("I_A"),
              set.get("Vcv"),
              set.get("Icut_A"),
              set.get("Vcv") / 2);
      double total = number(row, "r1") + number(row, "r2");
      PlainHistory history = run(body, total + 600);
      double limited = lastAt(history.amps(), set.get("I_A") - 1e-9);
      double ended = lastAt(history.amps(), 1e-9);
      double twoSteps = 2;
      double tolerance = Math.max(twoSteps, ONE_IN_A_THOUSAND * total);
      assertEquals(number(row, "r1"), limited, tolerance, name(row));
      assertEquals(total, ended, tolerance, name(row));
      int last = history.soc().length - 1;
      assertEquals(number(row, "r3"), history.soc()[last], ONE_IN_A_THOUSAND, name(row));
      double wattHours = number(row, "r4");
      double inTheEnd = history.books().arrays() / 3600;
      assertEquals(wattHours, inTheEnd, ONE_IN_A_THOUSAND * wattHours, name(row));
    }
  }

  private static double lastAt(double[] amps, double least) {
    int last = 0;
    for (int i = 0; i < amps.length; i++) {
      last = amps[i] >= least ? i : last;
    }
    return last;
  }

  @Test
  void constantCurrentReachesTheLowVoltageAtTheClosedFormsTimeAndCharge() {
    for (Map<String, String> row : rowsOf("CC_discharge")) {
      Map<String, Double> set = settings(row);
      PowerModel.Battery battery = bodyOf(row, set.get("s0")).wholeBattery;
      Bodies body = new Bodies();
      body.wholeBattery = battery;
      Ledger ledger = new Ledger();
      Heat heat = new Heat(body.thermal);
      heat.batteryCelsius = Physics.RESISTANCE_CELSIUS;
      Strings strings = new Strings(battery, heat, ledger);
      Junction junction = new Junction(body.model(), strings);
      double amps = set.get("I_A");
      double seconds = 0;
      double joules = 0;
      do {
        double watts = amps * (strings.openVolts() - amps * battery.cellResistanceOhm());
        junction.solve(0, watts);
        assertEquals(-amps, junction.amps, 1e-9, name(row));
        strings.step(junction.amps, 1, 0);
        joules += watts;
        seconds++;
      } while (junction.volts > set.get("Vmin"));
      double twoSteps = 2;
      assertEquals(number(row, "r1"), seconds, twoSteps, name(row));
      assertEquals(number(row, "r2"), strings.toldSoc(), ONE_IN_A_THOUSAND, name(row));
      double wattHours = number(row, "r3");
      assertEquals(wattHours, joules / 3600, ONE_IN_A_THOUSAND * wattHours, name(row));
    }
  }

  private static PlainHistory run(Bodies body, double seconds) {
    return PlainBody.run(
        body.model(),
        Bodies.fullSun(),
        new PlainRequest(Math.rint(seconds), 1, 1, List.of(WARM), List.of()));
  }
}

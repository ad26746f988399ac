package hark.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.PowerModel.ClosesOn;
import hark.power.SimulationRequest.TimedChange;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cold, time and misuse do to the cells, and the protection of each string. */
class CellsReferenceTest {
  private static CellBehaviour only(double coulombic, double self, double cold) {
    return new CellBehaviour(coulombic, self, cold, 0, 0, 0, 0);
  }

  /** A body that nothing feeds and nothing drains. */
  private static Bodies idle() {
    Bodies body = new Bodies();
    body.cellAreaSquareMeters = 0;
    body.loads = new PowerModel.Loads(0, 0, 0, 0);
    body.beacons = List.of();
    body.thermal = new PowerModel.Thermal(1e15, 0.1, 0.5, 0.5, 1e15, 0.1); // stays at 20 °C
    return body;
  }

  private static BodyHistory run(Bodies body, double days, TimedChange... changes) {
    return Simulation.run(body.model(), Bodies.fullSun(), Bodies.request(days, List.of(changes)));
  }

  private static double last(BodyHistory history) {
    return history.soc()[history.soc().length - 1];
  }

  /** Two in a hundred of the capacity in thirty days at 20 °C (vendors' usual figure). */
  @Test
  void anIdleCellLosesItsShareAMonthAndTwiceThatTenKelvinWarmer() {
    Bodies body = idle();
    body.socAtSeparation = 0.8;
    double kept = last(run(body, 30)); // the release alone has drawn
    body.behaviour = only(1, 0.02, 0);
    assertEquals(0.02, kept - last(run(body, 30)), 2e-5);
    TimedChange warmer = Bodies.at(0, new OnboardChange.TemperatureShift(10));
    assertEquals(0.04, kept - last(run(body, 30, warmer)), 4e-5);
  }

  /** Charge that comes back over charge put in: the definition. */
  @Test
  void coulombicEfficiencyIsChargeOutOverChargeIn() {
    Bodies body = idle();
    body.cellAreaSquareMeters = 0.03;
    body.socAtSeparation = 0.3;
    body.charging = new PowerModel.Charging(PowerModel.Scheme.MPPT, 0.85, 0.5, 8.4);
    double hours = 2;
    double gained = last(run(body, hours / 24)) - 0.3;
    body.behaviour = only(0.9, 0, 0);
    double less = last(run(body, hours / 24)) - 0.3;
    assertEquals(0.5 * hours / 6.4, gained, 1e-3, "half an ampere into 6.4 Ah");
    assertEquals(0.9, less / gained, 1e-4);
  }

  /**
   * Share of the capacity that a small load gets out of the cell in the cold, common practice for
   * 18650 cells at a tenth of their capacity an hour: 95 % and more at 25 °C, 85 to 95 % at 0 °C,
   * 70 to 90 % at −20 °C.
   */
  @ParameterizedTest(name = "{0} °C: {1} to {2}")
  @CsvSource({"25, 0.95, 1", "0, 0.85, 0.95", "-20, 0.7, 0.9"})
  void inTheColdLessOfTheChargeCanBeReached(double celsius, double least, double most) {
    Bodies body = idle();
    body.socAtSeparation = 1;
    body.behaviour = CellBehaviour.LITHIUM_ION;
    body.loads = new PowerModel.Loads(0, 4.6, 4.6, 4.6); // a tenth of the capacity an hour
    body.thresholds = new PowerModel.Thresholds(6.0, 7.9, 6.05, 8.1);
    TimedChange shift = Bodies.at(0, new OnboardChange.TemperatureShift(celsius - 20));
    double left = last(run(body, 1.5, shift));
    assertTrue(1 - left >= least && 1 - left <= most, "out came " + (1 - left));
  }

  /** Linear with years, as stated. */
  @Test
  void afterTwoYearsCapacityIsLessAndResistanceMore() {
    Bodies body = idle();
    body.behaviour = new CellBehaviour(1, 0, 0, 0.03, 0.05, 0, 0);
    Circuit circuit = new Circuit(body.model(), Bodies.fullSun());
    BodyState s = new BodyState(0, 1, 2);
    circuit.renew(s);
    double newCoulomb = circuit.capacityCoulomb();
    s.years = 2;
    circuit.renew(s);
    assertEquals(0.94 * newCoulomb, circuit.capacityCoulomb(), 1e-6 * newCoulomb);
  }

  @Test
  void aCellLeftBelowTheVoltageOfDamageLosesCapacityForGood() {
    Bodies body = idle();
    body.socAtSeparation = 0.001;
    body.loads = new PowerModel.Loads(0.3, 0.6, 0.6, 0.6);
    body.protection = new PowerModel.Protection(0.1, 0.2, ClosesOn.NEVER);
    body.behaviour = new CellBehaviour(1, 0, 0, 0, 0, 2, 0.1);
    SimulationRequest request = Bodies.request(3, List.of());
    EnergyBooks harmed = Simulation.energy(body.model(), Bodies.fullSun(), request);
    body.behaviour = CellBehaviour.IDEAL;
    EnergyBooks unharmed = Simulation.energy(body.model(), Bodies.fullSun(), request);
    assertTrue(Math.abs(harmed.removed()) > Math.abs(unharmed.removed()), harmed.toString());
  }

  @Test
  void stringsOpenOneAfterTheOtherAndShareTheirChargeWhenTheyClose() {
    Bodies body = new Bodies();
    body.parallel = 3;
    body.cellCapacityAh = 1;
    body.protection = new PowerModel.Protection(3.0, 3.3, ClosesOn.CHARGE, 0.1);
    body.socAtSeparation = 0.15;
    body.thresholds = new PowerModel.Thresholds(5.0, 6.8, 5.1, 7.5);
    Machine machine =
        new Machine(
            body.model(),
            Bodies.orbits(2),
            Bodies.request(2, List.of(Bodies.at(0, new OnboardChange.ArrayFactor(0.3)))),
            null);
    machine.begin();
    int most = 0;
    boolean parted = false;
    for (double t = 60; t < 2 * Bodies.DAY; t += 60) {
      machine.advanceTo(t);
      most = Math.max(most, machine.s.stringsResting);
      parted |= machine.s.stringsResting > 0 && !machine.s.protectionOpen;
      assertTrue(machine.s.stringsResting < 3);
    }
    assertTrue(parted, "some rest while others carry on");
    EnergyBooks books = machine.circuit.books(machine.s);
    double turnover = books.arrays() + Math.abs(books.stored());
    assertEquals(0, books.gap(), 1e-3 * turnover, books.toString());
  }
}

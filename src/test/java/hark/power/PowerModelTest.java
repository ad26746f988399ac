package hark.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.PowerModel.BusState;
import hark.power.PowerModel.Thresholds;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What the records of this room refuse. */
class PowerModelTest {
  private static final double NAN = Double.NaN;

  private static void assertAllRefused(Executable... makers) {
    for (int i = 0; i < makers.length; i++) {
      Executable maker = makers[i];
      assertThrows(IllegalArgumentException.class, maker, "case " + i);
    }
  }

  @Test
  void thresholdsInTheWrongOrderAreRefusedWithBothNumbers() {
    String said =
        assertThrows(IllegalArgumentException.class, () -> new Thresholds(7.1, 7.0, 7.2, 7.5))
            .getMessage();
    assertTrue(said.contains("7.1") && said.contains("7.0"), said);
    assertAllRefused(
        () -> new Thresholds(6.2, 7.0, 6.1, 7.5),
        () -> new Thresholds(6.2, 7.0, 7.6, 7.5),
        () -> new Thresholds(NAN, 7.0, 7.2, 7.5),
        () -> new Thresholds(6.2, NAN, 7.2, 7.5),
        () -> new Thresholds(6.2, 7.0, NAN, 7.5),
        () -> new Thresholds(6.2, 7.0, 7.2, NAN));
  }

  @Test
  void numbersOutsideNatureAreRefused() {
    double[] normal = {1, 0, 0};
    assertAllRefused(
        () -> new PowerModel.Arrays(1.1, 0, List.of()),
        () -> new PowerModel.Arrays(0.3, -0.01, List.of()),
        () -> new Face("f", normal, -1, false, "A"),
        () -> new Face("f", normal, NAN, false, "A"),
        () -> new Face("f", new double[3], 1, false, "A"),
        () -> new Face("f", new double[] {1, 0}, 1, false, "A"),
        () -> new PowerModel.Charging(PowerModel.Scheme.MPPT, 0, 1, 8),
        () -> new PowerModel.Charging(PowerModel.Scheme.MPPT, 1.2, 1, 8),
        () -> new PowerModel.Charging(PowerModel.Scheme.MPPT, 1, NAN, 8),
        () -> new PowerModel.Protection(3.0, 2.5, PowerModel.ClosesOn.CHARGE),
        () -> new PowerModel.Heater(1, 6, 2),
        () -> new PowerModel.Loads(0, -1, 0, 0),
        () -> new PowerModel.Loads(0, 0, 0, NAN),
        () -> new PowerModel.DeadStart(true, -1),
        () -> new PowerModel.CommandLoss(0, PowerModel.CommandLossAction.SAFE, true),
        () -> new PowerModel.Thermal(0, 1, 1, 1, 1, 1),
        () -> new PowerModel.Thermal(1, 1, 1.5, 1, 1, 1),
        () -> new PowerModel.Beacon("b", Set.of(BusState.SAFE), 1, 2, 1),
        () -> new PowerModel.Beacon("b", Set.of(BusState.SAFE), 0, 0, 1),
        () -> new PowerModel.Receiver(Set.of(), 1.01),
        () -> new PowerModel.Attitude(PowerModel.AttitudeMode.TUMBLING, NAN));
  }

  @Test
  void batteriesAndBusesOfImpossiblePartsAreRefused() {
    Bodies body = new Bodies();
    Stream<Runnable> spoils =
        Stream.of(
            () -> body.parallel = 0,
            () -> body.cellCapacityAh = 0,
            () -> body.cellResistanceOhm = NAN,
            () -> body.socAtSeparation = 1.01,
            () -> body.chargeMinC = 51,
            () -> body.quietSeconds = -1);
    new Bodies().model();
    spoils.forEach(
        spoil -> {
          Bodies before = new Bodies();
          body.parallel = before.parallel;
          body.cellCapacityAh = before.cellCapacityAh;
          body.cellResistanceOhm = before.cellResistanceOhm;
          body.socAtSeparation = before.socAtSeparation;
          body.chargeMinC = before.chargeMinC;
          spoil.run();
          assertThrows(IllegalArgumentException.class, body::model);
        });
  }

  @Test
  void changesAndRequestsOfImpossibleNumbersAreRefused() {
    double[] none = {};
    assertAllRefused(
        () -> new OnboardChange.ArrayFactor(1.01),
        () -> new OnboardChange.CapacityFactor(NAN),
        () -> new OnboardChange.StringsOpen(-1),
        () -> new OnboardChange.ExtraLoad(-1, true),
        () -> new OnboardChange.ComputerHung(NAN, Set.of()),
        () -> new OnboardChange.TemperatureShift(NAN),
        () -> new OnboardChange.ThresholdShift(Double.NEGATIVE_INFINITY),
        () -> new OnboardChange.TimersRestart(0),
        () -> new SimulationRequest.TimedChange(NAN, new OnboardChange.BatteryOpen()),
        () -> new SimulationRequest(NAN, 0, 60, List.of(), none, none),
        () -> new SimulationRequest(10, 0, 0, List.of(), none, none),
        () -> new SimulationRequest(10, 0, 60, List.of(), new double[] {2, 1}, none),
        () -> new SimulationRequest(10, 0, 60, List.of(), none, new double[] {-1}),
        () -> new SimulationRequest(1e12, 0, 60, List.of(), none, none));
  }

  @Test
  void shadowsThatDoNotFollowEachOtherAreRefused() {
    double[][] good = {{10, 50}, {12, 52}, {20, 60}, {22, 62}};
    new Illumination(good, 1361);
    double[][] bad = {{10, 50}, {12, 52}, {20, 49}, {22, 62}};
    double[][] nan = {{10, 50}, {12, NAN}, {20, 60}, {22, 62}};
    assertAllRefused(
        () -> new Illumination(bad, 1361),
        () -> new Illumination(nan, 1361),
        () -> new Illumination(good, NAN),
        () -> new Illumination(new double[3][0], 1361));
  }

  /** The kernel's cursor and the public look-up are two ways to the same light. */
  @Test
  void theCursorSeesTheSameLightAsTheLookUp() {
    double[][] edges = {{10, 50, 90}, {12, 55, 91}, {20, 55, 91}, {22, 60, 95}};
    Illumination light = new Illumination(edges, 1361);
    int edge = 0;
    for (double t = -3; t < 120; t += 0.25) {
      edge = light.firstEdgeAfter(t, edge);
      assertEquals(light.fractionAt(t), light.fractionBefore(edge, t), 1e-12, "at " + t);
      assertEquals(light.nextEdgeAfter(t), light.edgeSeconds(edge), 0, "after " + t);
    }
  }
}

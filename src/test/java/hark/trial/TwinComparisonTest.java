package hark.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.Bodies;
import hark.power.CellBehaviour;
import hark.power.Face;
import hark.power.OnboardChange;
import hark.power.Orientation;
import hark.power.PowerModel;
import hark.power.SimulationRequest.TimedChange;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The simulation against its plain twin where both must say the same. */
class TwinComparisonTest {
  private static final double DAYS = 3;
  private static final TwinComparison.Setting USUAL =
      new TwinComparison.Setting(DAYS * Bodies.DAY, 300, 300, 1);

  private static TwinComparison compare(Bodies body, TimedChange... changes) {
    return TwinComparison.of(body.model(), Bodies.orbits(DAYS), USUAL, changes);
  }

  /** The aim: half of the errors within 0.2 % of the capacity, 99 % within 1 %. */
  private static void assertClose(TwinComparison twins) {
    String summary = twins.summary();
    assertTrue(twins.socQuantile(0.5) <= 0.002, summary);
    assertTrue(twins.socQuantile(0.99) <= 0.01, summary);
  }

  @Test
  void aHealthyBodyIsTheSameInBoth() {
    TwinComparison twins = compare(new Bodies());
    assertClose(twins);
    assertEquals(List.of(new TwinComparison.Edge(0, true)), twins.fastEdges());
    assertEquals(twins.fastEdges(), twins.plainEdges());
  }

  /** Array power changes as the body turns; the simulation takes its mean over each step. */
  @ParameterizedTest
  @CsvSource({"TUMBLING, 0.05", "TUMBLING, 0.5", "SPINNING, 3", "NADIR, 0"})
  void aBodyThatTurnsSlowlyIsTheSameInBoth(PowerModel.AttitudeMode mode, double rate) {
    Bodies body = new Bodies();
    body.attitude = mode;
    body.rateDegPerSecond = rate;
    body.orientation = new Orientation(new double[] {1, 2, 2}, new double[] {0.3, 1, 0.2}, 0.3);
    body.faces =
        List.of(
            new Face("long", new double[] {1, 0, 0}, 0.02, false, "A"),
            new Face("end", new double[] {0, 0, 1}, 0.006, false, "A"),
            new Face("back", new double[] {-1, 1, 0}, 0.012, false, "B"));
    body.loads = new PowerModel.Loads(0.005, 0.6, 0.7, 0.9);
    assertClose(TwinComparison.of(body.model(), Bodies.orbitsWithPath(DAYS + 1, 0.3), USUAL));
  }

  /**
   * Without a battery every dip of array power counts: hold-off begins anew, or the bus goes off.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.4})
  void aBodyWithoutBatteryThatTumblesSlowlyIsOnForAsLongInBoth(double rate) {
    Bodies body = new Bodies();
    body.rateDegPerSecond = rate;
    body.faces =
        List.of(
            new Face("+X", new double[] {1, 0, 0}, 0.012, false, "A"),
            new Face("-X", new double[] {-1, 0, 0}, 0.012, false, "A"),
            new Face("+Y", new double[] {0, 1, 0}, 0.012, false, "A"));
    TwinComparison twins = compare(body, Bodies.at(9000, new OnboardChange.BatteryOpen()));
    assertTrue(twins.plainEdges().size() > 2, twins.summary());
    assertEquals(1, twins.fastOn() / twins.plainOn(), 0.02, twins.summary());
  }

  /**
   * The cells cool below the lowest charge temperature in each shadow. While nothing may charge, a
   * burst that asks for more than the arrays give is paid by the battery; the simulation's mean
   * load is not, at any step: see the model's page.
   */
  @Test
  void aBatteryThatHoversAtItsLowestChargeTemperatureIsNearlyTheSameInBoth() {
    Bodies body = new Bodies();
    body.behaviour = CellBehaviour.LITHIUM_ION;
    body.chargeMinC = 0;
    body.thermal = new PowerModel.Thermal(2000, 0.11, 0.6, 0.8, 95, 0.12);
    TwinComparison hovers = compare(body);
    assertTrue(hovers.socQuantile(1) <= 0.004, hovers.summary());
    body.heater = Optional.of(new PowerModel.Heater(0.5, 2, 5));
    TwinComparison heated = compare(body);
    assertTrue(heated.socQuantile(1) <= 0.02, heated.summary());
  }

  @Test
  void aWeakBodyIsTheSameInBoth() {
    TwinComparison twins = compare(new Bodies(), Bodies.at(0, new OnboardChange.ArrayFactor(0.3)));
    assertClose(twins);
    assertEquals(twins.plainEdges().size(), twins.fastEdges().size());
    assertEquals(1, twins.fastOn() / twins.plainOn(), 0.02, twins.summary());
  }

  @Test
  void aBodyThatCyclesEachOrbitIsOnForAsLongInBoth() {
    Bodies body = new Bodies();
    body.parallel = 1;
    body.cellCapacityAh = 0.15;
    body.cellResistanceOhm = 0.1;
    body.socAtSeparation = 0.05;
    body.loads = new PowerModel.Loads(0.005, 0.6, 0.9, 0.9);
    TwinComparison twins = compare(body, Bodies.at(0, new OnboardChange.ArrayFactor(0.35)));
    assertEquals(1, twins.fastOn() / twins.plainOn(), 0.02, twins.summary());
    assertEquals(twins.plainEdges().size(), twins.fastEdges().size(), 4, twins.summary());
  }

  /** A list that was cut short must not count as a long time on. */
  @Test
  void aStormIsComparedOnlyAsFarAsBothListItsEdges() {
    Bodies body = new Bodies();
    body.parallel = 1;
    body.cellCapacityAh = 1;
    body.cellResistanceOhm = 0.6;
    body.socAtSeparation = 0.12;
    body.loads = new PowerModel.Loads(0.005, 0.6, 1.5, 1.5);
    body.thresholds = new PowerModel.Thresholds(6.2, 6.25, 6.4, 7.5);
    TwinComparison twins =
        compare(
            body,
            Bodies.at(0, new OnboardChange.ArrayFactor(0.4)),
            Bodies.at(0, new OnboardChange.HoldOffLost()));
    double complete = twins.completeSeconds();
    assertTrue(complete < USUAL.endSeconds() && complete > Bodies.DAY, twins.summary());
    assertTrue(twins.plainEdges().stream().allMatch(e -> e.seconds() <= complete));
    assertTrue(twins.plain().transitions().stream().anyMatch(t -> t.seconds() > complete));
    assertEquals(1, twins.fastOn() / twins.plainOn(), 0.02, twins.summary());
    double[] fast = TwinComparison.onSeconds(twins.fastEdges(), complete);
    double[] plain = TwinComparison.onSeconds(twins.plainEdges(), complete);
    for (double seconds :
        new double[] {5, 15, 45, 90, 900}) { // boot lasts 30 s, a burst comes at 60
      assertEquals(longer(plain, seconds), longer(fast, seconds), 0.02, "longer than " + seconds);
    }
  }

  private static double longer(double[] lengths, double seconds) {
    return (double) Arrays.stream(lengths).filter(length -> length > seconds).count()
        / lengths.length;
  }
}

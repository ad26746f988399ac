package hark.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.Bodies;
import hark.power.OnboardChange;
import hark.power.PowerModel;
import hark.power.SimulationRequest.TimedChange;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

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

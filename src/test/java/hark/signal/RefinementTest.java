package hark.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.ElementText;
import hark.orbit.State;
import hark.orbit.Trajectory;
import hark.station.HorizonMask;
import hark.station.Pass;
import hark.station.Passes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RefinementTest {
  private static final EarthModel EARTH = EarthModel.bundled();

  /** How well is measured. */
  private record Quality(double noiseHz, double burstSeconds, double clockSd) {}

  /** A carrier tracked each second, a clock kept to 10 ms. */
  private static final Quality TRACKED = new Quality(5, 1, 0.01);

  /** One point a burst, read off a waterfall, a clock set by hand. */
  private static final Quality BY_BURSTS = new Quality(60, 30, 0.2);

  /** Four passes at one station, and what is believed of the orbit before them. */
  private static WhoseQuestion question(
      ElementSet believed, ElementSet truth, Quality quality, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    CurveSimulator simulator = new CurveSimulator(truth);
    List<DopplerCurve> curves = new ArrayList<>();
    Instant from = truth.epoch();
    double clock = quality.clockSd() * CurveSimulator.gaussian(random);
    for (Pass pass :
        Passes.find(
            Trajectory.of(truth, EARTH),
            NeighbourCase.NORTH,
            HorizonMask.flat(15),
            from,
            from.plus(Duration.ofDays(2)))) {
      CurveSimulator.Setting how =
          new CurveSimulator.Setting(
              0,
              clock,
              NeighbourCase.NOMINAL_HZ + 300 * CurveSimulator.gaussian(random),
              0.3 * CurveSimulator.gaussian(random),
              quality.noiseHz(),
              quality.burstSeconds());
      if (curves.size() < 4) {
        curves.add(
            simulator.curve(
                NeighbourCase.NORTH,
                pass.aos().minusSeconds(120),
                pass.los().plusSeconds(120),
                5,
                how,
                random));
      }
    }
    Suspect suspect = new Suspect("98001", believed, 1, 40);
    return new WhoseQuestion(
        List.of(suspect),
        curves,
        List.of(new Listener(NeighbourCase.NORTH, quality.clockSd())),
        NeighbourCase.CARRIER,
        new WhoseQuestion.Noise(quality.noiseHz(), 1),
        EARTH);
  }

  private static double alongMeters(ElementSet one, ElementSet other, Instant at) {
    State from = Trajectory.of(one, EARTH).temeAt(at).orElseThrow();
    return Refinement.along(from, Trajectory.of(other, EARTH).temeAt(at).orElseThrow());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void fourPassesBringSixtySecondsUnderThreeHundredMeters(long seed) {
    ElementSet believed = CurveSimulator.base();
    ElementSet truth = sixtySecondsLate(believed);
    Refinement refined = Refinement.of(question(believed, truth, TRACKED, seed), 0, 2);
    double before = alongMeters(believed, truth, refined.at());
    double after = alongMeters(refined.elements(), truth, refined.at());
    assertTrue(Math.abs(before) > 400_000, "it was " + before + " m off");
    assertTrue(Math.abs(after) < 300, after + " m, " + refined);
    assertTrue(refined.alongTrackSdMeters() < 300, refined.toString());
  }

  /**
   * A clock that is 0.2 s wrong is 1.5 km along the track: nothing in one station's curves mends
   * that.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void coarseCurvesAndAPoorClockAreInTheSpreadThatIsReported(long seed) {
    ElementSet believed = CurveSimulator.base();
    ElementSet truth = sixtySecondsLate(believed);
    Refinement refined = Refinement.of(question(believed, truth, BY_BURSTS, seed), 0, 2);
    double after = alongMeters(refined.elements(), truth, refined.at());
    assertTrue(refined.alongTrackSdMeters() > 1000, refined.toString());
    assertTrue(Math.abs(after) < 3 * refined.alongTrackSdMeters(), after + " m, " + refined);
  }

  private static ElementSet sixtySecondsLate(ElementSet believed) {
    return believed.corrected(-60 / believed.periodSeconds() * 360, 0.03, 1 + 1.5e-5);
  }

  @Test
  void twoLinesAndOmmAreReadBackAsTheSameSet() {
    ElementSet set = CurveSimulator.later(7.5);
    ElementSet again = ElementSets.parse("again", ElementText.twoLines(set)).get(0);
    assertEquals(set.meanAnomalyDeg(), again.meanAnomalyDeg(), 5e-5);
    assertEquals(set.meanMotionRevPerDay(), again.meanMotionRevPerDay(), 5e-9);
    assertEquals(set.bstar(), again.bstar(), 1e-9);
    assertEquals(set.epoch(), again.epoch());
    assertEquals(set.objectId(), again.objectId());
  }
}

package hark.power;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hark.power.BodyHistory.Checkpoint;
import hark.power.OnboardChange.Clearing;
import hark.power.PowerModel.BusState;
import hark.power.SimulationRequest.TimedChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A run that ends anywhere and goes on from the last place of the grid is one long run. */
class ExtensionTest {
  private static final double END = 6 * Bodies.DAY;
  private static final Illumination LIGHT = Bodies.orbitsWithPath(7, 0.3);
  private static final double[] NONE = {};

  /** What can be going on when the first run ends. */
  private static List<List<TimedChange>> lives() {
    return List.of(
        List.of(),
        List.of(Bodies.at(9000, new OnboardChange.ArrayFactor(0.45))),
        List.of(Bodies.at(9000, new OnboardChange.ArrayFactor(0.25))),
        List.of(Bodies.at(20_000, new OnboardChange.BatteryOpen())),
        List.of(
            Bodies.at(30_000, new OnboardChange.HoldOffLost()),
            Bodies.at(30_000, new OnboardChange.ArrayFactor(0.35))),
        List.of(Bodies.at(50_000, new OnboardChange.ChargePathOpen(false))),
        List.of(Bodies.at(50_000, new OnboardChange.TemperatureShift(-18))),
        List.of(
            Bodies.at(70_000, new OnboardChange.ComputerHung(2, Set.of(Clearing.POWER_REMOVED)))));
  }

  private static PowerModel body(int which) {
    Bodies body = new Bodies();
    body.behaviour = CellBehaviour.LITHIUM_ION;
    body.loads = new PowerModel.Loads(0.005, 0.6, 0.7, 2.2);
    body.chargeMinC = 0;
    body.thermal = new PowerModel.Thermal(2000, 0.11, 0.6, 0.8, 95, 0.12);
    body.heater = Optional.of(new PowerModel.Heater(0.5, 2, 5));
    body.attitude = PowerModel.AttitudeMode.values()[which % 4];
    body.rateDegPerSecond = which < 4 ? 0.25 : 3;
    if (which % 2 == 1) {
      BeaconPace pace =
          new BeaconPace(
              Map.of(BusState.SAFE, 75.0),
              Optional.of(new BeaconPace.WhenLow(7.4, 150)),
              Optional.of(new BeaconPace.Later(3 * Bodies.DAY, 120)));
      body.beacons =
          List.of(
              new PowerModel.Beacon(
                  "paced", Set.of(BusState.SAFE, BusState.NOMINAL), 30, 1.5, 2, pace));
    }
    return body.model();
  }

  private static SimulationRequest request(
      double end, List<TimedChange> changes, double[] probes, double[] checkpoints) {
    return new SimulationRequest(end, 1800, 600, changes, probes, checkpoints);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void goingOnFromTheLastPlaceOfTheGridEqualsOneRun(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int k = 0; k < 2 * lives().size(); k++) {
      List<TimedChange> changes = lives().get(k / 2);
      double now = (1 + 3 * random.nextDouble()) * Bodies.DAY;
      double place = Simulation.lastPlace(now);
      PowerModel model = body(k);
      SimulationRequest until =
          request(now, changes, new double[] {3600, now}, new double[] {place, now});
      BodyHistory early = Simulation.run(model, LIGHT, until);
      Checkpoint from = early.checkpoints().get(0);
      SimulationRequest on = request(END, changes, new double[] {now, END}, NONE);
      BodyHistory joined =
          early.followedBy(
              Simulation.resumeAll(List.of(new Simulation.Continuation(model, on, from)), LIGHT)
                  .get(0),
              from);
      BodyHistory whole =
          Simulation.run(
              model,
              LIGHT,
              request(END, changes, new double[] {3600, now, END}, new double[] {place}));
      requireSame(whole, joined, "life " + k);
    }
  }

  private static void requireSame(BodyHistory whole, BodyHistory joined, String which) {
    assertEquals(whole.gridStart(), joined.gridStart());
    assertArrayEquals(whole.soc(), joined.soc(), which);
    assertArrayEquals(whole.states(), joined.states(), which);
    assertEquals(whole.segments(), joined.segments(), which);
    assertEquals(whole.transitions(), joined.transitions(), which);
    assertEquals(whole.probes(), joined.probes(), which);
    assertEquals(whole.books(), joined.books(), which);
    assertEquals(whole.receiverOn().size(), joined.receiverOn().size(), which);
    for (int r = 0; r < whole.receiverOn().size(); r++) {
      assertArrayEquals(whole.receiverOn().get(r), joined.receiverOn().get(r), which);
    }
  }

  @Test
  void theLastPlaceIsNeverAfterTheTimeAndATimeOnThePlaceIsIt() {
    assertEquals(0, Simulation.lastPlace(0));
    assertEquals(900, Simulation.lastPlace(900));
    assertEquals(900, Simulation.lastPlace(1199.5));
    assertEquals(600, Simulation.lastPlace(Math.nextDown(900)));
  }

  @Test
  void gridsThatDoNotMeetAreRefused() {
    List<BodyHistory> runs = new ArrayList<>();
    for (double step : new double[] {300, 450}) {
      SimulationRequest request =
          new SimulationRequest(9000, 0, step, List.of(), NONE, new double[] {4000});
      runs.add(Simulation.run(new Bodies().model(), LIGHT, request));
    }
    Checkpoint from = runs.get(0).checkpoints().get(0);
    assertThrows(IllegalArgumentException.class, () -> runs.get(0).followedBy(runs.get(1), from));
  }
}

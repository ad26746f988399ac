package hark.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.BodyHistory.BeaconSegment;
import hark.power.BodyHistory.Probe;
import hark.power.BodyHistory.Transition;
import hark.power.PowerModel.BusState;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Times, states, temperatures and what the history keeps of them. */
class SimulationTest {
  private static BodyHistory probed(Bodies body, Illumination light, double... seconds) {
    double end = seconds[seconds.length - 1];
    return Simulation.run(
        body.model(), light, new SimulationRequest(end, 0, 300, List.of(), seconds, new double[0]));
  }

  @Test
  void itBootsAtSeparationAndSpeaksAnIntervalAfterTheQuietTime() {
    BodyHistory history =
        Simulation.run(new Bodies().model(), Bodies.orbits(1), Bodies.request(1, List.of()));
    assertEquals(new Transition(0, BusState.BOOT, "separation"), history.transitions().get(0));
    assertEquals(30, history.transitions().get(1).seconds());
    assertEquals(List.of(new BeaconSegment(0, 2700 + 30, 30, 86_400)), history.segments());
    assertEquals(1, history.receiverOn().size());
    assertEquals(30, history.receiverOn().get(0)[0]);
    assertEquals(86_400, history.receiverOn().get(0)[1]);
  }

  @Test
  void theGridIsRegularFromItsStartToTheEnd() {
    SimulationRequest request =
        new SimulationRequest(10_000, 1000, 450, List.of(), new double[0], new double[0]);
    BodyHistory history = Simulation.run(new Bodies().model(), Bodies.orbits(1), request);
    assertEquals(1000, history.gridStart());
    assertEquals(21, history.soc().length, "1000, 1450 … 10000");
    double[] probes = {1000, 1450, 10_000};
    BodyHistory probed =
        Simulation.run(
            new Bodies().model(),
            Bodies.orbits(1),
            new SimulationRequest(10_000, 1000, 450, List.of(), probes, new double[0]));
    assertEquals(probed.probes().get(1).soc(), history.soc()[1], 1e-6);
    assertEquals(BusState.NOMINAL, BusState.values()[history.states()[20]]);
  }

  @Test
  void telemetryCountsResetsAndUptimeFromTheLastBoot() {
    Bodies body = new Bodies();
    double cycle = 50_000;
    SimulationRequest base =
        new SimulationRequest(
            60_000, 0, 300, List.of(), new double[] {55_000}, new double[] {cycle});
    BodyHistory before = Simulation.run(body.model(), Bodies.orbits(1), base);
    BodyHistory after =
        Simulation.branch(
            body.model(),
            Bodies.orbits(1),
            base,
            before.checkpoints().get(0),
            OnboardCommand.RESET);
    Probe undisturbed = before.probes().get(0);
    Probe reset = after.probes().get(0);
    assertEquals(0, undisturbed.resets());
    assertEquals(55_000, undisturbed.uptimeSeconds());
    assertEquals(1, reset.resets());
    assertEquals(5000 - 2, reset.uptimeSeconds());
  }

  /** Absorbed sun and Earth's infrared against radiation: (q/(ε·σ))^¼ of a sphere in full sun. */
  @Test
  void anIdleBodyInFullSunSettlesAtItsRadiativeEquilibrium() {
    Bodies body = new Bodies();
    body.cellAreaSquareMeters = 0;
    body.loads = new PowerModel.Loads(0, 0, 0, 0);
    body.beacons = List.of();
    Probe probe = probed(body, Bodies.fullSun(), 5 * Bodies.DAY).probes().get(0);
    double sun = 0.85 * 1361 * (0.25 + 0.3 * 0.31 * 0.5);
    double earth = 0.8 * 237 * 0.31;
    double kelvin = Math.pow((sun + earth) / (0.8 * 5.670374419e-8), 0.25);
    assertEquals(kelvin - 273.15, probe.batteryCelsius(), 0.05);
  }

  @Test
  void theHeaterHoldsTheBatteryAboveItsOnTemperature() {
    Bodies body = new Bodies();
    body.thermal = new PowerModel.Thermal(2000, 0.11, 0.5, 0.8, 180, 0.1);
    double[] times = new double[100];
    for (int i = 0; i < times.length; i++) {
      times[i] = Bodies.DAY + i * 300;
    }
    double cold =
        probed(body, Bodies.orbits(2), times).probes().stream()
            .mapToDouble(Probe::batteryCelsius)
            .min()
            .orElseThrow();
    body.heater = Optional.of(new PowerModel.Heater(4, 2, 6));
    body.cellAreaSquareMeters *= 3;
    double warm =
        probed(body, Bodies.orbits(2), times).probes().stream()
            .mapToDouble(Probe::batteryCelsius)
            .min()
            .orElseThrow();
    assertTrue(cold < -10, "without heater " + cold);
    assertTrue(warm > 0, "with heater " + warm);
  }

  /** Common practice: cells have about twice their resistance at 0 °C, four times at −20 °C. */
  @Test
  void resistanceRisesInTheCold() {
    assertEquals(1, PowerPhysics.resistanceFactor(30));
    assertEquals(2.1, PowerPhysics.resistanceFactor(0), 0.1);
    assertEquals(4.2, PowerPhysics.resistanceFactor(-20), 0.2);
  }

  @Test
  void aBeaconOfOneStateBreaksWhereTheStateChangesAndOneOfBothDoesNot() {
    Bodies body = new Bodies();
    body.beacons =
        List.of(
            new PowerModel.Beacon("both", Set.of(BusState.SAFE, BusState.NOMINAL), 30, 1.5, 1),
            new PowerModel.Beacon("safe", Set.of(BusState.SAFE), 60, 1, 1));
    body.socAtSeparation = 0.45;
    body.loads = new PowerModel.Loads(0.005, 0.6, 0.7, 2.4);
    BodyHistory history =
        Simulation.run(body.model(), Bodies.orbits(5), Bodies.request(5, List.of()));
    long both = history.segments().stream().filter(s -> s.beacon() == 0).count();
    long safe = history.segments().stream().filter(s -> s.beacon() == 1).count();
    assertEquals(1, both);
    assertTrue(safe >= 2, safe + " stretches in safe");
    for (BeaconSegment segment : history.segments()) {
      assertTrue(segment.firstBurst() <= segment.end());
    }
  }

  @Test
  void thresholdsAreCrossedWithinASecondOfTheClosedForm() {
    Bodies body = new Bodies();
    body.cellAreaSquareMeters = 0;
    body.cellResistanceOhm = 0;
    body.quietSeconds = 1e9;
    body.thresholds = new PowerModel.Thresholds(6.2, 7.0, 7.2, 7.25);
    OpenCircuit curve = new OpenCircuit(OpenCircuit.liIonNca(), 2);
    double packCoulomb = 2 * 3.2 * 3600;
    double nominal =
        (curve.joulePerCoulomb(0.75) - curve.joulePerCoulomb(curve.socAt(7.2))) * packCoulomb;
    double release = 5 * 20;
    double boot = (1.5 - 0.6) * 30;
    BodyHistory history =
        Simulation.run(body.model(), Bodies.fullSun(), Bodies.request(5, List.of()));
    Transition safe =
        history.transitions().stream()
            .filter(t -> t.reason().equals("voltage low"))
            .findFirst()
            .orElseThrow();
    double afterRelease = (nominal - release + boot) / 1.5;
    double stepError = 1; // pieces of the curve are crossed within steps
    assertEquals(afterRelease, safe.seconds(), 0.25 + stepError);
  }

  @Test
  void aStormDoesNotFillTheMemory() {
    Bodies body = new Bodies();
    body.cellAreaSquareMeters *= 0.4; // enough to boot, too little to stay
    List<SimulationRequest.TimedChange> changes =
        List.of(
            Bodies.at(0, new OnboardChange.BatteryOpen()),
            Bodies.at(0, new OnboardChange.HoldOffLost()));
    BodyHistory history =
        Simulation.run(body.model(), Bodies.fullSun(), Bodies.request(13, changes));
    assertEquals(PowerPhysics.TRANSITIONS_KEPT, history.transitions().size());
    assertEquals((int) (13 * Bodies.DAY / 300) + 1, history.soc().length, "and goes on to the end");
  }

  /** A dense grid forces short steps, so it shows what the minute costs. */
  @Test
  void stepsOfAMinuteAgreeWithStepsOfFiveSeconds() {
    for (double factor : new double[] {1, 0.6, 0.35}) {
      Bodies body = new Bodies();
      body.chargeMinC = 0;
      body.heater = Optional.of(new PowerModel.Heater(0.5, 2, 6));
      List<SimulationRequest.TimedChange> changes =
          List.of(Bodies.at(0, new OnboardChange.ArrayFactor(factor)));
      double[] none = {};
      double end = 5 * Bodies.DAY;
      BodyHistory minutes =
          Simulation.run(
              body.model(),
              Bodies.orbits(5),
              new SimulationRequest(end, 0, 300, changes, none, none));
      BodyHistory seconds =
          Simulation.run(
              body.model(),
              Bodies.orbits(5),
              new SimulationRequest(end, 0, 5, changes, none, none));
      double worst = 0;
      for (int i = 0; i < minutes.soc().length; i++) {
        worst = Math.max(worst, Math.abs(minutes.soc()[i] - seconds.soc()[60 * i]));
      }
      double halfAPercentOfCapacity = 0.005;
      assertTrue(worst < halfAPercentOfCapacity, "array factor " + factor + ": " + worst);
    }
  }

  @ParameterizedTest(name = "{0} degrees a second")
  @ValueSource(doubles = {0.05, 0.2, 0.35, 0.41, 0.599})
  void aSlowTumbleIsFollowedWhateverItsRate(double rate) {
    Bodies body = new Bodies();
    body.rateDegPerSecond = rate;
    BodyHistory history =
        Simulation.run(body.model(), Bodies.orbits(3), Bodies.request(3, List.of()));
    assertEquals(3 * 288 + 1, history.soc().length);
  }
}

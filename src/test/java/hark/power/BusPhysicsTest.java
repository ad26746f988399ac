package hark.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.PowerModel.AttitudeMode;
import hark.power.PowerModel.BusState;
import hark.power.PowerModel.Scheme;
import hark.power.SimulationRequest.TimedChange;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Arrays, charger, bus and beacon, each number of the model seen at work. */
class BusPhysicsTest {
  private static BodyHistory run(Bodies body, double days, TimedChange... changes) {
    return Simulation.run(
        body.model(), Bodies.orbits(days), Bodies.request(days, List.of(changes)));
  }

  private static double arrays(
      Bodies body, Illumination light, double days, TimedChange... changes) {
    return Simulation.energy(body.model(), light, Bodies.request(days, List.of(changes))).arrays();
  }

  /** A body that takes everything its arrays give. */
  private static Bodies hungry() {
    Bodies body = new Bodies();
    body.socAtSeparation = 0.5;
    body.cellCapacityAh = 30;
    body.cellResistanceOhm = 0.001;
    body.charging = new PowerModel.Charging(Scheme.MPPT, 0.85, 100, 8.4);
    return body;
  }

  private static double watts(Bodies body, Illumination light, double seconds) {
    double[] probe = {seconds};
    SimulationRequest request =
        new SimulationRequest(seconds + 1, 0, 600, List.of(), probe, new double[0]);
    return Simulation.run(body.model(), light, request).probes().get(0).arrayWatts();
  }

  /**
   * −0.2 % a kelvin: the definition of the coefficient, at the temperature that the probe shows.
   */
  @Test
  void coldCellsGiveMoreByTheirCoefficient() {
    Bodies body = hungry();
    double plain = watts(body, Bodies.fullSun(), 3600);
    body.nature = new PowerModel.CellNature(-0.002, 0, false);
    double[] probe = {3600};
    SimulationRequest request =
        new SimulationRequest(3601, 0, 600, List.of(), probe, new double[0]);
    BodyHistory.Probe at = Simulation.run(body.model(), Bodies.fullSun(), request).probes().get(0);
    double expected = plain * (1 - 0.002 * (at.structureCelsius() - 28));
    assertEquals(expected, at.arrayWatts(), 1e-9);
    assertTrue(Math.abs(at.structureCelsius() - 28) > 1, "or the test shows nothing");
  }

  /** Two in a hundred a year, compound. */
  @Test
  void arraysLoseTheirShareAYear() {
    Bodies body = hungry();
    double days = 365.25;
    double before = watts(body, Bodies.fullSun(), 3600);
    body.nature = new PowerModel.CellNature(0, 0.02, false);
    assertEquals(before, watts(body, Bodies.fullSun(), 3600), 1e-12, "new");
    double after = watts(body, Bodies.fullSun(), days * Bodies.DAY - 60);
    assertEquals(0.98, after / before, 1e-4);
  }

  /** Inverse square of the distance: irradiance is taken from the path where the body is. */
  @Test
  void powerFollowsTheDistanceOfTheSun() {
    double[] irradiance = new double[49];
    double[] none = new double[49];
    double[][] direction = {new double[49], new double[49], new double[49]};
    for (int i = 0; i < 49; i++) {
      irradiance[i] = i < 24 ? 1361 : 1361 / (1.0167 * 1.0167); // aphelion
      direction[0][i] = 1;
    }
    Illumination light =
        new Illumination(new double[4][0], new SunPath(3600, irradiance, direction, none, none));
    double near = watts(hungry(), light, 7200);
    double far = watts(hungry(), light, 30 * 3600);
    assertEquals(1 / (1.0167 * 1.0167), far / near, 1e-9);
  }

  /**
   * Albedo · view factor · height of the Sun over four sides' worth of cells, at the Sun's noon.
   */
  @Test
  void lightThrownBackByTheEarthAddsItsShareWhenAskedFor() {
    Illumination light = Bodies.fullSunWithPath(1, 0);
    double noon = Bodies.ORBIT_SECONDS / 2 - Bodies.SHADOW_SECONDS / 2;
    Bodies body = hungry();
    double without = watts(body, light, noon);
    body.nature = new PowerModel.CellNature(0, 0, true);
    assertEquals(1 + 4 * 0.3 * 0.31, watts(body, light, noon) / without, 2e-3);
    double midnight = noon + Bodies.ORBIT_SECONDS / 2;
    assertEquals(without, watts(body, light, midnight), 1e-9, "none over the night side");
  }

  @Test
  void aLostFaceAndALostStringTakeTheirCellsWithThem() {
    double whole = arrays(hungry(), Bodies.orbits(1), 1);
    Bodies body = hungry();
    body.faces = faces();
    double face = arrays(body, Bodies.orbits(1), 1, Bodies.at(0, new OnboardChange.FaceLost("+X")));
    double string =
        arrays(body, Bodies.orbits(1), 1, Bodies.at(0, new OnboardChange.ArrayStringLost("B")));
    assertEquals(5.0 / 6, face / whole, 2e-3);
    assertEquals(2.0 / 6, string / whole, 2e-3);
  }

  private static List<Face> faces() {
    double area = new Bodies().cellAreaSquareMeters;
    return List.of(
        new Face("+X", new double[] {1, 0, 0}, area, false, "A"),
        new Face("-X", new double[] {-1, 0, 0}, area, false, "A"),
        new Face("+Y", new double[] {0, 1, 0}, area, false, "B"),
        new Face("-Y", new double[] {0, -1, 0}, area, false, "B"),
        new Face("+Z", new double[] {0, 0, 1}, area, false, "B"),
        new Face("-Z", new double[] {0, 0, -1}, area, false, "B"));
  }

  @Test
  void stowedPanelsFeedNothingUntilTheyUnfoldAndAReleaseCommandFreesStuckOnes() {
    Bodies body = hungry();
    body.faces = List.of(new Face("panel", new double[] {0, 0, 1}, 0.05, true, "A"));
    double before = watts(body, Bodies.fullSun(), 1700);
    double after = watts(body, Bodies.fullSun(), 1900);
    assertEquals(0, before);
    assertTrue(after > 3, "unfolded at half an hour: " + after);
    TimedChange stuck = Bodies.at(0, new OnboardChange.PanelsStowed());
    double[] none = new double[0];
    SimulationRequest request =
        new SimulationRequest(7200, 0, 600, List.of(stuck), none, new double[] {3600});
    BodyHistory still = Simulation.run(body.model(), Bodies.fullSun(), request);
    double drawn = Simulation.energy(body.model(), Bodies.fullSun(), request).arrays();
    assertEquals(0, drawn, 1e-9);
    SimulationRequest later =
        new SimulationRequest(7200, 0, 600, List.of(stuck), new double[] {7000}, none);
    BodyHistory freed =
        Simulation.branch(
            body.model(),
            Bodies.fullSun(),
            later,
            still.checkpoints().get(0),
            OnboardCommand.RELEASE);
    assertTrue(freed.probes().get(0).arrayWatts() > 3);
  }

  /** CC/CV ends at 0.02 C (vendors' data sheets), and begins again when the voltage has fallen. */
  @Test
  void aTaperThatRunsOutEndsTheChargeUntilTheVoltageHasFallen() {
    Bodies body = new Bodies();
    double endAmps = 0.02 * 6.4;
    body.charging = new PowerModel.Charging(Scheme.CC_CV, 0.85, 1.5, 8.4, endAmps, 8.2);
    double[] probes = new double[200];
    for (int i = 0; i < probes.length; i++) {
      probes[i] = 2 * Bodies.DAY + 60 * i;
    }
    SimulationRequest request =
        new SimulationRequest(3 * Bodies.DAY, 0, 600, List.of(), probes, new double[0]);
    Illumination sun = Bodies.fullSun();
    body.loads = new PowerModel.Loads(0, 0.6, 0.7, 0.7);
    BodyHistory ended = Simulation.run(body.model(), sun, request);
    assertTrue(ended.probes().stream().allMatch(p -> p.batteryAmps() == 0), "charged and done");
    BodyHistory floats = Simulation.run(new Bodies().model(), Bodies.orbits(3), request);
    assertTrue(floats.probes().stream().anyMatch(p -> p.batteryAmps() > 0));
    double lowest = Double.MAX_VALUE;
    for (BodyHistory.Probe p : run(body, 3, request).probes()) {
      lowest = Math.min(lowest, p.soc());
    }
    assertTrue(lowest > 0.85, "eclipses start it again: " + lowest);
  }

  private static BodyHistory run(Bodies body, double days, SimulationRequest request) {
    return Simulation.run(body.model(), Bodies.orbits(days), request);
  }

  @Test
  void anInrushThatTheBatteryCannotCarryKeepsTheBusOff() {
    Bodies body = new Bodies();
    body.socAtSeparation = 0.15;
    body.cellResistanceOhm = 0.4;
    body.cellAreaSquareMeters = 0.0001;
    body.thresholds = new PowerModel.Thresholds(6.2, 6.4, 6.25, 7.5);
    assertEquals(BusState.BOOT, run(body, 0.01).transitions().get(0).to());
    assertTrue(run(body, 0.01).transitions().stream().noneMatch(t -> t.to() == BusState.OFF));
    body.inrush = Optional.of(new PowerModel.Inrush(15, 0.1));
    BodyHistory history = run(body, 0.01);
    assertEquals("inrush", history.transitions().get(1).reason());
    assertTrue(history.transitions().stream().noneMatch(t -> t.to() == BusState.SAFE));
  }

  @Test
  void aBurstTakesADyingBusDownAtTheBurstAndNotBefore() {
    Bodies body = new Bodies();
    body.beacons =
        List.of(new PowerModel.Beacon("main", Set.of(BusState.SAFE, BusState.NOMINAL), 90, 2, 6));
    body.socAtSeparation = 0.5;
    body.cellResistanceOhm = 0.3;
    body.cellAreaSquareMeters = 0;
    BodyHistory history = run(body, 3);
    double off =
        history.transitions().stream()
            .filter(t -> t.to() == BusState.OFF)
            .findFirst()
            .orElseThrow()
            .seconds();
    BodyHistory.BeaconSegment last = history.segments().get(history.segments().size() - 1);
    double bursts = (off - last.firstBurst()) / last.interval();
    assertEquals(Math.rint(bursts), bursts, 1e-6, "goes down at the beginning of a burst");
    assertTrue(last.end() < off, "which is not sent");
  }

  @Test
  void aBeaconKeepsThePaceOfItsStateItsVoltageAndItsDays() {
    Bodies body = new Bodies();
    Set<BusState> up = Set.of(BusState.SAFE, BusState.NOMINAL);
    body.beacons =
        List.of(
            new PowerModel.Beacon(
                "main",
                up,
                60,
                1,
                0.5,
                new BeaconPace(
                    Map.of(BusState.SAFE, 120.0),
                    Optional.of(new BeaconPace.WhenLow(7.0, 300)),
                    Optional.of(new BeaconPace.Later(2 * Bodies.DAY, 45)))));
    BodyHistory healthy = run(body, 3);
    double[] intervals =
        healthy.segments().stream().mapToDouble(BodyHistory.BeaconSegment::interval).toArray();
    assertEquals(List.of(60.0, 45.0), java.util.Arrays.stream(intervals).boxed().toList());
    BodyHistory dying = run(body, 2, Bodies.at(0, new OnboardChange.ArrayFactor(0.1)));
    assertTrue(dying.segments().stream().anyMatch(s -> s.interval() == 300), "low voltage");
  }

  @Test
  void aReceiverDrawsItsPowerWithItsDutyInItsStates() {
    Bodies body = hungry();
    double[] probe = {7200};
    SimulationRequest request =
        new SimulationRequest(7300, 0, 600, List.of(), probe, new double[0]);
    double without =
        Simulation.run(body.model(), Bodies.fullSun(), request).probes().get(0).loadWatts();
    body.receiver = new PowerModel.Receiver(Set.of(BusState.SAFE, BusState.NOMINAL), 0.25, 0.8);
    double with =
        Simulation.run(body.model(), Bodies.fullSun(), request).probes().get(0).loadWatts();
    assertEquals(0.2, with - without, 1e-12);
  }

  /**
   * The flat-spin trap: spinning about an axis that points to the Sun with its end face, where
   * there are no cells, a body starves though its sides could feed it twice over.
   */
  @Test
  void aFlatSpinWithABareEndToTheSunStarvesTheBodyUntilTheSunHasMovedOn() {
    Bodies body = new Bodies();
    body.attitude = AttitudeMode.SPINNING;
    body.orientation = new Orientation(new double[] {0, 0, 1}, new double[] {1, 0, 0}, 0);
    body.faces = faces().subList(0, 4); // the four sides, the ends bare
    int days = 80;
    BodyHistory history =
        Simulation.run(
            body.model(), Bodies.orbitsWithPath(days, 0), Bodies.request(days, List.of()));
    double lost = first(history, 0, BusState.OFF);
    double again = first(history, lost, BusState.BOOT);
    assertTrue(lost < 3 * Bodies.DAY, "off within days");
    assertTrue(again - lost > 5 * Bodies.DAY, "and for days");
    double last =
        history.transitions().stream()
            .filter(t -> t.to() == BusState.OFF)
            .mapToDouble(BodyHistory.Transition::seconds)
            .max()
            .orElseThrow();
    assertTrue(last > 15 * Bodies.DAY && last < 40 * Bodies.DAY, "off and on for weeks, then well");
    body.attitude = AttitudeMode.TUMBLING;
    BodyHistory tumbling =
        Simulation.run(body.model(), Bodies.orbitsWithPath(5, 0), Bodies.request(5, List.of()));
    assertTrue(tumbling.transitions().stream().noneMatch(t -> t.to() == BusState.OFF));
  }

  private static double first(BodyHistory history, double after, BusState to) {
    return history.transitions().stream()
        .filter(t -> t.seconds() > after && t.to() == to)
        .mapToDouble(BodyHistory.Transition::seconds)
        .findFirst()
        .orElseThrow();
  }
}

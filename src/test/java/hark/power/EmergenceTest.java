package hark.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.BodyHistory.BeaconSegment;
import hark.power.OnboardChange.Clearing;
import hark.power.PowerModel.BusState;
import hark.power.SimulationRequest.TimedChange;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What decides real cases must come out of the balance by itself. Orders of magnitude beside the
 * checks are from flights as told in NASA/TM-2018-220034.
 */
class EmergenceTest {
  private static final double SUNLIT_SECONDS = Bodies.ORBIT_SECONDS - Bodies.SHADOW_SECONDS;
  private static final Set<Clearing> POWER_CYCLE = Set.of(Clearing.POWER_CYCLE);

  private static BodyHistory run(Bodies body, double days, TimedChange... changes) {
    return Simulation.run(
        body.model(), Bodies.orbits(days), Bodies.request(days, List.of(changes)));
  }

  private static double phase(double seconds) {
    return seconds % Bodies.ORBIT_SECONDS;
  }

  private static long boots(BodyHistory history) {
    return history.transitions().stream().filter(t -> t.to() == BusState.BOOT).count();
  }

  private static double lastBurst(BodyHistory history) {
    return history.segments().stream().mapToDouble(BeaconSegment::end).max().orElse(0);
  }

  private static boolean silentBetween(BodyHistory history, double from, double to) {
    return history.segments().stream().noneMatch(s -> s.firstBurst() < to && s.end() > from);
  }

  @Test
  void aHealthyBodyBootsOnceAndNeverStops() {
    BodyHistory history = run(new Bodies(), 10);
    assertEquals(1, boots(history));
    assertEquals(1, history.segments().size());
    assertEquals(10 * Bodies.DAY, lastBurst(history));
  }

  @Test
  void aSmallBatteryUnderAWeakArrayCyclesEveryOrbitAndSpeaksLateInTheSunlitArc() {
    Bodies body = new Bodies();
    body.parallel = 1;
    body.cellCapacityAh = 0.15;
    body.cellResistanceOhm = 0.1;
    body.socAtSeparation = 0.05;
    body.loads = new PowerModel.Loads(0.005, 0.6, 0.9, 0.9);
    BodyHistory history = run(body, 2, Bodies.at(0, new OnboardChange.ArrayFactor(0.35)));
    double orbits = 2 * Bodies.DAY / Bodies.ORBIT_SECONDS;
    assertEquals(orbits, boots(history), 2, "one boot an orbit");
    assertTrue(history.segments().size() > orbits - 3, "bursts in each");
    for (BeaconSegment segment : history.segments()) {
      double phase = phase(segment.firstBurst());
      assertTrue(phase > 0.45 * SUNLIT_SECONDS && phase < SUNLIT_SECONDS, "begins at " + phase);
    }
  }

  @Test
  void withAnOpenBatteryItLivesInSunlightOnlyAndStartsAtEverySunrise() {
    double onset = Bodies.DAY;
    Bodies body = new Bodies();
    body.beacons = List.of(beacon(1)); // what the arrays can give while a burst is sent
    BodyHistory history = run(body, 4, Bodies.at(onset, new OnboardChange.BatteryOpen()));
    double orbits = 3 * Bodies.DAY / Bodies.ORBIT_SECONDS;
    List<BeaconSegment> after =
        history.segments().stream().filter(s -> s.firstBurst() > onset).toList();
    assertEquals(orbits, after.size(), 2);
    for (BeaconSegment segment : after) {
      assertTrue(phase(segment.firstBurst()) < 600, "soon after sunrise");
      assertTrue(phase(segment.end()) <= SUNLIT_SECONDS + 20 || segment.end() == 4 * Bodies.DAY);
    }
    assertEquals(0, history.soc()[history.soc().length - 1]);
  }

  private static PowerModel.Beacon beacon(double watts) {
    return new PowerModel.Beacon("main", Set.of(BusState.SAFE, BusState.NOMINAL), 30, 1.5, watts);
  }

  @Test
  void withAnOpenBatteryABurstThatAsksForMoreThanTheArraysGiveTakesTheBusDownAndIsNotSent() {
    Bodies body = new Bodies();
    body.beacons = List.of(beacon(2));
    BodyHistory history = run(body, 4, Bodies.at(Bodies.DAY, new OnboardChange.BatteryOpen()));
    assertTrue(silentBetween(history, Bodies.DAY + Bodies.ORBIT_SECONDS, 4 * Bodies.DAY));
    assertTrue(boots(history) > 200, "it tries again and again");
  }

  @Test
  void withAnOpenBatteryThatCannotStartFromArraysItIsSilentForGood() {
    Bodies body = new Bodies();
    body.deadStart = false;
    BodyHistory history = run(body, 4, Bodies.at(Bodies.DAY, new OnboardChange.BatteryOpen()));
    assertTrue(lastBurst(history) < Bodies.DAY + Bodies.ORBIT_SECONDS);
  }

  /** Told of a flight: about 150 restarts an orbit where the lock-out had no hold-off. */
  @Test
  void withoutHoldOffAFlatBatteryRestartsOverAndOverAndWithItHardly() {
    Bodies body = new Bodies();
    body.parallel = 1;
    body.cellCapacityAh = 1;
    body.cellResistanceOhm = 0.6;
    body.socAtSeparation = 0.12; // sags by more than the hysteresis
    body.loads = new PowerModel.Loads(0.005, 0.6, 1.5, 1.5);
    body.thresholds = new PowerModel.Thresholds(6.2, 6.25, 6.4, 7.5);
    TimedChange weak = Bodies.at(0, new OnboardChange.ArrayFactor(0.4));
    TimedChange none = Bodies.at(0, new OnboardChange.HoldOffLost());
    double orbits = Bodies.DAY / Bodies.ORBIT_SECONDS;
    double storm = boots(run(body, 1, weak, none)) / orbits;
    double calm = boots(run(body, 1, weak)) / orbits;
    assertTrue(storm > 20, storm + " boots an orbit without hold-off");
    assertTrue(calm < storm / 4, calm + " boots an orbit with five minutes of it");
  }

  @Test
  void aHungComputerWithANegativeBalanceDrainsCollapsesAndReturns() {
    Bodies body = new Bodies();
    body.loads = new PowerModel.Loads(0.005, 0.6, 0.7, 2.6);
    TimedChange hang = Bodies.at(3600, new OnboardChange.ComputerHung(0, POWER_CYCLE));
    BodyHistory history = run(body, 10, hang);
    double off =
        history.transitions().stream()
            .filter(t -> t.to() == BusState.OFF)
            .mapToDouble(BodyHistory.Transition::seconds)
            .findFirst()
            .orElseThrow();
    assertTrue(off > 6 * 3600, "it lasts hours before it collapses");
    assertTrue(silentBetween(history, 3601, off));
    assertTrue(lastBurst(history) > off, "and is heard again");
  }

  @Test
  void aHungComputerWithAPositiveBalanceStaysHungUntilTheEclipsesReturn() {
    Bodies body = new Bodies();
    body.loads = new PowerModel.Loads(0.005, 0.6, 0.7, 2.6);
    int sunny = (int) (20 * Bodies.DAY / Bodies.ORBIT_SECONDS);
    TimedChange hang = Bodies.at(3600, new OnboardChange.ComputerHung(0, POWER_CYCLE));
    SimulationRequest request = Bodies.request(40, List.of(hang));
    BodyHistory always = Simulation.run(body.model(), Bodies.fullSun(), request);
    assertTrue(silentBetween(always, 3601, 40 * Bodies.DAY), "for good in full sunlight");
    BodyHistory season = Simulation.run(body.model(), Bodies.orbitsFrom(sunny, 40), request);
    double returns =
        season.segments().stream()
            .mapToDouble(BeaconSegment::firstBurst)
            .filter(t -> t > 3601)
            .min()
            .orElseThrow();
    assertTrue(returns > sunny * Bodies.ORBIT_SECONDS, "not before eclipses");
    assertTrue(returns < sunny * Bodies.ORBIT_SECONDS + 6 * Bodies.DAY, "within days of them");
  }

  /** Told of a flight: dead fifteen hours after separation with an array that never charged. */
  @Test
  void anOpenChargePathIsDeadWithinHoursToDaysForGood() {
    BodyHistory history =
        run(new Bodies(), 20, Bodies.at(0, new OnboardChange.ChargePathOpen(false)));
    double last = lastBurst(history);
    assertTrue(last > 6 * 3600 && last < 3 * Bodies.DAY, "last burst after " + last + " s");
    assertEquals(1, boots(history));
  }

  @Test
  void aLatchUpGoesOnlyWhenArrayPowerGoesToo() {
    Set<Clearing> removed = Set.of(Clearing.POWER_REMOVED);
    TimedChange latch = Bodies.at(3600, new OnboardChange.ComputerHung(1.5, removed));
    SimulationRequest request = Bodies.request(20, List.of(latch));
    BodyHistory dark = Simulation.run(new Bodies().model(), Bodies.orbits(20), request);
    assertTrue(lastBurst(dark) > 5 * Bodies.DAY, "an eclipse while off clears it");
    BodyHistory bright = Simulation.run(new Bodies().model(), Bodies.fullSun(), request);
    assertTrue(bright.transitions().stream().anyMatch(t -> t.to() == BusState.OFF), "it collapses");
    assertTrue(silentBetween(bright, 3601, 20 * Bodies.DAY), "yet light keeps it latched");
  }

  @Test
  void aBatteryTooColdToChargeRunsDown() {
    Bodies body = new Bodies();
    body.chargeMinC = 0;
    TimedChange cold = Bodies.at(0, new OnboardChange.TemperatureShift(-40));
    BodyHistory history = run(body, 10, cold);
    assertTrue(lastBurst(history) < 6 * Bodies.DAY, "last burst at " + lastBurst(history));
    assertTrue(lastBurst(run(body, 10)) == 10 * Bodies.DAY, "and not when warm");
  }

  @Test
  void aBodyTooWeakForEclipsesReturnsWithTheFullSunSeason() {
    Bodies body = new Bodies();
    TimedChange weak = Bodies.at(0, new OnboardChange.ArrayFactor(0.3));
    int eclipses = (int) (20 * Bodies.DAY / Bodies.ORBIT_SECONDS);
    BodyHistory history =
        Simulation.run(
            body.model(), Bodies.orbitsUntil(eclipses), Bodies.request(40, List.of(weak)));
    BodyHistory never =
        Simulation.run(body.model(), Bodies.orbits(40), Bodies.request(40, List.of(weak)));
    double sunny = eclipses * Bodies.ORBIT_SECONDS;
    double share = onShare(history, sunny + 5 * Bodies.DAY, 40 * Bodies.DAY);
    assertEquals(1, share, 0.01, "on all the time in full sun");
    assertTrue(onShare(never, sunny, 40 * Bodies.DAY) < 0.9, "but not in eclipses");
  }

  private static double onShare(BodyHistory history, double from, double to) {
    double on = 0;
    for (double[] stretch : history.receiverOn()) {
      on += Math.max(0, Math.min(to, stretch[1]) - Math.max(from, stretch[0]));
    }
    return on / (to - from);
  }

  @Test
  void aToggledSeparationSwitchKeepsTheTransmitterQuiet() {
    TimedChange fast = Bodies.at(Bodies.DAY, new OnboardChange.TimersRestart(1800));
    BodyHistory mute = run(new Bodies(), 3, fast);
    assertTrue(silentBetween(mute, Bodies.DAY + 1, 3 * Bodies.DAY));
    TimedChange slow = Bodies.at(Bodies.DAY, new OnboardChange.TimersRestart(7200));
    BodyHistory part = run(new Bodies(), 3, slow);
    assertFalse(silentBetween(part, Bodies.DAY + 1, 3 * Bodies.DAY));
    assertEquals(24, part.segments().stream().filter(s -> s.firstBurst() > Bodies.DAY).count());
  }

  @Test
  void lostStringsLeaveLessToLiveOnInTheDark() {
    BodyHistory one = run(new Bodies(), 2, Bodies.at(0, new OnboardChange.StringsOpen(1)));
    BodyHistory all = run(new Bodies(), 2, Bodies.at(0, new OnboardChange.StringsOpen(2)));
    assertEquals(1, boots(one));
    assertTrue(boots(all) > 20, "none left is an open battery");
    double half = eclipseDip(new Bodies(), Bodies.at(0, new OnboardChange.StringsOpen(1)));
    double faded = eclipseDip(new Bodies(), Bodies.at(0, new OnboardChange.CapacityFactor(0.5)));
    double whole = eclipseDip(new Bodies());
    assertEquals(2, half / whole, 0.05, "half the strings, twice the dip");
    assertEquals(2, faded / whole, 0.05, "half the capacity too");
  }

  /** Charge lost in the third eclipse. */
  private static double eclipseDip(Bodies body, TimedChange... changes) {
    double end = 3 * Bodies.ORBIT_SECONDS;
    double[] probes = {end - Bodies.SHADOW_SECONDS, end};
    BodyHistory history =
        Simulation.run(
            body.model(),
            Bodies.orbits(1),
            new SimulationRequest(end, 0, 600, List.of(changes), probes, new double[0]));
    return history.probes().get(0).soc() - history.probes().get(1).soc();
  }

  @Test
  void protectionThatNeverClosesAgainLeavesTheArraysAlone() {
    Bodies body = new Bodies();
    body.protection = new PowerModel.Protection(3.3, 3.4, PowerModel.ClosesOn.NEVER);
    TimedChange weak = Bodies.at(0, new OnboardChange.ArrayFactor(0.3));
    BodyHistory history = run(body, 20, weak);
    assertEquals(0, history.soc()[history.soc().length - 1]);
    body.protection = new PowerModel.Protection(3.3, 3.4, PowerModel.ClosesOn.CHARGE);
    BodyHistory closes = run(body, 20, weak);
    assertTrue(closes.soc()[closes.soc().length - 1] > 0.05, "charging closes the other kind");
  }
}

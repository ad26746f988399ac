package hark.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.Bodies;
import hark.power.CellBehaviour;
import hark.power.OnboardChange;
import hark.power.OnboardChange.Clearing;
import hark.power.OnboardCommand;
import hark.power.OpenCircuit;
import hark.power.PowerModel;
import hark.power.PowerModel.BusState;
import hark.power.SimulationRequest.TimedChange;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plain body does, and that its books close. */
class PlainBodyTest {
  private static final double SUNLIT_SECONDS = Bodies.ORBIT_SECONDS - Bodies.SHADOW_SECONDS;
  private static final Set<Clearing> POWER_CYCLE = Set.of(Clearing.POWER_CYCLE);

  private static double phase(double seconds) {
    return seconds % Bodies.ORBIT_SECONDS;
  }

  @Test
  void aHealthyBodyBootsOnceAndSpeaksAnIntervalAfterTheQuietTime() {
    PlainHistory history = Plain.run(new Bodies(), Bodies.orbits(2), 2);
    assertEquals(1, history.boots());
    assertEquals("separation", history.transitions().get(0).reason());
    assertEquals(30, history.transitions().get(1).seconds(), "boot lasts its time");
    double[] bursts = history.bursts().get(0);
    assertEquals(2700 + 30, bursts[0]);
    assertEquals((2 * Bodies.DAY - 2700) / 30 - 1, bursts.length);
  }

  @Test
  void theGridBeginsAtSeparationAndReachesTheEnd() {
    PlainHistory history = Plain.run(new Bodies(), Bodies.orbits(1), 1);
    assertEquals(1441, history.soc().length);
    assertEquals(0.75, history.soc()[0]);
    assertEquals(1441, history.states().size());
  }

  /** The same energy flows, whatever flows: 0.1 % over two days, at both steps. */
  @ParameterizedTest(name = "steps of {0} s")
  @ValueSource(doubles = {1, 10})
  void booksClose(double step) {
    Bodies body = new Bodies();
    body.wholeBattery = lithium(0.75, 0.4, PowerModel.ClosesOn.CHARGE);
    TimedChange[] changes = {
      Bodies.at(0, new OnboardChange.TemperatureShift(-20)),
      Bodies.at(Bodies.DAY, new OnboardChange.StringsOpen(1)),
      Bodies.at(1.5 * Bodies.DAY, new OnboardChange.CapacityFactor(0.7)),
      Bodies.at(1.7 * Bodies.DAY, new OnboardChange.ExtraLoad(1.5, false))
    };
    PlainHistory history =
        PlainBody.run(body.model(), Bodies.orbits(2), Plain.request(2 * Bodies.DAY, step, changes));
    PlainHistory.Books books = history.books();
    assertTrue(books.removed() > 0 && books.coulombicLoss() > 0 && books.selfDischarge() > 0);
    assertEquals(0, books.gap() / books.arrays(), 1e-3);
  }

  private static PowerModel.Battery lithium(
      double soc, double toleranceVolts, PowerModel.ClosesOn closesOn) {
    return new PowerModel.Battery(
        2,
        3,
        1,
        0.06,
        OpenCircuit.liIonNca(),
        soc,
        new PowerModel.Protection(3.2, 3.45, closesOn, toleranceVolts),
        -20,
        50,
        Optional.empty(),
        CellBehaviour.LITHIUM_ION);
  }

  @Test
  void stringsOpenOneAfterTheOtherAndTheFirstToOpenRestsWithTheMost() {
    Bodies body = new Bodies();
    body.wholeBattery = lithium(0.9, 0.2, PowerModel.ClosesOn.CHARGE);
    body.cellAreaSquareMeters = 0;
    body.beacons = List.of();
    body.thresholds = new PowerModel.Thresholds(1, 2, 1, 2);
    body.loads = new PowerModel.Loads(0, 1.5, 1.5, 1.5);
    PlainHistory history = Plain.run(body, Bodies.fullSun(), 1);
    double[] soc = history.soc();
    double[] amps = history.amps();
    int last = 0;
    while (amps[last] < 0) {
      last++;
    }
    double[] opensAt = {6.6, 6.4, 6.2}; // 3.2 V and 0.1 V to both sides, two cells in series
    double[] volts = history.volts();
    double cellCoulomb = 3600;
    int carrying = 3;
    for (int i = 1; i < last; i++) {
      double charge = (soc[i - 1] - soc[i]) * cellCoulomb;
      double strings = -60 * (amps[i - 1] + amps[i]) / 2 / charge;
      if (strings < carrying - 0.5) {
        double aMinutesFall = 0.1;
        assertEquals(opensAt[3 - carrying], volts[i - 1], aMinutesFall, "at minute " + i);
        carrying--;
      }
    }
    assertEquals(1, carrying, "one after the other");
    assertEquals(opensAt[2], volts[last - 1], 0.2, "the last one too");
    assertTrue(soc[last] > soc[last - 1] + 0.01, "the mean of the resting is above the last one");
    assertEquals(BusState.OFF, history.states().get(last), "nothing is left to feed it");
  }

  @Test
  void chargeClosesRestingStringsAndWhatNothingClosesIsLost() {
    Bodies body = new Bodies();
    body.thresholds = new PowerModel.Thresholds(6.2, 7.0, 7.2, 7.5);
    TimedChange weak = Bodies.at(0, new OnboardChange.ArrayFactor(0.3));
    body.wholeBattery = lithium(0.3, 0.1, PowerModel.ClosesOn.CHARGE);
    PlainHistory closes = Plain.run(body, Bodies.orbits(4), 4, weak);
    assertTrue(closes.soc()[closes.soc().length - 1] > 0.05);
    body.wholeBattery = lithium(0.3, 0.1, PowerModel.ClosesOn.NEVER);
    PlainHistory never = Plain.run(body, Bodies.orbits(4), 4, weak);
    assertEquals(0, never.soc()[never.soc().length - 1]);
  }

  @Test
  void aSmallBatteryUnderAWeakArrayCyclesEveryOrbitAndSpeaksLateInTheSunlitArc() {
    Bodies body = new Bodies();
    body.parallel = 1;
    body.cellCapacityAh = 0.15;
    body.cellResistanceOhm = 0.1;
    body.socAtSeparation = 0.05;
    body.loads = new PowerModel.Loads(0.005, 0.6, 0.9, 0.9);
    TimedChange weak = Bodies.at(0, new OnboardChange.ArrayFactor(0.35));
    PlainHistory history = Plain.run(body, Bodies.orbits(2), 2, weak);
    double orbits = 2 * Bodies.DAY / Bodies.ORBIT_SECONDS;
    assertEquals(orbits, history.boots(), 2, "one boot an orbit");
    double early = Plain.bursts(history).filter(t -> phase(t) < 0.4 * SUNLIT_SECONDS).count();
    assertTrue(Plain.bursts(history).count() > orbits);
    assertTrue(early < 0.1 * Plain.bursts(history).count(), early + " bursts early in the light");
  }

  @Test
  void withAnOpenBatteryItLivesInSunlightOnly() {
    double onset = Bodies.DAY;
    TimedChange open = Bodies.at(onset, new OnboardChange.BatteryOpen());
    Bodies body = new Bodies();
    body.cellAreaSquareMeters *= 1.5; // a burst is fed by the arrays alone
    PlainHistory history = Plain.run(body, Bodies.orbits(3), 3, open);
    double orbits = 2 * Bodies.DAY / Bodies.ORBIT_SECONDS;
    double penumbra = 10;
    assertEquals(orbits, history.boots() - 1.0, 2);
    assertTrue(
        Plain.bursts(history)
            .filter(t -> t > onset + 60)
            .allMatch(t -> phase(t) < SUNLIT_SECONDS + penumbra));
    Bodies cannot = new Bodies();
    cannot.deadStart = false;
    double last = Plain.lastBurst(Plain.run(cannot, Bodies.orbits(3), 3, open));
    assertTrue(last < onset + Bodies.ORBIT_SECONDS, "and not at all without a dead start");
  }

  @Test
  void aHungComputerWithANegativeBalanceDrainsCollapsesAndReturns() {
    Bodies body = new Bodies();
    body.loads = new PowerModel.Loads(0.005, 0.6, 0.7, 2.6);
    TimedChange hang = Bodies.at(3600, new OnboardChange.ComputerHung(0, POWER_CYCLE));
    PlainHistory history = Plain.run(body, Bodies.orbits(6), 6, hang);
    double off = Plain.firstOff(history);
    assertTrue(off > 6 * 3600, "it lasts hours before it collapses");
    assertTrue(Plain.silentBetween(history, 3601, off));
    assertTrue(Plain.lastBurst(history) > off, "and is heard again");
    PlainHistory sunny = Plain.run(body, Bodies.fullSun(), 6, hang);
    assertTrue(Plain.silentBetween(sunny, 3601, 6 * Bodies.DAY), "not while the balance is good");
  }

  @Test
  void aLatchUpGoesOnlyWhenArrayPowerGoesToo() {
    Set<Clearing> removed = Set.of(Clearing.POWER_REMOVED);
    TimedChange latch = Bodies.at(3600, new OnboardChange.ComputerHung(1.5, removed));
    PlainHistory dark = Plain.run(new Bodies(), Bodies.orbits(8), 8, latch);
    assertTrue(Plain.lastBurst(dark) > 3 * Bodies.DAY, "an eclipse while off clears it");
    PlainHistory bright = Plain.run(new Bodies(), Bodies.fullSun(), 8, latch);
    assertTrue(Plain.firstOff(bright) < 8 * Bodies.DAY, "it collapses");
    assertTrue(Plain.silentBetween(bright, 3601, 8 * Bodies.DAY), "yet light keeps it latched");
  }

  @Test
  void theWatchdogPowerCyclesAHangAndAResetCommandToo() {
    Bodies body = new Bodies();
    body.watchdogSeconds = OptionalDouble.of(600);
    TimedChange hang =
        Bodies.at(5000, new OnboardChange.ComputerHung(0, Set.of(Clearing.WATCHDOG)));
    PlainHistory history = Plain.run(body, Bodies.fullSun(), 0.1, hang);
    assertEquals(
        new PlainHistory.Transition(5600, BusState.OFF, "watchdog"),
        history.transitions().get(history.transitions().size() - 4));
    assertEquals(5602, history.transitions().get(history.transitions().size() - 3).seconds());
    PlainRequest commanded =
        new PlainRequest(
            10_000,
            1,
            60,
            List.of(),
            List.of(new PlainRequest.TimedCommand(7000, OnboardCommand.RESET)));
    PlainHistory reset = PlainBody.run(body.model(), Bodies.fullSun(), commanded);
    assertEquals(2, reset.boots());
    assertTrue(Plain.silentBetween(reset, 7000, 7032 + 29));
  }

  @Test
  void anInrushThatTheBatteryCannotBearKeepsTheBusDown() {
    Bodies body = new Bodies();
    PlainHistory without = Plain.run(body, Bodies.fullSun(), 0.05);
    assertEquals(1, without.boots());
    PowerModel.Bus plain = body.model().bus();
    body.wholeBus =
        new PowerModel.Bus(
            plain.thresholds(),
            plain.holdOffSeconds(),
            plain.deadStart(),
            plain.loads(),
            plain.bootSeconds(),
            plain.watchdogSeconds(),
            plain.commandLoss(),
            plain.deploymentSeconds(),
            plain.deploymentRestartsOnReset(),
            Optional.of(new PowerModel.Inrush(400, 0.01)),
            false);
    PlainHistory with = Plain.run(body, Bodies.fullSun(), 0.05);
    assertEquals("inrush", with.transitions().get(1).reason());
    assertEquals(0, Plain.bursts(with).count());
  }

  /** With a battery that sags: the burst, not the mean, takes the bus down. */
  @Test
  void theSagOfABurstCountsAndTheBusFallsAtABurst() {
    Bodies body = new Bodies();
    body.cellResistanceOhm = 1;
    body.cellAreaSquareMeters = 0;
    PlainHistory history = Plain.run(body, Bodies.fullSun(), 3);
    double off = Plain.firstOff(history);
    double[] whole = Plain.bursts(history).filter(t -> t < off + 1).toArray();
    double next = whole[whole.length - 1] + body.model().beacons().get(0).intervalSeconds();
    assertTrue(next >= off && next < off + 1, "off at " + off + ", a burst due at " + next);
  }

  /** The burst that takes the bus down is cut off at once: nobody gets it. */
  @Test
  void aBurstThatTakesTheBusDownIsNotSent() {
    Bodies body = new Bodies();
    body.cellResistanceOhm = 1;
    body.cellAreaSquareMeters = 0;
    PlainHistory history = Plain.run(body, Bodies.fullSun(), 3);
    double off = Plain.firstOff(history);
    assertTrue(Plain.bursts(history).noneMatch(t -> t >= off && t < off + 1), "off at " + off);
  }

  /** Absorbed sun and Earth's infrared against radiation: (q/(ε·σ))^¼ of a sphere in full sun. */
  @Test
  void anIdleBodyInFullSunSettlesAtItsRadiativeEquilibrium() {
    Bodies body = new Bodies();
    body.cellAreaSquareMeters = 0;
    body.loads = new PowerModel.Loads(0, 0, 0, 0);
    body.beacons = List.of();
    PlainHistory history = Plain.run(body, Bodies.fullSun(), 3);
    double sun = 0.85 * 1361 * (0.25 + 0.3 * 0.31 * 0.5);
    double earth = 0.8 * 237 * 0.31;
    double kelvin = Math.pow((sun + earth) / (0.8 * 5.670374419e-8), 0.25);
    assertEquals(kelvin - 273.15, history.batteryCelsius(), 0.05);
    assertEquals(kelvin - 273.15, history.structureCelsius(), 0.05);
  }

  @Test
  void withoutHoldOffItStormsAndYetStaysOffForTenSeconds() {
    Bodies body = new Bodies();
    body.parallel = 1;
    body.cellCapacityAh = 1;
    body.cellResistanceOhm = 0.6;
    body.socAtSeparation = 0.12; // sags by more than the hysteresis
    body.loads = new PowerModel.Loads(0.005, 0.6, 1.5, 1.5);
    body.thresholds = new PowerModel.Thresholds(6.2, 6.25, 6.4, 7.5);
    TimedChange weak = Bodies.at(0, new OnboardChange.ArrayFactor(0.4));
    PlainHistory storm =
        Plain.run(body, Bodies.orbits(1), 1, weak, Bodies.at(0, new OnboardChange.HoldOffLost()));
    PlainHistory calm = Plain.run(body, Bodies.orbits(1), 1, weak);
    assertTrue(storm.boots() > 20 * Bodies.DAY / Bodies.ORBIT_SECONDS, storm.boots() + " boots");
    assertTrue(calm.boots() < storm.boots() / 4, calm.boots() + " boots with a hold-off");
    double shortest = Double.POSITIVE_INFINITY;
    double off = Double.NEGATIVE_INFINITY;
    for (PlainHistory.Transition transition : storm.transitions()) {
      if (transition.to() == BusState.OFF) {
        off = transition.seconds();
      } else if (transition.to() == BusState.BOOT) {
        shortest = Math.min(shortest, transition.seconds() - off);
      }
    }
    assertEquals(10, shortest);
  }
}

package hark.power;

import hark.power.OnboardChange.Clearing;
import hark.power.PowerModel.BusState;

/**
 * The bus as a machine of four states. {@link #wish} says what the voltages ask for, {@link #act}
 * does it. Its timers are in {@link BusTimers}.
 */
final class Bus {
  /** What the voltages ask for. */
  enum Wish {
    NOTHING,
    OPEN_PROTECTION,
    CLOSE_PROTECTION,
    TURN_OFF,
    NOTE_RECOVERY,
    FORGET_RECOVERY,
    START_LOOP,
    ENTER_SAFE,
    ENTER_NOMINAL,
    NOTE_NOMINAL_VOLTS,
    FORGET_NOMINAL_VOLTS
  }

  private final PowerModel model;
  private final Onboard onboard;
  private final Recorder recorder;
  private final PowerModel.Thresholds thresholds;

  Bus(PowerModel model, Onboard onboard, Recorder recorder) {
    this.model = model;
    this.onboard = onboard;
    this.recorder = recorder;
    this.thresholds = model.bus().thresholds();
  }

  /** Released from the deployer: timers begin, and the bus boots at once if it can. */
  void separate(BodyState s, Circuit circuit) {
    restartTimers(s);
    circuit.measure(s);
    if (canStart(s, circuit)) {
      boot(s, "separation");
    }
  }

  /** What the last solution of the circuit asks for at a time. */
  Wish wish(BodyState s, Circuit circuit, double seconds) {
    boolean off = s.busOff();
    double volts = circuit.busVolts;
    double shift = s.thresholdShiftVolts;
    if (!off && !(circuit.feeds && volts >= thresholds.cutoffVolts() + shift)) {
      return Wish.TURN_OFF;
    }
    if (s.protectionOpen) {
      if (circuit.protectionCloses(s)) {
        return Wish.CLOSE_PROTECTION;
      }
    } else if (!s.batteryGone
        && circuit.cellVolts() < model.battery().protection().openVoltsPerCell()) {
      return Wish.OPEN_PROTECTION;
    }
    if (off) {
      return wishWhileOff(s, circuit);
    }
    return s.hung || s.bus == BusState.BOOT ? Wish.NOTHING : wishOfSoftware(s, volts, seconds);
  }

  private Wish wishWhileOff(BodyState s, Circuit circuit) {
    boolean can = canStart(s, circuit);
    if (s.powerCycling || can == s.voltageRecovered) {
      return Wish.NOTHING;
    }
    return can ? Wish.NOTE_RECOVERY : Wish.FORGET_RECOVERY;
  }

  private Wish wishOfSoftware(BodyState s, double volts, double seconds) {
    if (s.bootLoop) {
      return Wish.START_LOOP;
    }
    boolean forced = s.lowPower || s.safeByTimer;
    double shift = s.thresholdShiftVolts;
    boolean high = volts >= thresholds.nominalAboveVolts() + shift;
    if (s.bus == BusState.NOMINAL) {
      return forced || volts < thresholds.safeBelowVolts() + shift ? Wish.ENTER_SAFE : Wish.NOTHING;
    }
    if (s.lowPower && high == (s.nominalVoltsFrom == BodyState.NEVER)) {
      return high ? Wish.NOTE_NOMINAL_VOLTS : Wish.FORGET_NOMINAL_VOLTS;
    }
    boolean looks = seconds >= s.safeSince + PowerPhysics.SAFE_DWELL_SECONDS;
    return looks && high && !forced ? Wish.ENTER_NOMINAL : Wish.NOTHING;
  }

  /** From the battery above the recovery voltage, or else from arrays that are strong enough. */
  private boolean canStart(BodyState s, Circuit circuit) {
    if (Circuit.canDischarge(s)) {
      return circuit.busVolts >= thresholds.recoveryVolts() + s.thresholdShiftVolts;
    }
    PowerModel.DeadStart dead = model.bus().deadStart();
    return dead.fromArraysAlone()
        && circuit.arrayWatts > 0
        && circuit.arrayWatts >= dead.needsWatts();
  }

  /** Does what the voltages ask for. */
  void act(BodyState s, Wish wish, Circuit circuit) {
    switch (wish) {
      case OPEN_PROTECTION -> openProtection(s, circuit);
      case CLOSE_PROTECTION -> s.protectionOpen = false;
      case TURN_OFF -> turnOff(s, Circuit.canDischarge(s) ? "undervoltage" : "arrays too weak");
      case NOTE_RECOVERY -> {
        s.voltageRecovered = true;
        double wait = s.holdOffLost ? 0 : model.bus().holdOffSeconds();
        s.bootAt = Math.max(s.seconds + wait, s.offFrom + PowerPhysics.LEAST_OFF_SECONDS);
      }
      case FORGET_RECOVERY -> {
        s.voltageRecovered = false;
        s.bootAt = BodyState.NEVER;
      }
      case START_LOOP -> {
        s.bootedAt = s.seconds;
        enter(s, BusState.BOOT, "boot loop");
      }
      case ENTER_SAFE -> {
        s.safeSince = s.seconds;
        s.nominalVoltsFrom = BodyState.NEVER;
        enter(s, BusState.SAFE, s.lowPower || s.safeByTimer ? "safe by order" : "voltage low");
      }
      case ENTER_NOMINAL -> enter(s, BusState.NOMINAL, "voltage high");
      case NOTE_NOMINAL_VOLTS -> s.nominalVoltsFrom = s.seconds;
      case FORGET_NOMINAL_VOLTS -> s.nominalVoltsFrom = BodyState.NEVER;
      case NOTHING -> {}
    }
  }

  /** A protection that nothing closes again is an open battery. */
  private void openProtection(BodyState s, Circuit circuit) {
    s.protectionOpen = true;
    if (model.battery().protection().closesOn() == PowerModel.ClosesOn.NEVER) {
      s.removedJoule += circuit.storedJoule(s);
      s.batteryGone = true;
    }
  }

  /** Enters a state and writes it down. */
  void enter(BodyState s, BusState to, String reason) {
    s.bus = to;
    recorder.transition(s.seconds, to, reason);
  }

  private void turnOff(BodyState s, String reason) {
    s.voltageRecovered = false;
    s.powerCycling = false;
    s.bootAt = BodyState.NEVER;
    s.offFrom = s.seconds;
    s.bootedAt = Double.NaN;
    s.releaseUntil = Double.NEGATIVE_INFINITY;
    s.heating = false;
    onboard.clear(s, Clearing.POWER_CYCLE);
    enter(s, BusState.OFF, reason);
  }

  /** Off for a moment and then boot, whatever the voltage. */
  void powerCycle(BodyState s, String reason) {
    turnOff(s, reason);
    s.powerCycling = true;
    s.bootAt = s.seconds + PowerPhysics.POWER_CYCLE_SECONDS;
  }

  /** Power comes on; what does not survive a reset begins again. */
  void boot(BodyState s, String reason) {
    if (s.bootedBefore) {
      s.resets++;
      if (model.bus().deploymentRestartsOnReset()) {
        restartTimers(s);
      }
      if (model.bus().commandLoss().isPresent()
          && !model.bus().commandLoss().get().survivesReset()) {
        s.commandTimerFrom = s.seconds;
      }
    }
    s.bootedBefore = true;
    s.powerCycling = false;
    s.bootAt = BodyState.NEVER;
    s.bootedAt = s.seconds;
    s.beaconsInEveryState = false;
    if (s.watchdogFrom != BodyState.NEVER) {
      s.watchdogFrom = s.seconds;
    }
    enter(s, BusState.BOOT, reason);
  }

  /** Quiet time and deployment timer begin again. */
  void restartTimers(BodyState s) {
    s.timersFrom = s.seconds;
    s.releaseAt = s.seconds + model.bus().deploymentSeconds();
  }

  /** Clears what a beacon command clears and starts every beacon that the state can power. */
  void startBeacons(BodyState s) {
    onboard.clear(s, Clearing.BEACON_COMMAND);
    s.beaconsInEveryState = s.computerRuns();
  }

  /** A command arrives. The reset is decoded by hardware; the others need a computer that runs. */
  void command(BodyState s, OnboardCommand command) {
    if (s.busOff()) {
      return;
    }
    if (command == OnboardCommand.RESET) {
      onboard.clear(s, Clearing.RESET_COMMAND);
      s.commandTimerFrom = s.seconds;
      s.safeByTimer = false;
      powerCycle(s, "reset command");
      return;
    }
    if (command == OnboardCommand.BEACON_ON) {
      startBeacons(s);
    }
    if (!s.computerRuns()) {
      return;
    }
    s.commandTimerFrom = s.seconds;
    s.safeByTimer = false;
    if (command == OnboardCommand.LOW_POWER) {
      s.lowPower = true;
      s.nominalVoltsFrom = BodyState.NEVER;
    } else if (command == OnboardCommand.RELEASE) {
      s.releaseUntil = s.seconds + PowerPhysics.RELEASE_SECONDS;
    }
  }
}

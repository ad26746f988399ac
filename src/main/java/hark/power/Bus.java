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
  private final CellProtection protection;

  Bus(PowerModel model, Onboard onboard, Recorder recorder) {
    this.model = model;
    this.onboard = onboard;
    this.recorder = recorder;
    this.thresholds = model.bus().thresholds();
    this.protection = new CellProtection(model);
  }

  /** Released from the deployer: timers begin, and the bus boots at once if it can. */
  void separate(BodyState s, Circuit circuit) {
    restartTimers(s);
    circuit.measure(s);
    if (canStart(s, circuit)) {
      boot(s, circuit, "separation");
    }
  }

  /**
   * What the last solution of the circuit asks for at a time.
   *
   * @param inBurst whether the voltage of a burst counts
   */
  Wish wish(BodyState s, Circuit circuit, double seconds, boolean inBurst) {
    boolean off = s.busOff();
    double volts = inBurst ? circuit.burstVolts : circuit.busVolts;
    boolean feeds = inBurst ? circuit.feedsBurst : circuit.feeds;
    if (!off && !(feeds && volts >= thresholds.cutoffVolts() + s.thresholdShiftVolts)) {
      return Wish.TURN_OFF;
    }
    if (protection.closes(s, circuit)) {
      return Wish.CLOSE_PROTECTION;
    }
    double packVolts = inBurst ? circuit.burstPackVolts : circuit.packVolts;
    if (Circuit.canDischarge(s) && packVolts < protection.opensBelowVolts(s)) {
      return Wish.OPEN_PROTECTION;
    }
    if (off) {
      return wishWhileOff(s, circuit);
    }
    return s.hung || s.bus == BusState.BOOT ? Wish.NOTHING : wishOfSoftware(s, volts, seconds);
  }

  /** Whether the next burst would ask for something that the mean load does not. */
  boolean wouldSag(BodyState s, Circuit circuit, double seconds) {
    return s.burstWatts > 0
        && wish(s, circuit, seconds, false) == Wish.NOTHING
        && wish(s, circuit, seconds, true) != Wish.NOTHING;
  }

  /** Notes between which voltages at the bus, bursts included, nothing is asked for. */
  void watch(BodyState s) {
    boolean feeds = Circuit.canDischarge(s);
    double shift = s.thresholdShiftVolts;
    s.floorVolts = feeds ? protection.opensBelowVolts(s) : 0;
    s.ceilingVolts = Double.POSITIVE_INFINITY;
    boolean rests = s.protectionOpen && !s.batteryGone;
    s.closesVolts = rests ? protection.closesAboveVolts() : Double.POSITIVE_INFINITY;
    if (s.stringsResting > 0 || s.lowPower || s.bootLoop) {
      s.floorVolts = Double.POSITIVE_INFINITY; // always looked at exactly
    } else if (!s.busOff()) {
      boolean nominal = s.bus == BusState.NOMINAL;
      double falls = nominal ? thresholds.safeBelowVolts() : thresholds.cutoffVolts();
      s.floorVolts = Math.max(s.floorVolts, Math.max(falls, thresholds.cutoffVolts()) + shift);
      if (s.bus == BusState.SAFE) {
        s.ceilingVolts = Math.min(s.ceilingVolts, thresholds.nominalAboveVolts() + shift);
      }
    } else if (feeds && s.voltageRecovered) {
      s.floorVolts = Math.max(s.floorVolts, thresholds.recoveryVolts() + shift);
    } else if (feeds) {
      s.ceilingVolts = thresholds.recoveryVolts() + shift;
    }
    watchArrays(s, feeds);
  }

  /**
   * How far the last solution is from asking for something, in volts, or watts where no battery
   * feeds the bus; negative when it does. Told by what {@link #watch} has noted.
   */
  double margin(BodyState s, Circuit circuit) {
    if (!Circuit.canDischarge(s)) {
      return Math.min(circuit.arrayWatts - s.leastWatts, s.mostWatts - circuit.arrayWatts);
    }
    double lowest = s.sagAt == BodyState.NEVER ? circuit.burstVolts : circuit.busVolts;
    return Math.min(lowest - s.floorVolts, s.ceilingVolts - circuit.busVolts);
  }

  /** Notes between which array powers nothing is asked for when the battery feeds nothing. */
  private void watchArrays(BodyState s, boolean feeds) {
    PowerModel.DeadStart dead = model.bus().deadStart();
    s.leastWatts = Double.NEGATIVE_INFINITY;
    s.mostWatts = Double.POSITIVE_INFINITY;
    if (feeds) {
      return;
    }
    if (!s.busOff()) {
      s.leastWatts = s.loadWatts + s.burstWatts;
    } else if (s.voltageRecovered) {
      s.leastWatts = dead.needsWatts();
    } else if (dead.fromArraysAlone()) {
      s.mostWatts = Math.max(dead.needsWatts(), Double.MIN_VALUE);
    }
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
      case OPEN_PROTECTION -> protection.open(s, circuit);
      case CLOSE_PROTECTION -> protection.close(s, circuit);
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
  void boot(BodyState s, Circuit circuit, String reason) {
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
    if (!model.bus().ordersSurviveReset()) {
      s.beaconsInEveryState = false;
      s.lowPower = false;
    }
    if (s.watchdogFrom != BodyState.NEVER) {
      s.watchdogFrom = s.seconds;
    }
    enter(s, BusState.BOOT, reason);
    drawInrush(s, circuit);
  }

  /** Supplies that fill up at once may pull the bus down before it runs. */
  private void drawInrush(BodyState s, Circuit circuit) {
    if (model.bus().inrush().isEmpty()) {
      return;
    }
    double watts = model.bus().loads().bootWatts() + model.bus().inrush().get().watts();
    double atLeast = thresholds.cutoffVolts() + s.thresholdShiftVolts;
    if (!circuit.carries(s, watts - s.loadWatts, atLeast)) {
      turnOff(s, "inrush");
    }
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
      s.panelsStuck = false;
      s.unfolded = true;
    }
  }
}

package hark.trial;

import hark.power.OnboardChange.Clearing;
import hark.power.OnboardCommand;
import hark.power.PowerModel;
import hark.power.PowerModel.BusState;
import hark.power.PowerModel.CommandLossAction;
import java.util.ArrayList;
import java.util.List;

/** The bus: its states, its timers, its thresholds. */
final class Machine {
  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final double LONG_AGO = Double.NEGATIVE_INFINITY;

  private final PowerModel.Bus bus;
  private final PowerModel.Thresholds thresholds;
  private final double quietSeconds;
  private final Mishaps mishaps;
  private final Panels panels;
  private final List<PlainHistory.Transition> transitions = new ArrayList<>();

  private BusState state = BusState.OFF;
  private int boots;
  private double now;

  // Off and starting.
  private double offFrom = LONG_AGO;
  private double recoveredFrom = NEVER;
  private double cycleEnds = NEVER;
  private double darkFrom = NEVER;
  private boolean unpowered;

  // On.
  private double bootedAt;
  private double inrushEnds = LONG_AGO;
  private double nextLook;
  private double starvedFrom = NEVER;
  private double commandedAt;
  private double timersFrom;
  private boolean released;
  private double releaseEnds = LONG_AGO;

  // Orders.
  private boolean beaconsEverywhere;
  private boolean lowPower;
  private double highFrom = NEVER;
  private boolean safeByTimer;

  Machine(PowerModel model, Mishaps mishaps, Panels panels) {
    bus = model.bus();
    thresholds = bus.thresholds();
    quietSeconds = model.quietSeconds();
    this.mishaps = mishaps;
    this.panels = panels;
  }

  BusState state() {
    return state;
  }

  boolean off() {
    return state == BusState.OFF;
  }

  int boots() {
    return boots;
  }

  List<PlainHistory.Transition> transitions() {
    return transitions;
  }

  private boolean computerRuns() {
    return !off() && !mishaps.hung() && !mishaps.loops();
  }

  /** Whether software is past its boot. */
  private boolean softwareRuns() {
    return computerRuns() && state != BusState.BOOT;
  }

  boolean mayBeacon(double seconds) {
    return computerRuns() && !mishaps.silenced() && seconds >= timersFrom + quietSeconds;
  }

  boolean beaconsEverywhere() {
    return beaconsEverywhere && state != BusState.BOOT;
  }

  /** Loads of state, faults and release, W; not heater, receiver and bursts. */
  double watts() {
    double watts = bus.loads().of(state);
    if (off()) {
      return watts + mishaps.extraWattsWhenOff;
    }
    double release = now < releaseEnds ? Physics.RELEASE_WATTS : 0;
    return watts + mishaps.extraWatts + mishaps.hungWatts() + release;
  }

  /** Drawn by the inrush while it lasts, W. */
  double inrushWatts() {
    return inrushEnds > now ? bus.inrush().orElseThrow().watts() : 0;
  }

  /** Taken by the inrush in a step, J. */
  double inrushJoules(double step) {
    return inrushWatts() * Math.min(step, Math.max(0, inrushEnds - now));
  }

  /** Released from the deployer: boots at once if it can. */
  void separate(boolean canStart) {
    if (canStart) {
      boot("separation");
    }
  }

  /** Whether the bus could start from what feeds it. */
  boolean canStart(boolean battery, double volts, double givenWatts) {
    if (battery) {
      return volts >= thresholds.recoveryVolts() + mishaps.thresholdShiftVolts;
    }
    PowerModel.DeadStart dead = bus.deadStart();
    return dead.fromArraysAlone() && givenWatts > 0 && givenWatts >= dead.needsWatts();
  }

  /** The separation switch: quiet time and deployment time begin again. */
  void restartTimers() {
    timersFrom = now;
    released = false;
  }

  /** A time comes: timers that are not the software's act. */
  void tick(double seconds, boolean dark) {
    now = seconds;
    watchPower(dark);
    if (off()) {
      return;
    }
    if (!mishaps.starvesWatchdog()) {
      starvedFrom = NEVER;
    } else if (starvedFrom == NEVER) {
      starvedFrom = now;
    }
    if (now >= starvedFrom + bus.watchdogSeconds().orElse(NEVER)) {
      mishaps.clear(Clearing.WATCHDOG);
      cycle("watchdog");
    } else if (bus.commandLoss().isPresent()) {
      watchCommands(bus.commandLoss().get());
    }
  }

  private void watchPower(boolean dark) {
    if (!off() || !dark) {
      darkFrom = NEVER;
      unpowered = false;
    } else if (darkFrom == NEVER) {
      darkFrom = now;
    }
    if (!unpowered && now >= darkFrom + Physics.UNPOWERED) {
      unpowered = true;
      mishaps.clear(Clearing.POWER_CYCLE);
      mishaps.clear(Clearing.POWER_REMOVED);
    }
  }

  private void watchCommands(PowerModel.CommandLoss timer) {
    if (now < commandedAt + timer.seconds()) {
      return;
    }
    if (timer.does() == CommandLossAction.RESET) {
      commandedAt = now;
      cycle("command loss");
    } else if (softwareRuns()) {
      commandedAt = now;
      if (timer.does() == CommandLossAction.SAFE) {
        safeByTimer = true;
      } else {
        startBeacons();
      }
    }
  }

  /**
   * Acts on the bus between bursts; true when something changed, for then the bus is another.
   *
   * @param canStart what {@link #canStart} says now
   * @param battery whether a battery is on the bus
   */
  boolean act(Junction junction, boolean canStart, boolean battery) {
    if (off()) {
      return start(canStart);
    }
    if (fails(junction)) {
      turnOff(battery ? "undervoltage" : "arrays too weak");
      return true;
    }
    if (mishaps.loops() && !mishaps.hung() && state != BusState.BOOT) {
      enter(BusState.BOOT, "boot loop");
      return true;
    }
    return computerRuns() && software(junction.volts);
  }

  /** Acts on the bus under a burst or the inrush. */
  boolean actOnSag(Junction junction, boolean battery) {
    if (off()) {
      return false;
    }
    if (fails(junction)) {
      String weak = battery ? "undervoltage" : "arrays too weak";
      turnOff(inrushWatts() > 0 ? "inrush" : weak);
      return true;
    }
    return computerRuns() && fallsBack(junction.volts);
  }

  private boolean fails(Junction junction) {
    double cutoff = thresholds.cutoffVolts() + mishaps.thresholdShiftVolts;
    return !(junction.fed && junction.volts >= cutoff);
  }

  private boolean start(boolean canStart) {
    if (cycleEnds != NEVER) {
      if (now >= cycleEnds) {
        boot("restart");
        return true;
      }
      return false;
    }
    if (!canStart) {
      recoveredFrom = NEVER;
    } else if (recoveredFrom == NEVER) {
      recoveredFrom = now;
    }
    double wait = mishaps.holdOffLost ? 0 : bus.holdOffSeconds();
    if (now < recoveredFrom + wait || now < offFrom + Physics.LEAST_OFF) {
      return false;
    }
    boot("restart");
    return true;
  }

  private boolean software(double volts) {
    if (state == BusState.BOOT) {
      if (now < bootedAt + bus.bootSeconds()) {
        return false;
      }
      nextLook = now;
      highFrom = NEVER;
      enter(BusState.SAFE, "booted");
      return true;
    }
    if (!released && now >= timersFrom + bus.deploymentSeconds()) {
      released = true;
      release(!mishaps.panelsStuck);
      return true;
    }
    return state == BusState.NOMINAL ? fallsBack(volts) : looks(volts);
  }

  private boolean fallsBack(double volts) {
    boolean low = volts < thresholds.safeBelowVolts() + mishaps.thresholdShiftVolts;
    boolean ordered = lowPower || safeByTimer;
    if (state != BusState.NOMINAL || !(low || ordered)) {
      return false;
    }
    nextLook = now + Physics.LOOK;
    highFrom = NEVER;
    enter(BusState.SAFE, ordered ? "safe by order" : "voltage low");
    return true;
  }

  private boolean looks(double volts) {
    boolean high = volts >= thresholds.nominalAboveVolts() + mishaps.thresholdShiftVolts;
    if (!lowPower || !high) {
      highFrom = NEVER;
    } else if (highFrom == NEVER) {
      highFrom = now;
    } else if (now >= highFrom + Physics.LOW_POWER) {
      lowPower = false;
    }
    if (now < nextLook) {
      return false;
    }
    nextLook = now + Physics.LOOK;
    if (!high || lowPower || safeByTimer) {
      return false;
    }
    enter(BusState.NOMINAL, "voltage high");
    return true;
  }

  private void release(boolean unfolds) {
    releaseEnds = now + Physics.RELEASE_SECONDS;
    if (unfolds) {
      panels.unfold();
    }
  }

  private void enter(BusState to, String reason) {
    state = to;
    if (transitions.size() < PlainHistory.MOST_TRANSITIONS) {
      transitions.add(new PlainHistory.Transition(now, to, reason));
    }
  }

  private void turnOff(String reason) {
    offFrom = now;
    recoveredFrom = NEVER;
    cycleEnds = NEVER;
    inrushEnds = LONG_AGO;
    releaseEnds = LONG_AGO;
    mishaps.clear(Clearing.POWER_CYCLE);
    enter(BusState.OFF, reason);
  }

  private void cycle(String reason) {
    turnOff(reason);
    cycleEnds = now + Physics.POWER_CYCLE;
  }

  private void boot(String reason) {
    boots++;
    if (boots > 1) {
      reset();
    }
    cycleEnds = NEVER;
    recoveredFrom = NEVER;
    bootedAt = now;
    starvedFrom = NEVER;
    inrushEnds = bus.inrush().isPresent() ? now + bus.inrush().get().seconds() : LONG_AGO;
    enter(BusState.BOOT, reason);
  }

  private void reset() {
    if (bus.deploymentRestartsOnReset()) {
      restartTimers();
    }
    if (bus.commandLoss().isPresent() && !bus.commandLoss().get().survivesReset()) {
      commandedAt = now;
    }
    if (!bus.ordersSurviveReset()) {
      beaconsEverywhere = false;
      lowPower = false;
    }
  }

  private void startBeacons() {
    mishaps.clear(Clearing.BEACON_COMMAND);
    beaconsEverywhere = computerRuns();
  }

  /** A command arrives; the reset is hardware, the others need a computer that runs. */
  void command(OnboardCommand command) {
    if (off()) {
      return;
    }
    if (command == OnboardCommand.RESET) {
      mishaps.clear(Clearing.RESET_COMMAND);
      heard();
      cycle("reset command");
      return;
    }
    if (command == OnboardCommand.BEACON_ON) {
      startBeacons();
    }
    if (!computerRuns()) {
      return;
    }
    heard();
    if (command == OnboardCommand.LOW_POWER) {
      lowPower = true;
      highFrom = NEVER;
    } else if (command == OnboardCommand.RELEASE) {
      mishaps.panelsStuck = false;
      release(true);
    }
  }

  private void heard() {
    commandedAt = now;
    safeByTimer = false;
  }
}

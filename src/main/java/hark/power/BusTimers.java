package hark.power;

import hark.power.OnboardChange.Clearing;
import hark.power.PowerModel.BusState;
import hark.power.PowerModel.CommandLossAction;

/**
 * The timers of the bus, read from the state: {@link #next} says when the next one acts, {@link
 * #fireDue} lets those act that have come.
 */
final class BusTimers {
  private final PowerModel model;
  private final Onboard onboard;
  private final Bus bus;
  private final double watchdogSeconds;
  private final double commandLossSeconds;

  BusTimers(PowerModel model, Onboard onboard, Bus bus) {
    this.model = model;
    this.onboard = onboard;
    this.bus = bus;
    watchdogSeconds = model.bus().watchdogSeconds().orElse(BodyState.NEVER);
    commandLossSeconds =
        model.bus().commandLoss().map(PowerModel.CommandLoss::seconds).orElse(BodyState.NEVER);
  }

  /** Whether the transmitter may speak as far as the quiet time goes. */
  boolean quietOver(BodyState s) {
    return s.seconds >= quietEnd(s);
  }

  private double quietEnd(BodyState s) {
    return s.timersFrom + model.quietSeconds();
  }

  /** The next time at which a timer acts, s. */
  double next(BodyState s) {
    double next = Math.min(Math.min(s.bootAt, s.nextDay), after(s, quietEnd(s)));
    next = Math.min(next, Math.min(s.sagAt, s.paceAt));
    next = Math.min(next, after(s, s.releaseUntil));
    double unpowered = onboard.stands(s) ? unpoweredDue(s) : BodyState.NEVER;
    next = Math.min(next, Math.min(unpowered, onboard.next(s)));
    if (s.busOff()) {
      return next;
    }
    next = Math.min(next, Math.min(watchdogDue(s), after(s, commandLossDue(s))));
    if (s.bus == BusState.BOOT) {
      next = Math.min(next, after(s, bootEnd(s)));
    }
    if (s.bus == BusState.SAFE) {
      next = Math.min(next, after(s, s.safeSince + PowerPhysics.SAFE_DWELL_SECONDS));
    }
    next = Math.min(next, after(s, s.nominalVoltsFrom + PowerPhysics.LOW_POWER_SECONDS));
    return Math.min(next, after(s, s.releaseAt));
  }

  private static double after(BodyState s, double due) {
    return due > s.seconds ? due : BodyState.NEVER;
  }

  private double bootEnd(BodyState s) {
    return s.bootedAt + model.bus().bootSeconds();
  }

  private double watchdogDue(BodyState s) {
    return s.watchdogFrom + watchdogSeconds;
  }

  private double commandLossDue(BodyState s) {
    return s.commandTimerFrom + commandLossSeconds;
  }

  private static double unpoweredDue(BodyState s) {
    return Double.isInfinite(s.unpoweredFrom)
        ? BodyState.NEVER
        : s.unpoweredFrom + PowerPhysics.UNPOWERED_SECONDS;
  }

  /** Runs timers that have come; true when one did, for then others may follow. */
  boolean fireDue(BodyState s, Circuit circuit) {
    if (s.nextDay <= s.seconds) {
      beginDay(s, circuit);
    }
    watchPower(s, circuit); // before what begins now, which it does not clear
    onboard.beginDue(s, circuit, bus);
    watchPower(s, circuit);
    if (s.busOff()) {
      if (s.bootAt > s.seconds) {
        return false;
      }
      bus.boot(s, circuit, "restart");
      return true;
    }
    if (watchdogDue(s) <= s.seconds) {
      onboard.clear(s, Clearing.WATCHDOG);
      bus.powerCycle(s, "watchdog");
      return true;
    }
    return (commandLossDue(s) <= s.seconds && fireCommandLoss(s))
        || (s.computerRuns() && fireSoftware(s));
  }

  /** Once a day: cells and arrays are older, and what was misused is worth less. */
  private void beginDay(BodyState s, Circuit circuit) {
    double before = circuit.storedJoule(s);
    s.years = s.nextDay / PowerPhysics.YEAR_SECONDS;
    s.nextDay += PowerPhysics.DAY_SECONDS;
    double perDay = model.battery().behaviour().damagePerDay();
    s.capacityFactor *= 1 - perDay * s.damagedSeconds / PowerPhysics.DAY_SECONDS;
    s.damagedSeconds = 0;
    circuit.renew(s);
    s.removedJoule += before - circuit.storedJoule(s);
  }

  private boolean fireSoftware(BodyState s) {
    if (s.bus == BusState.BOOT) {
      if (bootEnd(s) > s.seconds) {
        return false;
      }
      s.safeSince = Double.NEGATIVE_INFINITY; // looks for nominal at once
      s.nominalVoltsFrom = BodyState.NEVER;
      bus.enter(s, BusState.SAFE, "booted");
      return true;
    }
    if (s.releaseAt <= s.seconds) {
      s.releaseAt = BodyState.NEVER;
      s.unfolded |= !s.panelsStuck;
      s.releaseUntil = s.seconds + PowerPhysics.RELEASE_SECONDS;
      return true;
    }
    if (s.nominalVoltsFrom + PowerPhysics.LOW_POWER_SECONDS <= s.seconds) {
      s.lowPower = false;
      s.nominalVoltsFrom = BodyState.NEVER;
      return true;
    }
    return false;
  }

  /** Off and dark for a minute takes power from whatever the arrays kept alive. */
  void watchPower(BodyState s, Circuit circuit) {
    if (!s.busOff() || !circuit.dark(s)) {
      s.unpoweredFrom = BodyState.NEVER;
    } else if (s.unpoweredFrom == BodyState.NEVER) {
      s.unpoweredFrom = s.seconds;
    } else if (unpoweredDue(s) <= s.seconds) {
      onboard.clear(s, Clearing.POWER_CYCLE);
      onboard.clear(s, Clearing.POWER_REMOVED);
      s.unpoweredFrom = Double.NEGATIVE_INFINITY; // done until power returns
    }
  }

  /** The reset is done by hardware and so reaches a hung computer; the rest is software. */
  private boolean fireCommandLoss(BodyState s) {
    CommandLossAction action = model.bus().commandLoss().get().does();
    if (action == CommandLossAction.RESET) {
      s.commandTimerFrom = s.seconds;
      bus.powerCycle(s, "command loss");
      return true;
    }
    if (!s.computerRuns() || s.bus == BusState.BOOT) {
      return false;
    }
    s.commandTimerFrom = s.seconds;
    if (action == CommandLossAction.SAFE) {
      s.safeByTimer = true;
    } else {
      bus.startBeacons(s);
    }
    return true;
  }
}

package hark.power;

import hark.power.OnboardChange.Clearing;
import hark.power.SimulationRequest.TimedChange;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What happens to the body: changes with their onsets, how long they stand and what clears them.
 */
final class Onboard {
  private final List<TimedChange> changes;
  private final double[] onsets;
  private final int parallel;
  private final List<Face> faces;

  Onboard(List<TimedChange> events, PowerModel model) {
    this.parallel = model.battery().parallel();
    this.faces = model.arrays().faces();
    changes = events.stream().sorted(Comparator.comparingDouble(Onboard::onset)).toList(); // stable
    onsets = changes.stream().mapToDouble(Onboard::onset).toArray();
  }

  private static double onset(TimedChange event) {
    return Math.max(0, event.onsetSeconds());
  }

  int count() {
    return onsets.length;
  }

  /** The next onset or toggle of the separation switch, s. */
  double next(BodyState s) {
    double next = s.changesDone < onsets.length ? onsets[s.changesDone] : BodyState.NEVER;
    for (double toggle : s.toggleAt) {
      next = Math.min(next, toggle);
    }
    return next;
  }

  /** Lets everything begin that is due. */
  void beginDue(BodyState s, Circuit circuit, Bus bus) {
    while (s.changesDone < onsets.length && onsets[s.changesDone] <= s.seconds) {
      int place = s.changesDone++;
      double before = circuit.storedJoule(s);
      begin(s, changes.get(place).change(), place);
      if (changes.get(place).change() instanceof OnboardChange.Commanded told) {
        bus.command(s, told.command());
      }
      circuit.renew(s);
      s.removedJoule += before - circuit.storedJoule(s);
    }
    for (int i = 0; i < onsets.length; i++) {
      if (s.toggleAt[i] <= s.seconds) {
        double period = ((OnboardChange.TimersRestart) changes.get(i).change()).periodSeconds();
        s.toggleAt[i] = s.seconds + Math.max(PowerPhysics.LEAST_TOGGLE_SECONDS, period);
        bus.restartTimers(s);
      }
    }
  }

  private void begin(BodyState s, OnboardChange change, int place) {
    if (change instanceof OnboardChange.ArrayFactor array) {
      s.arrayFactor *= array.factor();
    } else if (change instanceof OnboardChange.ArrayStringLost lost) {
      loseFaces(s, face -> face.string().equals(lost.string()));
    } else if (change instanceof OnboardChange.FaceLost lost) {
      loseFaces(s, face -> face.name().equals(lost.face()));
    } else if (change instanceof OnboardChange.PanelsStowed) {
      s.panelsStuck = true;
    } else if (change instanceof OnboardChange.ChargePathOpen path) {
      s.chargePathOpen = true;
      s.arraysCutOff |= !path.feedsBus();
    } else if (change instanceof OnboardChange.BatteryOpen) {
      s.batteryGone = true;
    } else if (change instanceof OnboardChange.StringsOpen strings) {
      loseStrings(s, strings.count());
    } else if (change instanceof OnboardChange.CapacityFactor capacity) {
      s.capacityFactor *= capacity.factor();
      s.batteryGone |= s.capacityFactor < PowerPhysics.LEAST_CAPACITY_FACTOR;
    } else if (change instanceof OnboardChange.ExtraLoad extra) {
      s.extraWatts += extra.watts();
      s.extraWattsWhenOff += extra.alsoWhenOff() ? extra.watts() : 0;
    } else if (change instanceof OnboardChange.TemperatureShift shift) {
      s.temperatureShiftKelvin += shift.kelvin();
    } else if (change instanceof OnboardChange.ThresholdShift shift) {
      s.thresholdShiftVolts += shift.volts();
    } else if (change instanceof OnboardChange.HoldOffLost) {
      s.holdOffLost = true;
    } else if (change instanceof OnboardChange.TimersRestart) {
      s.toggleAt[place] = s.seconds;
    } else if (change instanceof OnboardChange.Commanded) {
      return; // what is on board already answers it, see beginDue
    } else {
      stand(s, change, place);
    }
  }

  private void loseFaces(BodyState s, Predicate<Face> which) {
    for (int i = 0; i < faces.size(); i++) {
      s.facesLost |= which.test(faces.get(i)) ? 1L << i : 0;
    }
  }

  private void loseStrings(BodyState s, int count) {
    int most = parallel - s.stringsResting;
    s.stringsLost = Math.min(parallel, s.stringsLost + count);
    if (s.stringsLost >= most) {
      Arrays.fill(s.restingSoc, Double.NaN); // those that rest are among the lost
      s.stringsResting = 0;
      s.batteryGone = true;
    }
  }

  /** A change that stands until it is cleared. What power removes cannot begin while off. */
  private void stand(BodyState s, OnboardChange change, int place) {
    if (s.busOff() && clearings(change).contains(Clearing.POWER_CYCLE)) {
      return;
    }
    s.standing[place] = true;
    review(s);
  }

  /** Whether there is anything that could be cleared. */
  boolean stands(BodyState s) {
    for (boolean each : s.standing) {
      if (each) {
        return true;
      }
    }
    return false;
  }

  /** Ends every standing change that this clears; true when there was one. */
  boolean clear(BodyState s, Clearing by) {
    boolean any = false;
    for (int i = 0; i < s.standing.length; i++) {
      if (s.standing[i] && clearings(changes.get(i).change()).contains(by)) {
        s.standing[i] = false;
        any = true;
      }
    }
    if (any) {
      review(s);
    }
    return any;
  }

  private void review(BodyState s) {
    s.hung = false;
    s.bootLoop = false;
    s.beaconsSilenced = false;
    s.hungWatts = 0;
    boolean watched = false;
    for (int i = 0; i < s.standing.length; i++) {
      if (!s.standing[i]) {
        continue;
      }
      OnboardChange change = changes.get(i).change();
      if (change instanceof OnboardChange.ComputerHung hang) {
        s.hung = true;
        s.hungWatts += hang.extraWatts();
      } else if (change instanceof OnboardChange.BootLoop) {
        s.bootLoop = true;
      } else {
        s.beaconsSilenced = true;
        continue; // the computer itself runs and feeds its watchdog
      }
      watched |= clearings(change).contains(Clearing.WATCHDOG);
    }
    if (!watched) {
      s.watchdogFrom = BodyState.NEVER;
    } else if (s.watchdogFrom == BodyState.NEVER) {
      s.watchdogFrom = s.seconds;
    }
  }

  private static Set<Clearing> clearings(OnboardChange change) {
    if (change instanceof OnboardChange.ComputerHung hang) {
      return hang.clearedBy();
    }
    if (change instanceof OnboardChange.BootLoop loop) {
      return loop.clearedBy();
    }
    return ((OnboardChange.BeaconDisabled) change).clearedBy();
  }
}

package hark.trial;

import hark.power.OnboardChange;
import hark.power.OnboardChange.Clearing;
import hark.power.SimulationRequest.TimedChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What has broken so far, what of it still stands, and what clears it. */
final class Mishaps {
  /** A hang, a boot loop or a silenced beacon that nothing has cleared yet. */
  private record Standing(OnboardChange change, Set<Clearing> clearedBy) {}

  /** A separation switch that toggles. */
  private static final class Toggle {
    private final double period;
    private double next;

    private Toggle(double period, double next) {
      this.period = period;
      this.next = next;
    }
  }

  private final List<TimedChange> changes;
  private final SolarPower solar;
  private final Panels panels;
  private final Strings strings;
  private final Junction junction;
  private final Heat heat;
  private final List<Standing> standing = new ArrayList<>();
  private final List<Toggle> toggles = new ArrayList<>();
  private int done;

  double extraWatts;
  double extraWattsWhenOff;
  double thresholdShiftVolts;
  boolean holdOffLost;
  boolean panelsStuck;

  Mishaps(List<TimedChange> changes, Parts parts) {
    this.changes = changes;
    solar = parts.solar();
    panels = parts.panels();
    strings = parts.strings();
    junction = parts.junction();
    heat = parts.heat();
  }

  /** What changes act on. */
  record Parts(SolarPower solar, Panels panels, Strings strings, Junction junction, Heat heat) {}

  /** Begins what is due; true when the separation switch toggled. */
  boolean begin(double seconds, boolean busOff) {
    while (done < changes.size() && changes.get(done).onsetSeconds() <= seconds) {
      begin(changes.get(done++).change(), seconds, busOff);
    }
    boolean toggled = false;
    for (Toggle toggle : toggles) {
      if (toggle.next <= seconds) {
        toggle.next += toggle.period;
        toggled = true;
      }
    }
    return toggled;
  }

  private void begin(OnboardChange change, double seconds, boolean busOff) {
    if (change instanceof OnboardChange.ArrayFactor array) {
      solar.weaken(array.factor());
    } else if (change instanceof OnboardChange.ArrayStringLost lost) {
      panels.loseString(lost.string());
    } else if (change instanceof OnboardChange.FaceLost lost) {
      panels.loseFace(lost.face());
    } else if (change instanceof OnboardChange.PanelsStowed) {
      panelsStuck = true;
    } else if (change instanceof OnboardChange.ChargePathOpen path) {
      junction.pathOpen = true;
      if (!path.feedsBus()) {
        solar.cutOff();
      }
    } else if (change instanceof OnboardChange.BatteryOpen) {
      strings.loseAll();
    } else if (change instanceof OnboardChange.StringsOpen open) {
      strings.lose(open.count());
    } else if (change instanceof OnboardChange.CapacityFactor capacity) {
      strings.shrink(capacity.factor());
    } else {
      beginOnBoard(change, seconds, busOff);
    }
  }

  private void beginOnBoard(OnboardChange change, double seconds, boolean busOff) {
    if (change instanceof OnboardChange.ExtraLoad extra) {
      extraWatts += extra.watts();
      extraWattsWhenOff += extra.alsoWhenOff() ? extra.watts() : 0;
    } else if (change instanceof OnboardChange.TemperatureShift shift) {
      heat.shiftKelvin += shift.kelvin();
    } else if (change instanceof OnboardChange.ThresholdShift shift) {
      thresholdShiftVolts += shift.volts();
    } else if (change instanceof OnboardChange.HoldOffLost) {
      holdOffLost = true;
    } else if (change instanceof OnboardChange.TimersRestart restart) {
      toggles.add(new Toggle(Math.max(Physics.LEAST_TOGGLE, restart.periodSeconds()), seconds));
    } else {
      Set<Clearing> clearedBy = clearedBy(change);
      if (!(busOff && clearedBy.contains(Clearing.POWER_CYCLE))) {
        standing.add(new Standing(change, clearedBy));
      }
    }
  }

  private static Set<Clearing> clearedBy(OnboardChange change) {
    if (change instanceof OnboardChange.ComputerHung hung) {
      return hung.clearedBy();
    }
    if (change instanceof OnboardChange.BootLoop loop) {
      return loop.clearedBy();
    }
    if (change instanceof OnboardChange.BeaconDisabled disabled) {
      return disabled.clearedBy();
    }
    throw new IllegalArgumentException("a change that a plain body does not know: " + change);
  }

  void clear(Clearing by) {
    standing.removeIf(s -> s.clearedBy().contains(by));
  }

  private boolean stands(Class<? extends OnboardChange> kind) {
    for (int i = 0; i < standing.size(); i++) {
      if (kind.isInstance(standing.get(i).change())) {
        return true;
      }
    }
    return false;
  }

  boolean hung() {
    return stands(OnboardChange.ComputerHung.class);
  }

  boolean loops() {
    return stands(OnboardChange.BootLoop.class);
  }

  boolean silenced() {
    return stands(OnboardChange.BeaconDisabled.class);
  }

  /** Whether a hang or a loop stands that the watchdog would clear. */
  boolean starvesWatchdog() {
    for (Standing s : standing) {
      boolean computer = !(s.change() instanceof OnboardChange.BeaconDisabled);
      if (computer && s.clearedBy().contains(Clearing.WATCHDOG)) {
        return true;
      }
    }
    return false;
  }

  /** Drawn by latch-ups, W. */
  double hungWatts() {
    double watts = 0;
    for (Standing s : standing) {
      watts += s.change() instanceof OnboardChange.ComputerHung hung ? hung.extraWatts() : 0;
    }
    return watts;
  }
}

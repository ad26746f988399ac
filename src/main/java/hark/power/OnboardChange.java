package hark.power;

import java.util.Set;

/**
 * What an event does to the electrical system, from its onset. A closed set: every change the
 * simulation knows. Radio changes that leave the electrical system alone are not here.
 */
public sealed interface OnboardChange {
  /** A command arrives; what it does depends on the state it meets. */
  record Commanded(OnboardCommand command) implements OnboardChange {}

  /** Array power times {@code factor} (0 none left … 1 unharmed). */
  record ArrayFactor(double factor) implements OnboardChange {
    /** Refuses a factor outside 0…1. */
    public ArrayFactor {
      Check.share("array factor", factor);
    }
  }

  /** All cells of a string of faces give nothing. */
  record ArrayStringLost(String string) implements OnboardChange {}

  /** The cells of one face give nothing. */
  record FaceLost(String face) implements OnboardChange {}

  /**
   * Panels that unfold at deployment do not: they stay as stowed until a release command frees
   * them. Without panels in the model nothing changes.
   */
  record PanelsStowed() implements OnboardChange {}

  /**
   * Array power no longer reaches the battery; it still feeds the bus while the Sun shines when
   * {@code feedsBus}.
   */
  record ChargePathOpen(boolean feedsBus) implements OnboardChange {}

  /** The whole battery is disconnected; the arrays may still feed the bus. */
  record BatteryOpen() implements OnboardChange {}

  /** So many of the parallel strings are lost. */
  record StringsOpen(int count) implements OnboardChange {
    /** Refuses a negative count; more than there are is all of them. */
    public StringsOpen {
      Check.notNegative("count of lost strings", count);
    }
  }

  /** Cell capacity times {@code factor}, 0…1. */
  record CapacityFactor(double factor) implements OnboardChange {
    /** Refuses a factor outside 0…1. */
    public CapacityFactor {
      Check.share("capacity factor", factor);
    }
  }

  /** Extra constant load on the bus, W, in every state but off unless {@code alsoWhenOff}. */
  record ExtraLoad(double watts, boolean alsoWhenOff) implements OnboardChange {
    /** Refuses negative power. */
    public ExtraLoad {
      Check.notNegative("extra load", watts);
    }
  }

  /**
   * Temperatures of battery and structure are lower (negative) or higher than designed by so many
   * kelvin.
   */
  record TemperatureShift(double kelvin) implements OnboardChange {
    /** Refuses what is not a number. */
    public TemperatureShift {
      Check.finite("temperature shift", kelvin);
    }
  }

  /** All bus thresholds are higher by so many volts (negative: lower). */
  record ThresholdShift(double volts) implements OnboardChange {
    /** Refuses what is not a number. */
    public ThresholdShift {
      Check.finite("threshold shift", volts);
    }
  }

  /** The bus restarts as soon as the voltage recovers, without waiting. */
  record HoldOffLost() implements OnboardChange {}

  /**
   * Beacons are not started by the computer until something in {@code clearedBy} happens; loads
   * stay.
   */
  record BeaconDisabled(Set<Clearing> clearedBy) implements OnboardChange {
    /** Keeps a copy of the set. */
    public BeaconDisabled {
      clearedBy = Set.copyOf(clearedBy);
    }
  }

  /**
   * The computer hangs: the bus keeps its state and its load, the beacon is not sent, until
   * something in {@code clearedBy} happens.
   *
   * @param extraWatts drawn on top while hung, W (a latch-up draws much)
   */
  record ComputerHung(double extraWatts, Set<Clearing> clearedBy) implements OnboardChange {
    /** Refuses negative power. */
    public ComputerHung {
      Check.notNegative("load of a hung computer", extraWatts);
      clearedBy = Set.copyOf(clearedBy);
    }
  }

  /** The computer restarts over and over: it stays in boot, at boot load, until cleared. */
  record BootLoop(Set<Clearing> clearedBy) implements OnboardChange {
    /** Keeps a copy of the set. */
    public BootLoop {
      clearedBy = Set.copyOf(clearedBy);
    }
  }

  /**
   * The separation switch toggles: quiet time and deployment timer begin again at each onset, every
   * {@code periodSeconds}.
   */
  record TimersRestart(double periodSeconds) implements OnboardChange {
    /**
     * Refuses a period that is not positive; the simulation takes one below a minute as a minute.
     */
    public TimersRestart {
      Check.positive("toggle period", periodSeconds);
    }
  }

  /** What can clear a changed state. */
  enum Clearing {
    /** The bus loses power (off by undervoltage, or a commanded power cycle). */
    POWER_CYCLE,
    /**
     * Battery and arrays are gone together for at least a minute: the bus is off and in the dark.
     */
    POWER_REMOVED,
    /** The hardware watchdog. */
    WATCHDOG,
    /** A received reset command. */
    RESET_COMMAND,
    /** A received beacon-on command. */
    BEACON_COMMAND
  }
}

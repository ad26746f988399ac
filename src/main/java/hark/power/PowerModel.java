package hark.power;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Every number of one body's electrical system, all definite: uncertain numbers have been drawn
 * before it is built, and drawn within their physical range: the records refuse a share above one,
 * a negative load or thresholds in the wrong order.
 *
 * @param quietSeconds transmitter inhibited after separation, s
 */
public record PowerModel(
    Attitude attitude,
    Arrays arrays,
    Charging charging,
    Battery battery,
    Bus bus,
    Thermal thermal,
    List<Beacon> beacons,
    Receiver receiver,
    double quietSeconds) {
  /** Refuses a quiet time that is negative or not a number. */
  public PowerModel {
    Check.notNegative("quiet time", quietSeconds);
    beacons = List.copyOf(beacons);
  }

  /**
   * How the body turns. Spinning about a fixed axis and nadir pointing are read but not computed
   * yet.
   */
  public enum AttitudeMode {
    TUMBLING,
    SUN_POINTING
  }

  /**
   * Attitude of the body.
   *
   * @param rateDegPerSecond tumble rate; it matters to the radio link, and to power only through
   *     the mean
   */
  public record Attitude(AttitudeMode mode, double rateDegPerSecond) {
    /** Refuses a negative rate. */
    public Attitude {
      Check.notNegative("tumble rate", rateDegPerSecond);
    }
  }

  /**
   * Solar cells.
   *
   * @param cellEfficiency at operating temperature, 0…1
   * @param losses wiring, diode, mismatch and dirt, as a lost fraction, 0…1
   */
  public record Arrays(double cellEfficiency, double losses, List<Face> faces) {
    /** Refuses shares outside 0…1. */
    public Arrays {
      Check.share("cell efficiency", cellEfficiency);
      Check.share("array losses", losses);
      faces = List.copyOf(faces);
    }
  }

  /**
   * One face with cells.
   *
   * @param normal outward direction in body axes, any length but zero
   * @param cellAreaSquareMeters area of cells, m²
   * @param deployed a panel that stands off the body; seen from both sides only by its own normal
   */
  public record Face(
      String name, double[] normal, double cellAreaSquareMeters, boolean deployed, String string) {
    /** Refuses a negative area and a normal without direction. */
    public Face {
      Check.notNegative("cell area of face " + name, cellAreaSquareMeters);
      normal = normal.clone();
      if (normal.length != 3) {
        throw new IllegalArgumentException(
            "normal of face " + name + " has " + normal.length + " parts instead of 3");
      }
      Check.positive(
          "length of the normal of face " + name,
          Math.hypot(Math.hypot(normal[0], normal[1]), normal[2]));
    }
  }

  /** How array power reaches the battery. */
  public enum Scheme {
    CC_CV,
    MPPT,
    DIRECT
  }

  /**
   * The charger.
   *
   * @param efficiency from array to bus, 0…1
   * @param maxCurrentAmps limit of the battery's charge current, A
   * @param chargeVolts constant-voltage limit at the battery terminals, V
   */
  public record Charging(
      Scheme scheme, double efficiency, double maxCurrentAmps, double chargeVolts) {
    /** Refuses efficiency outside 0…1 or zero, a negative current and no voltage. */
    public Charging {
      Check.share("charging efficiency", efficiency);
      Check.positive("charging efficiency", efficiency);
      Check.notNegative("largest charge current", maxCurrentAmps);
      Check.positive("charge voltage", chargeVolts);
    }
  }

  /**
   * The battery pack.
   *
   * @param cellResistanceOhm at 25 °C; rises in the cold
   * @param cellCapacityAh of one cell
   * @param openCircuit rows of (state of charge 0…1, volts a cell), rising in both
   * @param socAtSeparation state of charge when released, 0…1
   * @param chargeMinC charging is inhibited below this battery temperature, °C
   */
  public record Battery(
      int series,
      int parallel,
      double cellCapacityAh,
      double cellResistanceOhm,
      List<double[]> openCircuit,
      double socAtSeparation,
      Protection protection,
      double chargeMinC,
      double chargeMaxC,
      Optional<Heater> heater) {
    /** Refuses an empty pack, bad shares, a table that does not rise and an inverted window. */
    public Battery {
      if (series < 1 || parallel < 1) {
        throw new IllegalArgumentException(
            "a pack of " + series + " × " + parallel + " cells has no cell");
      }
      Check.positive("cell capacity", cellCapacityAh);
      Check.notNegative("cell resistance", cellResistanceOhm);
      Check.share("state of charge at separation", socAtSeparation);
      Check.finite("lowest charge temperature", chargeMinC);
      Check.finite("highest charge temperature", chargeMaxC);
      Check.ordered("lowest charge temperature", chargeMinC, "the highest,", chargeMaxC);
      openCircuit = List.copyOf(openCircuit);
      OpenCircuit.requireTable(openCircuit);
    }
  }

  /** What closes an opened protection switch. */
  public enum ClosesOn {
    CHARGE,
    LOAD_REMOVAL,
    NEVER
  }

  /** Cell protection: opens below one voltage, closes again above another under a condition. */
  public record Protection(double openVoltsPerCell, double closeVoltsPerCell, ClosesOn closesOn) {
    /** Refuses a protection that would close below the voltage at which it opens. */
    public Protection {
      Check.notNegative("opening voltage of the protection", openVoltsPerCell);
      Check.finite("closing voltage of the protection", closeVoltsPerCell);
      Check.ordered(
          "opening voltage of the protection", openVoltsPerCell, "the closing", closeVoltsPerCell);
    }
  }

  /** Thermostat heater of the battery. */
  public record Heater(double watts, double onBelowC, double offAboveC) {
    /** Refuses negative power and a thermostat that is off before it is on. */
    public Heater {
      Check.notNegative("heater power", watts);
      Check.finite("heater's off temperature", offAboveC);
      Check.ordered("heater's on temperature", onBelowC, "its off temperature", offAboveC);
    }
  }

  /** States of the bus. */
  public enum BusState {
    OFF,
    BOOT,
    SAFE,
    NOMINAL
  }

  /**
   * The bus: thresholds at the loaded terminals, times and loads.
   *
   * @param bootSeconds time spent in boot
   * @param watchdogSeconds clears any hang within this time; empty for none
   * @param deploymentSeconds time after separation at which deployables are released
   */
  public record Bus(
      Thresholds thresholds,
      double holdOffSeconds,
      DeadStart deadStart,
      Loads loads,
      double bootSeconds,
      OptionalDouble watchdogSeconds,
      Optional<CommandLoss> commandLoss,
      double deploymentSeconds,
      boolean deploymentRestartsOnReset) {
    /** Refuses negative times. */
    public Bus {
      Check.notNegative("hold-off", holdOffSeconds);
      Check.notNegative("boot time", bootSeconds);
      Check.notNegative("deployment time", deploymentSeconds);
      if (watchdogSeconds.isPresent()) {
        Check.positive("watchdog time", watchdogSeconds.getAsDouble());
      }
    }
  }

  /** Volts at the loaded terminals; cut-off below recovery, safe entry below nominal return. */
  public record Thresholds(
      double cutoffVolts, double recoveryVolts, double safeBelowVolts, double nominalAboveVolts) {
    /** Refuses thresholds in the wrong order. */
    public Thresholds {
      Check.positive("cut-off voltage", cutoffVolts);
      Check.finite("recovery voltage", recoveryVolts);
      Check.finite("nominal voltage", nominalAboveVolts);
      Check.ordered("cut-off", cutoffVolts, "recovery", recoveryVolts);
      Check.ordered("cut-off", cutoffVolts, "the safe threshold", safeBelowVolts);
      Check.ordered("the safe threshold", safeBelowVolts, "the nominal", nominalAboveVolts);
    }
  }

  /**
   * Whether an empty bus can start from the arrays alone, and the array power at the bus that this
   * takes, W.
   */
  public record DeadStart(boolean fromArraysAlone, double needsWatts) {
    /** Refuses negative power. */
    public DeadStart {
      Check.notNegative("power for a dead start", needsWatts);
    }
  }

  /** Constant-power loads by state, W at the bus, transmitter bursts not included. */
  public record Loads(double offWatts, double bootWatts, double safeWatts, double nominalWatts) {
    /** Refuses negative loads. */
    public Loads {
      Check.notNegative("load when off", offWatts);
      Check.notNegative("load in boot", bootWatts);
      Check.notNegative("load in safe", safeWatts);
      Check.notNegative("load in nominal", nominalWatts);
    }

    /** The load of a state, W. */
    public double of(BusState state) {
      return switch (state) {
        case OFF -> offWatts;
        case BOOT -> bootWatts;
        case SAFE -> safeWatts;
        case NOMINAL -> nominalWatts;
      };
    }
  }

  /** What the command-loss timer does when it runs out. */
  public enum CommandLossAction {
    RESET,
    SAFE,
    BEACON_ON
  }

  /** A timer that acts when no command has come for so long. */
  public record CommandLoss(double seconds, CommandLossAction does, boolean survivesReset) {
    /** Refuses a timer without time. */
    public CommandLoss {
      Check.positive("command-loss time", seconds);
    }
  }

  /**
   * Thermal nodes: structure against space and Sun, battery against structure.
   *
   * @param areaSquareMeters whole outer surface, m²; the Sun sees a quarter of it in the mean
   */
  public record Thermal(
      double structureJoulePerKelvin,
      double areaSquareMeters,
      double absorptivity,
      double emissivity,
      double batteryJoulePerKelvin,
      double couplingWattsPerKelvin) {
    /** Refuses bodies without heat capacity or area, and shares outside 0…1. */
    public Thermal {
      Check.positive("heat capacity of the structure", structureJoulePerKelvin);
      Check.positive("surface area", areaSquareMeters);
      Check.share("absorptivity", absorptivity);
      Check.share("emissivity", emissivity);
      Check.positive("heat capacity of the battery", batteryJoulePerKelvin);
      Check.notNegative("coupling of the battery", couplingWattsPerKelvin);
    }
  }

  /**
   * A beacon: bursts of {@code durationSeconds} begin every {@code intervalSeconds} while the bus
   * is in one of the states.
   *
   * @param transmitWatts taken from the bus while a burst is sent, W
   */
  public record Beacon(
      String name,
      Set<BusState> states,
      double intervalSeconds,
      double durationSeconds,
      double transmitWatts) {
    /** Refuses bursts without length and bursts longer than their interval. */
    public Beacon {
      Check.positive("interval of beacon " + name, intervalSeconds);
      Check.positive("burst of beacon " + name, durationSeconds);
      Check.notNegative("transmit power of beacon " + name, transmitWatts);
      Check.ordered("burst of beacon " + name, durationSeconds, "its interval", intervalSeconds);
      states = Set.copyOf(states);
    }
  }

  /** When the receiver is powered: bus states and the share of time within them, 0…1. */
  public record Receiver(Set<BusState> states, double duty) {
    /** Refuses a duty outside 0…1. */
    public Receiver {
      Check.share("receiver duty", duty);
      states = Set.copyOf(states);
    }
  }
}

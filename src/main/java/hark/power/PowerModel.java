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

  /** How the body turns. */
  public enum AttitudeMode {
    /** Every direction in turn, none longer than another. */
    TUMBLING,
    /** About an axis that stays where it is among the stars. */
    SPINNING,
    /** The best attitude towards the Sun, always. */
    SUN_POINTING,
    /** +Z of the body to the Earth, +X along the flight. */
    NADIR
  }

  /**
   * Attitude of the body.
   *
   * @param rateDegPerSecond rate of tumble or spin, degrees a second
   */
  public record Attitude(AttitudeMode mode, double rateDegPerSecond, Orientation orientation) {
    /** Refuses a negative rate. */
    public Attitude {
      Check.notNegative("tumble rate", rateDegPerSecond);
    }

    /** An attitude whose axes and phases are the plainest there are. */
    public Attitude(AttitudeMode mode, double rateDegPerSecond) {
      this(mode, rateDegPerSecond, Orientation.PLAIN);
    }
  }

  /**
   * Solar cells.
   *
   * @param cellEfficiency at 28 °C when new, 0…1
   * @param losses wiring, diode, mismatch and dirt, as a lost fraction, 0…1
   */
  public record Arrays(double cellEfficiency, double losses, List<Face> faces, CellNature nature) {
    /** Refuses shares outside 0…1 and a shade of a face that is not there. */
    public Arrays {
      Check.share("cell efficiency", cellEfficiency);
      Check.share("array losses", losses);
      faces = List.copyOf(faces);
      Face.requireShadersAmong(faces);
    }

    /** Cells that heat, age and the Earth's light leave alone. */
    public Arrays(double cellEfficiency, double losses, List<Face> faces) {
      this(cellEfficiency, losses, faces, CellNature.IDEAL);
    }
  }

  /**
   * What changes the power of cells.
   *
   * @param perKelvin relative change of power with temperature from 28 °C on, 1/K; negative
   * @param lossPerYear lost share of power a year, 0…1, from radiation and ultraviolet light
   * @param albedo whether sunlight thrown back by the Earth is counted
   */
  public record CellNature(double perKelvin, double lossPerYear, boolean albedo) {
    /** No change at all. */
    public static final CellNature IDEAL = new CellNature(0, 0, false);

    /** Refuses a loss outside 0…1 and a coefficient that is not a number. */
    public CellNature {
      Check.finite("temperature coefficient of the cells", perKelvin);
      Check.share("yearly loss of the cells", lossPerYear);
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
   * @param endAmps a taper that falls below this ends the charge, A; 0 for a charger that holds its
   *     voltage for ever
   * @param resumeVolts an ended charge begins again when the battery is below this, V
   */
  public record Charging(
      Scheme scheme,
      double efficiency,
      double maxCurrentAmps,
      double chargeVolts,
      double endAmps,
      double resumeVolts) {
    /** A charger that holds its voltage for ever. */
    public Charging(Scheme scheme, double efficiency, double maxCurrentAmps, double chargeVolts) {
      this(scheme, efficiency, maxCurrentAmps, chargeVolts, 0, chargeVolts);
    }

    /** Refuses efficiency outside 0…1 or zero, a negative current and no voltage. */
    public Charging {
      Check.notNegative("end current of the charge", endAmps);
      Check.ordered("resume voltage", resumeVolts, "the charge voltage", chargeVolts);
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
      Optional<Heater> heater,
      CellBehaviour behaviour) {
    /** Cells that cold, time and misuse leave alone. */
    public Battery(
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
      this(
          series,
          parallel,
          cellCapacityAh,
          cellResistanceOhm,
          openCircuit,
          socAtSeparation,
          protection,
          chargeMinC,
          chargeMaxC,
          heater,
          CellBehaviour.IDEAL);
    }

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

  /**
   * Protection of each string of cells: opens below one voltage, closes again above another under a
   * condition.
   *
   * @param toleranceVolts the strings' opening voltages a cell are spread evenly over this width, V
   */
  public record Protection(
      double openVoltsPerCell, double closeVoltsPerCell, ClosesOn closesOn, double toleranceVolts) {
    /** Strings that are all alike. */
    public Protection(double openVoltsPerCell, double closeVoltsPerCell, ClosesOn closesOn) {
      this(openVoltsPerCell, closeVoltsPerCell, closesOn, 0);
    }

    /** Refuses a protection that would close below the voltage at which it opens. */
    public Protection {
      Check.notNegative("tolerance of the protection", toleranceVolts);
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
   * @param inrush drawn when power comes on
   * @param ordersSurviveReset whether a commanded low-power state and a commanded beacon outlive a
   *     reset
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
      boolean deploymentRestartsOnReset,
      Optional<Inrush> inrush,
      boolean ordersSurviveReset) {
    /** A bus that draws no inrush and whose low-power order outlives a reset. */
    public Bus(
        Thresholds thresholds,
        double holdOffSeconds,
        DeadStart deadStart,
        Loads loads,
        double bootSeconds,
        OptionalDouble watchdogSeconds,
        Optional<CommandLoss> commandLoss,
        double deploymentSeconds,
        boolean deploymentRestartsOnReset) {
      this(
          thresholds,
          holdOffSeconds,
          deadStart,
          loads,
          bootSeconds,
          watchdogSeconds,
          commandLoss,
          deploymentSeconds,
          deploymentRestartsOnReset,
          Optional.empty(),
          false);
    }

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

  /** What the bus draws on top of its boot load when power comes on, W, and for how long, s. */
  public record Inrush(double watts, double seconds) {
    /** Refuses negative power and no time. */
    public Inrush {
      Check.notNegative("inrush", watts);
      Check.positive("time of the inrush", seconds);
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
   * @param intervalSeconds between the beginnings of two bursts where {@code pace} says nothing
   *     else
   * @param transmitWatts taken from the bus while a burst is sent, W
   */
  public record Beacon(
      String name,
      Set<BusState> states,
      double intervalSeconds,
      double durationSeconds,
      double transmitWatts,
      BeaconPace pace) {
    /** One interval for all states, voltages and times. */
    public Beacon(
        String name,
        Set<BusState> states,
        double intervalSeconds,
        double durationSeconds,
        double transmitWatts) {
      this(name, states, intervalSeconds, durationSeconds, transmitWatts, BeaconPace.STEADY);
    }

    /** Refuses bursts without length and bursts longer than their interval. */
    public Beacon {
      Check.positive("interval of beacon " + name, intervalSeconds);
      Check.positive("burst of beacon " + name, durationSeconds);
      Check.notNegative("transmit power of beacon " + name, transmitWatts);
      Check.ordered("burst of beacon " + name, durationSeconds, "its interval", intervalSeconds);
      pace.requireLongerThan(durationSeconds, name);
      states = Set.copyOf(states);
    }
  }

  /**
   * When the receiver is powered.
   *
   * @param duty share of time within the states, 0…1
   * @param watts drawn on top of the state's load while it is powered, W
   */
  public record Receiver(Set<BusState> states, double duty, double watts) {
    /** A receiver whose draw is part of the states' loads. */
    public Receiver(Set<BusState> states, double duty) {
      this(states, duty, 0);
    }

    /** Refuses a duty outside 0…1 and a negative draw. */
    public Receiver {
      Check.notNegative("receiver power", watts);
      Check.share("receiver duty", duty);
      states = Set.copyOf(states);
    }
  }
}

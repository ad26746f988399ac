package hark.power;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Every number of one body's electrical system, all definite: uncertain numbers have been drawn
 * before it is built.
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
  public record Attitude(AttitudeMode mode, double rateDegPerSecond) {}

  /**
   * Solar cells.
   *
   * @param cellEfficiency at operating temperature, 0…1
   * @param losses wiring, diode, mismatch and dirt, as a lost fraction, 0…1
   */
  public record Arrays(double cellEfficiency, double losses, List<Face> faces) {}

  /**
   * One face with cells.
   *
   * @param normal outward direction in body axes, any length but zero
   * @param cellAreaSquareMeters area of cells, m²
   * @param deployed a panel that stands off the body; seen from both sides only by its own normal
   */
  public record Face(
      String name, double[] normal, double cellAreaSquareMeters, boolean deployed, String string) {}

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
      Scheme scheme, double efficiency, double maxCurrentAmps, double chargeVolts) {}

  /**
   * The battery pack.
   *
   * @param cellResistanceOhm at 25 °C; rises in the cold
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
      Optional<Heater> heater) {}

  /** What closes an opened protection switch. */
  public enum ClosesOn {
    CHARGE,
    LOAD_REMOVAL,
    NEVER
  }

  /** Cell protection: opens below one voltage, closes again above another under a condition. */
  public record Protection(double openVoltsPerCell, double closeVoltsPerCell, ClosesOn closesOn) {}

  /** Thermostat heater of the battery. */
  public record Heater(double watts, double onBelowC, double offAboveC) {}

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
      boolean deploymentRestartsOnReset) {}

  /** Volts at the loaded terminals; cut-off below recovery, safe entry below nominal return. */
  public record Thresholds(
      double cutoffVolts, double recoveryVolts, double safeBelowVolts, double nominalAboveVolts) {}

  /**
   * Whether an empty bus can start from the arrays alone, and the array power at the bus that this
   * takes, W.
   */
  public record DeadStart(boolean fromArraysAlone, double needsWatts) {}

  /** Constant-power loads by state, W at the bus, transmitter bursts not included. */
  public record Loads(double offWatts, double bootWatts, double safeWatts, double nominalWatts) {
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
  public record CommandLoss(double seconds, CommandLossAction does, boolean survivesReset) {}

  /** Thermal nodes: structure against space and Sun, battery against structure. */
  public record Thermal(
      double structureJoulePerKelvin,
      double areaSquareMeters,
      double absorptivity,
      double emissivity,
      double batteryJoulePerKelvin,
      double couplingWattsPerKelvin) {}

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
      double transmitWatts) {}

  /** When the receiver is powered: bus states and the share of time within them, 0…1. */
  public record Receiver(Set<BusState> states, double duty) {}
}

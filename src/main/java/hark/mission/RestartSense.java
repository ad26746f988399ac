package hark.mission;

import hark.power.ArrayPower;
import hark.power.PowerModel;
import hark.power.PowerModel.Attitude;
import hark.power.PowerModel.AttitudeMode;
import hark.power.PowerModel.Battery;
import hark.power.PowerModel.ClosesOn;
import hark.power.PowerModel.DeadStart;

/** Warns of a spacecraft that could never start again once its bus or its battery is down. */
final class RestartSense {
  /** A faster tumble is averaged by the arrays; see the description of the electrical model. */
  private static final double SLOW_TUMBLE_DEG_S = 0.6;

  private final YamlTree craft;
  private final PowerModel model;
  private final Reading reading;

  private RestartSense(YamlTree craft, PowerModel model, Reading reading) {
    this.craft = craft;
    this.model = model;
    this.reading = reading;
  }

  static void check(YamlTree craft, PowerModel model, Reading reading) {
    RestartSense sense = new RestartSense(craft, model, reading);
    sense.checkDeadStart();
    sense.checkProtection();
    sense.checkRecovery();
  }

  /** The most that the arrays give at the bus at any time, W. */
  static double bestWatts(PowerModel model) {
    Attitude attitude = model.attitude();
    boolean averaged =
        attitude.mode() == AttitudeMode.TUMBLING && attitude.rateDegPerSecond() > SLOW_TUMBLE_DEG_S;
    Attitude best = averaged ? attitude : new Attitude(AttitudeMode.SUN_POINTING, 0);
    PowerModel.Arrays arrays = model.arrays();
    return EnergyBalance.SOLAR_IRRADIANCE
        * ArrayPower.areaTowardsSun(best, arrays.faces())
        * arrays.cellEfficiency()
        * (1 - arrays.losses())
        * model.charging().efficiency();
  }

  private String most() {
    return "the arrays give at most " + EnergyBalance.print(bestWatts(model)) + " W at the bus";
  }

  private void checkDeadStart() {
    DeadStart dead = model.bus().deadStart();
    if (dead.fromArraysAlone() && dead.needsWatts() > bestWatts(model)) {
      reading.warn(
          MissionSense.deep(craft, "bus", "dead_start", "needs_W"),
          "a start without battery needs " + Span.print(dead.needsWatts()) + " W, and " + most(),
          "if that is true a bus that has lost its battery stays dead; check needs_W and cell areas");
    }
  }

  private void checkProtection() {
    Battery battery = model.battery();
    boolean alone = model.bus().deadStart().fromArraysAlone();
    ClosesOn closesOn = battery.protection().closesOn();
    YamlTree protection = MissionSense.deep(craft, "battery", "protection");
    double closes = battery.protection().closeVoltsPerCell() * battery.series();
    double off = model.bus().loads().offWatts();
    if (closesOn == ClosesOn.NEVER) {
      if (!alone) {
        warnDead(
            protection.find("closes_on").orElse(protection),
            "nothing closes the protection again, and the bus does not start from the arrays alone");
      }
    } else if (closes > reached()) {
      warnDead(
          protection.find("close_V_per_cell").orElse(protection),
          "the protection closes at "
              + Span.print(closes)
              + " V, and charging reaches "
              + Span.print(reached())
              + " V");
    } else if (bestWatts(model) <= off) {
      warnDead(
          protection.find("closes_on").orElse(protection),
          "no charge reaches an opened battery: " + most() + ", and off takes " + Span.print(off));
    }
  }

  private void warnDead(YamlTree at, String what) {
    boolean alone = model.bus().deadStart().fromArraysAlone();
    reading.warn(
        at,
        what,
        alone
            ? "if that is true the bus lives in sunlight only once its battery has opened"
            : "if that is true a battery run flat once is the end; check closes_on, close_V_per_cell"
                + " and dead_start");
  }

  private void checkRecovery() {
    double recovery = model.bus().thresholds().recoveryVolts();
    if (recovery > reached()) {
      reading.warn(
          MissionSense.deep(craft, "bus", "thresholds_V", "recovery"),
          "the bus starts at "
              + Span.print(recovery)
              + " V, and charging reaches "
              + Span.print(reached())
              + " V",
          "if that is true a bus that went down stays down; check recovery and charge_V");
    }
  }

  /** The voltage to which the charger lifts the battery, V. */
  private double reached() {
    Battery battery = model.battery();
    double full = battery.series() * battery.openCircuit().get(battery.openCircuit().size() - 1)[1];
    return Math.min(full, model.charging().chargeVolts());
  }
}

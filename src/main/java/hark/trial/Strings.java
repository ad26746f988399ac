package hark.trial;

import hark.power.CellBehaviour;
import hark.power.PowerModel;
import hark.power.PowerModel.ClosesOn;
import java.util.Arrays;

/**
 * The parallel strings of the battery. Those that carry the bus share one charge; each that its
 * protection has taken off rests with its own; a lost one is out for good.
 */
final class Strings {
  private enum Place {
    CARRIES,
    RESTS,
    LOST
  }

  private final PowerModel.Battery battery;
  private final CellBehaviour behaviour;
  private final Curve curve;
  private final Heat heat;
  private final Ledger ledger;
  private final Place[] places;
  private final double[] restingSoc;
  private double soc;
  private double capacityFactor = 1;
  private double years;
  private int carrying;

  Strings(PowerModel.Battery battery, Heat heat, Ledger ledger) {
    this.battery = battery;
    this.heat = heat;
    this.ledger = ledger;
    behaviour = battery.behaviour();
    curve = new Curve(battery.openCircuit());
    places = new Place[battery.parallel()];
    Arrays.fill(places, Place.CARRIES);
    restingSoc = new double[places.length];
    carrying = places.length;
    soc = battery.socAtSeparation();
  }

  /** Whether any string is on the bus. */
  boolean carry() {
    return carrying > 0;
  }

  /** Voltage without current of those that carry, V. */
  double openVolts() {
    return battery.series() * curve.volts(soc);
  }

  /** The same while they are discharged: cold keeps a part of the charge out of reach. */
  double reachedVolts() {
    double cold = Physics.LOCK_CELSIUS - heat.cellCelsius();
    double locked =
        Math.min(Physics.MOST_LOCKED, behaviour.coldLockPerKelvin() * Math.max(0, cold));
    return locked == 0 ? openVolts() : battery.series() * curve.volts(soc - locked * (1 - soc));
  }

  /** Voltage of the full battery, V. */
  double fullVolts() {
    return battery.series() * curve.full();
  }

  /** Resistance of those that carry, ohm. */
  double ohm() {
    double celsius = heat.cellCelsius();
    double cold = 1;
    if (celsius < Physics.RESISTANCE_CELSIUS) {
      double here = 1 / (celsius + Physics.ZERO_CELSIUS_KELVIN);
      double there = 1 / (Physics.RESISTANCE_CELSIUS + Physics.ZERO_CELSIUS_KELVIN);
      cold = Math.exp(Physics.RESISTANCE_ACTIVATION / Physics.GAS_CONSTANT * (here - there));
    }
    double aged = 1 + behaviour.resistanceGrowthPerYear() * years;
    return battery.cellResistanceOhm() * battery.series() * cold * aged / carrying;
  }

  /** Capacity of one string now, C. */
  private double coulomb() {
    double aged = Math.max(0, 1 - behaviour.fadePerYear() * years);
    return battery.cellCapacityAh() * 3600 * capacityFactor * aged;
  }

  /** Energy in all strings that are not lost, J. */
  double stored() {
    double sum = carrying * curve.joules(soc);
    for (int i = 0; i < places.length; i++) {
      sum += places[i] == Place.RESTS ? curve.joules(restingSoc[i]) : 0;
    }
    return sum * battery.series() * coulomb();
  }

  /** State of charge that is told. */
  double toldSoc() {
    return Math.max(0, Math.min(1, innerSoc()));
  }

  private double innerSoc() {
    if (carrying > 0) {
      return soc;
    }
    double sum = 0;
    int resting = 0;
    for (int i = 0; i < places.length; i++) {
      if (places[i] == Place.RESTS) {
        sum += restingSoc[i];
        resting++;
      }
    }
    return resting == 0 ? 0 : sum / resting;
  }

  /** Charge moves for a step, the cells lose some by themselves, and all get older. */
  void step(double amps, double seconds, double endSeconds) {
    double coulomb = coulomb();
    if (carrying > 0) {
      double kept = amps > 0 ? behaviour.coulombicEfficiency() : 1;
      ledger.coulombicLoss += openVolts() * amps * seconds * (1 - kept);
      double leak = leak(soc, seconds, coulomb * carrying);
      soc += amps * kept * seconds / (coulomb * carrying) - leak;
    }
    for (int i = 0; i < places.length; i++) {
      if (places[i] == Place.RESTS) {
        restingSoc[i] -= leak(restingSoc[i], seconds, coulomb);
      }
    }
    age(seconds, endSeconds);
  }

  private double leak(double from, double seconds, double coulomb) {
    double volts = battery.series() * curve.volts(from);
    if (behaviour.selfDischargePerMonth() == 0 || volts <= 0) {
      return 0;
    }
    double warmth = Math.pow(2, (heat.cellCelsius() - Physics.SELF_DISCHARGE_CELSIUS) / 10);
    double leak = behaviour.selfDischargePerMonth() / Physics.MONTH * warmth * seconds;
    ledger.selfDischarge += leak * coulomb * volts;
    return leak;
  }

  private void age(double seconds, double endSeconds) {
    double was = coulomb();
    years = endSeconds / Physics.YEAR;
    if (curve.volts(innerSoc()) < behaviour.damageVoltsPerCell()) {
      capacityFactor *= 1 - behaviour.damagePerDay() * seconds / Physics.DAY;
    }
    double is = coulomb();
    if (is != was) {
      ledger.removed += stored() * (was / is - 1);
    }
  }

  /** Capacity falls at once. */
  void shrink(double factor) {
    double before = stored();
    capacityFactor *= factor;
    if (capacityFactor < Physics.LEAST_CAPACITY) {
      loseAll();
    }
    ledger.removed += before - stored();
  }

  /** So many strings are lost, the last ones first. */
  void lose(int count) {
    double before = stored();
    int left = count;
    for (int i = places.length - 1; i >= 0 && left > 0; i--) {
      if (places[i] != Place.LOST) {
        take(i, Place.LOST);
        left--;
      }
    }
    ledger.removed += before - stored();
  }

  void loseAll() {
    lose(places.length);
  }

  private void take(int string, Place to) {
    carrying -= places[string] == Place.CARRIES ? 1 : 0;
    places[string] = to;
  }

  /**
   * Opens the string with the highest opening voltage that still carries when the terminals are
   * below it; true when it did.
   */
  boolean open(double terminalVolts) {
    for (int i = 0; i < places.length; i++) {
      if (places[i] == Place.CARRIES) {
        if (terminalVolts / battery.series() >= opensBelow(i)) {
          return false;
        }
        double before = stored();
        boolean forGood = battery.protection().closesOn() == ClosesOn.NEVER;
        restingSoc[i] = soc;
        take(i, forGood ? Place.LOST : Place.RESTS);
        ledger.removed += before - stored();
        return true;
      }
    }
    return false;
  }

  private double opensBelow(int string) {
    PowerModel.Protection protection = battery.protection();
    int last = places.length - 1;
    double place = last == 0 ? 0 : 0.5 - (double) string / last;
    return protection.openVoltsPerCell() + place * protection.toleranceVolts();
  }

  /**
   * Closes every resting string whose condition holds; true when one did.
   *
   * @param charger whether the charger could push current
   * @param busVolts NaN when nothing feeds it
   */
  boolean close(boolean charger, double busVolts, boolean busOff) {
    PowerModel.Protection protection = battery.protection();
    boolean byCharge = protection.closesOn() == ClosesOn.CHARGE;
    if (!(byCharge ? charger : busOff)) {
      return false;
    }
    boolean any = false;
    for (int i = 0; i < places.length; i++) {
      if (places[i] == Place.RESTS) {
        double own = curve.volts(restingSoc[i]);
        double seen = byCharge && busVolts > 0 ? Math.max(own, busVolts / battery.series()) : own;
        if (seen >= protection.closeVoltsPerCell()) {
          join(i);
          any = true;
        }
      }
    }
    return any;
  }

  private void join(int string) {
    double before = stored();
    soc = (soc * carrying + restingSoc[string]) / (carrying + 1);
    places[string] = Place.CARRIES;
    carrying++;
    ledger.removed += before - stored();
  }
}

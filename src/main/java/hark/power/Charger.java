package hark.power;

import hark.power.PowerModel.Scheme;

/** What limits the current into the battery: charger, taper, temperature; and the thermostat. */
final class Charger {
  /** Less room than this below the voltage limit is none: rounding, not charge, V. */
  private static final double ROOM_VOLTS = 1e-9;

  /** A thermostat with a narrower band than this is followed alone, K. */
  private static final double LEAST_BAND_KELVIN = 1;

  /** A thermostat that was not foretold may switch so much late, K. */
  private static final double LATE_KELVIN = 0.1;

  private final PowerModel.Battery battery;
  private final PowerModel.Charging charging;
  private final PowerModel.Heater heater;
  private final double limitAmps;
  private final double limitVolts;
  private final double efficiency;

  /** Current at the end of the last taper, A; infinite when there was none. */
  private double taperEndAmps;

  Charger(PowerModel model, double fullVolts) {
    battery = model.battery();
    charging = model.charging();
    heater = battery.heater().orElse(null);
    boolean direct = charging.scheme() == Scheme.DIRECT;
    limitAmps = direct ? Double.POSITIVE_INFINITY : charging.maxCurrentAmps();
    limitVolts = Math.min(charging.chargeVolts(), fullVolts);
    efficiency = battery.behaviour().coulombicEfficiency();
  }

  /**
   * The battery as the charger sees it.
   *
   * @param emf voltage without current, V
   * @param ohm its resistance
   * @param rise of the voltage without current, V for each coulomb
   * @param step time over which the current is meant, s; 0 for a moment
   */
  record Way(double emf, double ohm, double rise, double step) {}

  /** Mean current over the step when so much is there to take, A. */
  double amps(BodyState s, double free, Way way) {
    taperEndAmps = Double.POSITIVE_INFINITY;
    double room = limitVolts - way.emf();
    if (s.chargeInhibited || s.chargePathOpen || s.chargeEnded || room <= ROOM_VOLTS) {
      return 0;
    }
    double wanted = Math.min(free, limitAmps);
    if (way.step() == 0) {
      return wanted * way.ohm() > room ? room / way.ohm() : wanted;
    }
    return taper(wanted, room, way);
  }

  /** As {@link #taper(double, double, double, double, double)}, noting where the taper stands. */
  private double taper(double wanted, double room, Way way) {
    double rise = way.rise() * efficiency;
    double mean = taper(wanted, room, rise, way.ohm(), way.step());
    if (mean < wanted) {
      double left = room - mean * rise * way.step();
      taperEndAmps = way.ohm() > 0 ? left / way.ohm() : 0;
    }
    return mean;
  }

  /**
   * Mean current of a step: constant until the terminals reach the limit, then an exponential;
   * exact on a straight piece of the open-circuit curve.
   *
   * @param wanted current that the charger would give, A
   * @param room from the voltage without current to the limit, V
   * @param rise of the voltage without current, V for each coulomb
   */
  static double taper(double wanted, double room, double rise, double ohm, double step) {
    if (room <= ROOM_VOLTS) {
      return 0;
    }
    double constant = (room - wanted * ohm) / (wanted * rise);
    if (constant >= step) {
      return wanted;
    }
    double before = Math.max(0, constant);
    double left = room - wanted * rise * before;
    double decay = Math.exp(-(step - before) * rise / ohm); // 0 without resistance
    return (wanted * before + left / rise * (1 - decay)) / step;
  }

  /** Fills in what limits a body that glides. */
  void fill(Lanes to, int i, BodyState s, double celsius) {
    boolean shut = s.chargeInhibited || s.chargePathOpen || s.chargeEnded || s.batteryGone;
    to.limitAmps[i] = shut ? 0 : limitAmps;
    to.limitVolts[i] = limitVolts;
    to.endAmps[i] = charging.endAmps();
    if (s.chargeEnded) {
      to.floorVolts[i] = Math.max(to.floorVolts[i], charging.resumeVolts());
    }
    double coldest = coldest(s, celsius);
    double warmest = warmest(s, celsius);
    boolean low = foretold(s, coldest);
    boolean high = foretold(s, warmest);
    to.lowMarkC[i] = low ? Lanes.finite(coldest) : -Lanes.FAR;
    to.highMarkC[i] = high ? Lanes.finite(warmest) : Lanes.FAR;
    to.coldestC[i] = Lanes.finite(low ? coldest - LATE_KELVIN : coldest);
    to.warmestC[i] = Lanes.finite(high ? warmest + LATE_KELVIN : warmest);
  }

  /** Whether what happens at a mark is foretold: not a thermostat that flutters. */
  private boolean foretold(BodyState s, double mark) {
    return !heaterSwitchesAt(s, mark) || heater.offAboveC() - heater.onBelowC() > LEAST_BAND_KELVIN;
  }

  private boolean heaterSwitchesAt(BodyState s, double mark) {
    return heater != null
        && !s.busOff()
        && mark == (s.heating ? heater.offAboveC() : heater.onBelowC());
  }

  /** Moves on what switches where the cells come to {@link #warmest}, or to {@link #coldest}. */
  void switchAt(BodyState s, boolean high, double celsius) {
    double mark = high ? warmest(s, celsius) : coldest(s, celsius);
    boolean inhibits = mark == (high ? warmestOfCharge(s, celsius) : coldestOfCharge(s, celsius));
    s.heating ^= high == s.heating && heaterSwitchesAt(s, mark);
    s.chargeInhibited ^= inhibits;
  }

  /** Below this temperature thermostat or inhibit switches, °C. */
  private double coldest(BodyState s, double celsius) {
    double inhibit = coldestOfCharge(s, celsius);
    boolean waits = heater != null && !s.busOff() && !s.heating;
    return waits ? Math.max(inhibit, heater.onBelowC()) : inhibit;
  }

  private double coldestOfCharge(BodyState s, double celsius) {
    if (charges(s) && !s.chargeInhibited) {
      return battery.chargeMinC();
    }
    return charges(s) && hot(celsius)
        ? battery.chargeMaxC() - PowerPhysics.CHARGE_HYSTERESIS_KELVIN
        : Double.NEGATIVE_INFINITY;
  }

  /** Above this temperature thermostat or inhibit switches, °C. */
  private double warmest(BodyState s, double celsius) {
    double inhibit = warmestOfCharge(s, celsius);
    return s.heating ? Math.min(inhibit, heater.offAboveC()) : inhibit;
  }

  private double warmestOfCharge(BodyState s, double celsius) {
    if (charges(s) && !s.chargeInhibited) {
      return battery.chargeMaxC();
    }
    return charges(s) && !hot(celsius)
        ? battery.chargeMinC() + PowerPhysics.CHARGE_HYSTERESIS_KELVIN
        : Double.POSITIVE_INFINITY;
  }

  private boolean hot(double celsius) {
    return celsius > (battery.chargeMinC() + battery.chargeMaxC()) / 2;
  }

  /** Current at the end of the last taper, A; infinite when the last current was none. */
  double taperEndAmps() {
    return taperEndAmps;
  }

  /** Whether a taper ends at all. */
  boolean ends() {
    return charging.endAmps() > 0;
  }

  /**
   * Ends the charge when its taper has run out, and takes it up again when the voltage has fallen.
   */
  void follow(BodyState s, double volts, double endAmps) {
    if (s.chargeEnded) {
      s.chargeEnded = !(volts < charging.resumeVolts());
    } else {
      s.chargeEnded = endAmps < charging.endAmps();
    }
  }

  /** Whether the inhibit matters at all: nothing that is lost for good is inhibited. */
  private static boolean charges(BodyState s) {
    return !s.batteryGone && !s.chargePathOpen;
  }

  /** Whether charging is inhibited at a temperature. */
  boolean inhibits(BodyState s, double celsius) {
    if (!charges(s)) {
      return s.chargeInhibited;
    }
    double inside = s.chargeInhibited ? PowerPhysics.CHARGE_HYSTERESIS_KELVIN : 0;
    return celsius < battery.chargeMinC() + inside || celsius > battery.chargeMaxC() - inside;
  }

  /** Whether the heater is on at a temperature. */
  boolean heats(BodyState s, double celsius) {
    if (heater == null || s.busOff()) {
      return false;
    }
    return celsius < (s.heating ? heater.offAboveC() : heater.onBelowC());
  }
}

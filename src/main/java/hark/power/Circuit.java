package hark.power;

import hark.power.PowerModel.ClosesOn;
import hark.power.PowerModel.Scheme;

/**
 * Arrays, charger, battery and load at one point, the bus, with constant-power loads: the voltage V
 * = E − I·R meets V·I = P in a quadratic. The heat goes to {@link ThermalNodes}.
 *
 * <p>A step is tried first (the body does not change) and then kept. The current of a step is the
 * one at its middle, on the tangent of the open-circuit curve: there the curve's slope acts like
 * more resistance, so one solution gives a second-order step that is stable for any resistance.
 *
 * <p>Currents are positive into the battery.
 */
final class Circuit {
  /** Less room than this below the voltage limit is none: rounding, not charge, V. */
  private static final double ROOM_VOLTS = 1e-9;

  private final PowerModel model;
  private final Illumination light;
  private final OpenCircuit curve;
  private final ThermalNodes nodes;
  private final boolean direct;
  private final double limitAmps;
  private final double limitVolts;
  private final double fullSunWatts;
  private final double packOhm;
  private final double packCoulomb;
  private final double heaterWatts;

  // The last solution.
  double amps;

  /** Voltage at the bus; 0 when the load pulls it down, NaN when nothing feeds it. */
  double busVolts;

  /** Voltage at the pack's own terminals. */
  double packVolts;

  /** Whether battery and arrays together can feed the load. */
  boolean feeds;

  /** Array power that reaches the bus if it is wanted, W. */
  double arrayWatts;

  private double usedWatts;
  private double servedWatts;

  // The tried step.
  private double triedSoc;
  private double triedUsedJoule;
  private double triedServedJoule;
  private double triedResistanceJoule;

  Circuit(PowerModel model, Illumination light) {
    this.model = model;
    this.light = light;
    PowerModel.Battery battery = model.battery();
    PowerModel.Charging charging = model.charging();
    curve = new OpenCircuit(battery.openCircuit(), battery.series());
    direct = charging.scheme() == Scheme.DIRECT;
    limitAmps = direct ? Double.POSITIVE_INFINITY : charging.maxCurrentAmps();
    limitVolts = Math.min(charging.chargeVolts(), curve.fullVolts());
    fullSunWatts =
        ArrayPower.fullSunWatts(model, light.solarConstantWatts()) * charging.efficiency();
    packOhm = battery.cellResistanceOhm() * battery.series() / battery.parallel();
    packCoulomb = battery.cellCapacityAh() * 3600 * battery.parallel();
    heaterWatts = battery.heater().map(PowerModel.Heater::watts).orElse(0.0);
    nodes = new ThermalNodes(model.thermal(), light.solarConstantWatts());
  }

  /** Capacity of what is left of the pack, C. */
  double capacityCoulomb(BodyState s) {
    int parallel = model.battery().parallel();
    return packCoulomb * s.capacityFactor * (parallel - s.stringsLost) / parallel;
  }

  /** Energy in what is left of the pack, J. */
  double storedJoule(BodyState s) {
    return s.batteryGone ? 0 : capacityCoulomb(s) * curve.joulePerCoulomb(s.soc);
  }

  /** Temperature that the cells have, °C. */
  double cellCelsius(BodyState s) {
    return celsius(s, s.batteryC);
  }

  private static double celsius(BodyState s, double nodeCelsius) {
    return Math.max(PowerPhysics.COLDEST_CELSIUS, nodeCelsius + s.temperatureShiftKelvin);
  }

  private double ohm(BodyState s) {
    int parallel = model.battery().parallel();
    double left = (double) (parallel - s.stringsLost) / parallel;
    return packOhm * PowerPhysics.resistanceFactor(cellCelsius(s)) / left;
  }

  private double arrayWattsAt(BodyState s, double seconds) {
    if (s.arraysCutOff) {
      return 0;
    }
    return fullSunWatts * s.arrayFactor * light.fractionBefore(s.nextSunEdge, seconds);
  }

  /** Whether no array power can come before the next shadow edge. */
  boolean dark(BodyState s) {
    return s.arraysCutOff || s.arrayFactor == 0 || light.umbraBefore(s.nextSunEdge);
  }

  /** Solves the bus as it is now. */
  void measure(BodyState s) {
    if (s.batteryGone) {
      solve(s, 0, 0, 0, arrayWattsAt(s, s.seconds));
    } else {
      double ohm = ohm(s);
      solve(s, curve.voltsAt(s.soc), ohm, ohm, arrayWattsAt(s, s.seconds));
    }
  }

  /** Tries a step; afterwards the solution is that at its end. */
  void attempt(BodyState s, double step) {
    double seconds = s.seconds;
    double fraction = light.fractionBefore(s.nextSunEdge, seconds + step / 2);
    double middle = s.arraysCutOff ? 0 : fullSunWatts * s.arrayFactor * fraction;
    double ohm = 0;
    if (s.batteryGone) {
      solve(s, 0, 0, 0, middle);
      triedSoc = s.soc;
    } else {
      double coulomb = capacityCoulomb(s);
      int piece = curve.pieceAt(s.soc);
      ohm = ohm(s);
      double tangent = curve.slopeOf(piece) * step / (2 * coulomb);
      double taper = Math.max(ohm + tangent, 2 * tangent); // never past the limit within the step
      solve(s, curve.voltsIn(piece, s.soc), ohm + tangent, taper, middle);
      triedSoc = s.soc + amps * step / coulomb;
    }
    boolean fed = feeds;
    triedUsedJoule = usedWatts * step;
    triedServedJoule = servedWatts * step;
    double batteryHeat = amps * amps * ohm;
    triedResistanceJoule = batteryHeat * step;
    double heater = s.heating && feeds ? heaterWatts : 0;
    nodes.attempt(s, step, fraction, servedWatts - heater - usedWatts, batteryHeat + heater);
    double end = arrayWattsAt(s, seconds + step);
    if (s.batteryGone) {
      solve(s, 0, 0, 0, end);
    } else {
      solve(s, curve.voltsAt(triedSoc), ohm, ohm, end);
    }
    if (!fed) {
      feeds = false;
      busVolts = 0;
    }
  }

  /** Keeps the tried step. */
  void keep(BodyState s) {
    s.soc = triedSoc;
    nodes.keep(s);
    double drawn = triedUsedJoule / model.charging().efficiency();
    s.arrayJoule += drawn;
    s.chargerLossJoule += drawn - triedUsedJoule;
    s.loadJoule += triedServedJoule;
    s.resistanceLossJoule += triedResistanceJoule;
  }

  /** What the battery's heater draws when it is on, W. */
  double heaterWatts() {
    return heaterWatts;
  }

  /**
   * One solution. An array behind a charger is a constant power; one clamped to the battery
   * (direct) is a constant current that gives its full power at the charge voltage. Charge is
   * limited by current, by the voltage limit through the resistance (the taper), and by zero while
   * it is inhibited; the arrays then give only what is taken.
   */
  private void solve(BodyState s, double emf, double ohm, double taperOhm, double available) {
    arrayWatts = available;
    double load = s.loadWatts;
    if (s.batteryGone) {
      packVolts = 0;
      solveArraysAlone(s, load);
      return;
    }
    double constantAmps = direct ? available / model.charging().chargeVolts() : 0;
    double constantWatts = direct ? 0 : available;
    double source = emf - ohm * constantAmps;
    double net = constantWatts + emf * constantAmps - load;
    double discriminant = source * source + 4 * ohm * net;
    double free = 2 * net / (source + Math.sqrt(Math.max(0, discriminant)));
    if (net < 0 && (s.protectionOpen || discriminant < 0)) {
      packVolts = emf;
      if (s.protectionOpen) {
        solveArraysAlone(s, load);
      } else {
        collapse(s.busOff());
      }
      return;
    }
    double ceiling = chargeCeiling(s, emf, taperOhm);
    amps = Math.min(free, ceiling);
    busVolts = emf + amps * ohm;
    packVolts = busVolts;
    feeds = true;
    servedWatts = load;
    usedWatts = load + busVolts * amps;
  }

  private double chargeCeiling(BodyState s, double emf, double ohm) {
    double room = limitVolts - emf;
    if (s.chargeInhibited || s.chargePathOpen || room <= ROOM_VOLTS) {
      return 0;
    }
    return ohm > 0 ? Math.min(limitAmps, room / ohm) : limitAmps;
  }

  /** The load asks for more than the battery can give at any voltage. */
  private void collapse(boolean off) {
    amps = 0;
    busVolts = off ? Double.NaN : 0;
    feeds = off;
    usedWatts = 0;
    servedWatts = 0;
  }

  /**
   * No current can leave the battery: the charger holds the bus at its voltage, or nothing does.
   */
  private void solveArraysAlone(BodyState s, double load) {
    amps = 0;
    boolean enough = arrayWatts >= load && arrayWatts > 0;
    feeds = enough || s.busOff();
    servedWatts = enough ? load : 0;
    usedWatts = servedWatts;
    if (enough) {
      busVolts = model.charging().chargeVolts();
    } else {
      busVolts = s.busOff() ? Double.NaN : 0;
    }
  }

  /** Whether the battery can feed the bus. */
  static boolean canDischarge(BodyState s) {
    return !s.batteryGone && !s.protectionOpen;
  }

  /** Whether the opened protection closes again under what the last solution shows. */
  boolean protectionCloses(BodyState s) {
    PowerModel.Protection protection = model.battery().protection();
    boolean condition =
        protection.closesOn() == ClosesOn.CHARGE ? amps > 0 : s.busOff() && !s.batteryGone;
    return condition && cellVolts() >= protection.closeVoltsPerCell();
  }

  /** Voltage of a cell at the pack's terminals, V. */
  double cellVolts() {
    return packVolts / model.battery().series();
  }

  /** Whether thermostat or charge inhibit would switch at the end of the tried step. */
  boolean wouldSwitch(BodyState s) {
    double celsius = celsius(s, nodes.triedBatteryCelsius());
    return inhibits(s.chargeInhibited, celsius) != s.chargeInhibited
        || heats(s, celsius) != s.heating;
  }

  /** Moves thermostat and charge inhibit on. */
  void regulate(BodyState s) {
    double celsius = cellCelsius(s);
    s.chargeInhibited = inhibits(s.chargeInhibited, celsius);
    s.heating = heats(s, celsius);
  }

  private boolean inhibits(boolean now, double celsius) {
    double inside = now ? PowerPhysics.CHARGE_HYSTERESIS_KELVIN : 0;
    PowerModel.Battery battery = model.battery();
    return celsius < battery.chargeMinC() + inside || celsius > battery.chargeMaxC() - inside;
  }

  private boolean heats(BodyState s, double celsius) {
    if (s.busOff() || model.battery().heater().isEmpty()) {
      return false;
    }
    PowerModel.Heater heater = model.battery().heater().get();
    return celsius < (s.heating ? heater.offAboveC() : heater.onBelowC());
  }
}

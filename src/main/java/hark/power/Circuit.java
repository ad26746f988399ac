package hark.power;

import hark.power.PowerModel.ClosesOn;

/**
 * The electrical system of one body over a step: array power from {@link ArraySource}, the bus
 * solved by {@link Junction}, the heat to {@link ThermalNodes}.
 *
 * <p>A step is tried first (the body does not change) and then kept. The current of a step is the
 * one at its middle, on the tangent of the open-circuit curve: there the curve's slope acts like
 * more resistance, so one solution gives a second-order step that is stable for any resistance. A
 * taper is followed by its exponential.
 */
final class Circuit extends Junction {
  private final PowerModel model;
  private final Illumination light;
  private final ThermalNodes nodes;
  private final ArraySource arrays;
  private final CellBehaviour cells;
  private final double packOhm;
  private final double packCoulomb;
  private final double heaterWatts;
  private final double selfDischargePerSecond;
  private final double damageSoc;
  private final double lowestSoc;

  private double coldOhm;
  private double warmedCelsius = Double.NaN;
  private double warmedOhm;

  // The tried step.
  private double triedStep;
  private double triedSoc;
  private double triedOfferedJoule;
  private double triedUsedJoule;
  private double triedServedJoule;
  private double triedResistanceJoule;
  private double triedCellWatts;
  private double triedCoulombicJoule;
  private double triedSelfJoule;
  private double triedVolts;
  private double triedTaperEnd;
  private boolean triedFed;

  Circuit(PowerModel model, Illumination light) {
    super(model);
    this.model = model;
    this.light = light;
    PowerModel.Battery battery = model.battery();
    cells = battery.behaviour();
    arrays = new ArraySource(model, light);
    packOhm = battery.cellResistanceOhm() * battery.series() / battery.parallel();
    packCoulomb = battery.cellCapacityAh() * 3600 * battery.parallel();
    heaterWatts = battery.heater().map(PowerModel.Heater::watts).orElse(0.0);
    selfDischargePerSecond = cells.selfDischargePerMonth() / (30 * PowerPhysics.DAY_SECONDS);
    damageSoc = curve.socAt(cells.damageVoltsPerCell() * battery.series());
    lowestSoc = curve.socAt(0);
    nodes = new ThermalNodes(model.thermal(), light);
  }

  /** Longest step that follows the turning body, s. */
  double longestStepSeconds() {
    return arrays.longestStepSeconds();
  }

  /** Longest step where each dip of array power matters, s. */
  double dipSeconds() {
    return arrays.dipSeconds();
  }

  /** Takes on what has changed on board; to be called whenever something has. */
  void renew(BodyState s) {
    arrays.configure(s);
    int parallel = model.battery().parallel();
    int connected = parallel - s.stringsLost - s.stringsResting;
    coulomb = stringCoulomb(s) * connected;
    double aged = 1 + cells.resistanceGrowthPerYear() * s.years;
    coldOhm = connected == 0 ? 0 : packOhm * aged * parallel / connected;
  }

  /** Capacity of the connected strings, C. */
  double capacityCoulomb() {
    return coulomb;
  }

  /** Capacity of one string as it is, C. */
  private double stringCoulomb(BodyState s) {
    double aged = 1 - Math.min(1, cells.fadePerYear() * s.years);
    return packCoulomb / model.battery().parallel() * s.capacityFactor * aged;
  }

  /** Energy in what is left of the pack, resting strings included, J. */
  double storedJoule(BodyState s) {
    if (s.batteryGone) {
      return 0;
    }
    double string = stringCoulomb(s);
    int connected = model.battery().parallel() - s.stringsLost - s.stringsResting;
    double sum = connected * curve.joulePerCoulomb(s.soc);
    for (int i = 0; s.stringsResting > 0 && i < s.restingSoc.length; i++) {
      if (!Double.isNaN(s.restingSoc[i])) {
        sum += curve.joulePerCoulomb(s.restingSoc[i]);
      }
    }
    return string * sum;
  }

  /** Temperature that the cells have, °C. */
  double cellCelsius(BodyState s) {
    return celsius(s, s.batteryC);
  }

  /** Temperature that the cells will have so much later if they go on as they did, °C. */
  private static double foretold(BodyState s, double ahead) {
    return celsius(s, s.batteryC + s.batteryRate * ahead);
  }

  private static double celsius(BodyState s, double nodeCelsius) {
    return Math.max(PowerPhysics.COLDEST_CELSIUS, nodeCelsius + s.temperatureShiftKelvin);
  }

  /** Resistance and locked charge at the cells' temperature. */
  private void warm(BodyState s, double ahead) {
    double celsius = foretold(s, ahead);
    if (s.batteryGone || (celsius == warmedCelsius && coldOhm == warmedOhm)) {
      return;
    }
    warmedCelsius = celsius;
    warmedOhm = coldOhm;
    ohm = coldOhm * PowerPhysics.resistanceFactor(celsius);
    double below = PowerPhysics.LOCK_CELSIUS - celsius;
    locked = below > 0 ? Math.min(PowerPhysics.MOST_LOCKED, cells.coldLockPerKelvin() * below) : 0;
  }

  /** Whether no array power can come before the next shadow edge. */
  boolean dark(BodyState s) {
    return s.arraysCutOff || s.arrayFactor == 0 || light.umbraBefore(s.nextSunEdge);
  }

  /** Fills in what a body that glides takes from its circuit. */
  void fill(Lanes to, int i, BodyState s) {
    boolean dips = arrays.dips() && !canDischarge(s); // each dip of array power matters
    boolean steady = !direct && !dips && s.stringsResting == 0 && !s.powerCycling;
    to.glides[i] = steady && (coulomb > 0 || s.batteryGone);
    if (!to.glides[i]) {
      to.lowMarkC[i] = -Lanes.FAR;
      to.highMarkC[i] = Lanes.FAR;
      return;
    }
    if (to.batteryCapacity[i] == 0) {
      nodes.fill(to, i); // once
    }
    arrays.fill(to, i, s);
    fillLimits(to, i, s);
    if (s.batteryGone) {
      to.withoutBattery(i, chargeVolts);
      return;
    }
    to.coldOhm[i] = coldOhm;
    to.coulomb[i] = coulomb;
    to.perCoulomb[i] = 1 / coulomb;
    to.lockPerKelvin[i] = cells.coldLockPerKelvin();
    to.selfPerSecond[i] = selfDischargePerSecond;
    to.lostCharge[i] = 1 - cells.coulombicEfficiency();
    to.damageSoc[i] = damageSoc;
    to.lowestSoc[i] = lowestSoc;
    warm(s, 0);
    fillCurve(to, i, locked);
  }

  /** Whether array power changes with time in steady sunlight. */
  boolean swings() {
    return arrays.swings();
  }

  /** Fills in what a turning body gets from its arrays over a stretch of time. */
  void sweep(Lanes to, int i, BodyState s, double from, double until) {
    arrays.sweep(to, i, s, from, until);
  }

  /** Fills in what hangs on thermostat and charger. */
  void fillLimits(Lanes to, int i, BodyState s) {
    charger.fill(to, i, s, cellCelsius(s));
    to.chargeShare[i] = 1;
    to.closesByCharge[i] = model.battery().protection().closesOn() == ClosesOn.CHARGE;
    to.load[i] = s.loadWatts;
    to.heater[i] = s.heating ? heaterWatts : 0;
  }

  /** Fills in the pieces of the open-circuit curve that hold a body's charge. */
  void fillCurve(Lanes to, int i, double lockedShare) {
    to.curve(i, curve, lockedShare);
  }

  /** Solves the bus as it is now, in a burst and outside. */
  void measure(BodyState s) {
    warm(s, 0);
    solveNow(s, s.soc, givenNow(s));
  }

  private double givenNow(BodyState s) {
    return arrays.watts(s, s.seconds, light.fractionBefore(s.nextSunEdge, s.seconds));
  }

  /** Whether the bus would stay up with so much more load. */
  boolean carries(BodyState s, double moreWatts, double atLeastVolts) {
    warm(s, 0);
    solve(s, s.soc, 0, givenNow(s), s.loadWatts + moreWatts);
    return feeds && busVolts >= atLeastVolts;
  }

  private void solveNow(BodyState s, double soc, double given) {
    solve(s, soc, 0, given, s.loadWatts + s.burstWatts);
    burstVolts = busVolts;
    burstPackVolts = packVolts;
    feedsBurst = feeds;
    if (s.burstWatts > 0) {
      solve(s, soc, 0, given, s.loadWatts);
    }
  }

  /** Tries a step. */
  void attempt(BodyState s, double step) {
    double middle = s.seconds + step / 2;
    double fraction = light.fractionBefore(s.nextSunEdge, middle);
    triedStep = step;
    warm(s, step / 2);
    solve(s, s.soc, step, arrays.watts(s, middle, fraction), s.loadWatts);
    triedFed = feeds;
    triedTaperEnd = amps > 0 ? charger.taperEndAmps() : Double.POSITIVE_INFINITY;
    triedOfferedJoule = arrayWatts * step;
    triedUsedJoule = usedWatts * step;
    triedServedJoule = servedWatts * step;
    double batteryHeat = amps * amps * ohm + polarisationWatts;
    triedResistanceJoule = batteryHeat * step;
    triedCellWatts = batteryHeat;
    charge(s, step);
    triedVolts = busVolts;
    double heater = s.heating && feeds ? heaterWatts : 0;
    double structureWatts = servedWatts - heater - usedWatts;
    nodes.attempt(s, step, fraction, structureWatts, batteryHeat + heater);
  }

  /** State of charge at the end of the tried step, and what did not become charge. */
  private void charge(BodyState s, double step) {
    triedCoulombicJoule = 0;
    triedSelfJoule = 0;
    triedSoc = s.soc;
    if (s.batteryGone) {
      return;
    }
    double moved = amps * step;
    double emf = atRest;
    if (amps > 0 && cells.coulombicEfficiency() < 1) {
      double lost = moved * (1 - cells.coulombicEfficiency());
      triedCoulombicJoule = lost * emf;
      moved -= lost;
    }
    double leak = 0;
    if (selfDischargePerSecond > 0 && emf > 0) {
      double factor = PowerPhysics.selfDischargeFactor(foretold(s, step / 2));
      leak = selfDischargePerSecond * factor * step;
      triedSelfJoule = leak * coulomb * emf;
    }
    triedSoc = s.soc + moved / coulomb - leak;
  }

  /**
   * Whether nothing can have crossed a threshold at the end of the tried step: told from its middle
   * on, which is exact enough far from thresholds.
   */
  boolean surelyQuiet(BodyState s) {
    if (arrays.swings() || !triedFed || s.batteryGone || s.protectionOpen || direct) {
      return false;
    }
    if (triedSoc < STEEP_SOC) {
      return false;
    }
    double half = slopeVolts * (triedSoc - s.soc) / 2;
    double least = triedVolts + Math.min(0, half);
    double most = triedVolts + Math.max(0, half);
    double slack = PowerPhysics.NEAR_VOLTS;
    if ((s.nextSunEdge & 1) == 1) {
      slack += PENUMBRA_SLACK * arrays.fullSunWatts(s) / least * ohm;
    }
    least -= BURST_SLACK * s.burstWatts / least * ohm;
    return least > s.floorVolts + slack && most < s.ceilingVolts - slack;
  }

  /** Below this state of charge the open-circuit curve is steep and bends. */
  static final double STEEP_SOC = 0.15;

  /** A burst sags by this much more than its power over the voltage without it. */
  static final double BURST_SLACK = 1.3;

  /**
   * Within a penumbra the array power strays by half of itself from the middle, and a little more.
   */
  static final double PENUMBRA_SLACK = 0.7;

  /** Solves the bus at the end of the tried step. */
  void measureEnd(BodyState s) {
    double end = s.seconds + triedStep;
    double fraction = light.fractionBefore(s.nextSunEdge, end);
    solveNow(s, triedSoc, arrays.watts(s, end, fraction));
    if (!triedFed) {
      feeds = false;
      busVolts = 0;
      feedsBurst = false;
      burstVolts = 0;
    }
  }

  /** State of charge at the end of the tried step. */
  double triedSoc() {
    return triedSoc;
  }

  /** Keeps the tried step. */
  void keep(BodyState s) {
    if (triedSoc < damageSoc && !s.batteryGone) {
      s.damagedSeconds += triedStep;
    }
    s.soc = triedSoc;
    nodes.keep(s, triedStep);
    s.cellWatts = triedCellWatts;
    s.offeredJoule += triedOfferedJoule;
    s.usedJoule += triedUsedJoule;
    s.loadJoule += triedServedJoule;
    s.resistanceLossJoule += triedResistanceJoule;
    s.coulombicLossJoule += triedCoulombicJoule;
    s.selfDischargeJoule += triedSelfJoule;
    if (charger.ends()) {
      charger.follow(s, triedVolts, triedTaperEnd);
    }
  }

  /** The books now. */
  EnergyBooks books(BodyState s) {
    double drawn = s.usedJoule / model.charging().efficiency();
    return new EnergyBooks(
        s.offeredJoule / model.charging().efficiency(),
        drawn,
        s.loadJoule,
        drawn - s.usedJoule,
        s.resistanceLossJoule,
        s.coulombicLossJoule,
        s.selfDischargeJoule,
        storedJoule(s) - s.storedAtSeparation,
        s.removedJoule);
  }

  /** What the battery's heater draws when it is on, W. */
  double heaterWatts() {
    return heaterWatts;
  }

  /** Whether the battery can feed the bus. */
  static boolean canDischarge(BodyState s) {
    return !s.batteryGone && !s.protectionOpen;
  }

  /** Voltage of a string at rest, V a cell. */
  double restingCellVolts(double soc) {
    return curve.voltsAt(soc) / model.battery().series();
  }

  /** Whether thermostat or charge inhibit would switch at the end of the tried step. */
  boolean wouldSwitch(BodyState s) {
    double celsius = celsius(s, nodes.triedBatteryCelsius());
    return charger.inhibits(s, celsius) != s.chargeInhibited
        || charger.heats(s, celsius) != s.heating;
  }

  /** Switches what switches where the cells come to the next mark above, or below. */
  void switchAt(BodyState s, boolean high) {
    charger.switchAt(s, high, cellCelsius(s));
  }

  /** Moves thermostat and charge inhibit on; true when one switched. */
  boolean regulate(BodyState s) {
    double celsius = cellCelsius(s);
    boolean inhibited = s.chargeInhibited;
    boolean heating = s.heating;
    s.chargeInhibited = charger.inhibits(s, celsius);
    s.heating = charger.heats(s, celsius);
    return inhibited != s.chargeInhibited || heating != s.heating;
  }
}

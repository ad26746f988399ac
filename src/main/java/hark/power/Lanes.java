package hark.power;

import java.util.Arrays;

/**
 * The numbers of many bodies side by side, one array each: what {@link Glide} reads and moves. What
 * only changes when something happens is filled in by {@link #load}.
 */
final class Lanes {
  final int count;

  /** Whether a body may glide at all: nothing that {@link Glide} does not know. */
  final boolean[] glides;

  /** Whether the bus is off: then a shadow edge matters. */
  final boolean[] off;

  /** Whether open strings close only while the charger pushes current. */
  final boolean[] closesByCharge;

  /** Whether more than margins must be looked at before a step holds. */
  final boolean[] special;

  // Where heater or charge inhibit switch on the way down and up, °C; far out when not foretold.
  final double[] lowMarkC;
  final double[] highMarkC;

  // What moves.
  final double[] soc;
  final double[] batteryC;
  final double[] structureC;
  final double[] batteryRate;
  final double[] structureRate;
  final double[] cellWatts;
  final double[] offeredJoule;
  final double[] usedJoule;
  final double[] loadJoule;
  final double[] resistanceJoule;
  final double[] coulombicJoule;
  final double[] selfJoule;
  final double[] damagedSeconds;

  // Arrays: watts at the bus for each W/m², by the Sun, by light thrown back, and how far the first
  // strays from its mean as the body turns.
  final double[] sunGain;
  final double[] backGain;
  final double[] swingGain;
  final double[] perKelvin;

  // Battery: voltage without load offset + slope · charge, at rest and under load.
  final double[] coldOhm;
  final double[] perCoulomb;
  final double[] coulomb;
  final double[] offset;
  final double[] slope;
  final double[] low;
  final double[] high;
  final double[] offsetLoaded;
  final double[] slopeLoaded;
  final double[] lowLoaded;
  final double[] highLoaded;
  final double[] shiftKelvin;
  final double[] lockPerKelvin;
  final double[] selfPerSecond;
  final double[] lostCharge;
  final double[] damageSoc;
  final double[] lowestSoc;

  // Charger and loads.
  final double[] limitAmps;
  final double[] chargeShare;
  final double[] limitVolts;
  final double[] endAmps;
  final double[] load;
  final double[] heater;
  final double[] burst;

  // Between these nothing is asked for.
  final double[] floorVolts;
  final double[] ceilingVolts;
  final double[] closesVolts;
  final double[] coldestC;
  final double[] warmestC;

  // Without a battery that feeds the bus: given more, or less, than so much nothing is asked for.
  final double[] leastWatts;
  final double[] mostWatts;

  // Heat.
  final double[] sunHeat;
  final double[] backHeat;
  final double[] earthHeat;
  final double[] radiation;
  final double[] coupling;
  final double[] structureCapacity;
  final double[] batteryCapacity;

  // When something happens on board by the clock, and when something must be written down, s.
  final double[] wakes;
  final double[] records;

  /** 1 where the battery can feed the bus, else 0. */
  final double[] feeds;

  /** Stands for what is never reached, so that differences stay numbers. */
  static final double FAR = 1e12;

  /** A number, or one so far out that nothing reaches it. */
  static double finite(double value) {
    return value > FAR ? FAR : value < -FAR ? -FAR : value;
  }

  Lanes(int count) {
    this.count = count;
    glides = new boolean[count];
    off = new boolean[count];
    special = new boolean[count];
    closesByCharge = new boolean[count];
    lowMarkC = new double[count];
    highMarkC = new double[count];
    soc = new double[count];
    batteryC = new double[count];
    structureC = new double[count];
    batteryRate = new double[count];
    structureRate = new double[count];
    cellWatts = new double[count];
    offeredJoule = new double[count];
    usedJoule = new double[count];
    loadJoule = new double[count];
    resistanceJoule = new double[count];
    coulombicJoule = new double[count];
    selfJoule = new double[count];
    damagedSeconds = new double[count];
    sunGain = new double[count];
    backGain = new double[count];
    swingGain = new double[count];
    perKelvin = new double[count];
    coldOhm = new double[count];
    perCoulomb = new double[count];
    coulomb = new double[count];
    offset = new double[count];
    slope = new double[count];
    low = new double[count];
    high = new double[count];
    offsetLoaded = new double[count];
    slopeLoaded = new double[count];
    lowLoaded = new double[count];
    highLoaded = new double[count];
    shiftKelvin = new double[count];
    lockPerKelvin = new double[count];
    selfPerSecond = new double[count];
    lostCharge = new double[count];
    damageSoc = new double[count];
    lowestSoc = new double[count];
    limitAmps = new double[count];
    chargeShare = new double[count];
    Arrays.fill(chargeShare, 1);
    limitVolts = new double[count];
    endAmps = new double[count];
    load = new double[count];
    heater = new double[count];
    burst = new double[count];
    floorVolts = new double[count];
    ceilingVolts = new double[count];
    closesVolts = new double[count];
    coldestC = new double[count];
    warmestC = new double[count];
    leastWatts = new double[count];
    mostWatts = new double[count];
    sunHeat = new double[count];
    backHeat = new double[count];
    earthHeat = new double[count];
    radiation = new double[count];
    coupling = new double[count];
    structureCapacity = new double[count];
    batteryCapacity = new double[count];
    wakes = new double[count];
    records = new double[count];
    feeds = new double[count];
  }

  /** Takes over a body that has settled. */
  void load(int i, Machine machine) {
    BodyState s = machine.s;
    soc[i] = s.soc;
    batteryC[i] = s.batteryC;
    structureC[i] = s.structureC;
    batteryRate[i] = s.batteryRate;
    structureRate[i] = s.structureRate;
    cellWatts[i] = s.cellWatts;
    offeredJoule[i] = s.offeredJoule;
    usedJoule[i] = s.usedJoule;
    loadJoule[i] = s.loadJoule;
    resistanceJoule[i] = s.resistanceLossJoule;
    coulombicJoule[i] = s.coulombicLossJoule;
    selfJoule[i] = s.selfDischargeJoule;
    damagedSeconds[i] = s.damagedSeconds;
    burst[i] = s.burstWatts;
    floorVolts[i] = finite(s.floorVolts);
    ceilingVolts[i] = finite(s.ceilingVolts);
    closesVolts[i] = s.closesVolts;
    leastWatts[i] = s.leastWatts;
    mostWatts[i] = s.mostWatts;
    shiftKelvin[i] = s.temperatureShiftKelvin;
    off[i] = s.busOff();
    feeds[i] = Circuit.canDischarge(s) ? 1 : 0;
    schedule(i, machine);
    machine.circuit.fill(this, i, s);
    special[i] = !glides[i] || feeds[i] == 0 || endAmps[i] > 0;
  }

  /** Takes over what a switch of heater or charge inhibit has changed. */
  void limits(int i, Machine machine) {
    load[i] = machine.s.loadWatts;
    leastWatts[i] = machine.s.leastWatts;
    machine.circuit.fillLimits(this, i, machine.s);
  }

  /** The arrays alone hold the bus at the charge voltage, whatever is drawn. */
  void withoutBattery(int i, double chargeVolts) {
    coldOhm[i] = 0;
    coulomb[i] = 0;
    perCoulomb[i] = 0;
    selfPerSecond[i] = 0;
    limitAmps[i] = 0;
    damageSoc[i] = -FAR;
    lowestSoc[i] = -FAR;
    offset[i] = chargeVolts;
    slope[i] = 0;
    offsetLoaded[i] = chargeVolts;
    slopeLoaded[i] = 0;
    low[i] = -FAR;
    high[i] = FAR;
    lowLoaded[i] = -FAR;
    highLoaded[i] = FAR;
  }

  /** The pieces of the open-circuit curve that hold a body's charge, at rest and under load. */
  void curve(int i, OpenCircuit curve, double lockedShare) {
    int rests = curve.pieceAt(soc[i]);
    offset[i] = curve.offsetOf(rests);
    slope[i] = curve.slopeOf(rests);
    low[i] = curve.lowOf(rests);
    high[i] = curve.highOf(rests);
    int loaded = curve.pieceAt(soc[i] - lockedShare * (1 - soc[i]));
    offsetLoaded[i] = curve.offsetOf(loaded);
    slopeLoaded[i] = curve.slopeOf(loaded);
    lowLoaded[i] = curve.lowOf(loaded);
    highLoaded[i] = curve.highOf(loaded);
  }

  /** Notes when the body must be woken next. */
  void schedule(int i, Machine machine) {
    wakes[i] = finite(machine.nextEvent());
    records[i] = machine.nextRecord();
  }

  /**
   * Gives back what has moved.
   *
   * @param seconds where all bodies are
   * @param edge the next shadow edge from there
   */
  void store(int i, BodyState s, double seconds, int edge) {
    s.seconds = seconds;
    s.nextSunEdge = edge;
    s.soc = soc[i];
    s.batteryC = batteryC[i];
    s.structureC = structureC[i];
    s.batteryRate = batteryRate[i];
    s.structureRate = structureRate[i];
    s.cellWatts = cellWatts[i];
    s.offeredJoule = offeredJoule[i];
    s.usedJoule = usedJoule[i];
    s.loadJoule = loadJoule[i];
    s.resistanceLossJoule = resistanceJoule[i];
    s.coulombicLossJoule = coulombicJoule[i];
    s.selfDischargeJoule = selfJoule[i];
    s.damagedSeconds = damagedSeconds[i];
  }
}

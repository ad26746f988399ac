package hark.power;

/**
 * A step of many bodies at once, for those to which nothing happens in it: the arithmetic of {@link
 * Circuit} and {@link ThermalNodes} for a charger that regulates. Loops without branches and of a
 * few operations each, for those the compiler turns into instructions on eight bodies at a time;
 * what a branch would choose is chosen by factors of 0 and 1. Everything is tried for all bodies;
 * {@link #holds} then says whose try holds, and {@link #keep} keeps them.
 */
final class Glide {
  private static final double KELVIN = PowerPhysics.KELVIN_AT_ZERO_CELSIUS;
  private static final double COLDEST = PowerPhysics.COLDEST_CELSIUS;
  private static final double MOST_LOCKED = PowerPhysics.MOST_LOCKED;

  /** What is due so soon after a step happens at its end, s. */
  private static final double INSTANT = 1e-6;

  /** A smaller share of the step tells nothing of the current that flowed in it. */
  private static final double LEAST_SHARE = 0.02;

  /** Makes 0 or 1 of a sign. */
  private static final double HUGE = 1e200;

  /** Keeps a taper without resistance finite, ohm. */
  private static final double LEAST_OHM = 1e-9;

  /** Keeps a division by nothing finite: far below any number that matters. */
  private static final double TINY = 1e-30;

  /** Array power strays by less than this share within a step that no edge cuts. */
  private static final double STRAY = 0.06;

  private final Lanes of;
  private final double[] celsius;
  private final double[] ohm;
  private final double[] locked;
  private final double[] leak;
  private final double[] warmth;
  private final double[] given;
  private final double[] charging;
  private final double[] carried;
  private final double[] rest;
  private final double[] emf;
  private final double[] rise;
  private final double[] square;
  private final double[] amps;
  private final double[] before;
  private final double[] left;
  private final double[] decay;
  private final double[] served;
  private final double[] used;
  private final double[] heat;
  private final double[] lost;
  private final double[] endSoc;
  private final double[] endBattery;
  private final double[] batteryRate;
  private final double[] structureRate;
  private final double[] radiated;
  private final double[] into;
  private final double[] share;
  private final double[] half;
  private final double[] bent;
  private final double[] past;
  private Stretch way;
  private double step;

  /** Where all bodies are going: how long, and the light in the middle of the way. */
  static final class Stretch {
    final double to;
    final double step;
    final double irradiance;
    final double sun;
    final double back;
    final boolean penumbra;

    Stretch(double from, double to, Illumination light, int edge) {
      double middle = from + (to - from) / 2;
      double sunlit = light.fractionBefore(edge, middle);
      this.to = to;
      step = to - from;
      irradiance = light.irradianceAt(middle);
      sun = irradiance * sunlit;
      back = irradiance * light.thrownBackAt(middle, sunlit);
      penumbra = (edge & 1) == 1;
    }
  }

  Glide(Lanes lanes) {
    of = lanes;
    int n = lanes.count;
    celsius = new double[n];
    ohm = new double[n];
    locked = new double[n];
    leak = new double[n];
    warmth = new double[n];
    given = new double[n];
    charging = new double[n];
    carried = new double[n];
    rest = new double[n];
    emf = new double[n];
    rise = new double[n];
    square = new double[n];
    amps = new double[n];
    before = new double[n];
    left = new double[n];
    decay = new double[n];
    served = new double[n];
    used = new double[n];
    heat = new double[n];
    lost = new double[n];
    endSoc = new double[n];
    endBattery = new double[n];
    batteryRate = new double[n];
    structureRate = new double[n];
    radiated = new double[n];
    into = new double[n];
    share = new double[n];
    half = new double[n];
    bent = new double[n];
    past = new double[n];
  }

  /** Tries the step for the bodies from one to another, the latter not included. */
  void attempt(Stretch stretch, int first, int end) {
    way = stretch;
    step = stretch.step;
    cells(first, end);
    light(first, end);
    battery(first, end);
    if (stretch.sun > 0 || stretch.back > 0) {
      taper(first, end);
    }
    charges(first, end);
    temperatures(first, end);
    margins(first, end);
  }

  /** Cells at the middle of the step, foretold from the step before. */
  private void cells(int first, int end) {
    double ahead = step / 2;
    for (int i = first; i < end; i++) {
      double middle = of.batteryC[i] + of.batteryRate[i] * ahead + of.shiftKelvin[i];
      celsius[i] = COLDEST + positive(middle - COLDEST);
    }
    for (int i = first; i < end; i++) {
      ohm[i] = LEAST_OHM + of.coldOhm[i] * PowerPhysics.resistanceFactor(celsius[i]);
    }
    for (int i = first; i < end; i++) {
      leak[i] = of.selfPerSecond[i] * step * PowerPhysics.selfDischargeFactor(celsius[i]);
    }
    for (int i = first; i < end; i++) {
      double lock = of.lockPerKelvin[i] * positive(PowerPhysics.LOCK_CELSIUS - celsius[i]);
      locked[i] = MOST_LOCKED - positive(MOST_LOCKED - lock);
    }
  }

  private void light(int first, int end) {
    double ahead = step / 2;
    double sun = way.sun;
    double back = way.back;
    for (int i = first; i < end; i++) {
      double middle = of.structureC[i] + of.structureRate[i] * ahead - PowerPhysics.ARRAY_CELSIUS;
      warmth[i] = positive(1 + of.perKelvin[i] * middle);
    }
    for (int i = first; i < end; i++) {
      given[i] = (sun * of.sunGain[i] + back * of.backGain[i]) * warmth[i];
    }
    for (int i = first; i < end; i++) {
      charging[i] = Math.min(1, positive((given[i] - of.load[i]) * HUGE));
    }
    for (int i = first; i < end; i++) {
      carried[i] = charging[i] + (1 - charging[i]) * of.feeds[i];
      served[i] = of.load[i] * carried[i];
    }
  }

  /** One current for the step, at its middle; the curve's slope acts like more resistance. */
  private void battery(int first, int end) {
    double ahead = step / 2;
    for (int i = first; i < end; i++) {
      rest[i] = of.offset[i] + of.slope[i] * of.soc[i];
    }
    for (int i = first; i < end; i++) {
      double reach = of.soc[i] - locked[i] * (1 - of.soc[i]);
      emf[i] = of.offsetLoaded[i] + of.slopeLoaded[i] * reach;
    }
    for (int i = first; i < end; i++) {
      emf[i] = charging[i] * rest[i] + (1 - charging[i]) * emf[i];
    }
    for (int i = first; i < end; i++) {
      rise[i] = (1 - charging[i]) * of.slopeLoaded[i] * (1 + locked[i]);
    }
    for (int i = first; i < end; i++) {
      rise[i] = (rise[i] + charging[i] * of.slope[i]) * of.perCoulomb[i];
    }
    for (int i = first; i < end; i++) {
      double source = (ohm[i] + rise[i] * ahead) * (given[i] - of.load[i]);
      square[i] = emf[i] * emf[i] + 4 * source;
    }
    for (int i = first; i < end; i++) {
      amps[i] = emf[i] + Math.sqrt(positive(square[i]));
    }
    for (int i = first; i < end; i++) {
      double free = 2 * carried[i] * (given[i] - of.load[i]) / amps[i];
      amps[i] = Math.min(of.limitAmps[i], free);
    }
  }

  /**
   * Where the terminals would pass the charger's voltage, the current tapers: as {@link
   * Charger#taper}, and where they would not, that gives the current as it is.
   */
  private void taper(int first, int end) {
    double perSecond = 1 / step;
    for (int i = first; i < end; i++) {
      left[i] = positive(amps[i]);
      decay[i] = rise[i] * (1 - of.lostCharge[i]);
    }
    for (int i = first; i < end; i++) {
      into[i] = 1 / (left[i] * decay[i] * ohm[i] + TINY);
      half[i] = of.limitVolts[i] - emf[i];
    }
    for (int i = first; i < end; i++) {
      double constant = positive((half[i] - left[i] * ohm[i]) * ohm[i] * into[i]);
      before[i] = step - positive(step - constant);
    }
    for (int i = first; i < end; i++) {
      double room = half[i] - left[i] * decay[i] * before[i];
      lost[i] = room * left[i] * ohm[i] * into[i];
    }
    for (int i = first; i < end; i++) {
      double exponent = (before[i] - step) * left[i] * decay[i] * decay[i] * into[i];
      decay[i] = 1 - PowerPhysics.exp(positive(exponent + 64) - 64);
    }
    for (int i = first; i < end; i++) {
      double mean = (left[i] * before[i] + lost[i] * decay[i]) * perSecond;
      amps[i] += positive(mean) * of.chargeShare[i] - left[i];
    }
  }

  private void charges(int first, int end) {
    double ahead = step / 2;
    for (int i = first; i < end; i++) {
      double volts = emf[i] + amps[i] * (ohm[i] + rise[i] * ahead);
      used[i] = served[i] + amps[i] * volts;
    }
    for (int i = first; i < end; i++) {
      heat[i] = amps[i] * (amps[i] * ohm[i] + emf[i] - rest[i]);
    }
    for (int i = first; i < end; i++) {
      lost[i] = positive(amps[i]) * step * of.lostCharge[i];
    }
    for (int i = first; i < end; i++) {
      double moved = (amps[i] * step - lost[i]) * of.perCoulomb[i];
      endSoc[i] = of.soc[i] + moved - leak[i];
    }
  }

  private void temperatures(int first, int end) {
    double sun = way.sun;
    double back = way.back;
    for (int i = first; i < end; i++) {
      double kelvin = of.structureC[i] + KELVIN;
      radiated[i] = of.radiation[i] * kelvin * kelvin * kelvin;
    }
    for (int i = first; i < end; i++) {
      into[i] = sun * of.sunHeat[i] + back * of.backHeat[i] + of.earthHeat[i];
    }
    for (int i = first; i < end; i++) {
      into[i] += served[i] - of.heater[i] - used[i] - radiated[i] * (of.structureC[i] + KELVIN);
    }
    for (int i = first; i < end; i++) {
      half[i] = of.coupling[i] * (of.batteryC[i] - of.structureC[i]);
    }
    for (int i = first; i < end; i++) {
      double inner = step * of.coupling[i];
      double x = inner / of.batteryCapacity[i];
      decay[i] = 1 / (of.batteryCapacity[i] + inner * (0.5 + x / 12));
      share[i] = 1 - of.batteryCapacity[i] * decay[i];
    }
    for (int i = first; i < end; i++) {
      batteryRate[i] = heat[i] + of.heater[i] - half[i];
      into[i] += half[i] + step * of.coupling[i] / 2 * decay[i] * batteryRate[i];
    }
    for (int i = first; i < end; i++) {
      double outer = step * (4 * radiated[i] + of.coupling[i]);
      double x = outer / of.structureCapacity[i];
      double stiffness = of.structureCapacity[i] + outer * (0.5 + x / 12);
      structureRate[i] = into[i] / (stiffness - step * of.coupling[i] / 2 * share[i]);
    }
    for (int i = first; i < end; i++) {
      batteryRate[i] = batteryRate[i] * decay[i] + share[i] * structureRate[i];
    }
    for (int i = first; i < end; i++) {
      endBattery[i] = of.batteryC[i] + step * batteryRate[i];
    }
  }

  /** How far voltage and charge are past where something would happen; 0 when they are not. */
  private void margins(int first, int end) {
    double stray = way.penumbra ? Circuit.PENUMBRA_SLACK * way.irradiance : 0;
    for (int i = first; i < end; i++) {
      half[i] = rise[i] * of.coulomb[i] * (endSoc[i] - of.soc[i]) / 2;
      left[i] = emf[i] + half[i] + amps[i] * ohm[i];
    }
    for (int i = first; i < end; i++) {
      double most = left[i] + Math.abs(half[i]);
      double below = (of.ceilingVolts[i] - most - PowerPhysics.NEAR_VOLTS) * left[i];
      double swing = stray * of.sunGain[i] + way.sun * of.swingGain[i];
      past[i] = past(below - swing * ohm[i]);
    }
    for (int i = first; i < end; i++) {
      double least = left[i] - Math.abs(half[i]);
      double above = least * (least - of.floorVolts[i] - PowerPhysics.NEAR_VOLTS);
      double swing = stray * of.sunGain[i] + way.sun * of.swingGain[i];
      double sag = (Circuit.BURST_SLACK * of.burst[i] + swing) * ohm[i];
      past[i] += past(least) + past(above - sag);
    }
    for (int i = first; i < end; i++) {
      past[i] += past(square[i]) + past(endSoc[i] - of.lowestSoc[i]);
    }
    for (int i = first; i < end; i++) {
      bent[i] = past(endSoc[i] - of.low[i]) + past(of.high[i] - endSoc[i]);
    }
    for (int i = first; i < end; i++) {
      double cold = PowerPhysics.LOCK_CELSIUS - endBattery[i] - of.shiftKelvin[i];
      locked[i] = MOST_LOCKED - positive(MOST_LOCKED - of.lockPerKelvin[i] * positive(cold));
    }
    for (int i = first; i < end; i++) {
      double reach = endSoc[i] - locked[i] * (1 - endSoc[i]);
      bent[i] += past(reach - of.lowLoaded[i]) + past(of.highLoaded[i] - reach);
    }
    for (int i = first; i < end; i++) {
      past[i] += of.feeds[i] * bent[i] * past(endSoc[i] - Circuit.STEEP_SOC);
    }
    double to = way.to + INSTANT;
    for (int i = first; i < end; i++) {
      past[i] += past(of.wakes[i] - to);
    }
    for (int i = first; i < end; i++) {
      double last = endBattery[i] + of.shiftKelvin[i];
      past[i] += past(last - of.coldestC[i]) + past(of.warmestC[i] - last);
    }
  }

  /** The positive part of a number, exactly and without a branch. */
  private static double positive(double x) {
    return (x + Math.abs(x)) / 2;
  }

  /** 0 for what is not negative, else more. */
  static double past(double margin) {
    return Math.abs(margin) - margin;
  }

  /** Whether the step just tried holds for a body: nothing happens to it. */
  boolean holds(int i) {
    return past[i] == 0 && (!of.special[i] || holdsSpecially(i));
  }

  private boolean holdsSpecially(int i) {
    boolean ends = of.endAmps[i] > 0 && amps[i] > 0 && before[i] < step; // a taper that may end
    return of.glides[i] && !ends && (of.feeds[i] == 1 || (steady(i) && staysOpen(i)));
  }

  /** Whether arrays that feed the bus alone stay on one side of what matters. */
  private boolean steady(int i) {
    double full = way.irradiance * (of.sunGain[i] + of.backGain[i]) * warmth[i];
    double swing = way.sun * of.swingGain[i] * warmth[i];
    double lowest = way.penumbra ? 0 : given[i] * (1 - STRAY) - swing;
    double highest = (way.penumbra ? full : given[i]) * (1 + STRAY) + swing;
    return lowest >= of.leastWatts[i] && highest < of.mostWatts[i];
  }

  /** Whether open strings stay so: too little voltage to close them, or no charge pushed. */
  private boolean staysOpen(int i) {
    boolean mayPush = way.penumbra && of.limitAmps[i] * (of.sunGain[i] + of.backGain[i]) > 0;
    boolean pushes = amps[i] > 0 || mayPush || !of.closesByCharge[i];
    return !pushes || left[i] + Math.abs(half[i]) < of.closesVolts[i] - PowerPhysics.NEAR_VOLTS;
  }

  /**
   * Whether the charge, which takes its share of the step, keeps the voltage inside floor and
   * ceiling while it flows in full and while it does not.
   */
  boolean calm(int i) {
    if (!(amps[i] > 0) || of.chargeShare[i] < LEAST_SHARE) {
      return charging[i] == 0;
    }
    double full = amps[i] / of.chargeShare[i];
    double most = emf[i] + half[i] + Math.abs(half[i]) + full * ohm[i];
    double least = emf[i] + half[i] - Math.abs(half[i]);
    double sag = Circuit.BURST_SLACK * of.burst[i] * ohm[i] / least;
    double near = PowerPhysics.NEAR_VOLTS;
    return most + near < of.ceilingVolts[i] && least - sag - near > of.floorVolts[i];
  }

  /** Keeps the tries of bodies from one to another, the latter not included. */
  void keep(int first, int end) {
    for (int i = first; i < end; i++) {
      of.offeredJoule[i] += given[i] * step;
    }
    for (int i = first; i < end; i++) {
      of.usedJoule[i] += used[i] * step;
    }
    for (int i = first; i < end; i++) {
      of.loadJoule[i] += served[i] * step;
    }
    for (int i = first; i < end; i++) {
      of.resistanceJoule[i] += heat[i] * step;
    }
    for (int i = first; i < end; i++) {
      of.coulombicJoule[i] += lost[i] * rest[i];
    }
    for (int i = first; i < end; i++) {
      of.selfJoule[i] += leak[i] * of.coulomb[i] * rest[i];
    }
    for (int i = first; i < end; i++) {
      of.damagedSeconds[i] += step * Math.min(1, past((endSoc[i] - of.damageSoc[i]) * HUGE));
    }
    for (int i = first; i < end; i++) {
      of.structureC[i] += step * structureRate[i];
    }
    System.arraycopy(endSoc, first, of.soc, first, end - first);
    System.arraycopy(endBattery, first, of.batteryC, first, end - first);
    System.arraycopy(heat, first, of.cellWatts, first, end - first);
    System.arraycopy(batteryRate, first, of.batteryRate, first, end - first);
    System.arraycopy(structureRate, first, of.structureRate, first, end - first);
  }

  /** Whether a kept step has left the pieces of the open-circuit curve it began on. */
  boolean bends(int i) {
    return bent[i] != 0;
  }

  /** Charge that the cold locks at the end of the step, as a share. */
  double locked(int i) {
    return locked[i];
  }
}

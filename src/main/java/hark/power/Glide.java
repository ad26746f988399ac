package hark.power;

/**
 * A step of many bodies at once, for those to which nothing happens in it: the arithmetic of {@link
 * Circuit} and {@link ThermalNodes} for a battery on the bus and a charger that regulates, written
 * as plain loops over arrays so that the processor overlaps and the compiler vectorises them. First
 * everything is tried; then {@link #quiet} says for which bodies the try holds.
 */
final class Glide {
  private static final double KELVIN = PowerPhysics.KELVIN_AT_ZERO_CELSIUS;

  private final Lanes of;
  private final double[] ohm;
  private final double[] locked;
  private final double[] leak;
  private final double[] given;
  private final double[] rest;
  private final double[] loaded;
  private final double[] amps;
  private final double[] root;
  private final double[] used;
  private final double[] heat;
  private final double[] lost;
  private final double[] endSoc;
  private final double[] endBattery;
  private final double[] endStructure;
  private Stretch at;
  private double seconds;

  /**
   * Where all bodies are going: light in the middle of the way, and how uncertain it is at its end.
   */
  static final class Stretch {
    final double step;
    final double sunlit;
    final double thrownBack;
    final double irradiance;
    final boolean penumbra;

    Stretch(double from, double to, Illumination light, int edge) {
      double middle = from + (to - from) / 2;
      step = to - from;
      sunlit = light.fractionBefore(edge, middle);
      thrownBack = light.thrownBackAt(middle, sunlit);
      irradiance = light.irradianceAt(middle);
      penumbra = (edge & 1) == 1;
    }
  }

  Glide(Lanes lanes) {
    of = lanes;
    int n = lanes.count;
    ohm = new double[n];
    locked = new double[n];
    leak = new double[n];
    given = new double[n];
    rest = new double[n];
    loaded = new double[n];
    amps = new double[n];
    root = new double[n];
    used = new double[n];
    heat = new double[n];
    lost = new double[n];
    endSoc = new double[n];
    endBattery = new double[n];
    endStructure = new double[n];
  }

  /** Tries the step for every body. */
  void attempt(Stretch stretch) {
    at = stretch;
    seconds = stretch.step;
    warm();
    light();
    currents();
    taper();
    charges();
    temperatures();
  }

  private void warm() {
    for (int i = 0; i < of.count; i++) {
      double middle = of.batteryC[i] + of.batteryRate[i] * seconds / 2 + of.shiftKelvin[i];
      double celsius = Math.max(PowerPhysics.COLDEST_CELSIUS, middle);
      double below = Math.max(0, PowerPhysics.LOCK_CELSIUS - celsius);
      double place = PowerPhysics.place(celsius);
      ohm[i] = of.coldOhm[i] * PowerPhysics.resistanceFactorAt(place);
      locked[i] = Math.min(PowerPhysics.MOST_LOCKED, of.lockPerKelvin[i] * below);
      leak[i] = of.selfPerSecond[i] * PowerPhysics.selfDischargeFactorAt(place) * seconds;
    }
  }

  private void light() {
    double sun = at.irradiance * at.sunlit;
    double back = at.irradiance * at.thrownBack;
    double[] sunGain = of.sunGain;
    double[] backGain = of.backGain;
    double[] perKelvin = of.perKelvin;
    double[] structureC = of.structureC;
    double[] structureRate = of.structureRate;
    double half = seconds / 2;
    for (int i = 0; i < given.length; i++) {
      double celsius = structureC[i] + structureRate[i] * half;
      double factor = 1 + perKelvin[i] * (celsius - PowerPhysics.ARRAY_CELSIUS);
      given[i] = (sun * sunGain[i] + back * backGain[i]) * Math.max(0, factor);
    }
  }

  /** Charging and discharging side by side; one of the two is nothing. */
  private void currents() {
    double half = seconds / 2;
    double[] soc = of.soc;
    double[] load = of.load;
    double[] offset = of.offset;
    double[] slope = of.slope;
    double[] offsetLoaded = of.offsetLoaded;
    double[] slopeLoaded = of.slopeLoaded;
    double[] perCoulomb = of.perCoulomb;
    double[] limit = of.limitAmps;
    for (int i = 0; i < amps.length; i++) {
      double net = given[i] - load[i];
      double up = Math.max(0, net);
      double down = Math.min(0, net);
      double emf = offset[i] + slope[i] * soc[i];
      double effective = ohm[i] + slope[i] * perCoulomb[i] * half;
      double in = 2 * up / (emf + Math.sqrt(emf * emf + 4 * effective * up));
      double reach = soc[i] - locked[i] * (1 - soc[i]);
      double emfLoaded = offsetLoaded[i] + slopeLoaded[i] * reach;
      double tangent = slopeLoaded[i] * (1 + locked[i]) * perCoulomb[i] * half;
      double square = emfLoaded * emfLoaded + 4 * (ohm[i] + tangent) * down;
      double out = 2 * down / (emfLoaded + Math.sqrt(Math.max(0, square)));
      amps[i] = Math.min(in, limit[i]) + out;
      rest[i] = emf;
      loaded[i] = emfLoaded;
      root[i] = square;
    }
  }

  /** Where the terminals would pass the charger's voltage, the current tapers. */
  private void taper() {
    for (int i = 0; i < amps.length; i++) {
      double rise = of.slope[i] * of.perCoulomb[i];
      double kept = 1 - of.lostCharge[i];
      double top = rest[i] + amps[i] * (ohm[i] + rise * kept * seconds);
      if (amps[i] > 0 && top > of.limitVolts[i]) {
        double room = of.limitVolts[i] - rest[i];
        double tapered = Charger.taper(amps[i], room, rise * kept, ohm[i], seconds);
        // a taper that may end is for the machine to follow
        root[i] = of.endAmps[i] > 0 ? -1 : root[i];
        amps[i] = tapered;
      }
    }
  }

  private void charges() {
    double half = seconds / 2;
    double[] soc = of.soc;
    double[] load = of.load;
    double[] slope = of.slope;
    double[] slopeLoaded = of.slopeLoaded;
    double[] perCoulomb = of.perCoulomb;
    double[] lostCharge = of.lostCharge;
    for (int i = 0; i < amps.length; i++) {
      double in = Math.max(0, amps[i]);
      double out = Math.min(0, amps[i]);
      double rising = slope[i] * perCoulomb[i] * half;
      double falling = slopeLoaded[i] * (1 + locked[i]) * perCoulomb[i] * half;
      double charging = in * (rest[i] + in * (ohm[i] + rising));
      double discharging = out * (loaded[i] + out * (ohm[i] + falling));
      used[i] = load[i] + charging + discharging;
      heat[i] = amps[i] * amps[i] * ohm[i] + out * (loaded[i] - rest[i]);
      lost[i] = in * seconds * lostCharge[i];
      endSoc[i] = soc[i] + (amps[i] * seconds - lost[i]) * perCoulomb[i] - leak[i];
    }
  }

  private void temperatures() {
    double sun = at.irradiance * at.sunlit;
    double back = at.irradiance * at.thrownBack;
    double[] load = of.load;
    double[] heater = of.heater;
    double[] structureC = of.structureC;
    double[] batteryC = of.batteryC;
    double[] coupling = of.coupling;
    double[] radiation = of.radiation;
    double[] sunHeat = of.sunHeat;
    double[] backHeat = of.backHeat;
    double[] earthHeat = of.earthHeat;
    double[] structureCapacity = of.structureCapacity;
    double[] batteryCapacity = of.batteryCapacity;
    for (int i = 0; i < endSoc.length; i++) {
      double kelvin = structureC[i] + KELVIN;
      double cubed = radiation[i] * kelvin * kelvin * kelvin;
      double across = coupling[i] * (batteryC[i] - structureC[i]);
      double from = sun * sunHeat[i] + back * backHeat[i] + earthHeat[i];
      double into = from + load[i] - heater[i] - used[i] + across - cubed * kelvin;
      double outer = seconds * (4 * cubed + coupling[i]);
      double inner = seconds * coupling[i];
      double structure = Math.max(structureCapacity[i] + outer / 2, outer);
      double battery = Math.max(batteryCapacity[i] + inner / 2, inner);
      endStructure[i] = structureC[i] + seconds * into / structure;
      endBattery[i] = batteryC[i] + seconds * (heat[i] + heater[i] - across) / battery;
    }
  }

  /** Whether nothing can have happened to a body in the tried step. */
  boolean quiet(int i) {
    double end = endSoc[i];
    if (!of.glides[i] || root[i] < 0 || end < of.damageSoc[i]) {
      return false;
    }
    double celsius = Math.max(PowerPhysics.COLDEST_CELSIUS, endBattery[i] + of.shiftKelvin[i]);
    if (!(celsius > of.coldestC[i] && celsius < of.warmestC[i])) {
      return false;
    }
    return (end >= Circuit.STEEP_SOC || onPiece(i, end)) && between(i);
  }

  private boolean onPiece(int i, double end) {
    double reach = end - locked[i] * (1 - end);
    return end >= of.low[i]
        && end < of.high[i]
        && reach >= of.lowLoaded[i]
        && reach < of.highLoaded[i];
  }

  /** Whether the voltage has stayed well between floor and ceiling, a burst included. */
  private boolean between(int i) {
    boolean charging = amps[i] > 0 || given[i] >= of.load[i];
    double slope = charging ? of.slope[i] : of.slopeLoaded[i] * (1 + locked[i]);
    double start = charging ? rest[i] : loaded[i];
    double half = slope * (endSoc[i] - of.soc[i]) / 2;
    double middle = start + half + amps[i] * ohm[i];
    double least = middle - Math.abs(half);
    double most = middle + Math.abs(half);
    double slack = PowerPhysics.NEAR_VOLTS;
    if (at.penumbra) {
      slack += Circuit.PENUMBRA_SLACK * at.irradiance * of.sunGain[i] / least * ohm[i];
    }
    least -= Circuit.BURST_SLACK * of.burst[i] / least * ohm[i];
    return least > of.floorVolts[i] + slack && most < of.ceilingVolts[i] - slack;
  }

  /** Keeps the try of a body. */
  void keep(int i, Circuit circuit) {
    of.coulombicJoule[i] += lost[i] * rest[i];
    of.selfJoule[i] += leak[i] / of.perCoulomb[i] * rest[i];
    of.usedJoule[i] += used[i] * seconds;
    of.loadJoule[i] += of.load[i] * seconds;
    of.resistanceJoule[i] += heat[i] * seconds;
    of.soc[i] = endSoc[i];
    of.batteryRate[i] = (endBattery[i] - of.batteryC[i]) / seconds;
    of.structureRate[i] = (endStructure[i] - of.structureC[i]) / seconds;
    of.batteryC[i] = endBattery[i];
    of.structureC[i] = endStructure[i];
    if (!onPiece(i, endSoc[i])) {
      circuit.fillCurve(of, i, locked[i]);
    }
  }
}

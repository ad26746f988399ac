package hark.power;

import hark.power.PowerModel.Scheme;

/**
 * Arrays, charger, battery and load at one point, the bus, with constant-power loads: the voltage V
 * = E + I·R meets V·I = P in a quadratic. What the battery asks of its charger is in {@link
 * Charger}. Currents are positive into the battery.
 */
class Junction {
  final OpenCircuit curve;
  final Charger charger;
  final boolean direct;
  final double chargeVolts;

  /** Capacity of the connected strings, C. */
  double coulomb;

  // The last solution.
  double amps;

  /** Voltage at the bus; 0 when the load pulls it down, NaN when nothing feeds it. */
  double busVolts;

  /** Voltage at the bus while a burst is sent. */
  double burstVolts;

  /** Voltage at the pack's own terminals, and while a burst is sent. */
  double packVolts;

  double burstPackVolts;

  /** Whether battery and arrays together can feed the load, and that of a burst. */
  boolean feeds;

  boolean feedsBurst;

  /** Array power that reaches the bus if it is wanted, W. */
  double arrayWatts;

  double ohm;
  double locked;

  /** Piece of the open-circuit curve, its voltage without load and what it rises by, V. */
  int piece;

  double atRest;
  double slopeVolts;
  double usedWatts;
  double servedWatts;
  double polarisationWatts;

  Junction(PowerModel model) {
    PowerModel.Battery battery = model.battery();
    curve = new OpenCircuit(battery.openCircuit(), battery.series());
    direct = model.charging().scheme() == Scheme.DIRECT;
    charger = new Charger(model, curve.fullVolts());
    chargeVolts = model.charging().chargeVolts();
  }

  /**
   * Solves the bus for one current: that at the middle of a step, or for a step of 0 that of the
   * moment.
   */
  void solve(BodyState s, double soc, double step, double given, double load) {
    arrayWatts = given;
    polarisationWatts = 0;
    if (s.batteryGone) {
      packVolts = 0;
      solveArraysAlone(s, load);
      return;
    }
    piece = curve.pieceNear(piece, soc);
    double emf = curve.voltsIn(piece, soc);
    double slope = curve.slopeOf(piece);
    double constantAmps = direct ? given / chargeVolts : 0;
    double constantWatts = direct ? 0 : given;
    atRest = emf;
    if (locked > 0 && constantWatts + emf * constantAmps < load) {
      double reach = soc - locked * (1 - soc);
      int lower = curve.pieceNear(piece, reach);
      emf = curve.voltsIn(lower, reach);
      slope = curve.slopeOf(lower) * (1 + locked);
    }
    slopeVolts = slope;
    double rise = slope / coulomb;
    double effective = ohm + rise * step / 2;
    double source = emf - effective * constantAmps;
    double net = constantWatts + emf * constantAmps - load;
    double discriminant = source * source + 4 * effective * net;
    if (net < 0 && (s.protectionOpen || discriminant < 0)) {
      packVolts = emf;
      if (s.protectionOpen) {
        solveArraysAlone(s, load);
      } else {
        collapse(s.busOff());
      }
      return;
    }
    double free = 2 * net / (source + Math.sqrt(Math.max(0, discriminant)));
    amps = free > 0 ? charger.amps(s, free, new Charger.Way(emf, ohm, rise, step)) : free;
    busVolts = emf + amps * effective;
    packVolts = busVolts;
    feeds = true;
    servedWatts = load;
    usedWatts = load + busVolts * amps;
    polarisationWatts = (emf - atRest) * amps;
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
      busVolts = chargeVolts;
    } else {
      busVolts = s.busOff() ? Double.NaN : 0;
    }
  }
}

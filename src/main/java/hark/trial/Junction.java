package hark.trial;

import hark.power.PowerModel;
import hark.power.PowerModel.Scheme;

/** Where arrays, battery and loads meet; and what keeps the charger from charging. */
final class Junction {
  private final PowerModel model;
  private final Strings strings;
  private final boolean direct;

  /** No charge for the temperature of the cells. */
  boolean inhibited;

  /** No charge for a broken path. */
  boolean pathOpen;

  /** The charge has ended until the voltage is below the resume voltage. */
  boolean ended;

  /** At the bus, V; NaN when nothing feeds it. */
  double volts;

  /** Into the battery, A. */
  double amps;

  /** Whether the load gets what it asks for. */
  boolean fed;

  /** Taken from the charger, W. */
  double usedWatts;

  /** Lost in the battery: in its resistance and by charge that the cold holds back, W. */
  double lostWatts;

  /** Whether the voltage limit sets the current. */
  private boolean tapers;

  Junction(PowerModel model, Strings strings) {
    this.model = model;
    this.strings = strings;
    direct = model.charging().scheme() == Scheme.DIRECT;
  }

  /**
   * Solves the bus.
   *
   * @param given what the charger can give, W; a direct array gives it at the charge voltage
   */
  void solve(double given, double load) {
    tapers = false;
    lostWatts = 0;
    amps = 0;
    if (!strings.carry()) {
      arraysAlone(given, load);
      return;
    }
    double ohm = strings.ohm();
    double emf = strings.openVolts();
    double at = terminalVolts(emf, ohm, given, load);
    double net = netWatts(at, given, load);
    double lifted = emf;
    if (!(net >= 0)) {
      lifted = strings.reachedVolts();
      at = terminalVolts(lifted, ohm, given, load);
      net = netWatts(at, given, load);
    }
    if (!(at > 0)) {
      pulledDown();
      return;
    }
    amps = net / at;
    volts = at;
    if (amps > 0) {
      limit(emf, ohm);
    }
    fed = true;
    usedWatts = load + volts * amps;
    lostWatts = (volts - emf) * amps;
  }

  private double netWatts(double at, double given, double load) {
    return (direct ? given / model.charging().chargeVolts() * at : given) - load;
  }

  /** The higher root of V·(V − E)/R = a·V + w − load; NaN when there is none. */
  private double terminalVolts(double emf, double ohm, double given, double load) {
    double flow = direct ? given / model.charging().chargeVolts() : 0;
    double watts = direct ? 0 : given;
    double b = emf + flow * ohm;
    double under = b * b + 4 * ohm * (watts - load);
    return under < 0 ? Double.NaN : (b + Math.sqrt(under)) / 2;
  }

  private void limit(double emf, double ohm) {
    PowerModel.Charging charging = model.charging();
    double room = Math.min(charging.chargeVolts(), strings.fullVolts()) - emf;
    if (inhibited || pathOpen || ended || room <= Physics.LEAST_ROOM_VOLTS) {
      tapers = room <= Physics.LEAST_ROOM_VOLTS;
      amps = 0;
    } else {
      amps = direct ? amps : Math.min(amps, charging.maxCurrentAmps());
      if (amps * ohm > room) {
        amps = room / ohm;
        tapers = true;
      }
    }
    volts = emf + amps * ohm;
  }

  private void arraysAlone(double given, double load) {
    fed = given > 0 && given >= load;
    volts = fed ? model.charging().chargeVolts() : Double.NaN;
    usedWatts = fed ? load : 0;
  }

  private void pulledDown() {
    amps = 0;
    volts = Double.NaN;
    fed = false;
    usedWatts = 0;
  }

  /** Whether the charger could push current into the battery. */
  boolean couldCharge(double given, double load) {
    return given > load && !inhibited && !pathOpen;
  }

  /** Looks at temperature and taper after a solution. */
  void regulate(double cellCelsius) {
    double inside = inhibited ? Physics.INSIDE_KELVIN : 0;
    PowerModel.Battery battery = model.battery();
    inhibited =
        cellCelsius < battery.chargeMinC() + inside || cellCelsius > battery.chargeMaxC() - inside;
    PowerModel.Charging charging = model.charging();
    if (charging.endAmps() > 0) {
      boolean runOut = tapers && amps < charging.endAmps();
      ended = ended ? !(volts < charging.resumeVolts()) : runOut;
    }
  }
}

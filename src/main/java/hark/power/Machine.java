package hark.power;

import hark.power.PowerModel.BusState;

/**
 * One body as a machine that can be taken from any time to any other: steps cut short where
 * something happens. Shadow edges, onsets and timers are hit exactly; thresholds of the bus, the
 * protection, the thermostat and the charge inhibit are located within a second. What is written
 * down never moves a step. Stretches in which nothing can happen are left to {@link Glide}.
 */
final class Machine {
  /** Changes that may follow each other at one time; the next step goes on from there. */
  private static final int ROUNDS = 32;

  /** How far beside a foretold crossing the next try aims, in parts of what is near enough. */
  private static final double AIM = 0.4;

  final Circuit circuit;
  final BodyState s;
  private final Onboard onboard;
  private final Bus bus;
  private final BusTimers timers;
  private final Beacons beacons;
  private final Recorder recorder;
  private final PowerModel model;
  private final Illumination light;
  private final double stepSeconds;
  private final double dipSeconds;
  private double nextEvent;

  /** Whether all that is due has happened: so after a checkpoint, and not after a command. */
  private boolean settled;

  /**
   * @param resumed where to go on from; null to begin at separation
   */
  Machine(PowerModel model, Illumination light, SimulationRequest request, BodyState resumed) {
    this.model = model;
    this.light = light;
    onboard = new Onboard(request.events(), model);
    recorder = new Recorder(request, resumed == null ? 0 : resumed.seconds, resumed != null);
    circuit = new Circuit(model, light);
    stepSeconds = Math.min(request.longestStepSeconds(), circuit.longestStepSeconds());
    dipSeconds = Math.min(stepSeconds, circuit.dipSeconds());
    bus = new Bus(model, onboard, recorder);
    timers = new BusTimers(model, onboard, bus);
    beacons = new Beacons(model, recorder);
    if (resumed == null) {
      s = new BodyState(onboard.count(), model.beacons().size(), model.battery().parallel());
      s.soc = model.battery().socAtSeparation();
      circuit.renew(s);
      s.storedAtSeparation = circuit.storedJoule(s);
      s.nextSunEdge = light.firstEdgeAfter(0, 0);
      circuit.regulate(s);
      bus.separate(s, circuit);
    } else {
      s = resumed.copy();
      circuit.renew(s);
      circuit.measure(s); // what a command finds
      settled = true;
    }
  }

  /** A command arrives now. */
  void command(OnboardCommand command) {
    bus.command(s, command);
    settled = false;
  }

  /** Settles where it begins, if it has not, and writes down what is due there. */
  void begin() {
    if (settled) {
      findNextEvent(); // no more: a run that was not interrupted does not settle here either
    } else {
      settle();
    }
    keepNow();
  }

  /** Writes down what is due by now. */
  void keepNow() {
    recorder.keepNow(s, circuit);
  }

  /** The next time at which something must be written down, s. */
  double nextRecord() {
    return recorder.next();
  }

  /** The next time at which something happens on board by the clock, s. */
  double nextEvent() {
    return nextEvent;
  }

  /** Keeps a place of the grid and tells true, when no more than that is due. */
  boolean keepGrid(double seconds, double soc) {
    return recorder.keepGrid(s, seconds, soc);
  }

  /** Off and on its way past a shadow edge: power that the arrays keep alive may go or come. */
  void passEdge() {
    timers.watchPower(s, circuit);
    findNextEvent();
  }

  /** Heater or charge inhibit switch where the cells come to a mark, and nothing else happens. */
  void switchAt(boolean high, double batteryCelsius) {
    s.batteryC = batteryCelsius;
    circuit.switchAt(s, high);
    s.loadWatts = load();
    bus.watch(s);
  }

  /** Heater and charge inhibit are as told. */
  void setSwitches(boolean heating, boolean inhibited) {
    s.heating = heating;
    s.chargeInhibited = inhibited;
    s.loadWatts = load();
    bus.watch(s);
  }

  /** Goes on to a time. */
  void advanceTo(double end) {
    while (s.seconds < end) {
      advance(end);
    }
  }

  /** Ends the run. */
  BodyHistory close() {
    beacons.close(s);
    return recorder.history();
  }

  /** One step: to the next place of the grid, event or crossed threshold, whichever comes first. */
  private void advance(double end) {
    boolean dips = dipSeconds < stepSeconds && !Circuit.canDischarge(s) && !circuit.dark(s);
    double grid = PowerPhysics.nextPlace(dips ? dipSeconds : stepSeconds, s.seconds);
    double edge = light.edgeSeconds(s.nextSunEdge);
    double target = Math.min(Math.min(end, grid), Math.min(edge, nextEvent));
    circuit.attempt(s, target - s.seconds);
    boolean crossed = asks(target);
    if (crossed) {
      target = crossing(target);
      circuit.attempt(s, target - s.seconds);
    }
    if (recorder.next() < target) {
      look(target);
      circuit.attempt(s, target - s.seconds);
    }
    circuit.keep(s);
    s.seconds = target;
    boolean switched = circuit.regulate(s);
    if (edge <= target) {
      s.nextSunEdge = light.firstEdgeAfter(target, s.nextSunEdge);
    }
    if (crossed || switched || target >= nextEvent || (edge <= target && s.busOff())) {
      settle();
    }
    recorder.keepNow(s, circuit);
  }

  /** Writes down what is due inside the step, without moving the body. */
  void look(double target) {
    while (recorder.next() < target) {
      double due = recorder.next();
      circuit.attempt(s, due - s.seconds);
      recorder.keepTried(s, circuit, due);
    }
  }

  /** Whether voltages or temperatures at the end of the tried step ask for something. */
  private boolean asks(double seconds) {
    return circuit.wouldSwitch(s) || asksByVolts(seconds);
  }

  private boolean asksByVolts(double seconds) {
    if (circuit.surelyQuiet(s)) {
      return false;
    }
    circuit.measureEnd(s);
    return asksAsMeasured(seconds);
  }

  private boolean asksAsMeasured(double seconds) {
    return bus.wish(s, circuit, seconds, false) != Bus.Wish.NOTHING
        || (s.sagAt == BodyState.NEVER && bus.wouldSag(s, circuit, seconds));
  }

  /**
   * The first time at which the body asks for something, to a second, or ten for warmth alone: by
   * the straight line between the margins at both ends, aimed at either side of the mark in turn,
   * and by halves where that does not close in.
   */
  private double crossing(double end) {
    boolean onlyWarmth = !asksByVolts(end);
    double near = onlyWarmth ? PowerPhysics.SWITCH_SECONDS : PowerPhysics.EDGE_SECONDS;
    double before = s.seconds;
    double after = end;
    double past = bus.margin(s, circuit);
    circuit.measure(s);
    double room = bus.margin(s, circuit);
    double side = AIM;
    double wide = after - before;
    for (int turn = 1; after - before > near; turn++) {
      double at = before + (after - before) / 2;
      boolean closes = after - before < wide;
      wide = turn % 2 == 0 ? (after - before) / 2 : wide;
      boolean bracketed = !onlyWarmth && room > 0 && past < 0;
      if (bracketed && (closes || turn < 3)) {
        double mark = before + (after - before) * room / (room - past) + side * near;
        at = Math.max(before + AIM * near, Math.min(after - AIM * near, mark));
      }
      circuit.attempt(s, at - s.seconds);
      circuit.measureEnd(s);
      boolean asks = circuit.wouldSwitch(s) || asksAsMeasured(at);
      double margin = bus.margin(s, circuit);
      if (asks) {
        after = at;
        past = margin;
        side = -AIM;
      } else {
        before = at;
        room = margin;
        side = AIM;
      }
    }
    return after;
  }

  /** Lets everything happen that is due now, until nothing more asks for attention. */
  private void settle() {
    s.nextSunEdge = light.firstEdgeAfter(s.seconds, s.nextSunEdge);
    boolean inBurst = s.sagAt <= s.seconds;
    for (int round = 0; round < ROUNDS; round++) {
      boolean fired = timers.fireDue(s, circuit);
      circuit.renew(s);
      beacons.observe(s, timers.quietOver(s), circuit.busVolts);
      s.loadWatts = load();
      circuit.measure(s);
      Bus.Wish wish = bus.wish(s, circuit, s.seconds, false);
      if (wish == Bus.Wish.NOTHING && inBurst) {
        wish = bus.wish(s, circuit, s.seconds, true);
      }
      if (wish == Bus.Wish.NOTHING && !fired) {
        break;
      }
      bus.act(s, wish, circuit);
    }
    bus.watch(s);
    boolean sags = bus.wouldSag(s, circuit, s.seconds);
    s.sagAt = sags ? beacons.nextBurst(s) : BodyState.NEVER;
    findNextEvent();
  }

  private void findNextEvent() {
    nextEvent = Math.min(timers.next(s), beacons.nextChange(s));
  }

  /** Everything that the bus feeds now, W. */
  private double load() {
    double watts = model.bus().loads().of(s.bus) + beacons.receiverWatts(s);
    if (s.bus == BusState.OFF) {
      return watts + s.extraWattsWhenOff;
    }
    watts += s.extraWatts + s.hungWatts + s.transmitWatts;
    if (s.heating) {
      watts += circuit.heaterWatts();
    }
    return s.seconds < s.releaseUntil ? watts + PowerPhysics.RELEASE_WATTS : watts;
  }
}

package hark.power;

import hark.power.PowerModel.BusState;

/**
 * Simulates one body from separation: battery, temperatures, bus and beacons. Plain and readable:
 * steps of a minute, cut short where something happens. Shadow edges, onsets and timers are hit
 * exactly; thresholds of the bus, the protection, the thermostat and the charge inhibit are located
 * within a quarter of a second. Pure and single-threaded: callers run bodies in parallel.
 */
public final class Simulation {
  /** Changes that may follow each other at one time; the next step goes on from there. */
  private static final int ROUNDS = 32;

  private final Circuit circuit;
  private final Onboard onboard;
  private final Bus bus;
  private final BusTimers timers;
  private final Beacons beacons;
  private final Recorder recorder;
  private final PowerModel model;
  private final Illumination light;
  private final double endSeconds;
  private final BodyState s;
  private double nextEvent;

  private Simulation(
      PowerModel model, Illumination light, SimulationRequest request, BodyState resumed) {
    this.model = model;
    this.light = light;
    endSeconds = request.endSeconds();
    onboard = new Onboard(request.events(), model.battery().parallel());
    recorder = new Recorder(request, resumed == null ? 0 : resumed.seconds, resumed != null);
    circuit = new Circuit(model, light);
    bus = new Bus(model, onboard, recorder);
    timers = new BusTimers(model, onboard, bus);
    beacons = new Beacons(model, recorder);
    if (resumed == null) {
      s = new BodyState(onboard.count(), model.beacons().size());
      s.soc = model.battery().socAtSeparation();
    } else {
      s = resumed.copy();
    }
  }

  /** Runs a body from separation to the request's end. */
  public static BodyHistory run(PowerModel model, Illumination light, SimulationRequest request) {
    Simulation simulation = new Simulation(model, light, request, null);
    simulation.start();
    return simulation.finish();
  }

  /**
   * Goes on from a checkpoint as if nothing had happened. The request must hold the same events as
   * the run that made the checkpoint. The history keeps grid and probes from the checkpoint on and
   * checkpoints after it; a beacon or receiver that ran at the checkpoint keeps its earlier start.
   */
  public static BodyHistory resume(
      PowerModel model,
      Illumination light,
      SimulationRequest request,
      BodyHistory.Checkpoint checkpoint) {
    return resumed(model, light, request, checkpoint).finish();
  }

  /** As {@link #resume}, with a command that arrives at the checkpoint's time. */
  public static BodyHistory branch(
      PowerModel model,
      Illumination light,
      SimulationRequest request,
      BodyHistory.Checkpoint checkpoint,
      OnboardCommand command) {
    Simulation simulation = resumed(model, light, request, checkpoint);
    simulation.bus.command(simulation.s, command);
    return simulation.finish();
  }

  /** Where the energy of a run from separation goes. */
  public static EnergyBooks energy(
      PowerModel model, Illumination light, SimulationRequest request) {
    Simulation simulation = new Simulation(model, light, request, null);
    BodyState s = simulation.s;
    double before = simulation.circuit.storedJoule(s);
    simulation.start();
    simulation.finish();
    return new EnergyBooks(
        s.arrayJoule,
        s.loadJoule,
        s.chargerLossJoule,
        s.resistanceLossJoule,
        simulation.circuit.storedJoule(s) - before,
        s.removedJoule);
  }

  private static Simulation resumed(
      PowerModel model,
      Illumination light,
      SimulationRequest request,
      BodyHistory.Checkpoint checkpoint) {
    if (!(checkpoint instanceof Recorder.Kept kept)) {
      throw new IllegalArgumentException("the checkpoint does not come from this simulation");
    }
    if (kept.state().standing.length != request.events().size()) {
      throw new IllegalArgumentException(
          "the checkpoint belongs to a run with "
              + kept.state().standing.length
              + " changes, the request has "
              + request.events().size());
    }
    return new Simulation(model, light, request, kept.state());
  }

  private void start() {
    s.nextSunEdge = light.firstEdgeAfter(0, 0);
    circuit.regulate(s);
    bus.separate(s, circuit);
  }

  private BodyHistory finish() {
    settle();
    while (s.seconds < endSeconds) {
      advance();
    }
    beacons.close(s);
    return recorder.history();
  }

  /** One step: to the next minute, event or crossed threshold, whichever comes first. */
  private void advance() {
    double minute =
        PowerPhysics.STEP_SECONDS * (Math.floor(s.seconds / PowerPhysics.STEP_SECONDS) + 1);
    double target = Math.min(endSeconds, Math.min(minute, nextEvent));
    circuit.attempt(s, target - s.seconds);
    boolean crossed = asks(target);
    if (crossed) {
      target = crossing(target);
      circuit.attempt(s, target - s.seconds);
    }
    circuit.keep(s);
    s.seconds = target;
    circuit.regulate(s);
    if (crossed || target >= nextEvent) {
      settle();
    }
  }

  /** Whether voltages or temperatures at the end of the tried step ask for something. */
  private boolean asks(double seconds) {
    return bus.wish(s, circuit, seconds) != Bus.Wish.NOTHING || circuit.wouldSwitch(s);
  }

  /** The first time, to a quarter of a second, at which the body asks for something. */
  private double crossing(double end) {
    double before = s.seconds;
    double after = end;
    while (after - before > PowerPhysics.EDGE_SECONDS) {
      double middle = (before + after) / 2;
      circuit.attempt(s, middle - s.seconds);
      if (asks(middle)) {
        after = middle;
      } else {
        before = middle;
      }
    }
    return after;
  }

  /** Lets everything happen that is due now, until nothing more asks for attention. */
  private void settle() {
    s.nextSunEdge = light.firstEdgeAfter(s.seconds, s.nextSunEdge);
    for (int round = 0; round < ROUNDS; round++) {
      boolean fired = timers.fireDue(s, circuit);
      beacons.observe(s, timers.quietOver(s));
      s.loadWatts = load();
      circuit.measure(s);
      Bus.Wish wish = bus.wish(s, circuit, s.seconds);
      if (wish == Bus.Wish.NOTHING && !fired) {
        break;
      }
      bus.act(s, wish, circuit);
    }
    recorder.keep(s, circuit);
    nextEvent =
        Math.min(light.edgeSeconds(s.nextSunEdge), Math.min(timers.next(s), recorder.next()));
  }

  /** Everything that the bus feeds now, W. */
  private double load() {
    double watts = model.bus().loads().of(s.bus);
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

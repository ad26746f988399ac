package hark.trial;

import hark.power.Illumination;
import hark.power.OnboardCommand;
import hark.power.PowerModel;
import hark.power.PowerModel.BusState;
import java.util.ArrayList;
import java.util.List;

/**
 * One body's electrical system in equal short steps: the slow, obvious twin of the simulation in
 * {@code hark.power}, after {@code src/docs/power-model.md}. Each step lets happen what is due,
 * looks at the thresholds, first between bursts and then under the full sag of the bursts that
 * touch it, and moves charge and heat by Euler's rule.
 */
public final class PlainBody {
  /** Changes that may follow each other at one time; the next step goes on from there. */
  private static final int ROUNDS = 100;

  private final PowerModel model;
  private final PlainRequest request;
  private final Sky sky;
  private final SolarPower solar;
  private final Heat heat;
  private final Strings strings;
  private final Junction junction;
  private final Mishaps mishaps;
  private final Machine bus;
  private final Transmitter transmitter;
  private final Ledger ledger = new Ledger();
  private final Trace trace;
  private double given;
  private boolean heating;
  private int commandsDone;
  private final List<OnboardCommand> arriving = new ArrayList<>();
  private int stepsDone;

  private PlainBody(PowerModel model, Illumination light, PlainRequest request) {
    this.model = model;
    this.request = request;
    sky = new Sky(light);
    Panels panels = new Panels(model.arrays().faces());
    solar = new SolarPower(model, sky, panels);
    heat = new Heat(model.thermal());
    strings = new Strings(model.battery(), heat, ledger);
    junction = new Junction(model, strings);
    mishaps =
        new Mishaps(request.changes(), new Mishaps.Parts(solar, panels, strings, junction, heat));
    bus = new Machine(model, mishaps, panels);
    transmitter = new Transmitter(model.beacons());
    trace = new Trace(request);
  }

  /** Runs a body from separation to the request's end. */
  public static PlainHistory run(PowerModel model, Illumination light, PlainRequest request) {
    return new PlainBody(model, light, request).run();
  }

  /**
   * A body on its way that waits for what comes up to it: {@link #advance}, {@link #command},
   * {@link #advance}…
   */
  public static PlainBody start(PowerModel model, Illumination light, PlainRequest request) {
    return new PlainBody(model, light, request);
  }

  private PlainHistory run() {
    double before = strings.stored();
    double end = steps() * request.stepSeconds();
    advance(end);
    look(end);
    settle(end);
    trace.keep(steps(), strings, junction, bus);
    return trace.history(transmitter, bus, heat, ledger.close(strings.stored() - before));
  }

  private int steps() {
    return (int) Math.ceil(request.endSeconds() / request.stepSeconds() - 1e-9);
  }

  /** Goes on to a time, s since separation, in whole steps; no further than the request's end. */
  public void advance(double seconds) {
    double step = request.stepSeconds();
    int last = Math.min(steps(), (int) Math.ceil(seconds / step - 1e-9));
    for (; stepsDone < last; stepsDone++) {
      double now = stepsDone * step;
      look(now);
      transmitter.beginStep(now, step);
      settle(now);
      trace.keep(stepsDone, strings, junction, bus);
      burst(now);
      move(now);
    }
  }

  /** A command arrives now: at the beginning of the next step. */
  public void command(OnboardCommand command) {
    arriving.add(command);
  }

  /** Beginnings of the bursts sent so far, for each beacon, s. */
  public List<double[]> bursts() {
    return transmitter.bursts();
  }

  /** Whether the receiver on board has power now. */
  public boolean receives() {
    return model.receiver().states().contains(bus.state());
  }

  /** How often power came on and boot began. */
  public int boots() {
    return bus.boots();
  }

  /** What the time brings: light, faults, commands, timers. */
  private void look(double seconds) {
    sky.lookAt(seconds);
    if (mishaps.begin(seconds, bus.off())) {
      bus.restartTimers();
    }
    given = giving(seconds);
    junction.regulate(heat.cellCelsius());
    if (seconds == 0) {
      junction.solve(given, bus.watts());
      bus.separate(canStart());
    }
    bus.tick(seconds, solar.dark());
    while (commandsDone < request.commands().size()
        && request.commands().get(commandsDone).seconds() <= seconds) {
      bus.command(request.commands().get(commandsDone++).command());
    }
    arriving.forEach(bus::command);
    arriving.clear();
  }

  private double giving(double seconds) {
    return solar.watts(seconds, heat.structureCelsius) * model.charging().efficiency();
  }

  private boolean canStart() {
    return bus.canStart(strings.carry(), junction.volts, given);
  }

  /** Everything between bursts, until nothing more asks for attention. */
  private void settle(double seconds) {
    thermostat();
    for (int round = 0; round < ROUNDS; round++) {
      double load = load();
      junction.solve(given, load);
      boolean charger = junction.couldCharge(given, load);
      boolean changed =
          bus.act(junction, canStart(), strings.carry())
              || strings.close(charger, junction.volts, bus.off())
              || opens();
      if (!changed) {
        break;
      }
      given = giving(seconds);
    }
    transmitter.observe(seconds, bus, junction.volts);
  }

  /** A string opens while current leaves the battery at too low a voltage. */
  private boolean opens() {
    return junction.fed && !(junction.amps > 0) && strings.open(junction.volts);
  }

  /** The bursts of the step begin, and with the inrush they may pull the bus down. */
  private void burst(double seconds) {
    transmitter.send(seconds, request.stepSeconds());
    double peak = transmitter.peakWatts() + bus.inrushWatts();
    for (int round = 0; peak > 0 && round < ROUNDS; round++) {
      junction.solve(given, load() + peak);
      if (bus.actOnSag(junction, strings.carry())) {
        if (bus.off()) {
          transmitter.cut(seconds);
        }
        settle(seconds);
        return;
      }
      if (!opens()) {
        return;
      }
    }
  }

  /** Charge and heat move on under the mean load of the step. */
  private void move(double seconds) {
    double step = request.stepSeconds();
    double pulses = (transmitter.joules() + bus.inrushJoules(step)) / step;
    double load = load() + pulses;
    junction.solve(given, load);
    double drawn = junction.usedWatts / model.charging().efficiency();
    double served = junction.fed ? load : 0;
    ledger.arrays += drawn * step;
    ledger.chargerLoss += (drawn - junction.usedWatts) * step;
    ledger.loads += served * step;
    ledger.resistanceLoss += junction.lostWatts * step;
    strings.step(junction.amps, step, seconds + step);
    double heater = junction.fed ? heaterWatts() : 0;
    heat.step(sky, step, served - heater - junction.usedWatts, junction.lostWatts + heater);
  }

  private void thermostat() {
    PowerModel.Heater heater = model.battery().heater().orElse(null);
    if (heater != null) {
      double until = heating ? heater.offAboveC() : heater.onBelowC();
      heating = !bus.off() && heat.cellCelsius() < until;
    }
  }

  private double heaterWatts() {
    return heating && !bus.off() ? model.battery().heater().orElseThrow().watts() : 0;
  }

  /** Everything that the bus feeds between bursts, W. */
  private double load() {
    PowerModel.Receiver receiver = model.receiver();
    BusState state = bus.state();
    double listening = receiver.states().contains(state) ? receiver.watts() * receiver.duty() : 0;
    return bus.watts() + listening + heaterWatts();
  }

  /** What is written down along the way. */
  private static final class Trace {
    private final double gridSeconds;
    private final int every;
    private final double[] soc;
    private final double[] volts;
    private final double[] amps;
    private final List<BusState> states = new ArrayList<>();

    private Trace(PlainRequest request) {
      gridSeconds = request.gridSeconds();
      every = (int) Math.rint(gridSeconds / request.stepSeconds());
      int steps = (int) Math.ceil(request.endSeconds() / request.stepSeconds() - 1e-9);
      soc = new double[steps / every + 1];
      volts = new double[soc.length];
      amps = new double[soc.length];
    }

    private void keep(int step, Strings strings, Junction junction, Machine bus) {
      if (step % every == 0) {
        soc[step / every] = strings.toldSoc();
        volts[step / every] = junction.volts;
        amps[step / every] = junction.amps;
        states.add(bus.state());
      }
    }

    private PlainHistory history(
        Transmitter transmitter, Machine bus, Heat heat, PlainHistory.Books books) {
      return new PlainHistory(
          gridSeconds,
          soc,
          volts,
          amps,
          List.copyOf(states),
          transmitter.bursts(),
          List.copyOf(bus.transitions()),
          bus.boots(),
          books,
          heat.batteryCelsius,
          heat.structureCelsius);
    }
  }
}

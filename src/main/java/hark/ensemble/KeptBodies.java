package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.Illumination;
import hark.power.PowerModel.BusState;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import hark.power.SimulationRequest.TimedChange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Bodies that were flown once, from separation to a far end, and what is read off them for one
 * diagnosis: telemetry is flown again from the checkpoint before it, a command from separation.
 */
final class KeptBodies {
  /** Grid of state of charge and bus state that is kept, s. */
  static final double GRID_SECONDS = 1800;

  private static final double DAY_SECONDS = 86_400;

  /** Telemetry mostly comes early: checkpoints lie closer in the first two days. */
  private static final double EARLY_SECONDS = 2 * DAY_SECONDS;

  private static final double EARLY_STEP_SECONDS = 21_600;

  /** The first checkpoint, so that there is one before every command. */
  private static final double FIRST_SECONDS = 400;

  private final Illumination light;
  private final SimulationRequest flight;
  private final List<Body> bodies;

  /** Bodies of one {@code flight} under one light. */
  KeptBodies(Illumination light, SimulationRequest flight, List<Body> bodies) {
    this.light = light;
    this.flight = flight;
    this.bodies = bodies;
  }

  /** How bodies are flown that are to be kept until a time, s since separation. */
  static SimulationRequest flight(double endSeconds) {
    double[] checkpoints =
        DoubleStream.concat(
                DoubleStream.of(FIRST_SECONDS),
                DoubleStream.iterate(EARLY_STEP_SECONDS, t -> t < endSeconds, KeptBodies::after))
            .map(Simulation::lastPlace)
            .toArray();
    return new SimulationRequest(
        endSeconds, 0, GRID_SECONDS, List.of(), new double[0], checkpoints);
  }

  private static double after(double seconds) {
    return seconds + (seconds < EARLY_SECONDS ? EARLY_STEP_SECONDS : DAY_SECONDS);
  }

  /** Some stretch of the grid; the first place is the last one not after {@code from}. */
  static Body cut(Body body, double from, double to) {
    BodyHistory whole = body.history();
    int first = (int) Math.max(0, Math.floor(from / GRID_SECONDS));
    int end = Math.min(whole.soc().length, (int) Math.floor(to / GRID_SECONDS) + 1);
    BodyHistory history =
        new BodyHistory(
            first * GRID_SECONDS,
            GRID_SECONDS,
            Arrays.copyOfRange(whole.soc(), first, end),
            Arrays.copyOfRange(whole.states(), first, end),
            whole.segments(),
            whole.receiverOn(),
            whole.transitions(),
            whole.probes(),
            whole.books(),
            whole.checkpoints());
    SimulationRequest known = body.request();
    SimulationRequest request =
        new SimulationRequest(
            to,
            first * GRID_SECONDS,
            GRID_SECONDS,
            known.events(),
            known.probeSeconds(),
            known.checkpointSeconds());
    return new Body(body.model(), request, history);
  }

  /**
   * The bodies with answers to frames of telemetry; those that could not have sent one answer with
   * no voltage.
   */
  List<Body> telling(List<Frame> frames, Workers workers) {
    if (frames.isEmpty()) {
      return bodies;
    }
    BodyHistory.Probe[][] probes = new BodyHistory.Probe[bodies.size()][frames.size()];
    for (int first = 0; first < frames.size(); ) {
      int from = checkpointBefore(frames.get(first).seconds());
      int end = first;
      while (end < frames.size() && checkpointBefore(frames.get(end).seconds()) == from) {
        end++;
      }
      ask(frames.subList(first, end), from, probes, workers);
      first = end;
    }
    List<Body> telling = new ArrayList<>(bodies.size());
    for (int b = 0; b < bodies.size(); b++) {
      Body body = bodies.get(b);
      for (int k = 0; k < probes[b].length; k++) {
        probes[b][k] = probes[b][k] == null ? mute(frames.get(k).seconds()) : probes[b][k];
      }
      telling.add(new Body(body.model(), body.request(), with(body.history(), List.of(probes[b]))));
    }
    return telling;
  }

  /** Index of the last checkpoint not after a time; −1 when that is separation. */
  private int checkpointBefore(double seconds) {
    int found = Arrays.binarySearch(flight.checkpointSeconds(), seconds);
    return found >= 0 ? found : -found - 2;
  }

  /** Frames that follow one checkpoint, asked of all bodies that send near one of them. */
  private void ask(
      List<Frame> frames, int checkpoint, BodyHistory.Probe[][] into, Workers workers) {
    int[] asked =
        IntStream.range(0, bodies.size())
            .filter(b -> frames.stream().anyMatch(frame -> frame.maySpeak(bodies.get(b))))
            .toArray();
    double end = frames.get(frames.size() - 1).seconds();
    double[] times = frames.stream().mapToDouble(Frame::seconds).toArray();
    workers.eachBlock(
        asked.length,
        Simulation.BLOCK,
        (from, to) -> {
          List<Body> block = Arrays.stream(asked, from, to).mapToObj(bodies::get).toList();
          List<BodyHistory> flown = flown(block, checkpoint, end, times);
          for (int k = from; k < to; k++) {
            for (int f = 0; f < times.length; f++) {
              into[asked[k]][frames.get(f).probe()] = flown.get(k - from).probes().get(f);
            }
          }
        });
  }

  private List<BodyHistory> flown(
      List<Body> block, int checkpoint, double end, double[] probeSeconds) {
    if (checkpoint < 0) {
      List<Simulation.Job> jobs =
          block.stream()
              .map(body -> new Simulation.Job(body.model(), to(end, probeSeconds, body)))
              .toList();
      return Simulation.runAll(jobs, light);
    }
    List<Simulation.Continuation> jobs =
        block.stream()
            .map(
                body ->
                    new Simulation.Continuation(
                        body.model(),
                        to(end, probeSeconds, body),
                        body.history().checkpoints().get(checkpoint)))
            .toList();
    return Simulation.resumeAll(jobs, light);
  }

  private static SimulationRequest to(double end, double[] probeSeconds, Body body) {
    return new SimulationRequest(
        end, end, GRID_SECONDS, body.request().events(), probeSeconds, new double[0]);
  }

  private static BodyHistory.Probe mute(double seconds) {
    double no = Double.NaN;
    return new BodyHistory.Probe(seconds, no, no, no, no, BusState.OFF, 0, 0, no, no, no);
  }

  private static BodyHistory with(BodyHistory history, List<BodyHistory.Probe> probes) {
    return new BodyHistory(
        history.gridStart(),
        history.gridStep(),
        history.soc(),
        history.states(),
        history.segments(),
        history.receiverOn(),
        history.transitions(),
        probes,
        history.books(),
        history.checkpoints());
  }

  /**
   * The bodies, some of them flown anew with commands that they receive.
   *
   * @param known the bodies with their answers to telemetry
   * @param taken commands by body; empty for one that receives none
   */
  List<Body> commanded(List<Body> known, List<List<SentCommand>> taken, Workers workers) {
    int[] changed = IntStream.range(0, known.size()).filter(b -> !taken.get(b).isEmpty()).toArray();
    List<Body> all = new ArrayList<>(known);
    Body[] flown = new Body[changed.length];
    workers.eachBlock(
        changed.length,
        Simulation.BLOCK,
        (from, to) -> {
          List<Simulation.Job> jobs = new ArrayList<>();
          for (int k = from; k < to; k++) {
            jobs.add(job(known.get(changed[k]), taken.get(changed[k])));
          }
          List<BodyHistory> histories = Simulation.runAll(jobs, light);
          for (int k = from; k < to; k++) {
            Simulation.Job job = jobs.get(k - from);
            flown[k] = new Body(job.model(), job.request(), histories.get(k - from));
          }
        });
    for (int k = 0; k < changed.length; k++) {
      all.set(changed[k], flown[k]);
    }
    return all;
  }

  private Simulation.Job job(Body body, List<SentCommand> taken) {
    double[] probes =
        body.history().probes().stream().mapToDouble(BodyHistory.Probe::seconds).toArray();
    List<TimedChange> changes = new ArrayList<>(body.request().events());
    taken.forEach(sent -> changes.add(sent.arrival()));
    SimulationRequest request =
        new SimulationRequest(
            flight.endSeconds(),
            flight.gridStartSeconds(),
            flight.gridStepSeconds(),
            changes,
            probes,
            flight.checkpointSeconds());
    return new Simulation.Job(body.model(), request);
  }
}

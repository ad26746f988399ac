package hark.power;

import hark.power.BodyHistory.BeaconSegment;
import hark.power.BodyHistory.Probe;
import hark.power.BodyHistory.Transition;
import hark.power.PowerModel.BusState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes down what a run was asked to keep. */
final class Recorder {
  /** A checkpoint: a copy of the state that nobody changes. */
  record Kept(BodyState state) implements BodyHistory.Checkpoint {
    @Override
    public double seconds() {
      return state.seconds;
    }
  }

  /** Grid times that miss a whole number of steps by less than this share count as on it. */
  private static final double GRID_SLACK = 1e-9;

  private final SimulationRequest request;
  private final int firstGrid;
  private final double[] probeTimes;
  private final double[] checkpointTimes;
  private final float[] soc;
  private final byte[] states;
  private final List<BeaconSegment> segments = new ArrayList<>();
  private final List<double[]> receiverOn = new ArrayList<>();
  private final List<Transition> transitions = new ArrayList<>();
  private final List<Probe> probes = new ArrayList<>();
  private final List<EnergyBooks> books = new ArrayList<>();
  private final List<BodyHistory.Checkpoint> checkpoints = new ArrayList<>();
  private int written;
  private int nextProbe;
  private int nextCheckpoint;

  /** Keeps what lies at or after a time; checkpoints after it if the run resumes from one. */
  Recorder(SimulationRequest request, double fromSeconds, boolean resumes) {
    this.request = request;
    double start = request.gridStartSeconds();
    double step = request.gridStepSeconds();
    firstGrid = Math.max(0, (int) Math.ceil((fromSeconds - start) / step - GRID_SLACK));
    int all = (int) Math.floor((request.endSeconds() - start) / step + GRID_SLACK) + 1;
    int size = Math.max(0, all - firstGrid);
    soc = new float[size];
    states = new byte[size];
    probeTimes = request.probeSeconds();
    checkpointTimes = request.checkpointSeconds();
    while (at(probeTimes, nextProbe) < fromSeconds) {
      nextProbe++;
    }
    while (at(checkpointTimes, nextCheckpoint) < fromSeconds
        || (resumes && at(checkpointTimes, nextCheckpoint) == fromSeconds)) {
      nextCheckpoint++;
    }
    gridAt = nextGrid();
    probeAt = at(probeTimes, nextProbe);
    checkpointAt = at(checkpointTimes, nextCheckpoint);
  }

  /** When the next of each is due, s. */
  private double gridAt;

  private double probeAt;
  private double checkpointAt;

  private double gridDue() {
    return gridAt;
  }

  private double probeDue() {
    return probeAt;
  }

  private double checkpointDue() {
    return checkpointAt;
  }

  private double nextGrid() {
    return written < soc.length
        ? Math.min(
            request.endSeconds(),
            request.gridStartSeconds() + (firstGrid + written) * request.gridStepSeconds())
        : BodyState.NEVER;
  }

  private static double at(double[] times, int next) {
    return next < times.length ? times[next] : BodyState.NEVER;
  }

  /** The next time at which something is kept, s. */
  double next() {
    return Math.min(gridDue(), Math.min(probeDue(), checkpointDue()));
  }

  /** Keeps a place of the grid by its charge alone; false, and nothing kept, when more is due. */
  boolean keepGrid(BodyState s, double seconds, double charge) {
    if (Math.min(probeDue(), checkpointDue()) <= seconds) {
      return false;
    }
    while (gridDue() <= seconds) {
      grid(s, charge);
    }
    return true;
  }

  /** Keeps what is due by now; the body has settled. */
  void keepNow(BodyState s, Circuit circuit) {
    if (next() > s.seconds) {
      return;
    }
    while (gridDue() <= s.seconds) {
      grid(s, s.soc);
    }
    if (Math.min(probeDue(), checkpointDue()) > s.seconds) {
      return;
    }
    circuit.measure(s);
    while (probeDue() <= s.seconds) {
      probes.add(probe(s, circuit, s.soc));
      books.add(circuit.books(s));
      probeAt = at(probeTimes, ++nextProbe);
    }
    while (checkpointDue() <= s.seconds) {
      checkpoints.add(new Kept(s.copy()));
      checkpointAt = at(checkpointTimes, ++nextCheckpoint);
    }
  }

  /** Keeps what is due inside a step, from a try that ends there; the body stays as it is. */
  void keepTried(BodyState s, Circuit circuit, double due) {
    if (gridDue() <= due) {
      grid(s, circuit.triedSoc());
    }
    if (probeDue() <= due || checkpointDue() <= due) {
      BodyState there = s.copy();
      circuit.keep(there);
      there.seconds = due;
      circuit.measure(there);
      if (probeDue() <= due) {
        probes.add(probe(there, circuit, there.soc));
        books.add(circuit.books(there));
        probeAt = at(probeTimes, ++nextProbe);
      }
      if (checkpointDue() <= due) {
        checkpoints.add(new Kept(there));
        checkpointAt = at(checkpointTimes, ++nextCheckpoint);
      }
    }
  }

  @SuppressWarnings("EnumOrdinal") // the history promises ordinals
  private void grid(BodyState s, double charge) {
    soc[written] = (float) reportedSoc(s, charge);
    states[written] = (byte) s.bus.ordinal();
    written++;
    gridAt = nextGrid();
  }

  private static double reportedSoc(BodyState s, double charge) {
    return s.batteryGone ? 0 : Math.max(0, Math.min(1, charge));
  }

  private static Probe probe(BodyState s, Circuit circuit, double charge) {
    double uptime = s.busOff() ? 0 : s.seconds - s.bootedAt;
    return new Probe(
        s.seconds,
        reportedSoc(s, charge),
        circuit.busVolts,
        circuit.amps,
        circuit.cellCelsius(s),
        s.bus,
        s.resets,
        uptime,
        circuit.arrayWatts,
        s.loadWatts,
        s.structureC);
  }

  void transition(double seconds, BusState to, String reason) {
    if (transitions.size() < PowerPhysics.TRANSITIONS_KEPT) {
      transitions.add(new Transition(seconds, to, reason));
    }
  }

  /** A beacon ran until {@code end}; kept when at least one burst began. */
  void segment(int beacon, double firstBurst, double interval, double end) {
    if (firstBurst <= end) {
      segments.add(new BeaconSegment(beacon, firstBurst, interval, end));
    }
  }

  void receiver(double from, double to) {
    if (to > from) {
      receiverOn.add(new double[] {from, to});
    }
  }

  BodyHistory history() {
    segments.sort(Comparator.comparingDouble(BeaconSegment::firstBurst));
    return new BodyHistory(
        request.gridStartSeconds() + firstGrid * request.gridStepSeconds(),
        request.gridStepSeconds(),
        soc,
        states,
        List.copyOf(segments),
        List.copyOf(receiverOn),
        List.copyOf(transitions),
        List.copyOf(probes),
        List.copyOf(books),
        List.copyOf(checkpoints));
  }
}

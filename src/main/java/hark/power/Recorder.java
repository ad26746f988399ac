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
  private final float[] soc;
  private final float[] volts;
  private final byte[] states;
  private final List<BeaconSegment> segments = new ArrayList<>();
  private final List<double[]> receiverOn = new ArrayList<>();
  private final List<Transition> transitions = new ArrayList<>();
  private final List<Probe> probes = new ArrayList<>();
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
    volts = new float[size];
    states = new byte[size];
    while (probeDue() < fromSeconds) {
      nextProbe++;
    }
    while (checkpointDue() < fromSeconds || (resumes && checkpointDue() == fromSeconds)) {
      nextCheckpoint++;
    }
  }

  private double gridDue() {
    return written < soc.length
        ? Math.min(
            request.endSeconds(),
            request.gridStartSeconds() + (firstGrid + written) * request.gridStepSeconds())
        : BodyState.NEVER;
  }

  private double probeDue() {
    double[] times = request.probeSeconds();
    return nextProbe < times.length ? times[nextProbe] : BodyState.NEVER;
  }

  private double checkpointDue() {
    double[] times = request.checkpointSeconds();
    return nextCheckpoint < times.length ? times[nextCheckpoint] : BodyState.NEVER;
  }

  /** The next time at which something is kept, s. */
  double next() {
    return Math.min(gridDue(), Math.min(probeDue(), checkpointDue()));
  }

  /** Keeps what is due now; the circuit has just been solved for this state. */
  @SuppressWarnings("EnumOrdinal") // the history promises ordinals
  void keep(BodyState s, Circuit circuit) {
    while (gridDue() <= s.seconds) {
      soc[written] = (float) reportedSoc(s);
      volts[written] = (float) circuit.busVolts;
      states[written] = (byte) s.bus.ordinal();
      written++;
    }
    while (probeDue() <= s.seconds) {
      probes.add(probe(s, circuit, probeDue()));
      nextProbe++;
    }
    while (checkpointDue() <= s.seconds) {
      checkpoints.add(new Kept(s.copy()));
      nextCheckpoint++;
    }
  }

  private static double reportedSoc(BodyState s) {
    return s.batteryGone ? 0 : Math.max(0, Math.min(1, s.soc));
  }

  private static Probe probe(BodyState s, Circuit circuit, double seconds) {
    double uptime = s.busOff() ? 0 : s.seconds - s.bootedAt;
    return new Probe(
        seconds,
        reportedSoc(s),
        circuit.busVolts,
        circuit.amps,
        circuit.cellCelsius(s),
        s.bus,
        s.resets,
        uptime);
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
        volts,
        states,
        List.copyOf(segments),
        List.copyOf(receiverOn),
        List.copyOf(transitions),
        List.copyOf(probes),
        List.copyOf(checkpoints));
  }
}

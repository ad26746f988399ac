package hark.power;

import hark.power.PowerModel.Beacon;
import hark.power.PowerModel.BusState;
import java.util.List;
import java.util.Set;

/**
 * Which beacons run, at which interval, and whether the receiver has power. From a beacon's first
 * burst on its bursts are drawn from the bus as their average: each in the interval that it begins,
 * and none that was not sent. Their sag is looked at burst by burst.
 */
final class Beacons {
  /** A burst so near to now, in intervals, is the one that begins now. */
  private static final double ROUNDING = 1e-6;

  private final List<Beacon> beacons;
  private final PowerModel.Receiver receiver;
  private final boolean[] receives;

  /** By beacon and state. */
  private final boolean[][] speaks;

  private final Recorder recorder;
  private final boolean followsVolts;
  private final boolean paced;

  Beacons(PowerModel model, Recorder recorder) {
    beacons = model.beacons();
    receiver = model.receiver();
    receives = flags(receiver.states());
    speaks = beacons.stream().map(beacon -> flags(beacon.states())).toArray(boolean[][]::new);
    paced = beacons.stream().anyMatch(beacon -> beacon.pace().later().isPresent());
    followsVolts = beacons.stream().anyMatch(beacon -> beacon.pace().whenLow().isPresent());
    this.recorder = recorder;
  }

  @SuppressWarnings("EnumOrdinal") // a table by state
  private static boolean[] flags(Set<BusState> states) {
    boolean[] flags = new boolean[BusState.values().length];
    states.forEach(state -> flags[state.ordinal()] = true);
    return flags;
  }

  /**
   * Starts and stops beacons and receiver as the body is now.
   *
   * @param volts at the bus, for beacons whose pace hangs on them
   */
  @SuppressWarnings("EnumOrdinal") // a table by state
  void observe(BodyState s, boolean quietOver, double volts) {
    boolean may = quietOver && s.computerRuns() && !s.beaconsSilenced;
    boolean everywhere = s.beaconsInEveryState && s.bus != BusState.BOOT;
    s.transmitWatts = 0;
    s.burstWatts = 0;
    boolean any = false;
    int state = s.bus.ordinal();
    for (int i = 0; i < beacons.size(); i++) {
      boolean runs = may && (everywhere || speaks[i][state]);
      if (runs) {
        run(s, i, volts);
      } else if (!Double.isNaN(s.beaconFrom[i])) {
        stop(s, i);
      }
      any |= runs;
    }
    s.paceAt = any && followsVolts ? nextLook(s) : BodyState.NEVER;
    observeReceiver(s);
  }

  private static double nextLook(BodyState s) {
    return s.paceAt > s.seconds && s.paceAt != BodyState.NEVER
        ? s.paceAt
        : s.seconds + PowerPhysics.PACE_SECONDS;
  }

  private void run(BodyState s, int i, double volts) {
    Beacon beacon = beacons.get(i);
    double interval = interval(s, beacon, volts);
    if (!Double.isNaN(s.beaconFrom[i]) && interval != s.beaconInterval[i]) {
      stop(s, i);
    }
    if (Double.isNaN(s.beaconFrom[i])) {
      s.beaconFrom[i] = s.seconds;
      s.beaconInterval[i] = interval;
    }
    boolean sends = s.seconds >= s.beaconFrom[i] + (1 - ROUNDING) * interval;
    double mean = sends ? beacon.transmitWatts() * beacon.durationSeconds() / interval : 0;
    s.transmitWatts += mean;
    s.burstWatts = Math.max(s.burstWatts, beacon.transmitWatts() - mean);
  }

  private static double interval(BodyState s, Beacon beacon, double volts) {
    BeaconPace pace = beacon.pace();
    if (pace.whenLow().isPresent() && volts < pace.whenLow().get().belowVolts()) {
      return pace.whenLow().get().intervalSeconds();
    }
    if (pace.later().isPresent() && s.seconds >= pace.later().get().afterSeconds()) {
      return pace.later().get().intervalSeconds();
    }
    return pace.byState().getOrDefault(s.bus, beacon.intervalSeconds());
  }

  /** The next time at which a beacon sends its first burst or changes its pace by the clock, s. */
  double nextChange(BodyState s) {
    double next = BodyState.NEVER;
    for (int i = 0; i < beacons.size(); i++) {
      double first = s.beaconFrom[i] + s.beaconInterval[i];
      next = first > s.seconds ? Math.min(next, first) : next; // no beacon: not a number
    }
    return paced ? Math.min(next, nextPace(s)) : next;
  }

  private double nextPace(BodyState s) {
    double next = BodyState.NEVER;
    for (Beacon beacon : beacons) {
      if (beacon.pace().later().isPresent()) {
        double after = beacon.pace().later().get().afterSeconds();
        next = after > s.seconds ? Math.min(next, after) : next;
      }
    }
    return next;
  }

  /** The first burst that begins after now, s. */
  double nextBurst(BodyState s) {
    double next = BodyState.NEVER;
    for (int i = 0; i < beacons.size(); i++) {
      if (!Double.isNaN(s.beaconFrom[i])) {
        double interval = s.beaconInterval[i];
        double sent = Math.floor((s.seconds - s.beaconFrom[i]) / interval + ROUNDING);
        next = Math.min(next, s.beaconFrom[i] + (sent + 1) * interval);
      }
    }
    return next;
  }

  @SuppressWarnings("EnumOrdinal") // a table by state
  private void observeReceiver(BodyState s) {
    boolean on = receives[s.bus.ordinal()];
    if (on && Double.isNaN(s.receiverFrom)) {
      s.receiverFrom = s.seconds;
    } else if (!on && !Double.isNaN(s.receiverFrom)) {
      recorder.receiver(s.receiverFrom, s.seconds);
      s.receiverFrom = Double.NaN;
    }
  }

  /** What the receiver draws on the average now, W. */
  double receiverWatts(BodyState s) {
    return Double.isNaN(s.receiverFrom) ? 0 : receiver.watts() * receiver.duty();
  }

  private void stop(BodyState s, int beacon) {
    double interval = s.beaconInterval[beacon];
    boolean cutShort = s.busOff() && s.sagAt <= s.seconds; // the burst itself took the bus down
    double end = cutShort ? Math.nextDown(s.seconds) : s.seconds;
    recorder.segment(beacon, s.beaconFrom[beacon] + interval, interval, end);
    s.beaconFrom[beacon] = Double.NaN;
  }

  /** The simulation ends: what runs is written down up to now. */
  void close(BodyState s) {
    for (int i = 0; i < beacons.size(); i++) {
      if (!Double.isNaN(s.beaconFrom[i])) {
        stop(s, i);
      }
    }
    if (!Double.isNaN(s.receiverFrom)) {
      recorder.receiver(s.receiverFrom, s.seconds);
    }
  }
}

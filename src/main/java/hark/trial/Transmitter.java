package hark.trial;

import hark.power.BeaconPace;
import hark.power.PowerModel.Beacon;
import hark.power.PowerModel.BusState;
import java.util.ArrayList;
import java.util.List;

/** Beacons: when each burst begins, and what the bursts draw in a step. */
final class Transmitter {
  /** One beacon on its way. */
  private static final class Train {
    private final Beacon beacon;
    private final List<Double> bursts = new ArrayList<>();
    private boolean runs;
    private BusState state;
    private double interval;
    private double nextLook;
    private double nextBurst;
    private double burstEnd = Double.NEGATIVE_INFINITY;
    private double onSeconds;

    private Train(Beacon beacon) {
      this.beacon = beacon;
    }

    /** The interval as state, time and voltage say now. */
    private double pace(double seconds, BusState now, double volts) {
      BeaconPace pace = beacon.pace();
      if (pace.whenLow().isPresent() && volts < pace.whenLow().get().belowVolts()) {
        return pace.whenLow().get().intervalSeconds();
      }
      if (pace.later().isPresent() && seconds >= pace.later().get().afterSeconds()) {
        return pace.later().get().intervalSeconds();
      }
      return pace.byState().getOrDefault(now, beacon.intervalSeconds());
    }

    private boolean laterComesIn(double from, double to) {
      return beacon.pace().later().isPresent()
          && beacon.pace().later().get().afterSeconds() > from
          && beacon.pace().later().get().afterSeconds() <= to;
    }

    private void stop() {
      runs = false;
      onSeconds = 0;
      burstEnd = Double.NEGATIVE_INFINITY;
    }
  }

  private final List<Train> trains;
  private int listed;
  private double lastSeconds;

  Transmitter(List<Beacon> beacons) {
    trains = beacons.stream().map(Train::new).toList();
  }

  /** A step begins: bursts that are on the air go on. */
  void beginStep(double seconds, double step) {
    for (Train train : trains) {
      train.onSeconds = Math.max(0, Math.min(train.burstEnd, seconds + step) - seconds);
    }
  }

  /**
   * Starts, stops and paces the beacons.
   *
   * @param bus says whether any beacon may run, and whether a command started all of them
   * @param volts at the bus between bursts
   */
  void observe(double seconds, Machine bus, double volts) {
    boolean may = bus.mayBeacon(seconds);
    boolean everywhere = bus.beaconsEverywhere();
    for (Train train : trains) {
      boolean runs = may && (everywhere || train.beacon.states().contains(bus.state()));
      if (!runs) {
        train.stop();
        continue;
      }
      boolean looks =
          !train.runs
              || train.state != bus.state()
              || seconds >= train.nextLook
              || train.laterComesIn(lastSeconds, seconds);
      if (looks) {
        look(train, seconds, bus.state(), volts);
      }
    }
    lastSeconds = seconds;
  }

  private static void look(Train train, double seconds, BusState state, double volts) {
    double interval = train.pace(seconds, state, volts);
    boolean due = train.runs && train.nextBurst <= seconds; // it comes before the change
    if (!train.runs || (interval != train.interval && !due)) {
      train.nextBurst = seconds + interval;
    }
    if (!train.runs || seconds >= train.nextLook) {
      train.nextLook = seconds + Physics.LOOK;
    }
    train.runs = true;
    train.state = state;
    train.interval = interval;
  }

  /** Sends what is due in the step. */
  void send(double seconds, double step) {
    double end = seconds + step;
    for (Train train : trains) {
      while (train.runs && train.nextBurst < end) {
        if (listed < PlainHistory.MOST_BURSTS) {
          train.bursts.add(train.nextBurst);
          listed++;
        }
        train.burstEnd = train.nextBurst + train.beacon.durationSeconds();
        train.onSeconds += Math.min(train.burstEnd, end) - train.nextBurst;
        train.nextBurst += train.interval;
      }
    }
  }

  /** The bus went down under what is on the air: nobody gets a burst that is cut off. */
  void cut(double seconds) {
    for (Train train : trains) {
      double length = train.beacon.durationSeconds();
      int last = train.bursts.size() - 1;
      while (last >= 0 && train.bursts.get(last) + length > seconds) {
        train.bursts.remove(last--);
        listed--;
      }
    }
  }

  /** Drawn while every burst that touches the step is on the air, W. */
  double peakWatts() {
    double watts = 0;
    for (Train train : trains) {
      watts += train.onSeconds > 0 ? train.beacon.transmitWatts() : 0;
    }
    return watts;
  }

  /** Taken by bursts in the step, J. */
  double joules() {
    double joules = 0;
    for (Train train : trains) {
      joules += train.onSeconds * train.beacon.transmitWatts();
    }
    return joules;
  }

  /** Beginnings of bursts, s, for each beacon. */
  List<double[]> bursts() {
    return trains.stream()
        .map(train -> train.bursts.stream().mapToDouble(Double::doubleValue).toArray())
        .toList();
  }
}

package hark.power;

import hark.power.PowerModel.Beacon;
import hark.power.PowerModel.BusState;
import java.util.List;
import java.util.Set;

/**
 * Which beacons run and whether the receiver has power. While a beacon runs, its bursts are drawn
 * from the bus as their average.
 */
final class Beacons {
  private final List<Beacon> beacons;
  private final Set<BusState> receiverStates;
  private final Recorder recorder;

  Beacons(PowerModel model, Recorder recorder) {
    beacons = model.beacons();
    receiverStates = model.receiver().states();
    this.recorder = recorder;
  }

  /** Starts and stops beacons and receiver as the body is now. */
  void observe(BodyState s, boolean quietOver) {
    boolean may = quietOver && s.computerRuns() && !s.beaconsSilenced;
    boolean everywhere = s.beaconsInEveryState && s.bus != BusState.BOOT;
    s.transmitWatts = 0;
    for (int i = 0; i < beacons.size(); i++) {
      Beacon beacon = beacons.get(i);
      boolean runs = may && (everywhere || beacon.states().contains(s.bus));
      if (runs) {
        s.transmitWatts +=
            beacon.transmitWatts() * beacon.durationSeconds() / beacon.intervalSeconds();
      }
      if (runs && Double.isNaN(s.beaconFrom[i])) {
        s.beaconFrom[i] = s.seconds;
      } else if (!runs && !Double.isNaN(s.beaconFrom[i])) {
        stop(s, i);
      }
    }
    observeReceiver(s);
  }

  private void observeReceiver(BodyState s) {
    boolean on = receiverStates.contains(s.bus);
    if (on && Double.isNaN(s.receiverFrom)) {
      s.receiverFrom = s.seconds;
    } else if (!on && !Double.isNaN(s.receiverFrom)) {
      recorder.receiver(s.receiverFrom, s.seconds);
      s.receiverFrom = Double.NaN;
    }
  }

  private void stop(BodyState s, int beacon) {
    double interval = beacons.get(beacon).intervalSeconds();
    recorder.segment(beacon, s.beaconFrom[beacon] + interval, interval, s.seconds);
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

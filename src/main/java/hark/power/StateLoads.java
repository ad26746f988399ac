package hark.power;

import hark.power.PowerModel.Beacon;
import hark.power.PowerModel.BusState;

/** What a state of the bus takes, for balances; the simulation draws each part for itself. */
public final class StateLoads {
  private StateLoads() {}

  /**
   * Mean power at the bus in a state, W: its load, the beacons that run in it at their interval
   * there, the receiver with its duty. The battery's heater is left out.
   */
  public static double watts(PowerModel model, BusState state) {
    double beacons =
        model.beacons().stream()
            .filter(beacon -> beacon.states().contains(state))
            .mapToDouble(b -> b.transmitWatts() * b.durationSeconds() / interval(b, state))
            .sum();
    PowerModel.Receiver receiver = model.receiver();
    double listening = receiver.states().contains(state) ? receiver.watts() * receiver.duty() : 0;
    return model.bus().loads().of(state) + beacons + listening;
  }

  private static double interval(Beacon beacon, BusState state) {
    return beacon.pace().byState().getOrDefault(state, beacon.intervalSeconds());
  }
}

package hark.power;

import java.util.List;

/**
 * One simulated body: what its battery, its bus and its beacon did from separation to the horizon.
 * Seconds count from separation; grids are regular from {@code gridStart}.
 *
 * @param gridStart first grid time, s
 * @param gridStep grid step, s
 * @param soc state of charge on the grid, 0…1 (0 while the battery is disconnected for good)
 * @param states bus state on the grid, ordinals of {@link PowerModel.BusState}
 * @param segments stretches in which a beacon runs, in rising order
 * @param receiverOn stretches (from, to) in which the receiver's rail is on, s, rising
 * @param transitions every change of bus state, rising; at most ten thousand, the first ones
 * @param probes answers at the probe times asked for, in that order
 * @param books where the energy went from separation up to each probe time
 * @param checkpoints states of the machine at the times asked for, in that order, from which a run
 *     can branch
 */
public record BodyHistory(
    double gridStart,
    double gridStep,
    float[] soc,
    byte[] states,
    List<BeaconSegment> segments,
    List<double[]> receiverOn,
    List<Transition> transitions,
    List<Probe> probes,
    List<EnergyBooks> books,
    List<Checkpoint> checkpoints) {

  /**
   * This history up to a checkpoint of its own, and from there on that of the run that went on from
   * it: what a single run to the later end would have told, where the checkpoint lies on the grid
   * of steps. Both must have been asked for the same grid; of probes and checkpoints each gives its
   * own.
   */
  public BodyHistory followedBy(BodyHistory rest, Checkpoint from) {
    return new Joined(this, rest, from.seconds()).history();
  }

  /**
   * A beacon running without a break: bursts begin at {@code firstBurst + n·interval} while ≤
   * {@code end}.
   *
   * @param beacon index into the model's beacons
   */
  public record BeaconSegment(int beacon, double firstBurst, double interval, double end) {}

  /** A change of bus state and why, in a few words. */
  public record Transition(double seconds, PowerModel.BusState to, String reason) {}

  /**
   * What telemetry would have said at a time. Volts NaN when the bus has no power at all.
   *
   * @param batteryAmps positive into the battery, A
   * @param resets boots after the first
   * @param arrayWatts that reach the bus if they are wanted, W
   * @param loadWatts drawn, bursts at their mean, W
   */
  public record Probe(
      double seconds,
      double soc,
      double volts,
      double batteryAmps,
      double batteryCelsius,
      PowerModel.BusState state,
      int resets,
      double uptimeSeconds,
      double arrayWatts,
      double loadWatts,
      double structureCelsius) {}

  /** An opaque state of the simulation at a time. */
  public interface Checkpoint {
    /** Time of the checkpoint, s since separation. */
    double seconds();
  }
}

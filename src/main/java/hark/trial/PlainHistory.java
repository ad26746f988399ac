package hark.trial;

import hark.power.PowerModel.BusState;
import java.util.List;

/**
 * What became of a plain body. Times count in seconds from separation; entry {@code i} of the grids
 * belongs to {@code i · gridSeconds}.
 *
 * @param gridSeconds between two entries, s
 * @param soc mean state of charge of the strings that carry the bus, of the resting ones when none
 *     does, 0 when all are lost
 * @param volts at the bus between bursts, V; NaN when nothing feeds it
 * @param amps into the battery between bursts, A
 * @param states of the bus
 * @param bursts beginnings of those sent whole, for each beacon in the model's order, s; at most
 *     {@link #MOST_BURSTS} for all together, the first ones
 * @param transitions changes of state with their reasons; at most {@link #MOST_TRANSITIONS}
 * @param boots how often power came on and boot began
 * @param books where the energy went
 * @param batteryCelsius of the battery's node at the end, °C
 * @param structureCelsius of the structure's node at the end, °C
 */
public record PlainHistory(
    double gridSeconds,
    double[] soc,
    double[] volts,
    double[] amps,
    List<BusState> states,
    List<double[]> bursts,
    List<Transition> transitions,
    int boots,
    Books books,
    double batteryCelsius,
    double structureCelsius) {
  /** Bursts listed for one body. */
  public static final int MOST_BURSTS = 2_000_000;

  /** Transitions listed for one body. */
  public static final int MOST_TRANSITIONS = 1_000_000;

  /** A change of the bus's state. */
  public record Transition(double seconds, BusState to, String reason) {}

  /**
   * Energy since separation, J.
   *
   * @param arrays drawn from the arrays
   * @param loads taken by what the bus feeds
   * @param chargerLoss between arrays and bus
   * @param resistanceLoss in the battery's resistance, and by charge that cold held back
   * @param coulombicLoss of charge that does not come out again
   * @param selfDischarge in the cells by themselves
   * @param stored in all strings now less that at separation
   * @param removed with lost strings and capacity, and by sharing when a string closed
   */
  public record Books(
      double arrays,
      double loads,
      double chargerLoss,
      double resistanceLoss,
      double coulombicLoss,
      double selfDischarge,
      double stored,
      double removed) {
    /** What the books miss, J. */
    public double gap() {
      double losses = chargerLoss + resistanceLoss + coulombicLoss + selfDischarge;
      return arrays - loads - losses - stored - removed;
    }
  }
}

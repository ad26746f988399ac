package hark.trial.campaign;

import hark.power.PowerModel;
import hark.power.SimulationRequest.TimedChange;
import hark.trial.PlainFlaws;
import hark.trial.PlainLink;
import java.util.Arrays;
import java.util.List;

/**
 * What really is the matter in one campaign. Nobody but the hidden simulators sees it.
 *
 * @param onsets of each cause, s since separation; NaN for those that do not happen
 * @param sizes of each cause, as quantiles of its effects' distributions, 0…1
 * @param values of the body's uncertain numbers
 * @param object index of the candidate
 * @param alongTrackZ along-track error in standard deviations; positive comes late
 * @param stations what each station really is
 */
public record Truth(
    double[] onsets,
    double[] sizes,
    double[] values,
    PowerModel model,
    List<TimedChange> changes,
    List<PlainLink.Harm> harms,
    int object,
    double alongTrackZ,
    double[] radiatedDbm,
    double[] carrierErrorHz,
    List<StationTruth> stations) {
  /**
   * A station's health.
   *
   * @param otherSet the set of the next likeliest object is loaded
   * @param otherHand the antenna has the other hand
   * @param checkHeard chance that it hears a strong known satellite like ours, 0…1
   */
  public record StationTruth(
      boolean works, PlainFlaws flaws, boolean otherSet, boolean otherHand, double checkHeard) {}

  /** The same spacecraft and stations with nothing wrong on board. */
  public Truth unharmed() {
    double[] none = onsets.clone();
    Arrays.fill(none, Double.NaN);
    return new Truth(
        none,
        sizes,
        values,
        model,
        List.of(),
        List.of(),
        object,
        alongTrackZ,
        radiatedDbm,
        carrierErrorHz,
        stations);
  }

  /** Events within their thirty days. */
  public int events() {
    return (int) Arrays.stream(onsets).filter(onset -> !Double.isNaN(onset)).count();
  }

  boolean[] works() {
    boolean[] works = new boolean[stations.size()];
    for (int s = 0; s < works.length; s++) {
      works[s] = stations.get(s).works();
    }
    return works;
  }

  /** Whether a cause has begun by a time, s since separation. */
  public boolean begunBy(int cause, double seconds) {
    return onsets[cause] <= seconds;
  }
}

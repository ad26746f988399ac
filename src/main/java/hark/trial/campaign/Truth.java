package hark.trial.campaign;

import hark.power.PowerModel;
import hark.power.SimulationRequest.TimedChange;
import hark.trial.PlainLink;
import java.util.Arrays;
import java.util.List;

/**
 * What really is the matter in one campaign. Nobody but the hidden simulators sees it.
 *
 * @param onsets of each cause, s since separation; NaN for those that do not happen
 * @param values of the body's uncertain numbers
 * @param object index of the candidate
 * @param alongTrackZ along-track error in standard deviations; positive comes late
 * @param works whether each station works as believed
 */
record Truth(
    double[] onsets,
    double[] values,
    PowerModel model,
    List<TimedChange> changes,
    List<PlainLink.Harm> harms,
    int object,
    double alongTrackZ,
    double[] radiatedDbm,
    double[] carrierErrorHz,
    boolean[] works) {
  /** Events within their thirty days. */
  int events() {
    return (int) Arrays.stream(onsets).filter(onset -> !Double.isNaN(onset)).count();
  }

  boolean begunBy(int cause, double seconds) {
    return onsets[cause] <= seconds;
  }
}

package hark.assessment;

import hark.ensemble.BodyList;
import hark.power.OnboardChange;
import hark.power.PowerModel;
import hark.power.PowerModel.BusState;
import hark.power.SimulationRequest.TimedChange;
import hark.power.StateLoads;

/**
 * What a state of the bus would take from the arrays all the time, mean over the possibilities:
 * states that the bus is not in take nothing, and so no balance of what was taken shows whether the
 * arrays could carry them.
 */
record StateNeeds(BodyList list, BodyList.Sample sample, BodyList.Models models) {

  /** Mean power from the arrays, charger's loss included, battery's not, at a time, W. */
  double watts(BusState state, double seconds) {
    double sum = 0;
    for (int k = 0; k < sample.count(); k++) {
      int body = sample.body()[k];
      PowerModel model = models.of(body);
      double bus = StateLoads.watts(model, state) + extraWatts(body, seconds);
      sum += sample.weight()[k] * bus / model.charging().efficiency();
    }
    return sum;
  }

  /** Loads that have come on top by a time, W. */
  private double extraWatts(int body, double seconds) {
    double sum = 0;
    for (TimedChange change : list.changes(body)) {
      boolean begun = change.onsetSeconds() <= seconds;
      if (begun && change.change() instanceof OnboardChange.ExtraLoad extra) {
        sum += extra.watts();
      }
    }
    return sum;
  }
}

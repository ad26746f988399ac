package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.PowerModel;
import hark.power.SimulationRequest;

/**
 * One simulated body. Several members may share it when their events differ only in what they do to
 * the radio.
 *
 * @param model its numbers
 * @param request what was simulated, so that a run can branch from a checkpoint
 * @param history what came of it
 */
public record Body(PowerModel model, SimulationRequest request, BodyHistory history) {
  /** Tumble rate, deg/s. */
  double tumbleDegPerSecond() {
    return model.attitude().rateDegPerSecond();
  }
}

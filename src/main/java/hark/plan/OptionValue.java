package hark.plan;

import java.util.Optional;

/**
 * What an option is worth in its window.
 *
 * @param heardThisPass chance to hear at least one burst in this window
 * @param error Monte-Carlo standard error of it
 * @param heardByHorizon chance to have heard something by the horizon, this option here and the
 *     plan elsewhere
 * @param informationBits mutual information between heard or not and the explanation
 * @param hazard chance that the first audible time becomes later, or never, than had nothing been
 *     sent
 * @param reach chance that the command is received; empty when nothing is sent
 * @param command beside {@code reach}; {@link Command#NONE} when nothing is sent
 * @param score weight found early for each hour, over doing nothing here
 */
public record OptionValue(
    WindowOption option,
    double heardThisPass,
    double error,
    double heardByHorizon,
    double informationBits,
    double hazard,
    Optional<Double> reach,
    Command command,
    double score) {

  /**
   * What only commands have.
   *
   * @param adds what it adds to the chance of hearing by the horizon
   * @param addsEarly what it adds to the weight found early
   * @param addsError Monte-Carlo standard error of what it adds to the chance of hearing by the
   *     horizon
   * @param addsAtBest what it would add if every window were listened to with the widest ear
   */
  public record Command(double adds, double addsEarly, double addsError, double addsAtBest) {
    /** Nothing is sent. */
    static final Command NONE = new Command(0, 0, 0, 0);
  }
}

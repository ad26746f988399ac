package hark.trial.score;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * What one campaign was and what the diagnosis said at its end: everything that the figures are
 * made of. Written as one line of the results file.
 *
 * @param index of the campaign
 * @param drawn truths drawn until one gave a campaign of the wanted kind, this one included
 * @param entries evidence that was given
 * @param heard entries in which something was heard
 * @param events how many events the truth has within thirty days
 * @param setGain natural logarithm of the weight of the truth's event set after over before; larger
 *     sets are judged as the remainder
 * @param floored the set had less weight than is counted
 * @param before chance of each cause having begun by the end with at most one other event within
 *     thirty days, before evidence
 * @param after the same after it: what the diagnosis reports of a cause
 * @param begun whether it really had; false for truths of more events, which are the remainder
 * @param remainder chance of more than two events after the evidence
 * @param objects chance of each candidate after the evidence
 * @param object which it really is
 * @param stations chance that each station works as believed after the evidence
 * @param works whether it really does
 * @param chargeRank place of the truth's state of charge among the members, 0…1
 * @param numberRanks the same for each uncertain number of the body
 * @param onsets the same for onsets of causes that had really begun and may begin at any time
 * @param causeRanks randomised place of the truth of each cause
 * @param objectRank randomised place of the real object
 * @param behind effective number of different bodies behind the truth's explanation; 0 for the
 *     remainder
 * @param misfit predictive tail probability that the diagnosis reports
 */
public record Outcome(
    int index,
    int drawn,
    int entries,
    int heard,
    int events,
    double setGain,
    boolean floored,
    double[] before,
    double[] after,
    boolean[] begun,
    double remainder,
    double[] objects,
    int object,
    double[] stations,
    boolean[] works,
    double chargeRank,
    double[] numberRanks,
    List<OnsetRank> onsets,
    double[] causeRanks,
    double objectRank,
    double behind,
    double misfit)
    implements Indexed {

  /** Most events that an explanation names; larger sets are the remainder. */
  public static final int NAMED = 2;

  /** Whether the truth belongs to the remainder. */
  @JsonIgnore
  public boolean isLarger() {
    return events > NAMED;
  }

  /** Where the real onset of a cause lies among those of the members that hold it. */
  public record OnsetRank(int cause, double rank) {}

  /** Sum over the causes of the logarithm of what was given to what is true, after over before. */
  public double causeGain() {
    double gain = 0;
    for (int c = 0; c < after.length; c++) {
      gain += Ranks.logGiven(after[c], begun[c]) - Ranks.logGiven(before[c], begun[c]);
    }
    return gain;
  }
}

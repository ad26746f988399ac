package hark.fault;

import java.util.List;
import java.util.SortedMap;

/**
 * A solved tree.
 *
 * @param top id of the top event
 * @param probability of the top event, exact but for rounding
 * @param cutSets minimal cut sets
 * @param importance of every basic event but nuisances, the most critical first
 * @param nodes size of the decision diagram
 */
public record Solution(
    String top, double probability, CutSets cutSets, List<Importance> importance, int nodes) {
  /** Keeps its own copy. */
  public Solution {
    importance = List.copyOf(importance);
  }

  /**
   * Minimal cut sets up to the order asked for.
   *
   * @param count of all, listed or not
   * @param byOrder how many of each order there are; orders without any are left out
   * @param sets in falling probability; only the first ones when there are many
   */
  public record CutSets(long count, SortedMap<Integer, Long> byOrder, List<CutSet> sets) {
    /** Keeps its own copy. */
    public CutSets {
      sets = List.copyOf(sets);
    }
  }

  /** One minimal cut set; its probability is the product over its events. */
  public record CutSet(List<String> events, double probability) {
    /** Keeps its own copy. */
    public CutSet {
      events = List.copyOf(events);
    }
  }

  /**
   * How much one basic event matters; P is the top's probability, p the event's own, P(1) and P(0)
   * the top's when the event is sure or impossible. Where P is 0 the ratios are NaN.
   *
   * @param birnbaum P(1) − P(0), the partial derivative of P by p
   * @param criticality p · birnbaum / P
   * @param fussellVesely (P − P(0)) / P: the part of P that goes away with the event. For
   *     independent events this is the criticality, from its other end
   * @param riskAchievementWorth P(1) / P
   * @param riskReductionWorth P / P(0); infinite when nothing is left without the event
   */
  public record Importance(
      String event,
      double probability,
      double birnbaum,
      double criticality,
      double fussellVesely,
      double riskAchievementWorth,
      double riskReductionWorth) {}
}

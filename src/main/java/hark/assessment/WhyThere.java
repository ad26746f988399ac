package hark.assessment;

import java.time.Instant;
import java.util.List;

/**
 * Why the bus is in the state it is in at a time: over all possibilities that still count.
 *
 * @param states those that occur, the likeliest first; shares sum to 1
 */
public record WhyThere(Instant time, List<StateShare> states) {
  /**
   * A state.
   *
   * @param state off, boot, safe or nominal
   * @param share of the possibilities, 0…1
   * @param member number of the heaviest member in it, for {@link EnergyDesk#trace}
   * @param reasons how they came into it, the likeliest first; shares sum to the state's
   */
  public record StateShare(String state, double share, int member, List<Reason> reasons) {}

  /**
   * A way into a state.
   *
   * @param reason the last change's, as the simulation gives it
   * @param words the same for people
   * @param typicalSince median time of that change among them
   * @param member number of the heaviest member among them
   * @param explanations what is wrong in them, the heaviest first; shares sum to at most the
   *     reason's
   */
  public record Reason(
      String reason,
      String words,
      double share,
      Instant typicalSince,
      int member,
      List<MemberTrace.Share> explanations) {}
}

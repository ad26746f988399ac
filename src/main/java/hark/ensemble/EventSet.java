package hark.ensemble;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A set of basic events that happen within 30 days of separation, and no others.
 *
 * @param causes indices into the mission's causes; those that change the electrical system first
 * @param prior ∏ p over the set times ∏ (1 − p) over the rest
 */
public record EventSet(List<Integer> causes, double prior) {
  /** Keeps its own copy. */
  public EventSet {
    causes = List.copyOf(causes);
  }

  /** True when the set holds this cause. */
  public boolean has(int cause) {
    return causes.contains(cause);
  }

  /**
   * All sets of up to two events, the empty one first, then singles, then pairs, in the order of
   * the causes.
   */
  static List<EventSet> upToPairs(List<Cause> causes) {
    double none =
        causes.stream().mapToDouble(cause -> 1 - cause.probability()).reduce(1, (a, b) -> a * b);
    List<EventSet> sets = new ArrayList<>();
    sets.add(new EventSet(List.of(), none));
    for (int a = 0; a < causes.size(); a++) {
      sets.add(new EventSet(List.of(a), none * odds(causes.get(a))));
    }
    for (int a = 0; a < causes.size(); a++) {
      for (int b = a + 1; b < causes.size(); b++) {
        List<Integer> pair = new ArrayList<>(List.of(a, b));
        pair.sort(Comparator.comparing(index -> changesPower(causes.get(index)) ? 0 : 1));
        sets.add(new EventSet(pair, none * odds(causes.get(a)) * odds(causes.get(b))));
      }
    }
    return List.copyOf(sets);
  }

  /** Weight of all larger sets. */
  static double remainder(List<EventSet> sets) {
    return Math.max(0, 1 - sets.stream().mapToDouble(EventSet::prior).sum());
  }

  static double odds(Cause cause) {
    return cause.probability() / (1 - cause.probability());
  }

  static boolean changesPower(Cause cause) {
    return cause.effects().stream()
        .anyMatch(effect -> effect.onboard(0.5, java.util.Set.of()).isPresent());
  }
}

package hark.ensemble;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Which causes have begun by a time in each member, together; found once for many sums. */
final class BegunTogether {
  private final Population population;
  private final int[] kindOfMember;
  private final Map<List<Integer>, Integer> kinds = new LinkedHashMap<>();

  /**
   * Looks at every member.
   *
   * @param seconds since separation
   */
  BegunTogether(Population population, double seconds) {
    this.population = population;
    this.kindOfMember = new int[population.members.size()];
    for (int m = 0; m < kindOfMember.length; m++) {
      List<Integer> begun = begun(population.members.get(m), seconds);
      kindOfMember[m] = kinds.computeIfAbsent(begun, key -> kinds.size());
    }
  }

  private List<Integer> begun(Member member, double seconds) {
    List<Integer> causes = population.sets.get(member.set()).causes();
    boolean all = true;
    for (double onset : member.onsets()) {
      all &= onset <= seconds;
    }
    if (all) {
      return causes;
    }
    return causes.stream()
        .filter(cause -> member.onsets()[causes.indexOf(cause)] <= seconds)
        .toList();
  }

  /** Sums of weights of the members that meet each condition on what has begun. */
  double[] meeting(Weights weights, List<Predicate<Set<Integer>>> conditions) {
    double[] ofKind = new double[kinds.size()];
    for (int m = 0; m < kindOfMember.length; m++) {
      ofKind[kindOfMember[m]] += weights.member()[m];
    }
    double[] sums = new double[conditions.size()];
    kinds.forEach(
        (causes, kind) -> {
          Set<Integer> begun = new HashSet<>(causes);
          for (int k = 0; k < sums.length; k++) {
            sums[k] += conditions.get(k).test(begun) ? ofKind[kind] : 0;
          }
        });
    return sums;
  }
}

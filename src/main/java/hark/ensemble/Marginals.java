package hark.ensemble;

import java.util.ArrayList;
import java.util.List;

/** Sums over members: causes, objects, stations, groups, bits. */
final class Marginals {
  /** Likelihoods nearer than this in natural logarithm after every entry count as one. */
  private static final double SAME_LOG_LIKELIHOOD = 0.02;

  private final DiagnosisInput input;
  private final Population population;
  private final double nowSeconds;

  Marginals(DiagnosisInput input, Population population) {
    this.input = input;
    this.population = population;
    this.nowSeconds = input.seconds(input.now());
  }

  /** Weight of each cause having begun by now. */
  double[] begun(Weights weights) {
    double[] sums = new double[input.causes().size()];
    for (int m = 0; m < population.members.size(); m++) {
      Member member = population.members.get(m);
      List<Integer> causes = population.sets.get(member.set()).causes();
      for (int slot = 0; slot < causes.size(); slot++) {
        sums[causes.get(slot)] += member.onsets()[slot] <= nowSeconds ? weights.member()[m] : 0;
      }
    }
    return sums;
  }

  /** Weight of a cause having begun before a time, s since separation. */
  double begunBefore(Weights weights, int cause, double seconds) {
    double sum = 0;
    for (int m = 0; m < population.members.size(); m++) {
      Member member = population.members.get(m);
      int slot = population.sets.get(member.set()).causes().indexOf(cause);
      sum += slot >= 0 && member.onsets()[slot] < seconds ? weights.member()[m] : 0;
    }
    return sum;
  }

  /** Weight of any of these causes having begun by now. */
  double anyBegun(Weights weights, List<Integer> causes) {
    double sum = 0;
    for (int m = 0; m < population.members.size(); m++) {
      Member member = population.members.get(m);
      List<Integer> events = population.sets.get(member.set()).causes();
      for (int slot = 0; slot < events.size(); slot++) {
        if (member.onsets()[slot] <= nowSeconds && causes.contains(events.get(slot))) {
          sum += weights.member()[m];
          break;
        }
      }
    }
    return sum;
  }

  /** Weight of each cause happening at all within its 30 days. */
  double[] ever(Weights weights) {
    double[] sums = new double[input.causes().size()];
    for (int s = 0; s < population.sets.size(); s++) {
      for (int cause : population.sets.get(s).causes()) {
        sums[cause] += weights.set()[s];
      }
    }
    return sums;
  }

  List<CauseMarginal> causes(Jackknife jackknife) {
    double[] begun = begun(jackknife.whole());
    double[] ever = ever(jackknife.whole());
    double[] errors = jackknife.errors(this::begun);
    List<CauseMarginal> marginals = new ArrayList<>();
    for (int c = 0; c < begun.length; c++) {
      double prior = input.causes().get(c).probability();
      marginals.add(
          new CauseMarginal(
              prior,
              begun[c],
              Math.max(0, ever[c] - begun[c]),
              errors[c],
              moved(prior, 0.5 * prior, begun[c], ever[c]),
              moved(prior, Math.min(0.999, 2 * prior), begun[c], ever[c])));
    }
    return marginals;
  }

  /**
   * A cause's posterior under another prior: every set that holds it is scaled by the ratio of
   * odds.
   */
  private static double moved(double prior, double changed, double begun, double ever) {
    if (prior <= 0) {
      return begun;
    }
    double ratio = (changed / (1 - changed)) / (prior / (1 - prior));
    return ratio * begun / (1 + (ratio - 1) * ever);
  }

  /** Change in log2 odds of each cause by each clue, {@code [clue][cause]}. */
  double[][] bits(double[][] prefix) {
    double[][] bits = new double[prefix.length - 1][];
    double[] before = begun(Weights.of(population, prefix[0], Weights.NO_GROUP));
    for (int clue = 0; clue < bits.length; clue++) {
      double[] after = begun(Weights.of(population, prefix[clue + 1], Weights.NO_GROUP));
      bits[clue] = new double[after.length];
      for (int c = 0; c < after.length; c++) {
        bits[clue][c] = log2Odds(after[c]) - log2Odds(before[c]);
      }
      before = after;
    }
    return bits;
  }

  private static double log2Odds(double probability) {
    double p = Math.max(1e-12, Math.min(1 - 1e-12, probability));
    return Math.log(p / (1 - p)) / Math.log(2);
  }

  /**
   * Groups of causes with one likelihood, found from the likelihoods of the sets that hold one
   * cause alone.
   */
  List<SharedLikelihood> groups(double[][] prefix) {
    int causes = input.causes().size();
    double[][] profile = new double[causes + 1][];
    for (int set = 0; set <= causes; set++) {
      profile[set] = profile(set, prefix);
    }
    boolean[] taken = new boolean[causes];
    List<SharedLikelihood> groups = new ArrayList<>();
    for (int a = 0; a < causes; a++) {
      List<Integer> together = new ArrayList<>();
      for (int b = a; b < causes && !taken[a]; b++) {
        if (!taken[b] && same(profile[a + 1], profile[b + 1])) {
          together.add(b);
        }
      }
      if (together.size() > 1) {
        together.forEach(member -> taken[member] = true);
        groups.add(new SharedLikelihood(together, same(profile[a + 1], profile[0])));
      }
    }
    return groups;
  }

  /**
   * Log likelihood of one event set after each entry; set 0 is empty, set k + 1 holds cause k
   * alone.
   */
  private double[] profile(int set, double[][] prefix) {
    double[] logs = new double[prefix.length];
    for (int row = 0; row < prefix.length; row++) {
      double sum = 0;
      double count = 0;
      for (int m = 0; m < population.members.size(); m++) {
        Member member = population.members.get(m);
        if (member.set() == set) {
          sum += member.importance() * prefix[row][m];
          count += member.importance();
        }
      }
      logs[row] = Math.log(Math.max(Double.MIN_NORMAL, sum / count));
    }
    return logs;
  }

  private static boolean same(double[] a, double[] b) {
    for (int row = 0; row < a.length; row++) {
      if (Math.abs(a[row] - b[row]) > SAME_LOG_LIKELIHOOD) {
        return false;
      }
    }
    return true;
  }
}

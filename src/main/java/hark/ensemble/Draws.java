package hark.ensemble;

import java.util.SplittableRandom;

/**
 * Stratified uniform draws shared by all event sets: body {@code j} has the same numbers whatever
 * happens to it, so that causes which cannot be told apart get the same likelihood instead of two
 * noisy ones. Bodies fall into {@value #GROUPS} groups, each a Latin hypercube of its own; errors
 * are read from leaving one group out.
 */
final class Draws {
  /** Independent replicates for the Monte-Carlo error. */
  static final int GROUPS = 6;

  private final double[][] uniform;

  /**
   * Draws.
   *
   * @param bodies a multiple of {@link #GROUPS}
   * @param dimensions numbers a body needs
   */
  Draws(int bodies, int dimensions, long seed) {
    if (bodies % GROUPS != 0) {
      throw new IllegalArgumentException(bodies + " bodies is not a multiple of " + GROUPS);
    }
    uniform = new double[bodies][dimensions];
    int strata = bodies / GROUPS;
    for (int group = 0; group < GROUPS; group++) {
      for (int dimension = 0; dimension < dimensions; dimension++) {
        // one generator a group and dimension: a new uncertain number leaves the draws of the
        // others alone
        SplittableRandom random =
            new SplittableRandom(seed * 1_000_003L + group * 8191L + dimension * 131L + 17);
        int[] order = permutation(strata, random);
        for (int k = 0; k < strata; k++) {
          double inside = (order[k] + random.nextDouble()) / strata;
          uniform[group + GROUPS * k][dimension] = Math.min(1 - 1e-9, Math.max(1e-9, inside));
        }
      }
    }
  }

  static int groupOf(int body) {
    return body % GROUPS;
  }

  int bodies() {
    return uniform.length;
  }

  double at(int body, int dimension) {
    return uniform[body][dimension];
  }

  static int[] permutation(int count, SplittableRandom random) {
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      int j = random.nextInt(i + 1);
      order[i] = order[j];
      order[j] = i;
    }
    return order;
  }
}

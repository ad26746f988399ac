package hark.ensemble;

import java.util.Arrays;
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
  private final long seed;
  private final int stratified;

  private Draws(double[][] uniform, int stratified, long seed) {
    this.uniform = uniform;
    this.stratified = stratified;
    this.seed = seed;
  }

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
    this.seed = seed;
    stratified = bodies;
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
          uniform[group + GROUPS * k][dimension] =
              inside((order[k] + random.nextDouble()) / strata);
        }
      }
    }
  }

  /** These and more, whose groups go round as before; a multiple of {@link #GROUPS} of them. */
  Draws plus(double[][] rows) {
    if (rows.length % GROUPS != 0) {
      throw new IllegalArgumentException(rows.length + " rows is not a multiple of " + GROUPS);
    }
    double[][] all = Arrays.copyOf(uniform, uniform.length + rows.length);
    System.arraycopy(rows, 0, all, uniform.length, rows.length);
    return new Draws(all, stratified, seed);
  }

  /** The same draws with room for more numbers, which are drawn evenly. */
  Draws widened(int dimensions) {
    double[][] wide = Arrays.copyOf(new Draws(stratified, dimensions, seed).uniform, bodies());
    for (int body = stratified; body < wide.length; body++) {
      double[] row = Arrays.copyOf(uniform[body], dimensions);
      for (int d = uniform[body].length; d < dimensions; d++) {
        row[d] = inside(new SplittableRandom(seed + body * 8191L + d * 131L).nextDouble());
      }
      wide[body] = row;
    }
    return new Draws(wide, stratified, seed);
  }

  /** A quantile kept off 0 and 1, where distributions may have no end. */
  static double inside(double u) {
    return Math.min(1 - 1e-9, Math.max(1e-9, u));
  }

  int dimensions() {
    return uniform[0].length;
  }

  /** All numbers of a body; not to be changed. */
  double[] row(int body) {
    return uniform[body];
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

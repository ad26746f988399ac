package hark.ensemble;

/**
 * Weight of every member, summing with the remainder to 1.
 *
 * @param member by member
 * @param set by event set
 * @param remainder larger sets, at the pairs' mean likelihood
 * @param remainderBound the same at the best likelihood of any member
 */
record Weights(double[] member, double[] set, double remainder, double remainderBound) {
  /** Weighs every group. */
  static final int NO_GROUP = -1;

  /**
   * Weights from likelihoods.
   *
   * @param likelihood by member
   * @param without group of bodies to leave out, or {@link #NO_GROUP}
   */
  static Weights of(Population population, double[] likelihood, int without) {
    double[] importance = new double[population.sets.size()];
    for (Member member : population.members) {
      importance[member.set()] += member.group() == without ? 0 : member.importance();
    }
    double[] raw = new double[likelihood.length];
    double sum = 0;
    double pairs = 0;
    double best = 0;
    for (int m = 0; m < raw.length; m++) {
      Member member = population.members.get(m);
      if (member.group() == without) {
        continue;
      }
      EventSet set = population.sets.get(member.set());
      // shares of the importance within the set: without evidence every set keeps exactly its prior
      double share = member.importance() / importance[member.set()];
      raw[m] = set.prior() * share * likelihood[m];
      sum += raw[m];
      pairs += set.causes().size() == 2 ? raw[m] : 0;
      best = Math.max(best, likelihood[m]);
    }
    double pairsPrior =
        population.sets.stream()
            .filter(set -> set.causes().size() == 2)
            .mapToDouble(EventSet::prior)
            .sum();
    double restPrior = EventSet.remainder(population.sets);
    double rest = pairsPrior > 0 ? restPrior * pairs / pairsPrior : 0;
    double bound = restPrior * best;
    return normalised(population, raw, sum, new double[] {rest, bound});
  }

  private static Weights normalised(
      Population population, double[] raw, double sum, double[] rest) {
    double total = sum + rest[0];
    if (!(total > 0)) {
      throw new IllegalStateException("no member can explain the evidence at all");
    }
    double[] set = new double[population.sets.size()];
    for (int m = 0; m < raw.length; m++) {
      raw[m] /= total;
      set[population.members.get(m).set()] += raw[m];
    }
    return new Weights(raw, set, rest[0] / total, rest[1] / (sum + rest[1]));
  }
}

package hark.ensemble;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A weighing with one more clue, on the members and hearings that are there. What was known of a
 * station's faults at each node is taken as the same at all of them, which the weighing anew does
 * not; so the answer is a provisional one.
 */
final class OneMore {
  private final Weighing before;
  private final Weighing after;
  private final Clue clue;
  private final Weigher weigher;
  private final Body[] bodies;

  private OneMore(Weighing before, Weighing after, Clue clue, Weigher weigher, Body[] bodies) {
    this.before = before;
    this.after = after;
    this.clue = clue;
    this.weigher = weigher;
    this.bodies = bodies;
  }

  /**
   * The weighing with the last of its clues added.
   *
   * @param after as made for all clues, nothing weighed yet
   * @param bodies that live at the time of the clue, by body; null where no weight is left
   */
  static void weigh(Weighing before, Weighing after, Body[] bodies, Workers workers) {
    Clue clue = after.clues.get(after.clues.size() - 1);
    before.copyInto(after);
    OneMore more = new OneMore(before, after, clue, after.weigher, bodies);
    workers.each(before.population.members.size(), more::weigh);
  }

  /** Whether a clue's likelihood can be found without flying anything. */
  static boolean can(Clue clue) {
    return !(clue instanceof CommandGiven || clue instanceof Frame);
  }

  private void weigh(int m) {
    Member member = before.population.members.get(m);
    Body body = bodies[member.body()];
    int last = after.clues.size();
    double known = before.prefix[last - 1][m];
    if (body == null || !(known > 0)) {
      after.prefix[last][m] = 0;
      return;
    }
    int group = member.hearings(before.nodes.length);
    Factors factors = factors(member, body, group);
    double[] likelihood = new double[before.nodeShare[m].length];
    double sum = 0;
    double kind = 0;
    for (int n = 0; n < likelihood.length; n++) {
      double share = before.nodeShare[m][n];
      likelihood[n] = share > 0 ? factors.at(n, m, factors.likelihood) : 0;
      sum += share * likelihood[n];
      kind += share > 0 ? share * factors.at(n, m, factors.outcome) : 0;
    }
    after.prefix[last][m] = known * sum;
    after.outcome[last - 1][m] = known * kind;
    if (sum > 0) {
      update(m, factors, likelihood, sum);
    }
  }

  private void update(int m, Factors factors, double[] likelihood, double sum) {
    float[] share = new float[likelihood.length];
    for (int n = 0; n < share.length; n++) {
      share[n] = (float) (before.nodeShare[m][n] * likelihood[n] / sum);
    }
    after.nodeShare[m] = share;
    if (factors.station < 0) {
      return;
    }
    int s = factors.station;
    float[] works = before.works[s][m].clone();
    float[] modes = new float[before.modes[s][m].length];
    for (int n = 0; n < share.length; n++) {
      for (int k = 0; k < modes.length && likelihood[n] > 0; k++) {
        double chance = factors.prior(n, m, k) * factors.likelihood.of(k, n) / likelihood[n];
        modes[k] += (float) (share[n] * chance);
        works[n] = k == 0 ? (float) chance : works[n];
      }
    }
    after.works[s][m] = works;
    after.modes[s][m] = modes;
  }

  /** A number for each mode of a station's health and each node. */
  @FunctionalInterface
  private interface ByMode {
    double of(int mode, int node);
  }

  private static ByMode rows(double[][] byMode, double otherwise) {
    return (mode, node) -> byMode[mode] == null ? otherwise : byMode[mode][node];
  }

  private Factors factors(Member member, Body body, int group) {
    LazyTables tables = after.tables(after.clues.size() - 1, group);
    if (clue instanceof ListeningClue ours) {
      Heard heard = weigher.heard(ours, member, body, tables);
      return new Factors(
          ours.window().station(),
          rows(heard.likelihood(), heard.deaf()),
          rows(heard.outcome(), heard.deafOutcome()));
    }
    if (clue instanceof StationClue check) {
      List<StationMode> modes = weigher.modes(check.station());
      return new Factors(
          check.station(),
          (mode, node) -> check.likelihood(modes.get(mode)),
          (mode, node) -> check.outcome(modes.get(mode)));
    }
    ByMode alike = alike(member, body, group, tables);
    return new Factors(-1, alike, alike);
  }

  private ByMode alike(Member member, Body body, int group, LazyTables tables) {
    if (clue instanceof OutsideClue outside) {
      double[] byNode = weigher.heard(outside, member, body, tables).likelihood()[0];
      return (mode, node) -> byNode[node];
    }
    if (clue instanceof BodyClue told) {
      double likelihood = told.likelihood(member, body);
      return (mode, node) -> likelihood;
    }
    NodeClue known = (NodeClue) clue;
    return (mode, node) -> known.likelihood(before.nodes[group], node);
  }

  /** What the clue says by mode and node; {@code station} below 0 when no health is in it. */
  private final class Factors {
    final int station;
    final ByMode likelihood;
    final ByMode outcome;

    Factors(int station, ByMode likelihood, ByMode outcome) {
      this.station = station;
      this.likelihood = likelihood;
      this.outcome = outcome;
    }

    /** Mean over the modes of the station at a node. */
    double at(int node, int member, ByMode numbers) {
      if (station < 0) {
        return numbers.of(0, node);
      }
      double mean = 0;
      for (int k = 0; k < before.modes[station][member].length; k++) {
        mean += prior(node, member, k) * numbers.of(k, node);
      }
      return mean;
    }

    /** Chance of a mode at a node before the clue. */
    double prior(int node, int member, int mode) {
      double works = before.works[station][member][node];
      if (mode == 0) {
        return works;
      }
      float[] modes = before.modes[station][member];
      double faults = 0;
      for (int k = 1; k < modes.length; k++) {
        faults += modes[k];
      }
      return faults > 0 ? (1 - works) * modes[mode] / faults : 0;
    }
  }

  /** Bodies that live at the time of a clue; empty when none of what was flown covers it. */
  static Optional<Body[]> living(Weighed known, Body[] ahead, Clue clue) {
    double now = known.input().seconds(known.input().now());
    Body[] past = known.population().bodies.toArray(Body[]::new);
    for (int b = 0; b < past.length; b++) {
      past[b] = ahead[b] == null ? null : past[b];
    }
    double[] span = span(clue);
    double end = known.input().seconds(known.input().end());
    if (span[1] <= now) {
      return Optional.of(past);
    }
    return span[0] >= now && span[1] <= end
        ? Optional.of(Arrays.copyOf(ahead, ahead.length))
        : Optional.empty();
  }

  /** Which stretch of a body's life is read. */
  private static double[] span(Clue clue) {
    if (clue instanceof ListeningClue ours) {
      return new double[] {ours.window().from(), ours.window().to()};
    }
    if (clue instanceof OutsideClue outside) {
      SkyWindow[] windows = Receptions.windows(outside);
      return new double[] {windows[0].from(), windows[windows.length - 1].to()};
    }
    return new double[] {0, 0};
  }
}

package hark.ensemble;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Draws more bodies for event sets that carry weight on few of them. Each round takes rows from a
 * {@link Guide} fitted to what was weighed before, and every row of a set then counts with the
 * prior over the mixture of all ways in which the set's rows were drawn (the balance heuristic of
 * Veach &amp; Guibas 1995; deterministic mixtures, Owen &amp; Zhou 2000). Within a set importance
 * is shared out, so without evidence every set keeps exactly its prior.
 *
 * <p>The guide of a group of rows is fitted to the other groups, so that a row never helps to
 * choose the density it is measured by; from the third round on groups hear of each other at second
 * hand, which is accepted. Causes that share a likelihood share their rows, or chance would tell
 * them apart.
 */
final class Refinement {
  /** Effective different bodies wanted behind a set that carries weight in full. */
  static final double FLOOR = 40;

  /** A set carries weight in full from here on… */
  static final double FULL_WEIGHT = 0.02;

  /** …and none worth more bodies below this; between the two the floor rises in proportion. */
  static final double LEAST_WEIGHT = 0.005;

  /** Rounds, the first draws not counted. */
  static final int ROUNDS = 4;

  /** Most bodies drawn in all rounds, in multiples of the bodies of a set. */
  static final int MOST_BODIES = 36;

  /** Aimed a little above the floor, or the last round would end just under it. */
  private static final double AIM = 1.25;

  /** Effective bodies expected of a row. Judged; rounds make up for it. */
  private static final double YIELD = 0.2;

  private static final int LEAST_ROWS = 2 * Draws.GROUPS;
  private static final int MOST_ROWS = 40 * Draws.GROUPS;
  private static final int MOST_PAIR_ROWS = 4 * Draws.GROUPS;

  /** Pairs lighter than this do not ride on the rows of others: they would only cost weighing. */
  private static final double RIDES = 3e-4;

  private final DiagnosisInput input;
  private final Growth growth;
  private final List<BodyClue> sharp;
  private final List<Kin> kin = new ArrayList<>();
  private final List<List<Batch>> batches = new ArrayList<>();
  private final Population first;

  /** Rows as standard normal numbers, and how far bodies are off, by index: asked very often. */
  private final Map<Integer, double[]> standard = new HashMap<>();

  private final Map<Integer, double[]> residuals = new HashMap<>();
  private int drawn;

  /** Event sets that take the same rows. */
  private record Kin(List<Integer> sets, int[] places) {}

  /** Rows to draw for some kin. */
  private record Wish(int kin, double weight, int rows) {}

  Refinement(DiagnosisInput input, Growth growth, Weighing weighing, List<Clue> clues) {
    this.input = input;
    this.growth = growth;
    this.first = growth.population();
    sharp =
        clues.stream()
            .filter(BodyClue.class::isInstance)
            .map(BodyClue.class::cast)
            .filter(BodyClue::hasResidual)
            .toList();
    for (int s = 0; s < first.sets.size(); s++) {
      batches.add(new ArrayList<>());
    }
    findKin(new Marginals(input, first).groups(weighing.prefix));
  }

  /** Single causes of one likelihood are kin; each pair that needs bodies of its own is alone. */
  private void findKin(List<SharedLikelihood> groups) {
    boolean[] taken = new boolean[first.sets.size()];
    for (SharedLikelihood group : groups) {
      List<Integer> sets = new ArrayList<>(group.causes().stream().map(c -> c + 1).toList());
      if (group.harmless()) {
        sets.add(0, 0);
      }
      sets.forEach(set -> taken[set] = true);
      kin.add(new Kin(sets, places(sets)));
    }
    for (int s = 0; s < taken.length; s++) {
      boolean own = causes(s).size() < 2 || growth.onsets().bothPowerful(causes(s));
      if (!taken[s] && own) {
        kin.add(new Kin(List.of(s), places(List.of(s))));
      }
    }
  }

  private List<Integer> causes(int set) {
    return first.sets.get(set).causes();
  }

  /**
   * Places in a row that mean something to all of the kin: numbers, onset and size of one event.
   */
  private int[] places(List<Integer> sets) {
    IntStream numbers =
        IntStream.range(0, input.body().numbers().size())
            .map(k -> Population.FIRST_BODY_DIMENSION + k);
    List<Integer> own = new ArrayList<>();
    if (sets.stream().allMatch(s -> causes(s).size() == 1)) {
      List<Cause> all = sets.stream().map(s -> input.causes().get(causes(s).get(0))).toList();
      if (all.stream().allMatch(Cause::beginsAnyTime)) {
        own.add(0);
      }
      if (all.stream().allMatch(Refinement::hasSize)) {
        own.add(1);
      }
    }
    return IntStream.concat(numbers, own.stream().mapToInt(k -> k)).toArray();
  }

  private static boolean hasSize(Cause cause) {
    return cause.effects().stream()
        .anyMatch(
            effect ->
                !effect.radio(0.2).equals(effect.radio(0.8))
                    || !effect.onboard(0.2, Set.of()).equals(effect.onboard(0.8, Set.of())));
  }

  /**
   * Adds the rows of the next round to the growth; bodies are not simulated yet.
   *
   * @param round from 1
   * @return false when every set has what it needs, or no more may be drawn
   */
  boolean next(int round, Population now, double[] likelihood) {
    Weights weights = Weights.of(now, likelihood, Weights.NO_GROUP);
    List<Wish> wishes = wishes(weights, EffectiveBodies.bySet(now, weights.member()));
    for (Wish wish : wishes) {
      add(wish, round, now, weights);
    }
    if (!wishes.isEmpty()) {
      settle();
    }
    return !wishes.isEmpty();
  }

  private List<Wish> wishes(Weights weights, double[] effective) {
    List<Wish> wishes = new ArrayList<>();
    for (int k = 0; k < kin.size(); k++) {
      boolean pair = causes(kin.get(k).sets().get(0)).size() == 2;
      double rows = 0;
      double heaviest = 0;
      for (int set : served(k)) {
        double weight = weights.set()[set];
        double wanted = weight < LEAST_WEIGHT ? 0 : FLOOR * Math.min(1, weight / FULL_WEIGHT);
        if (effective[set] < wanted) {
          rows = Math.max(rows, (AIM * wanted - effective[set]) / YIELD);
          heaviest = Math.max(heaviest, weight);
        }
      }
      if (rows > 0) {
        int whole = (int) Math.ceil(rows / Draws.GROUPS) * Draws.GROUPS;
        int most = pair ? MOST_PAIR_ROWS : MOST_ROWS;
        wishes.add(new Wish(k, heaviest, Math.max(LEAST_ROWS, Math.min(most, whole))));
      }
    }
    wishes.sort(Comparator.comparingDouble(Wish::weight).reversed());
    return afforded(wishes);
  }

  private List<Wish> afforded(List<Wish> wishes) {
    List<Wish> afforded = new ArrayList<>();
    for (Wish wish : wishes) {
      int bodies = wish.rows() * bodiesOfRow(kin.get(wish.kin()).sets());
      if (drawn + bodies <= MOST_BODIES * input.bodiesPerSet()) {
        drawn += bodies;
        afforded.add(wish);
      }
    }
    return afforded;
  }

  /** Bodies that one row costs: sets that only touch the radio share theirs. */
  private int bodiesOfRow(List<Integer> sets) {
    int own =
        (int)
            sets.stream()
                .filter(
                    s ->
                        causes(s).stream()
                            .anyMatch(c -> EventSet.changesPower(input.causes().get(c))))
                .count();
    return own + (own < sets.size() ? 1 : 0);
  }

  /** The kin themselves and the pairs whose first event is one of theirs. */
  private List<Integer> served(int k) {
    List<Integer> own = kin.get(k).sets();
    List<Integer> served = new ArrayList<>(own);
    for (int s = 0; s < first.sets.size(); s++) {
      List<Integer> causes = causes(s);
      boolean rides =
          causes.size() == 2
              && own.contains(causes.get(0) + 1)
              && !growth.onsets().bothPowerful(causes);
      if (rides) {
        served.add(s);
      }
    }
    return served;
  }

  /**
   * Those served and, where a row of theirs has an unharmed body anyway, the set of nothing wrong:
   * it becomes heavy late, and such rows cost it only their weighing.
   */
  private List<Integer> riders(int k, Weights weights) {
    List<Integer> riders = new ArrayList<>(served(k));
    boolean unharmed =
        kin.get(k).sets().stream()
            .anyMatch(
                s ->
                    causes(s).stream()
                        .noneMatch(c -> EventSet.changesPower(input.causes().get(c))));
    if (unharmed && !riders.contains(0) && weights.set()[0] >= LEAST_WEIGHT / 2) {
      riders.add(0);
    }
    return riders;
  }

  private void add(Wish wish, int round, Population now, Weights weights) {
    RowGuide[][] guides = new RowGuide[Draws.GROUPS][];
    List<Integer> causes = causes(kin.get(wish.kin()).sets().get(0));
    for (int group = 0; group < guides.length; group++) {
      guides[group] =
          causes.size() == 2
              ? pairGuides(causes, group, now, weights)
              : new RowGuide[] {guide(wish.kin(), group, now, weights)};
    }
    Batch batch = new Batch(guides, wish.rows());
    long seed = input.seed() * 48_271L + round * 7919L + 3;
    int from = growth.append(batch.rows(new Draws(wish.rows(), now.draws.dimensions() + 1, seed)));
    for (int set : riders(wish.kin(), weights)) {
      boolean own = kin.get(wish.kin()).sets().contains(set);
      if (own || weights.set()[set] >= RIDES || batches.get(set).size() > 0) {
        batches.get(set).add(batch);
        for (int row = from; row < from + wish.rows(); row++) {
          growth.add(set, row);
        }
      }
    }
  }

  /** Either event as if it came alone, the other one anywhere. */
  private RowGuide[] pairGuides(List<Integer> causes, int group, Population now, Weights weights) {
    RowGuide[] guides = new RowGuide[2];
    for (int slot = 0; slot < 2; slot++) {
      RowGuide alone = guide(kinOf(causes.get(slot) + 1), group, now, weights);
      int[] places = alone.places().clone();
      double[] even = new double[places.length];
      for (int k = 0; k < places.length; k++) {
        if (places[k] < Population.FIRST_BODY_DIMENSION) {
          even[k] = places[k] == 0 ? growth.onsets().even(causes, slot, group) : 0;
          places[k] += 2 * slot;
        }
      }
      guides[slot] = new RowGuide(alone.guide(), places, even);
    }
    return guides;
  }

  private int kinOf(int set) {
    for (int k = 0; k < kin.size(); k++) {
      if (kin.get(k).sets().contains(set)) {
        return k;
      }
    }
    throw new IllegalStateException("set " + set + " has no kin");
  }

  private RowGuide guide(int k, int group, Population now, Weights weights) {
    int[] places = kin.get(k).places();
    GuideFit fit = new GuideFit(places.length);
    List<Integer> served = served(k);
    for (int m = 0; m < now.members.size(); m++) {
      Member member = now.members.get(m);
      if (member.group() != group && served.contains(member.set())) {
        double[] row = standard.computeIfAbsent(member.draw(), draw -> standard(now.draws, draw));
        double[] z = Arrays.stream(places).mapToDouble(p -> row[p]).toArray();
        double[] off =
            residuals.computeIfAbsent(member.body(), body -> residual(now.bodies.get(body)));
        fit.add(z, weights.member()[m], off);
      }
    }
    return new RowGuide(fit.guide(), places, new double[places.length]);
  }

  private static double[] standard(Draws draws, int draw) {
    return Arrays.stream(draws.row(draw)).map(RowGuide::standard).toArray();
  }

  private double[] residual(Body body) {
    return sharp.stream().mapToDouble(clue -> clue.residual(body)).toArray();
  }

  /** Gives every member the importance that follows from all ways its set's rows were drawn. */
  private void settle() {
    Population grown = growth.population();
    int[] atFirst = new int[grown.sets.size()];
    for (Member member : first.members) {
      atFirst[member.set()]++;
    }
    for (int m = 0; m < grown.members.size(); m++) {
      Member member = grown.members.get(m);
      List<Batch> own = batches.get(member.set());
      if (!own.isEmpty()) {
        double rows = atFirst[member.set()];
        double mixture = rows;
        for (Batch batch : own) {
          rows += batch.size();
          mixture += batch.size() * batch.density(grown.draws, member.draw());
        }
        growth.weigh(m, rows / mixture);
      }
    }
  }
}

package hark.ensemble;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Evidence weighed: the likelihood of every member at every node of its group, entry by entry in
 * the order of time.
 */
final class Weighing {
  final Population population;
  final List<Clue> clues;
  final HearingNodes[] nodes;

  /** Null once nothing more is to be weighed. */
  Weigher weigher;

  private final LazyTables[][] tables;

  /** Likelihood of the first i entries that weigh, by {@code [i][member]}; row 0 is all ones. */
  final double[][] prefix;

  /**
   * Chance of the i-th entry's kind of outcome together with all before it, by {@code [i][member]}.
   */
  final double[][] outcome;

  /** Share of a member's likelihood at each node, by {@code [member][node]}; sums to 1. */
  final float[][] nodeShare;

  /** Chance that a station works, by {@code [station][member][node]}. */
  final float[][][] works;

  /** Chance of each mode of a station's health, by {@code [station][member][mode]}. */
  final float[][][] modes;

  Weighing(
      int stations,
      Population population,
      List<Clue> clues,
      HearingNodes[] nodes,
      Weigher weigher) {
    this.population = population;
    this.clues = clues;
    this.nodes = nodes;
    this.weigher = weigher;
    tables = new LazyTables[clues.size()][nodes.length];
    for (int clue = 0; clue < tables.length; clue++) {
      for (int group = 0; group < nodes.length; group++) {
        tables[clue][group] = weigher.tables(clues.get(clue), nodes[group]);
      }
    }
    int members = population.members.size();
    prefix = new double[clues.size() + 1][members];
    outcome = new double[clues.size()][members];
    nodeShare = new float[members][];
    works = new float[stations][members][];
    modes = new float[stations][members][];
  }

  void run(Workers workers) {
    workers.each(
        clues.size() * nodes.length,
        index -> tables[index / nodes.length][index % nodes.length].get());
    weighFrom(0, workers);
  }

  /**
   * The same for members of which many let stations hear the same, with tables made only where
   * something is not remembered.
   */
  void runShared(Workers workers) {
    weighShared(0, workers);
  }

  private void weighShared(int first, Workers workers) {
    if (!SharedPaths.mayShare(clues)) {
      weighFrom(first, workers);
      return;
    }
    workers.each(nodes.length, group -> pathsOf(group, first).run());
  }

  private SharedPaths pathsOf(int group, int first) {
    int[] own =
        IntStream.range(first, population.members.size())
            .filter(m -> population.members.get(m).hearings(nodes.length) == group)
            .toArray();
    LazyTables[] met = Arrays.stream(tables).map(row -> row[group]).toArray(LazyTables[]::new);
    return new SharedPaths(this, nodes[group], met, own);
  }

  /** Body by body, so that what its members share is remembered only while they are weighed. */
  private void weighFrom(int first, Workers workers) {
    List<List<Integer>> sharers = new ArrayList<>();
    population.bodies.forEach(body -> sharers.add(new ArrayList<>()));
    for (int m = first; m < population.members.size(); m++) {
      sharers.get(population.members.get(m).body()).add(m);
    }
    workers.each(
        sharers.size(),
        body -> {
          sharers.get(body).forEach(this::weigh);
          weigher.forget(body);
        });
  }

  /** This weighing with the members that a population has gained since. */
  Weighing extended(Population grown, Weigher with, Workers workers) {
    int known = population.members.size();
    Weighing more = new Weighing(works.length, grown, clues, nodes, with);
    System.arraycopy(tables, 0, more.tables, 0, tables.length);
    copy(prefix, more.prefix, known);
    copy(outcome, more.outcome, known);
    System.arraycopy(nodeShare, 0, more.nodeShare, 0, known);
    for (int s = 0; s < works.length; s++) {
      System.arraycopy(works[s], 0, more.works[s], 0, known);
      System.arraycopy(modes[s], 0, more.modes[s], 0, known);
    }
    more.weighFrom(known, workers);
    return more;
  }

  /** Hands everything known to a weighing of the same members with more clues. */
  void copyInto(Weighing more) {
    copy(prefix, more.prefix, population.members.size());
    copy(outcome, more.outcome, population.members.size());
    System.arraycopy(nodeShare, 0, more.nodeShare, 0, nodeShare.length);
    for (int s = 0; s < works.length; s++) {
      System.arraycopy(works[s], 0, more.works[s], 0, works[s].length);
      System.arraycopy(modes[s], 0, more.modes[s], 0, modes[s].length);
    }
  }

  /** Lets go of all that only weighing more members would need. */
  Weighing released() {
    weigher = null;
    for (LazyTables[] row : tables) {
      Arrays.fill(row, null);
    }
    return this;
  }

  /** Tables of a clue and a group of hearings. */
  LazyTables tables(int clue, int group) {
    return tables[clue][group];
  }

  private static void copy(double[][] from, double[][] to, int known) {
    for (int row = 0; row < from.length; row++) {
      System.arraycopy(from[row], 0, to[row], 0, known);
    }
  }

  private void weigh(int index) {
    Member member = population.members.get(index);
    Body body = population.bodies.get(member.body());
    NodeState state = weigher.begin(nodes[member.hearings(nodes.length)]);
    prefix[0][index] = state.total();
    for (int c = 0; c < clues.size(); c++) {
      LazyTables met = tables[c][member.hearings(nodes.length)];
      outcome[c][index] = weigher.apply(clues.get(c), member, body, met, state);
      prefix[c + 1][index] = state.total();
    }
    nodeShare[index] = state.shares();
    for (int s = 0; s < works.length; s++) {
      works[s][index] = state.works(s);
      modes[s][index] = state.modes(s);
    }
  }
}

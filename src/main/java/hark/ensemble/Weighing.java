package hark.ensemble;

import java.util.ArrayList;
import java.util.List;

/**
 * Evidence weighed: the likelihood of every member at every node of its group, entry by entry in
 * the order of time.
 */
final class Weighing {
  private final Population population;
  private final List<Clue> clues;
  private final HearingNodes[] nodes;
  private final Weigher weigher;

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
    int members = population.members.size();
    prefix = new double[clues.size() + 1][members];
    outcome = new double[clues.size()][members];
    nodeShare = new float[members][];
    works = new float[stations][members][];
    modes = new float[stations][members][];
  }

  void run(Workers workers) {
    HearingTable[][][][] tables = new HearingTable[clues.size()][nodes.length][][];
    workers.each(
        clues.size() * nodes.length,
        index -> {
          int clue = index / nodes.length;
          int group = index % nodes.length;
          tables[clue][group] = weigher.tables(clues.get(clue), nodes[group]);
        });
    // body by body, so that what its members share is remembered only while they are weighed
    List<List<Integer>> sharers = new ArrayList<>();
    population.bodies.forEach(body -> sharers.add(new ArrayList<>()));
    for (int m = 0; m < population.members.size(); m++) {
      sharers.get(population.members.get(m).body()).add(m);
    }
    workers.each(
        sharers.size(),
        body -> {
          sharers.get(body).forEach(member -> weigh(member, tables));
          weigher.forget(body);
        });
  }

  private void weigh(int index, HearingTable[][][][] tables) {
    Member member = population.members.get(index);
    Body body = population.bodies.get(member.body());
    NodeState state = weigher.begin(nodes[member.group()]);
    prefix[0][index] = state.total();
    for (int c = 0; c < clues.size(); c++) {
      HearingTable[][] met = tables[c][member.group()];
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

package hark.ensemble;

import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Weighs the members of one group of hearings when many of them let stations hear the same: members
 * are put in the order of what is heard of them, clue by clue, and what neighbours have in common
 * is multiplied once. What the body itself tells is a factor of each member. Gives what weighing
 * each member alone gives, but for rounding.
 */
final class SharedPaths {
  /** Heard nothing that depends on the member. */
  private static final Heard SAME = new Heard(new double[0][], 1, new double[0][], 1);

  private final Population population;
  private final List<Clue> clues;
  private final Weigher weigher;
  private final LazyTables[] tables;
  private final Weighing into;
  private final int[] members;
  private final Heard[][] heard;
  private final int[][] kind;

  /** States after each clue on the way to the member in hand, and their totals. */
  private final NodeState[] way;

  private final double[] total;
  private final double[] outcome;

  /**
   * Writes into a weighing.
   *
   * @param tables of the group of hearings, by clue
   * @param members of the group
   */
  SharedPaths(Weighing into, HearingNodes nodes, LazyTables[] tables, int[] members) {
    this.into = into;
    this.population = into.population;
    this.clues = into.clues;
    this.weigher = into.weigher;
    this.tables = tables;
    this.members = members;
    heard = new Heard[members.length][clues.size()];
    kind = new int[members.length][clues.size()];
    way = new NodeState[clues.size() + 1];
    for (int c = 0; c < way.length; c++) {
      way[c] = weigher.begin(nodes);
    }
    total = new double[clues.size() + 1];
    outcome = new double[clues.size()];
  }

  /** True when nothing but factors depends on the body itself. */
  static boolean mayShare(List<Clue> clues) {
    return clues.stream().noneMatch(CommandGiven.class::isInstance);
  }

  void run() {
    for (int c = 0; c < clues.size(); c++) {
      hear(c);
    }
    Integer[] order = IntStream.range(0, members.length).boxed().toArray(Integer[]::new);
    Arrays.sort(
        order, Comparator.comparing((Integer k) -> kind[k], Arrays::compare).thenComparing(k -> k));
    total[0] = way[0].total();
    int[] before = null;
    Shared shared = null;
    for (int k : order) {
      int common = before == null ? 0 : common(before, kind[k]);
      for (int c = common; c < clues.size(); c++) {
        step(c, heard[k][c]);
      }
      if (shared == null || common < clues.size()) {
        shared = new Shared(way[clues.size()], into.works.length);
      }
      before = kind[k];
      write(members[k], shared);
    }
  }

  private static int common(int[] a, int[] b) {
    int at = Arrays.mismatch(a, b);
    return at < 0 ? a.length : at;
  }

  /** What is heard of each member, numbered in the order in which it is met. */
  private void hear(int c) {
    IdentityHashMap<Heard, Integer> numbers = new IdentityHashMap<>();
    Heard[] unharmed = new Heard[population.bodies.size()];
    for (int k = 0; k < members.length; k++) {
      Member member = population.members.get(members[k]);
      Heard answer = SAME;
      if (clues.get(c) instanceof ListeningClue ours) {
        boolean plain = member.radio().isUnharmedUntil(ours.window().to());
        answer = plain ? unharmed[member.body()] : null;
        if (answer == null) {
          answer = weigher.heard(ours, member, body(member), tables[c]);
          unharmed[member.body()] = plain ? answer : unharmed[member.body()];
        }
      } else if (clues.get(c) instanceof OutsideClue outside) {
        answer = weigher.heard(outside, member, body(member), tables[c]);
      }
      heard[k][c] = answer;
      Integer known = numbers.putIfAbsent(answer, numbers.size());
      kind[k][c] = known == null ? numbers.size() - 1 : known;
    }
  }

  private Body body(Member member) {
    return population.bodies.get(member.body());
  }

  private void step(int c, Heard answer) {
    NodeState state = way[c + 1];
    state.copy(way[c]);
    outcome[c] = weigher.applyHeard(clues.get(c), answer, state);
    total[c + 1] = state.total();
  }

  /** What members of one way share. */
  private static final class Shared {
    final float[] nodeShare;
    final float[][] works;
    final float[][] modes;

    Shared(NodeState state, int stations) {
      nodeShare = state.shares();
      works = new float[stations][];
      modes = new float[stations][];
      for (int s = 0; s < stations; s++) {
        works[s] = state.works(s);
        modes[s] = state.modes(s);
      }
    }
  }

  private void write(int index, Shared shared) {
    Member member = population.members.get(index);
    double factor = 1;
    into.prefix[0][index] = total[0];
    for (int c = 0; c < clues.size(); c++) {
      if (clues.get(c) instanceof BodyClue told) {
        factor *= told.likelihood(member, body(member));
      }
      into.outcome[c][index] = factor * outcome[c];
      into.prefix[c + 1][index] = factor * total[c + 1];
    }
    into.nodeShare[index] = shared.nodeShare;
    for (int s = 0; s < shared.works.length; s++) {
      into.works[s][index] = shared.works[s];
      into.modes[s][index] = shared.modes[s];
    }
  }
}

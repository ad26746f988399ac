package hark.fault;

import hark.fault.FaultTree.BasicEvent;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.UnaryOperator;

/** Checks and solves fault trees. */
public final class FaultTrees {
  /** Sets listed unless more are asked for. */
  public static final int SETS_LISTED = 1000;

  /** Sets listed at the very most. */
  public static final int MOST_SETS_LISTED = 1_000_000;

  /** Inputs of one gate at the very most. */
  public static final int MOST_INPUTS = FaultTreeCheck.MAX_GATES;

  private FaultTrees() {}

  /**
   * Everything wrong with a tree: circles, unknown inputs, K out of range, one id for two things,
   * not-gates with other than one input, gates without inputs, inputs named twice, too deep or too
   * large. Empty for a sound tree.
   *
   * @param placeOf where an id is written, for people
   */
  public static List<Problem> problems(FaultTree tree, UnaryOperator<String> placeOf) {
    return FaultTreeCheck.problems(tree, placeOf);
  }

  /**
   * Whether the top of a sound tree holds when exactly these events have happened.
   *
   * @param happened ids of basic events; nuisances count as false unless they are named
   */
  public static boolean holds(FaultTree tree, Set<String> happened) {
    return holds(tree, tree.top(), happened, new HashMap<>());
  }

  private static boolean holds(
      FaultTree tree, String id, Set<String> happened, Map<String, Boolean> known) {
    FaultTree.Gate gate = tree.gates().get(id);
    if (gate == null) {
      return happened.contains(id);
    }
    Boolean before = known.get(id);
    if (before != null) {
      return before;
    }
    long inputs =
        gate.inputs().stream().filter(input -> holds(tree, input, happened, known)).count();
    boolean value =
        switch (gate.join()) {
          case OR -> inputs > 0;
          case AND -> inputs == gate.inputs().size();
          case AT_LEAST -> inputs >= gate.atLeast();
          case NOT -> inputs == 0;
        };
    known.put(id, value);
    return value;
  }

  /**
   * Exact probability of every gate and event under the top of a sound tree, by id; nuisances have
   * 0. Cut sets and importances are left out.
   */
  public static Map<String, Double> probabilities(FaultTree tree) {
    TreeDiagram diagram = new TreeDiagram(tree);
    double[] ofVariable =
        diagram.variables().stream().mapToDouble(BasicEvent::probability).toArray();
    int last = diagram.built().values().stream().mapToInt(Integer::intValue).max().orElse(0);
    double[] p = diagram.bdd().probabilities(last, ofVariable);
    Map<String, Double> all = new HashMap<>();
    diagram.built().forEach((id, node) -> all.put(id, p[node]));
    return all;
  }

  /** Solves with at most {@link #SETS_LISTED} sets listed. */
  public static Solution solve(FaultTree tree, int maxOrder) {
    return solve(tree, maxOrder, SETS_LISTED);
  }

  /**
   * Solves a tree exactly.
   *
   * @param maxOrder cut sets of more events are neither counted nor listed
   * @param mostSets cut sets to list; all are counted
   * @throws BadInput when the tree has flaws or its diagram would grow beyond all bounds
   */
  public static Solution solve(FaultTree tree, int maxOrder, int mostSets) {
    List<Problem> problems = problems(tree, id -> "fault tree: " + id);
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    TreeDiagram diagram = new TreeDiagram(tree);
    double[] ofVariable =
        diagram.variables().stream().mapToDouble(BasicEvent::probability).toArray();
    double[] p = diagram.bdd().probabilities(diagram.top(), ofVariable);
    return new Solution(
        tree.top(),
        p[diagram.top()],
        cutSets(diagram, ofVariable, maxOrder, mostSets),
        new Importances(diagram, ofVariable, p).list(tree),
        diagram.bdd().nodes().size());
  }

  private static Solution.CutSets cutSets(
      TreeDiagram diagram, double[] ofVariable, int maxOrder, int mostSets) {
    CutSetDiagram sets =
        new CutSetDiagram(diagram.bdd(), diagram.top(), ofVariable.length, maxOrder);
    SortedMap<Integer, Long> byOrder = sets.countByOrder();
    long count = byOrder.values().stream().reduce(0L, OrderCounts::saturatedSum);
    List<Solution.CutSet> listed = new ArrayList<>();
    for (List<Integer> set : LikeliestSets.list(sets, ofVariable, mostSets)) {
      double probability = set.stream().mapToDouble(v -> ofVariable[v]).reduce(1, (a, b) -> a * b);
      listed.add(
          new Solution.CutSet(
              set.stream().map(v -> diagram.variables().get(v).id()).toList(), probability));
    }
    listed.sort(Comparator.comparingDouble(set -> -set.probability()));
    return new Solution.CutSets(count, byOrder, listed);
  }
}

package hark.assessment;

import hark.ensemble.Diagnosis;
import hark.fault.FaultTree;
import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTree.Gate;
import hark.fault.FaultTrees;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The fault tree with its weights: at separation each gate solved exactly, now by adding up the
 * members in which it holds by what has begun.
 */
final class TreeNodes {
  private final FaultTree tree;
  private final List<String> causes;
  private final Map<String, Double> priors;

  private TreeNodes(FaultTree tree, List<String> causes) {
    this.tree = tree;
    this.causes = causes;
    this.priors = FaultTrees.probabilities(tree);
  }

  static List<Assessment.TreeNode> of(FaultTree tree, Diagnosis diagnosis) {
    List<String> causes = diagnosis.input().causes().stream().map(cause -> cause.id()).toList();
    TreeNodes nodes = new TreeNodes(tree, causes);
    List<String> ids = nodes.walk();
    double[][] now = diagnosis.begunMeeting(ids.stream().map(nodes::holds).toList());
    List<Assessment.TreeNode> all = new ArrayList<>();
    for (int k = 0; k < ids.size(); k++) {
      all.add(nodes.node(ids.get(k), now[k]));
    }
    return all;
  }

  /** Ids in the order of a walk from the top, first input first; one of several places once. */
  private List<String> walk() {
    Set<String> met = new LinkedHashSet<>();
    walk(tree.top(), met);
    return List.copyOf(met);
  }

  private void walk(String id, Set<String> met) {
    if (met.add(id) && tree.gates().containsKey(id)) {
      tree.gates().get(id).inputs().forEach(input -> walk(input, met));
    }
  }

  private Predicate<Set<Integer>> holds(String id) {
    FaultTree below = new FaultTree(id, tree.gates(), tree.events());
    return begun ->
        FaultTrees.holds(below, begun.stream().map(causes::get).collect(Collectors.toSet()));
  }

  private Assessment.TreeNode node(String id, double[] now) {
    Gate gate = tree.gates().get(id);
    if (gate != null) {
      return new Assessment.TreeNode(
          id,
          gate.title(),
          gate.join().name().toLowerCase(Locale.ROOT),
          gate.atLeast(),
          gate.inputs(),
          of(id, priors.get(id)),
          of(id, now[0]),
          isElsewhere(id) ? 0 : now[1]);
    }
    BasicEvent event = tree.events().get(id);
    boolean kept = isElsewhere(id);
    return new Assessment.TreeNode(
        id,
        event.title(),
        kept ? "elsewhere" : "event",
        0,
        List.of(),
        of(id, event.probability()),
        of(id, now[0]),
        kept ? 0 : now[1]);
  }

  private OptionalDouble of(String id, double value) {
    return isElsewhere(id) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** True for a leaf that reads what is kept elsewhere, and for a gate over nothing else. */
  private boolean isElsewhere(String id) {
    Gate gate = tree.gates().get(id);
    return gate == null
        ? tree.events().get(id).nuisance()
        : gate.inputs().stream().allMatch(this::isElsewhere);
  }
}

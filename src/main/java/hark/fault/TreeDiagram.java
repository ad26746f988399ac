package hark.fault;

import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTree.Gate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The diagram of one sound tree. Variables are the basic events in the order in which a walk from
 * the top, first input first, meets them: events under one gate stay together, which keeps diagrams
 * of real trees small.
 */
final class TreeDiagram {
  private final FaultTree tree;
  private final Bdd bdd = new Bdd();
  private final List<BasicEvent> variables = new ArrayList<>();
  private final Map<String, Integer> built = new HashMap<>();
  private final int top;

  TreeDiagram(FaultTree tree) {
    this.tree = tree;
    this.top = build(tree.top());
  }

  Bdd bdd() {
    return bdd;
  }

  int top() {
    return top;
  }

  /** Node of every gate and event under the top, by id. */
  Map<String, Integer> built() {
    return built;
  }

  /** Basic events by variable; those the top does not depend on by name are not among them. */
  List<BasicEvent> variables() {
    return variables;
  }

  private int build(String id) {
    Integer known = built.get(id);
    if (known != null) {
      return known;
    }
    BasicEvent event = tree.events().get(id);
    int node = event == null ? build(tree.gates().get(id)) : leaf(event);
    built.put(id, node);
    return node;
  }

  private int leaf(BasicEvent event) {
    if (event.nuisance()) {
      return Bdd.FALSE;
    }
    variables.add(event);
    return bdd.variable(variables.size() - 1);
  }

  private int build(Gate gate) {
    int[] inputs = new int[gate.inputs().size()];
    for (int i = 0; i < inputs.length; i++) {
      inputs[i] = build(gate.inputs().get(i));
    }
    return switch (gate.join()) {
      case OR -> or(inputs);
      case AND -> and(inputs);
      case AT_LEAST -> atLeast(gate.atLeast(), inputs);
      case NOT -> bdd.not(inputs[0]);
    };
  }

  /** From the last input to the first, so that each step adds variables on top. */
  private int or(int[] inputs) {
    int result = Bdd.FALSE;
    for (int i = inputs.length - 1; i >= 0; i--) {
      result = bdd.or(inputs[i], result);
    }
    return result;
  }

  private int and(int[] inputs) {
    int result = Bdd.TRUE;
    for (int i = inputs.length - 1; i >= 0; i--) {
      result = bdd.and(inputs[i], result);
    }
    return result;
  }

  /** {@code reached[k]}: at least k of the inputs taken so far. */
  private int atLeast(int wanted, int[] inputs) {
    int[] reached = new int[wanted + 1];
    reached[0] = Bdd.TRUE;
    for (int i = inputs.length - 1; i >= 0; i--) {
      for (int k = wanted; k >= 1; k--) {
        reached[k] = bdd.or(bdd.and(inputs[i], reached[k - 1]), reached[k]);
      }
    }
    return reached[wanted];
  }
}

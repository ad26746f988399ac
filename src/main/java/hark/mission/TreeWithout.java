package hark.mission;

import hark.fault.FaultTree;
import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTree.Gate;
import hark.fault.FaultTree.Join;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A sound fault tree without events that never happen. Gates that this settles (an or without
 * inputs, an and with one that never happens) go too, and so on upwards, so that the tree stays
 * sound and means the same.
 */
final class TreeWithout {
  private final FaultTree tree;
  private final Set<String> never;
  private final Map<String, Outcome> outcomes = new HashMap<>();
  private final Map<String, Gate> kept = new HashMap<>();

  /** What is known of an event or gate beforehand. */
  private enum Outcome {
    NEVER,
    ALWAYS,
    OPEN
  }

  private TreeWithout(FaultTree tree, Set<String> never) {
    this.tree = tree;
    this.never = never;
  }

  /** The tree without them. A top that this would settle keeps its tree, with them at nought. */
  static FaultTree events(FaultTree tree, Set<String> never) {
    TreeWithout without = new TreeWithout(tree, never);
    tree.gates().keySet().forEach(without::outcome);
    return without.outcome(tree.top()) == Outcome.OPEN ? without.smaller() : without.silenced();
  }

  private FaultTree smaller() {
    Map<String, Gate> gates = new LinkedHashMap<>(tree.gates());
    gates.replaceAll((id, gate) -> kept.getOrDefault(id, gate));
    gates.keySet().removeIf(id -> outcomes.get(id) != Outcome.OPEN);
    Map<String, BasicEvent> events = new LinkedHashMap<>(tree.events());
    events.keySet().removeAll(never);
    return new FaultTree(tree.top(), gates, events);
  }

  private FaultTree silenced() {
    Map<String, BasicEvent> events = new LinkedHashMap<>(tree.events());
    events.replaceAll(
        (id, event) -> never.contains(id) ? new BasicEvent(id, event.title(), 0) : event);
    return new FaultTree(tree.top(), tree.gates(), events);
  }

  private Outcome outcome(String id) {
    if (never.contains(id)) {
      return Outcome.NEVER;
    }
    Gate gate = tree.gates().get(id);
    if (gate == null) {
      return Outcome.OPEN;
    }
    Outcome known = outcomes.get(id);
    if (known == null) {
      known = settle(gate);
      outcomes.put(id, known);
    }
    return known;
  }

  /** The tree is sound, so that it has no circles and this comes to an end. */
  private Outcome settle(Gate gate) {
    List<String> open = new ArrayList<>();
    int always = 0;
    for (String input : gate.inputs()) {
      Outcome of = outcome(input);
      always += of == Outcome.ALWAYS ? 1 : 0;
      if (of == Outcome.OPEN) {
        open.add(input);
      }
    }
    int needed =
        switch (gate.join()) {
          case OR -> 1;
          case AND -> gate.inputs().size();
          case AT_LEAST -> gate.atLeast();
          case NOT -> 1;
        };
    if (gate.join() == Join.NOT && open.isEmpty()) {
      return always > 0 ? Outcome.NEVER : Outcome.ALWAYS;
    }
    if (needed <= always) {
      return Outcome.ALWAYS;
    }
    if (needed - always > open.size()) {
      return Outcome.NEVER;
    }
    int left = gate.join() == Join.AT_LEAST ? needed - always : 0;
    kept.put(gate.id(), new Gate(gate.id(), gate.title(), gate.join(), left, open));
    return Outcome.OPEN;
  }
}

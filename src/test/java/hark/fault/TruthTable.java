package hark.fault;

import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTree.Gate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A tree worked out the plain way, every combination of events by itself. */
final class TruthTable {
  private final FaultTree tree;
  private final List<BasicEvent> events;

  TruthTable(FaultTree tree) {
    this.tree = tree;
    this.events = List.copyOf(tree.events().values());
  }

  /** Probability of the top, with one event forced to a probability. */
  double probability(String forced, double to) {
    double sum = 0;
    for (int row = 0; row < 1 << events.size(); row++) {
      double weight = 1;
      for (int i = 0; i < events.size(); i++) {
        double own = events.get(i).id().equals(forced) ? to : events.get(i).probability();
        weight *= (row >> i & 1) == 1 ? own : 1 - own;
      }
      sum += isTrue(tree.top(), row) ? weight : 0;
    }
    return sum;
  }

  /** Inclusion-minimal sets of events that alone make the top true. */
  Set<Set<String>> minimalSets() {
    List<Integer> minimal = new ArrayList<>();
    for (int row = 0; row < 1 << events.size(); row++) {
      int candidate = row;
      // numbers rise, so every subset of a row has been seen before it
      if (isTrue(tree.top(), row) && minimal.stream().noneMatch(m -> (m & candidate) == m)) {
        minimal.add(row);
      }
    }
    Set<Set<String>> named = new java.util.HashSet<>();
    for (int row : minimal) {
      Set<String> names = new TreeSet<>();
      for (int i = 0; i < events.size(); i++) {
        if ((row >> i & 1) == 1) {
          names.add(events.get(i).id());
        }
      }
      named.add(names);
    }
    return named;
  }

  private boolean isTrue(String id, int row) {
    Gate gate = tree.gates().get(id);
    if (gate == null) {
      return (row >> events.indexOf(tree.events().get(id)) & 1) == 1;
    }
    long on = gate.inputs().stream().filter(input -> isTrue(input, row)).count();
    return switch (gate.join()) {
      case OR -> on > 0;
      case AND -> on == gate.inputs().size();
      case AT_LEAST -> on >= gate.atLeast();
      case NOT -> on == 0;
    };
  }
}

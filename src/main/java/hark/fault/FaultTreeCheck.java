package hark.fault;

import hark.fault.FaultTree.Gate;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/** Finds every flaw of one tree. */
final class FaultTreeCheck {
  /** Gates below each other; deeper trees would exhaust the stack while they are solved. */
  static final int MAX_DEPTH = 1000;

  /** Basic events; a diagram is as deep as there are events, and is walked by recursion. */
  static final int MAX_EVENTS = 3000;

  static final int MAX_GATES = 10_000;

  private final FaultTree tree;
  private final UnaryOperator<String> placeOf;
  private final List<Problem> problems = new ArrayList<>();

  private FaultTreeCheck(FaultTree tree, UnaryOperator<String> placeOf) {
    this.tree = tree;
    this.placeOf = placeOf;
  }

  static List<Problem> problems(FaultTree tree, UnaryOperator<String> placeOf) {
    FaultTreeCheck check = new FaultTreeCheck(tree, placeOf);
    check.checkNames();
    tree.gates().values().forEach(check::checkGate);
    check.checkCycles();
    return List.copyOf(check.problems);
  }

  private void checkNames() {
    if (!isKnown(tree.top())) {
      add(
          tree.top(),
          "top '" + tree.top() + "' is neither a gate nor an event",
          nearest(tree.top()));
    }
    for (String id : tree.gates().keySet()) {
      if (tree.events().containsKey(id)) {
        add(id, "'" + id + "' is both a gate and an event", "give one of them another id");
      }
    }
    limit(tree.events().size(), MAX_EVENTS, "basic events");
    limit(tree.gates().size(), MAX_GATES, "gates");
  }

  private void limit(int count, int most, String what) {
    if (count > most) {
      add(
          tree.top(),
          count + " " + what + "; at most " + most + " can be solved",
          "split the tree");
    }
  }

  private void checkGate(Gate gate) {
    int count = gate.inputs().size();
    if (gate.join() == FaultTree.Join.NOT && count != 1) {
      add(gate.id(), "not-gate with " + count + " inputs; it takes one", "put an or-gate below it");
    } else if (count == 0) {
      add(gate.id(), "gate without inputs", "name at least one gate or event");
    }
    if (gate.join() == FaultTree.Join.AT_LEAST && (gate.atLeast() < 1 || gate.atLeast() > count)) {
      add(
          gate.id(),
          "at least " + gate.atLeast() + " of " + count + " inputs",
          "write a number from 1 to " + count);
    }
    Set<String> seen = new HashSet<>();
    for (String input : gate.inputs()) {
      if (!isKnown(input)) {
        add(gate.id(), "input '" + input + "' is neither a gate nor an event", nearest(input));
      }
      if (!seen.add(input)) {
        add(gate.id(), "input '" + input + "' stands twice", "name it once");
      }
    }
  }

  /** Depth first without recursion, so that a malicious chain cannot exhaust the stack. */
  private void checkCycles() {
    Set<String> done = new HashSet<>();
    for (String start : tree.gates().keySet()) {
      walk(start, done);
    }
  }

  private void walk(String start, Set<String> done) {
    Deque<Open> path = new ArrayDeque<>();
    Set<String> onPath = new HashSet<>();
    enter(start, path, onPath, done);
    while (!path.isEmpty()) {
      Open last = path.peek();
      if (!last.inputs.hasNext()) {
        path.pop();
        onPath.remove(last.id);
        done.add(last.id);
        continue;
      }
      String input = last.inputs.next();
      if (onPath.contains(input)) {
        add(input, "gate feeds itself: " + circle(path, input), "break the circle");
      } else {
        enter(input, path, onPath, done);
      }
    }
  }

  private void enter(String id, Deque<Open> path, Set<String> onPath, Set<String> done) {
    Gate gate = tree.gates().get(id);
    if (gate == null || done.contains(id)) {
      return;
    }
    if (path.size() >= MAX_DEPTH) {
      add(id, "gates stand more than " + MAX_DEPTH + " deep", "flatten the tree");
      done.add(id);
      return;
    }
    onPath.add(id);
    path.push(new Open(id, gate.inputs().iterator()));
  }

  /** A gate on the way down and those of its inputs not yet looked at. */
  private record Open(String id, Iterator<String> inputs) {}

  private static String circle(Deque<Open> path, String closing) {
    List<String> ids = new ArrayList<>();
    path.descendingIterator().forEachRemaining(open -> ids.add(open.id));
    return String.join(" → ", ids.subList(ids.indexOf(closing), ids.size())) + " → " + closing;
  }

  private String nearest(String unknown) {
    Set<String> known = new TreeSet<>(tree.gates().keySet());
    known.addAll(tree.events().keySet());
    return NearestWord.find(unknown, known)
        .map(near -> "did you mean '" + near + "'?")
        .orElse("define it, or take it away");
  }

  private boolean isKnown(String id) {
    return tree.gates().containsKey(id) || tree.events().containsKey(id);
  }

  private void add(String id, String what, String mend) {
    problems.add(new Problem(what, placeOf.apply(id), mend));
  }
}

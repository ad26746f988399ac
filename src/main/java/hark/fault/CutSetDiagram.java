package hark.fault;

import java.util.HashMap;
import java.util.Map;

/**
 * All minimal cut sets of a diagram, kept as a zero-suppressed diagram, where the low child holds
 * the sets without the variable and the high child those with it (the variable taken out). Leaf 0
 * is no set at all, leaf 1 the empty set alone. Rauzy, Reliability Engineering and System Safety
 * 40(3), 1993.
 */
final class CutSetDiagram {
  private static final int NONE = 0;
  private static final int EMPTY_SET = 1;

  private final NodeTable nodes = new NodeTable();
  private final Memo without = new Memo();
  private final Memo limited = new Memo();
  private final NodeTable functions;
  private final Map<Integer, Integer> minimal = new HashMap<>();
  private final int root;

  /**
   * Minimal sets of variables that make the function true with all other variables false; for a
   * function without NOT these are its minimal cut sets.
   *
   * @param maxOrder larger sets are left out
   */
  CutSetDiagram(Bdd bdd, int function, int maxOrder) {
    this.functions = bdd.nodes();
    this.root = limit(minimal(function), maxOrder);
  }

  NodeTable nodes() {
    return nodes;
  }

  int root() {
    return root;
  }

  /** How many sets of each order there are; a count beyond {@code long} stays at its largest. */
  long[] countByOrder() {
    Map<Integer, long[]> counts = new HashMap<>();
    counts.put(NONE, new long[0]);
    counts.put(EMPTY_SET, new long[] {1});
    return count(root, counts);
  }

  private long[] count(int node, Map<Integer, long[]> counts) {
    long[] known = counts.get(node);
    if (known != null) {
      return known;
    }
    long[] low = count(nodes.low(node), counts);
    long[] high = count(nodes.high(node), counts);
    long[] sum = new long[Math.max(low.length, high.length + 1)];
    for (int order = 0; order < sum.length; order++) {
      long plain = order < low.length ? low[order] : 0;
      long with = order > 0 && order <= high.length ? high[order - 1] : 0;
      sum[order] = plain + with < 0 ? Long.MAX_VALUE : plain + with;
    }
    counts.put(node, sum);
    return sum;
  }

  private int minimal(int function) {
    if (function <= Bdd.TRUE) {
      return function;
    }
    Integer known = minimal.get(function);
    if (known != null) {
      return known;
    }
    int low = minimal(functions.low(function));
    int high = without(minimal(functions.high(function)), low);
    int result = make(functions.variable(function), low, high);
    minimal.put(function, result);
    return result;
  }

  /** The sets of {@code a} that contain no set of {@code b}. */
  private int without(int a, int b) {
    if (a == NONE || b == EMPTY_SET || a == b) {
      return NONE;
    }
    if (b == NONE || a == EMPTY_SET) {
      return a;
    }
    int known = without.get(a, b);
    if (known >= 0) {
      return known;
    }
    int result = splitWithout(a, b);
    without.put(a, b, result);
    return result;
  }

  private int splitWithout(int a, int b) {
    int variableA = nodes.variable(a);
    int variableB = nodes.variable(b);
    if (variableA > variableB) {
      return without(a, nodes.low(b));
    }
    if (variableA < variableB) {
      return make(variableA, without(nodes.low(a), b), without(nodes.high(a), b));
    }
    int high = without(without(nodes.high(a), nodes.high(b)), nodes.low(b));
    return make(variableA, without(nodes.low(a), nodes.low(b)), high);
  }

  /** The sets of at most {@code order} variables. */
  private int limit(int node, int order) {
    if (node <= EMPTY_SET) {
      return node;
    }
    int known = limited.get(node, order);
    if (known >= 0) {
      return known;
    }
    int high = order > 0 ? limit(nodes.high(node), order - 1) : NONE;
    int result = make(nodes.variable(node), limit(nodes.low(node), order), high);
    limited.put(node, order, result);
    return result;
  }

  private int make(int variable, int low, int high) {
    return high == NONE ? low : nodes.node(variable, low, high);
  }
}

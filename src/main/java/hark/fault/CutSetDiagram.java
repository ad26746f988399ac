package hark.fault;

import java.util.BitSet;
import java.util.SortedMap;

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
  private final int root;

  /**
   * Minimal sets of variables that make the function true with all other variables false; for a
   * function without NOT these are its minimal cut sets.
   *
   * @param variables how many there are
   * @param maxOrder larger sets are left out
   */
  CutSetDiagram(Bdd bdd, int function, int variables, int maxOrder) {
    int all = minimal(bdd.nodes(), function);
    this.root = maxOrder >= variables ? all : limit(all, maxOrder);
  }

  NodeTable nodes() {
    return nodes;
  }

  int root() {
    return root;
  }

  /** How many sets of each order there are; orders without any are left out. */
  SortedMap<Integer, Long> countByOrder() {
    OrderCounts[] counts = new OrderCounts[Math.max(2, root + 1)];
    counts[NONE] = OrderCounts.NONE;
    counts[EMPTY_SET] = OrderCounts.EMPTY_SET;
    BitSet reached = nodes.reachedFrom(root);
    for (int node = reached.nextSetBit(2); node >= 0; node = reached.nextSetBit(node + 1)) {
      counts[node] = counts[nodes.low(node)].plusOneHigher(counts[nodes.high(node)]);
    }
    return counts[root].byOrder();
  }

  /** From the leaves up, so that deep diagrams need no deep stack. */
  private int minimal(NodeTable functions, int function) {
    int[] minimal = new int[Math.max(2, function + 1)];
    minimal[Bdd.TRUE] = EMPTY_SET;
    BitSet reached = functions.reachedFrom(function);
    for (int node = reached.nextSetBit(2); node >= 0; node = reached.nextSetBit(node + 1)) {
      int low = minimal[functions.low(node)];
      int high = without(minimal[functions.high(node)], low);
      minimal[node] = make(functions.variable(node), low, high);
    }
    return minimal[function];
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

package hark.fault;

/**
 * Reduced ordered binary decision diagrams over variables 0, 1, 2 …; equal functions are the same
 * node. Not shared between threads. Bryant, IEEE Trans. Computers C-35(8), 1986.
 */
final class Bdd {
  static final int FALSE = 0;
  static final int TRUE = 1;

  private final NodeTable nodes = new NodeTable();
  private final Memo ands = new Memo();
  private final Memo ors = new Memo();
  private final Memo nots = new Memo();

  /** The function that is true when the variable is. */
  int variable(int index) {
    return make(index, FALSE, TRUE);
  }

  int and(int a, int b) {
    if (a == FALSE || b == FALSE) {
      return FALSE;
    }
    if (a == TRUE || a == b) {
      return b;
    }
    if (b == TRUE) {
      return a;
    }
    int first = Math.min(a, b);
    int second = Math.max(a, b);
    int known = ands.get(first, second);
    if (known >= 0) {
      return known;
    }
    int top = topVariable(first, second);
    int low = and(low(first, top), low(second, top));
    int high = and(high(first, top), high(second, top));
    int result = make(top, low, high);
    ands.put(first, second, result);
    return result;
  }

  int or(int a, int b) {
    if (a == TRUE || b == TRUE) {
      return TRUE;
    }
    if (a == FALSE || a == b) {
      return b;
    }
    if (b == FALSE) {
      return a;
    }
    int first = Math.min(a, b);
    int second = Math.max(a, b);
    int known = ors.get(first, second);
    if (known >= 0) {
      return known;
    }
    int top = topVariable(first, second);
    int low = or(low(first, top), low(second, top));
    int high = or(high(first, top), high(second, top));
    int result = make(top, low, high);
    ors.put(first, second, result);
    return result;
  }

  int not(int a) {
    if (a <= TRUE) {
      return 1 - a;
    }
    int known = nots.get(a, 0);
    if (known >= 0) {
      return known;
    }
    int result = make(nodes.variable(a), not(nodes.low(a)), not(nodes.high(a)));
    nots.put(a, 0, result);
    return result;
  }

  NodeTable nodes() {
    return nodes;
  }

  /** Probability of every node up to {@code top}, given that of each variable. */
  double[] probabilities(int top, double[] ofVariable) {
    double[] p = new double[Math.max(2, top + 1)];
    p[TRUE] = 1;
    for (int node = 2; node <= top; node++) {
      double on = ofVariable[nodes.variable(node)];
      p[node] = on * p[nodes.high(node)] + (1 - on) * p[nodes.low(node)];
    }
    return p;
  }

  private int make(int variable, int low, int high) {
    return low == high ? low : nodes.node(variable, low, high);
  }

  private int topVariable(int a, int b) {
    return Math.min(nodes.variable(a), nodes.variable(b));
  }

  private int low(int node, int variable) {
    return nodes.variable(node) == variable ? nodes.low(node) : node;
  }

  private int high(int node, int variable) {
    return nodes.variable(node) == variable ? nodes.high(node) : node;
  }
}

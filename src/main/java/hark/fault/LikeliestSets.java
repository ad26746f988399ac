package hark.fault;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The likeliest cut sets of a diagram in falling probability, without listing the others: partial
 * sets wait in a queue by the best they can still become, which is known exactly for every node.
 */
final class LikeliestSets {
  private final NodeTable nodes;
  private final double[] ofVariable;
  private final double[] best;
  private final PriorityQueue<Partial> queue =
      new PriorityQueue<>(
          Comparator.comparingDouble((Partial p) -> -p.bound).thenComparingLong(p -> -p.serial));
  private long serial;

  private LikeliestSets(CutSetDiagram sets, double[] ofVariable) {
    this.nodes = sets.nodes();
    this.ofVariable = ofVariable;
    this.best = best(sets.root());
  }

  /** At most {@code most} sets, as lists of variables in rising order. */
  static List<List<Integer>> list(CutSetDiagram sets, double[] ofVariable, int most) {
    return new LikeliestSets(sets, ofVariable).list(sets.root(), most);
  }

  private List<List<Integer>> list(int root, int most) {
    List<List<Integer>> found = new ArrayList<>();
    if (root != 0) {
      add(root, 1, best[root], null);
    }
    while (!queue.isEmpty() && found.size() < most) {
      Partial at = queue.poll();
      if (at.node == 1) {
        found.add(at.variables());
      } else {
        split(at);
      }
    }
    return found;
  }

  /**
   * The better half keeps the bound it has, bit for bit, and stands first among equals: otherwise
   * rounding would spread sets of equal probability over the whole queue.
   */
  private void split(Partial at) {
    int variable = nodes.variable(at.node);
    int high = nodes.high(at.node);
    int low = nodes.low(at.node);
    Chosen chosen = new Chosen(variable, at.chosen);
    double with = at.probability * ofVariable[variable];
    if (ofVariable[variable] * best[high] >= best[low]) {
      if (low != 0) {
        add(low, at.probability, Math.min(at.bound, at.probability * best[low]), at.chosen);
      }
      add(high, with, at.bound, chosen);
    } else {
      add(high, with, Math.min(at.bound, with * best[high]), chosen);
      add(low, at.probability, at.bound, at.chosen);
    }
  }

  private void add(int node, double probability, double bound, Chosen chosen) {
    queue.add(new Partial(node, probability, bound, chosen, serial++));
  }

  private double[] best(int root) {
    double[] values = new double[Math.max(2, root + 1)];
    values[1] = 1;
    for (int node = 2; node <= root; node++) {
      double with = ofVariable[nodes.variable(node)] * values[nodes.high(node)];
      values[node] = Math.max(with, values[nodes.low(node)]);
    }
    return values;
  }

  private record Chosen(int variable, Chosen before) {}

  private record Partial(int node, double probability, double bound, Chosen chosen, long serial) {
    List<Integer> variables() {
      List<Integer> all = new ArrayList<>();
      for (Chosen c = chosen; c != null; c = c.before) {
        all.add(c.variable);
      }
      Collections.reverse(all);
      return all;
    }
  }
}

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
    PriorityQueue<Partial> queue =
        new PriorityQueue<>(
            Comparator.comparingDouble((Partial p) -> -p.bound).thenComparingLong(p -> p.serial));
    long serial = 0;
    if (root != 0) {
      queue.add(new Partial(root, 1, best[root], null, serial++));
    }
    while (!queue.isEmpty() && found.size() < most) {
      Partial at = queue.poll();
      if (at.node == 1) {
        found.add(at.variables());
        continue;
      }
      int variable = nodes.variable(at.node);
      int high = nodes.high(at.node);
      double with = at.probability * ofVariable[variable];
      Chosen chosen = new Chosen(variable, at.chosen);
      queue.add(new Partial(high, with, with * best[high], chosen, serial++));
      int low = nodes.low(at.node);
      if (low != 0) {
        double bound = at.probability * best[low];
        queue.add(new Partial(low, at.probability, bound, at.chosen, serial++));
      }
    }
    return found;
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

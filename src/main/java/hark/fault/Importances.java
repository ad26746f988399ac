package hark.fault;

import hark.fault.FaultTree.BasicEvent;
import hark.fault.Solution.Importance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Importance of the basic events of one diagram. */
final class Importances {
  /** Below this part of the top's probability a difference has lost too many digits. */
  private static final double DIGITS_LOST = 1e-3;

  private final TreeDiagram diagram;
  private final double[] ofVariable;
  private final double[] ofNode;
  private final double top;

  Importances(TreeDiagram diagram, double[] ofVariable, double[] ofNode) {
    this.diagram = diagram;
    this.ofVariable = ofVariable;
    this.ofNode = ofNode;
    this.top = ofNode[diagram.top()];
  }

  /** All events but nuisances; those the top does not reach matter nothing. */
  List<Importance> list(FaultTree tree) {
    double[] birnbaum = birnbaum();
    List<Importance> all = new ArrayList<>();
    Set<String> met = new HashSet<>();
    for (int v = 0; v < birnbaum.length; v++) {
      BasicEvent event = diagram.variables().get(v);
      all.add(of(event, birnbaum[v], without(v, birnbaum[v])));
      met.add(event.id());
    }
    for (BasicEvent event : tree.events().values()) {
      if (!event.nuisance() && !met.contains(event.id())) {
        all.add(of(event, 0, top));
      }
    }
    all.sort(
        Comparator.comparingDouble((Importance i) -> -i.fussellVesely())
            .thenComparing(Importance::event));
    return all;
  }

  /** One pass from the root down: how likely each node is reached, times what hangs on it. */
  private double[] birnbaum() {
    NodeTable nodes = diagram.bdd().nodes();
    double[] birnbaum = new double[ofVariable.length];
    double[] reached = new double[ofNode.length];
    reached[diagram.top()] = 1;
    for (int node = diagram.top(); node >= 2; node--) {
      if (reached[node] == 0) {
        continue;
      }
      int variable = nodes.variable(node);
      double on = ofVariable[variable];
      birnbaum[variable] += reached[node] * (ofNode[nodes.high(node)] - ofNode[nodes.low(node)]);
      reached[nodes.high(node)] += reached[node] * on;
      reached[nodes.low(node)] += reached[node] * (1 - on);
    }
    return birnbaum;
  }

  /** P(0): the difference where it is safe, solved anew where it is not. */
  private double without(int variable, double birnbaum) {
    double difference = top - ofVariable[variable] * birnbaum;
    if (difference > DIGITS_LOST * top) {
      return difference;
    }
    double[] changed = ofVariable.clone();
    changed[variable] = 0;
    return diagram.bdd().probabilities(diagram.top(), changed)[diagram.top()];
  }

  private Importance of(BasicEvent event, double birnbaum, double without) {
    double own = event.probability();
    double none = top == 0 ? Double.NaN : 1;
    return new Importance(
        event.id(),
        own,
        birnbaum,
        none * (own * birnbaum / top),
        none * ((top - without) / top),
        none * (Math.max(0, top + (1 - own) * birnbaum) / top),
        none * (top / without));
  }
}

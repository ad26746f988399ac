package hark.ensemble;

import hark.station.Station;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Weighs one member at every node of a group, clue by clue. What a clue means stands with its kind;
 * here it is only multiplied in where it belongs.
 *
 * <p>A station's persistent health is summed out exactly for each node: likelihoods of what it
 * heard are kept for a working and for a deaf station apart.
 */
final class Weigher {
  private final DiagnosisInput input;
  private final Receptions receptions;

  /** A weigher for a population; {@code bodies} is how many it has. */
  Weigher(DiagnosisInput input, Ear ear, int bodies) {
    this.input = input;
    this.receptions = new Receptions(ear, input.evidence().size(), bodies);
  }

  /** A state before any clue. */
  State begin(HearingNodes nodes) {
    return new State(nodes, input.stations());
  }

  /**
   * What the nodes of a group would meet, by {@code [node][beacon]}; empty for clues that are not
   * listening.
   */
  HearingTable[][] tables(Clue clue, HearingNodes group) {
    return clue instanceof ListeningClue listened
        ? Tables.of(input, listened.window(), listened.listening(), group)
        : new HearingTable[0][];
  }

  /**
   * Multiplies one clue into the state; returns the chance of its kind of outcome together with all
   * before.
   */
  double apply(Clue clue, Member member, Body body, HearingTable[][] byNode, State state) {
    if (clue instanceof ListeningClue listened) {
      Reception met = receptions.of(listened, member, body, byNode);
      return listen(listened, met, state);
    }
    if (clue instanceof BodyClue told) {
      state.multiply(told.likelihood(member, body));
    } else if (clue instanceof StationClue check) {
      state.multiply(check.station(), n -> check.ifWorks(), check.ifDeaf());
    } else {
      NodeClue known = (NodeClue) clue;
      state.multiplyNodes(n -> known.likelihood(state.nodes, n));
    }
    return state.total();
  }

  private static double listen(ListeningClue clue, Reception met, State state) {
    int station = clue.window().station();
    Reception none = Reception.DEAF;
    double outcome =
        clue.readsNumber()
            ? state.totalIf(station, n -> clue.outcome(met, n), clue.outcome(none, 0))
            : Double.NaN;
    state.multiply(station, n -> clue.likelihood(met, n), clue.likelihood(none, 0));
    return clue.readsNumber() ? outcome : state.total();
  }

  /** Running likelihoods of one member at each node. */
  static final class State {
    private final HearingNodes nodes;
    private final double[] prior;
    private final double[][] ifWorks;
    private final double[][] ifDeaf;
    private final double[] ofNode;
    private double common = 1;

    State(HearingNodes nodes, List<Station> stations) {
      this.nodes = nodes;
      prior = stations.stream().mapToDouble(Station::worksWithProbability).toArray();
      ofNode = new double[nodes.count()];
      Arrays.fill(ofNode, 1);
      ifWorks = new double[stations.size()][nodes.count()];
      ifDeaf = new double[stations.size()][nodes.count()];
      for (int s = 0; s < prior.length; s++) {
        Arrays.fill(ifWorks[s], 1);
        Arrays.fill(ifDeaf[s], 1);
      }
    }

    /** What holds at every node alike. */
    void multiply(double likelihood) {
      common *= likelihood;
    }

    /** What depends on the node alone. */
    void multiplyNodes(IntToDoubleFunction likelihood) {
      for (int n = 0; n < ofNode.length; n++) {
        ofNode[n] *= likelihood.applyAsDouble(n);
      }
    }

    /** What depends on the health of a station. */
    void multiply(int station, IntToDoubleFunction works, double deaf) {
      for (int n = 0; n < nodes.count(); n++) {
        ifWorks[station][n] *= works.applyAsDouble(n);
        ifDeaf[station][n] *= deaf;
      }
    }

    /** The total if this were multiplied in, without doing so. */
    double totalIf(int station, IntToDoubleFunction works, double deaf) {
      double sum = 0;
      for (int n = 0; n < nodes.count(); n++) {
        double changed =
            prior[station] * ifWorks[station][n] * works.applyAsDouble(n)
                + (1 - prior[station]) * ifDeaf[station][n] * deaf;
        sum += at(n) / health(station, n) * changed;
      }
      return sum;
    }

    private double health(int station, int node) {
      return prior[station] * ifWorks[station][node] + (1 - prior[station]) * ifDeaf[station][node];
    }

    /** Prior weight times likelihood of a node. */
    double at(int node) {
      double product = common * nodes.weight()[node] * ofNode[node];
      for (int s = 0; s < prior.length; s++) {
        product *= health(s, node);
      }
      return product;
    }

    double total() {
      double sum = 0;
      for (int n = 0; n < nodes.count(); n++) {
        sum += at(n);
      }
      return sum;
    }

    float[] shares() {
      double total = total();
      float[] shares = new float[nodes.count()];
      for (int n = 0; n < shares.length; n++) {
        shares[n] = total > 0 ? (float) (at(n) / total) : 0;
      }
      return shares;
    }

    float[] works(int station) {
      float[] works = new float[nodes.count()];
      for (int n = 0; n < works.length; n++) {
        works[n] = (float) (prior[station] * ifWorks[station][n] / health(station, n));
      }
      return works;
    }
  }
}

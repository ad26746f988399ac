package hark.ensemble;

import hark.power.BodyHistory;
import hark.station.Station;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Weighs one member at every node of a group, clue by clue.
 *
 * <p>A station's persistent health is summed out exactly for each node: likelihoods of what it
 * heard are kept for a working and for a deaf station apart. Sittings fail besides with {@value
 * #SLIP} each, independently.
 */
final class Weigher {
  /**
   * A sitting that failed without anyone noticing: wrong mode, loose plug, wrong set. Common
   * practice.
   */
  static final double SLIP = 0.03;

  /**
   * Something else was taken for ours: a neighbour or interference, per window. Prior of the
   * design's nuisances.
   */
  private static final double NOT_OURS = 0.02;

  /** Levels of what is not ours may lie anywhere in so many dB. */
  private static final double NOT_OURS_SPREAD_DB = 30;

  /**
   * Model discrepancy of the terminal voltage, V a cell: curves of other cells, sag, calibration.
   * Judged.
   */
  private static final double DISCREPANCY_VOLTS_PER_CELL = 0.03;

  /** Telemetry that is wrong altogether, spread over so many volts. */
  private static final double WRONG_TELEMETRY = 0.01;

  private static final double WRONG_TELEMETRY_SPREAD_VOLTS = 5;

  private final DiagnosisInput input;
  private final Ear ear;
  private final HeardMemory memory;

  /** A weigher for a population; {@code bodies} is how many it has. */
  Weigher(DiagnosisInput input, Ear ear, int bodies) {
    this.input = input;
    this.ear = ear;
    this.memory = new HeardMemory(input.evidence().size(), bodies);
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
    if (clue instanceof Clue.Silence silence) {
      return Tables.of(input, silence.window(), silence.listening(), group);
    }
    if (clue instanceof Clue.Sound sound) {
      return Tables.of(input, sound.window(), sound.listening(), group);
    }
    return new HearingTable[0][];
  }

  /**
   * Multiplies one clue into the state; returns the chance of its kind of outcome together with all
   * before.
   */
  double apply(Clue clue, Member member, Body body, HearingTable[][] byNode, State state) {
    if (clue instanceof Clue.Silence silence) {
      SkyWindow window = silence.window();
      double[] detect = detect(silence.entry(), member, body, byNode, window, silence.listening());
      state.multiply(window.station(), n -> 1 - detect[n], 1);
      return state.total();
    }
    if (clue instanceof Clue.Sound sound) {
      return applySound(sound, member, body, byNode, state);
    }
    if (clue instanceof Clue.Volts volts) {
      state.common *= likelihood(volts, member, body);
      return state.total();
    }
    Clue.Check check = (Clue.Check) clue;
    state.multiply(check.station(), n -> check.ifWorks(), check.ifDeaf());
    return state.total();
  }

  private double applySound(
      Clue.Sound sound, Member member, Body body, HearingTable[][] byNode, State state) {
    SkyWindow window = sound.window();
    double[] detect = detect(sound.entry(), member, body, byNode, window, sound.listening());
    double patternSd = input.beacons().get(0).patternSdDb();
    double sd = Math.hypot(sound.levelSdDb(), patternSd);
    boolean level = !Double.isNaN(sound.levelDb());
    double notOurs = level ? NOT_OURS / NOT_OURS_SPREAD_DB : NOT_OURS;
    double binary =
        state.totalIf(window.station(), n -> NOT_OURS + (1 - NOT_OURS) * detect[n], NOT_OURS);
    double[] density = new double[detect.length];
    Arrays.fill(density, 1);
    if (level) {
      for (int n = 0; n < detect.length; n++) {
        if (detect[n] > 0) {
          double expected = ear.strongestDb(member, body, byNode[n], window.from(), window.to());
          density[n] = Double.isNaN(expected) ? 0 : Normal.density(sound.levelDb(), expected, sd);
        }
      }
    }
    state.multiply(
        window.station(), n -> notOurs + (1 - NOT_OURS) * detect[n] * density[n], notOurs);
    return binary;
  }

  /**
   * Chance to hear a member in a window at each node; remembered for members that share the answer.
   */
  private double[] detect(
      int entry,
      Member member,
      Body body,
      HearingTable[][] byNode,
      SkyWindow window,
      Listening listening) {
    return memory.get(
        entry, member, window.to(), () -> detect(member, body, byNode, window, listening));
  }

  private double[] detect(
      Member member, Body body, HearingTable[][] byNode, SkyWindow window, Listening listening) {
    double[] detect = new double[byNode.length];
    double until = Math.min(window.to(), member.radio().muteFrom());
    if (Ear.Segments.any(body.history().segments(), window.from(), until)) {
      for (int n = 0; n < byNode.length; n++) {
        double miss =
            ear.miss(member, body, byNode[n], listening.way(), window.from(), window.to());
        detect[n] = (1 - SLIP) * (1 - miss);
      }
    }
    return detect;
  }

  private static double likelihood(Clue.Volts clue, Member member, Body body) {
    BodyHistory.Probe probe = body.history().probes().get(clue.probe());
    double wrong = WRONG_TELEMETRY / WRONG_TELEMETRY_SPREAD_VOLTS;
    if (Double.isNaN(probe.volts()) || member.radio().muteFrom() <= clue.seconds()) {
      return wrong;
    }
    double sd = sdVolts(clue, body);
    return wrong + (1 - WRONG_TELEMETRY) * Normal.density(clue.volts(), probe.volts(), sd);
  }

  /** Spread of a telemetered voltage around a body's own: reading and model together, V. */
  static double sdVolts(Clue.Volts clue, Body body) {
    int series = body.model().battery().series();
    return Math.hypot(clue.sdVolts(), DISCREPANCY_VOLTS_PER_CELL * series);
  }

  /** Running likelihoods of one member at each node. */
  static final class State {
    private final HearingNodes nodes;
    private final double[] prior;
    private final double[][] ifWorks;
    private final double[][] ifDeaf;
    private double common = 1;

    State(HearingNodes nodes, List<Station> stations) {
      this.nodes = nodes;
      prior = stations.stream().mapToDouble(Station::worksWithProbability).toArray();
      ifWorks = new double[stations.size()][nodes.count()];
      ifDeaf = new double[stations.size()][nodes.count()];
      for (int s = 0; s < prior.length; s++) {
        Arrays.fill(ifWorks[s], 1);
        Arrays.fill(ifDeaf[s], 1);
      }
    }

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
      double product = common * nodes.weight()[node];
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

  /** The normal density. */
  static final class Normal {
    private Normal() {}

    static double density(double value, double mean, double sd) {
      double z = (value - mean) / sd;
      return Math.exp(-0.5 * z * z) / (sd * Math.sqrt(2 * Math.PI));
    }
  }
}

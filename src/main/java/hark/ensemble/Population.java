package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.Illumination;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All members before any evidence: event sets, onsets, bodies. A body is simulated once for the
 * events that change the electrical system; members whose other events touch only the radio share
 * it.
 */
final class Population {
  static final int FIRST_BODY_DIMENSION = 4;

  /**
   * Bodies that carry less weight than this are not simulated beyond now; together they are under
   * 0.1 %.
   */
  static final double NEGLIGIBLE = 1e-7;

  private static final double KEPT_BEFORE_NOW_SECONDS = 86400;
  static final double GRID_SECONDS = 600;

  final List<EventSet> sets;
  final List<Member> members;

  /** Every body, from separation to now. */
  final List<Body> bodies;

  final Draws draws;

  Population(List<EventSet> sets, List<Member> members, List<Body> bodies, Draws draws) {
    this.sets = sets;
    this.members = List.copyOf(members);
    this.bodies = bodies;
    this.draws = draws;
  }

  /**
   * What the simulations must know beside the input.
   *
   * @param proposal where onsets are drawn
   * @param flight how far every body is flown and what is kept of it; no changes on board
   */
  record Setting(Illumination light, OnsetProposal proposal, SimulationRequest flight) {
    /** Up to now, from where it can go on; probes at the times of telemetry, rising. */
    static Setting upToNow(
        DiagnosisInput input, Illumination light, OnsetProposal proposal, double[] probeSeconds) {
      double now = input.seconds(input.now());
      double[] checkpoint = {now};
      return new Setting(
          light,
          proposal,
          new SimulationRequest(
              now, gridStart(input), GRID_SECONDS, List.of(), probeSeconds, checkpoint));
    }
  }

  /** Weight of each body: that of the members that share it. */
  double[] bodyWeights(double[] memberWeight) {
    double[] weights = new double[bodies.size()];
    for (int m = 0; m < memberWeight.length; m++) {
      weights[members.get(m).body()] += memberWeight[m];
    }
    return weights;
  }

  static double gridStart(DiagnosisInput input) {
    return Math.max(0, input.seconds(input.now()) - KEPT_BEFORE_NOW_SECONDS);
  }

  /**
   * Goes on from now to the horizon with every body that the evidence has left any weight.
   *
   * @param memberWeight by member
   * @param checkpointSeconds times a command may be sent, after now, rising
   * @return by body; null for those that carry no weight worth counting
   */
  Body[] lookAhead(
      DiagnosisInput input,
      Illumination light,
      double[] memberWeight,
      double[] checkpointSeconds,
      Workers workers) {
    double[] bodyWeight = bodyWeights(memberWeight);
    Body[] ahead = new Body[bodies.size()];
    int[] alive =
        IntStream.range(0, ahead.length).filter(b -> bodyWeight[b] >= NEGLIGIBLE).toArray();
    workers.eachBlock(
        alive.length,
        Simulation.BLOCK,
        (from, to) -> {
          List<Simulation.Continuation> jobs = new ArrayList<>();
          for (int k = from; k < to; k++) {
            jobs.add(continuation(input, bodies.get(alive[k]), checkpointSeconds));
          }
          List<BodyHistory> histories = Simulation.resumeAll(jobs, light);
          for (int k = from; k < to; k++) {
            Simulation.Continuation job = jobs.get(k - from);
            ahead[alive[k]] = new Body(job.model(), job.request(), histories.get(k - from));
          }
        });
    return ahead;
  }

  private static Simulation.Continuation continuation(
      DiagnosisInput input, Body body, double[] checkpointSeconds) {
    SimulationRequest request =
        new SimulationRequest(
            input.seconds(input.end()),
            gridStart(input),
            GRID_SECONDS,
            body.request().events(),
            new double[0],
            checkpointSeconds);
    return new Simulation.Continuation(body.model(), request, body.history().checkpoints().get(0));
  }
}

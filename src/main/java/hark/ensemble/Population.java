package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.Illumination;
import hark.power.OnboardChange;
import hark.power.PowerModel;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * All members before any evidence: event sets, onsets, bodies. A body is simulated once for the
 * events that change the electrical system; members whose other events touch only the radio share
 * it.
 */
final class Population {
  /** Bodies for each pair of events that both change the electrical system. */
  static final int BODIES_PER_PAIR = Draws.GROUPS;

  static final int FIRST_BODY_DIMENSION = 4;

  /** Draws of a pair whose bodies exist already; more would only cost weighing. */
  private static final int DRAWS_PER_SHARED_PAIR = 60;

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
   * @param probeSeconds times of telemetry, rising
   */
  record Setting(Illumination light, OnsetProposal proposal, double[] probeSeconds) {}

  static Population build(DiagnosisInput input, Setting setting, Workers workers) {
    List<EventSet> sets = EventSet.upToPairs(input.causes());
    int dimensions = FIRST_BODY_DIMENSION + input.body().numbers().size();
    Draws draws = new Draws(input.bodiesPerSet(), dimensions, input.seed());
    Builder builder = new Builder(input, setting, sets, draws);
    for (int set = 0; set < sets.size(); set++) {
      builder.add(set);
    }
    workers.each(builder.models.length, draw -> builder.models[draw] = builder.model(draw));
    Body[] bodies = new Body[builder.plans.size()];
    workers.eachBlock(
        bodies.length, Simulation.BLOCK, (from, to) -> builder.simulate(from, to, bodies));
    return new Population(sets, builder.members, List.of(bodies), draws);
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

  /** An event with its onset and the quantile of its size, before it is simulated. */
  private record Happening(int cause, double onsetSeconds, double size) {}

  /** What a body is before it is simulated; equal plans are one body. */
  private record Plan(int draw, List<Happening> happenings) {}

  private static final class Builder {
    private final DiagnosisInput input;
    private final Setting setting;
    private final List<EventSet> sets;
    private final Draws draws;
    private final List<Plan> plans = new ArrayList<>();
    private final Map<Plan, Integer> index = new LinkedHashMap<>();
    private final List<Member> members = new ArrayList<>();
    private final Onsets onsets;
    private final PowerModel[] models;
    private int pairs;

    Builder(DiagnosisInput input, Setting setting, List<EventSet> sets, Draws draws) {
      this.input = input;
      this.setting = setting;
      this.sets = sets;
      this.draws = draws;
      models = new PowerModel[draws.bodies()];
      double quiet = input.body().typical().quietSeconds();
      this.onsets = new Onsets(input.causes(), setting.proposal(), setting.light(), draws, quiet);
    }

    void add(int set) {
      if (powerful(set).size() < 2) {
        // bodies are there already for the smaller set: every draw costs only its weighing
        boolean pair = sets.get(set).causes().size() == 2;
        int count = pair ? Math.min(DRAWS_PER_SHARED_PAIR, draws.bodies()) : draws.bodies();
        for (int draw = 0; draw < count; draw++) {
          add(set, draw);
        }
        return;
      }
      int strata = draws.bodies() / Draws.GROUPS;
      int stratum = pairs % strata;
      pairs++;
      for (int group = 0; group < BODIES_PER_PAIR; group++) {
        add(set, group + Draws.GROUPS * stratum);
      }
    }

    private List<Integer> powerful(int set) {
      return sets.get(set).causes().stream()
          .filter(cause -> EventSet.changesPower(input.causes().get(cause)))
          .toList();
    }

    private void add(int set, int draw) {
      List<Integer> causes = sets.get(set).causes();
      double[] placed = onsets.of(causes, draw);
      RadioChange[] changes = new RadioChange[causes.size()];
      List<Happening> happenings = new ArrayList<>();
      for (int slot = 0; slot < causes.size(); slot++) {
        Cause cause = input.causes().get(causes.get(slot));
        double size = draws.at(draw, 2 * slot + 1);
        changes[slot] = radio(cause, size);
        // what begins after the horizon changes nothing that is computed: such bodies are one with
        // the unharmed
        if (EventSet.changesPower(cause) && placed[slot] < input.seconds(input.end())) {
          happenings.add(new Happening(causes.get(slot), placed[slot], size));
        }
      }
      Plan plan = new Plan(draw, happenings);
      Integer known = index.get(plan);
      if (known == null) {
        known = plans.size();
        index.put(plan, known);
        plans.add(plan);
      }
      double importance = onsets.importance(causes, placed);
      members.add(
          new Member(set, draw, known, placed, importance, new RadioTimeline(placed, changes)));
    }

    private static RadioChange radio(Cause cause, double size) {
      return cause.effects().stream()
          .map(effect -> effect.radio(size))
          .reduce(RadioChange.NONE, RadioChange::plus);
    }

    private PowerModel model(int draw) {
      List<Uncertain> numbers = input.body().numbers();
      double[] values = new double[numbers.size()];
      for (int k = 0; k < values.length; k++) {
        values[k] = numbers.get(k).quantile(draws.at(draw, FIRST_BODY_DIMENSION + k));
      }
      return input.body().build().apply(values);
    }

    void simulate(int from, int to, Body[] into) {
      List<Simulation.Job> jobs = new ArrayList<>();
      for (int k = from; k < to; k++) {
        jobs.add(job(plans.get(k)));
      }
      List<BodyHistory> histories = Simulation.runAll(jobs, setting.light());
      for (int k = from; k < to; k++) {
        Simulation.Job job = jobs.get(k - from);
        into[k] = new Body(job.model(), job.request(), histories.get(k - from));
      }
    }

    private Simulation.Job job(Plan plan) {
      List<SimulationRequest.TimedChange> changes = new ArrayList<>();
      for (Happening happening : plan.happenings()) {
        Cause cause = input.causes().get(happening.cause());
        Set<OnboardChange.Clearing> clearing = cause.clearings();
        for (Effect effect : cause.effects()) {
          effect
              .onboard(happening.size(), clearing)
              .map(change -> new SimulationRequest.TimedChange(happening.onsetSeconds(), change))
              .ifPresent(changes::add);
        }
      }
      double now = input.seconds(input.now());
      SimulationRequest request =
          new SimulationRequest(
              now,
              gridStart(input),
              GRID_SECONDS,
              changes,
              setting.probeSeconds(),
              new double[] {now});
      return new Simulation.Job(models[plan.draw()], request);
    }
  }
}

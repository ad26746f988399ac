package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.OnboardChange;
import hark.power.OnboardCommand;
import hark.power.PowerModel;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A population while it grows: members are added, their bodies simulated, and the importance of a
 * set's members follows from all the ways in which its rows were drawn. For one thread.
 */
final class Growth {
  /** Bodies for each pair of events that both change the electrical system, at first. */
  static final int BODIES_PER_PAIR = Draws.GROUPS;

  /** Draws of a pair whose bodies exist already, at first; more would only cost weighing. */
  private static final int DRAWS_PER_SHARED_PAIR = 4 * Draws.GROUPS;

  /** An event with its onset and the quantile of its size, before it is simulated. */
  private record Happening(int cause, double onsetSeconds, double size) {}

  /** What a body is before it is simulated; equal plans are one body. */
  private record Plan(int draw, List<Happening> happenings, List<SentCommand> taken) {}

  private final DiagnosisInput input;
  private final Population.Setting setting;
  private final List<EventSet> sets;
  private final List<Plan> plans = new ArrayList<>();
  private final Map<Plan, Integer> index = new LinkedHashMap<>();
  private final List<Member> members = new ArrayList<>();
  private final List<Body> bodies = new ArrayList<>();
  private final Onsets onsets;
  private final List<SentCommand> commands;
  private Draws draws;
  private PowerModel[] models = new PowerModel[0];
  private int pairs;

  Growth(DiagnosisInput input, Population.Setting setting) {
    this.input = input;
    this.setting = setting;
    sets = EventSet.upToPairs(input.causes());
    commands = SentCommand.of(input);
    int dimensions = firstCommandDimension() + commands.size();
    draws = new Draws(input.bodiesPerSet(), dimensions, input.seed());
    double quiet = input.body().typical().quietSeconds();
    onsets = new Onsets(input.causes(), setting.proposal(), setting.light(), quiet);
  }

  private int firstCommandDimension() {
    return Population.FIRST_BODY_DIMENSION + input.body().numbers().size();
  }

  /** The commands that a row takes as received. */
  private List<SentCommand> taken(int draw) {
    List<SentCommand> taken = new ArrayList<>();
    for (int k = 0; k < commands.size(); k++) {
      if (draws.at(draw, firstCommandDimension() + k) < SentCommand.TAKEN) {
        taken.add(commands.get(k));
      }
    }
    return taken;
  }

  /** Adds the members that are drawn whatever the evidence is. */
  void begin() {
    begin(BODIES_PER_PAIR, DRAWS_PER_SHARED_PAIR);
  }

  /**
   * The same with other numbers of rows for pairs, both multiples of the number of groups.
   *
   * @param own for pairs whose events both change the electrical system
   * @param shared for other pairs
   */
  void begin(int own, int shared) {
    for (int set = 0; set < sets.size(); set++) {
      begin(set, own, shared);
    }
  }

  /** Adds rows of draws, as many for each group; returns the index of the first. */
  int append(double[][] rows) {
    int first = draws.bodies();
    draws = draws.plus(rows);
    return first;
  }

  Population population() {
    return new Population(sets, members, List.copyOf(bodies), draws);
  }

  Onsets onsets() {
    return onsets;
  }

  /**
   * Sets how much rarer a member's row is by the prior than by the ways in which its set's rows
   * were drawn.
   */
  void weigh(int index, double rarer) {
    Member member = members.get(index);
    double onset = onsets.importance(sets.get(member.set()).causes(), member.onsets());
    members.set(index, member.withImportance(onset * rarer));
  }

  private void begin(int set, int own, int shared) {
    if (powerful(set).size() < 2) {
      // bodies are there already for the smaller set: every draw costs only its weighing
      boolean pair = sets.get(set).causes().size() == 2;
      int count = pair ? Math.min(shared, draws.bodies()) : draws.bodies();
      for (int draw = 0; draw < count; draw++) {
        add(set, draw);
      }
      return;
    }
    int strata = draws.bodies() / Draws.GROUPS;
    for (int k = 0; k < own; k++) {
      int stratum = (pairs + k / Draws.GROUPS) % strata;
      add(set, k % Draws.GROUPS + Draws.GROUPS * stratum);
    }
    pairs += own / Draws.GROUPS;
  }

  private List<Integer> powerful(int set) {
    return sets.get(set).causes().stream()
        .filter(cause -> EventSet.changesPower(input.causes().get(cause)))
        .toList();
  }

  /** Adds a member with a row of draws. */
  void add(int set, int draw) {
    List<Integer> causes = sets.get(set).causes();
    double[] placed = onsets.of(causes, draws, draw);
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
    List<SentCommand> taken = taken(draw);
    Plan plan = new Plan(draw, happenings, taken);
    Integer known = index.get(plan);
    if (known == null) {
      known = plans.size();
      index.put(plan, known);
      plans.add(plan);
    }
    double importance = onsets.importance(causes, placed);
    RadioTimeline radio = new RadioTimeline(placed, changes);
    members.add(new Member(set, draw, known, placed, importance, freed(radio, causes, taken)));
  }

  /** A release that is received frees a stuck antenna. */
  private RadioTimeline freed(RadioTimeline radio, List<Integer> set, List<SentCommand> taken) {
    return freedBy(taken, radio, set.stream().map(input.causes()::get).toList());
  }

  /** The radio of a member with these causes after the commands that it takes. */
  static RadioTimeline freedBy(List<SentCommand> taken, RadioTimeline radio, List<Cause> causes) {
    boolean stuck = causes.stream().anyMatch(Cause::isReleased);
    RadioTimeline freed = radio;
    for (SentCommand sent : taken) {
      if (stuck && sent.command() == OnboardCommand.RELEASE) {
        freed = freed.withoutAntennaLossAfter(sent.seconds());
      }
    }
    return freed;
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
      values[k] = numbers.get(k).quantile(draws.at(draw, Population.FIRST_BODY_DIMENSION + k));
    }
    return input.body().build().apply(values);
  }

  /** Simulates the bodies that were added since. */
  void simulate(Workers workers) {
    int known = models.length;
    models = Arrays.copyOf(models, draws.bodies());
    workers.each(models.length - known, k -> models[known + k] = model(known + k));
    int first = bodies.size();
    Body[] more = new Body[plans.size() - first];
    workers.eachBlock(more.length, Simulation.BLOCK, (from, to) -> simulate(first, from, to, more));
    bodies.addAll(Arrays.asList(more));
  }

  private void simulate(int first, int from, int to, Body[] into) {
    List<Simulation.Job> jobs = new ArrayList<>();
    for (int k = from; k < to; k++) {
      jobs.add(job(plans.get(first + k)));
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
    plan.taken().forEach(sent -> changes.add(sent.arrival()));
    return new Simulation.Job(models[plan.draw()], setting.flight().with(changes));
  }
}

package hark.plan;

import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.LeaveOneOut;
import hark.ensemble.Listening;
import hark.ensemble.Particles;
import hark.ensemble.SkyWindow;
import hark.ensemble.Workers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Values every option of every window, chooses a plan under the crew's hours, and states the case
 * for going on.
 */
public final class Planner {
  private static final int PARTICLES = 2400;

  /** Possibilities that try every command: every so manieth, even, of the half to choose on. */
  private static final int THINNED_FOR_COMMANDS = 16;

  private final Diagnosis diagnosis;
  private final PlanSettings settings;
  private final Workers workers;
  private final Particles particles;
  private final OptionList list;
  private final Costs costs;
  private final Value value;
  private final List<List<WindowOption>> options = new ArrayList<>();
  private final Chances chances;
  private final Settling settling;

  private Planner(
      Diagnosis diagnosis, List<Procedure> procedures, PlanSettings settings, Workers workers) {
    this.diagnosis = diagnosis;
    this.settings = settings;
    this.workers = workers;
    particles = diagnosis.particles(PARTICLES);
    costs = new Costs(diagnosis);
    list = new OptionList(diagnosis, procedures, costs);
    value = new Value(diagnosis);
    for (int w = 0; w < diagnosis.windows().size(); w++) {
      options.add(list.at(w));
    }
    chances = Chances.of(diagnosis, particles, options, list, workers);
    settling = new Settling(options, chances, value);
  }

  /** Plans over the diagnosis's horizon. Same diagnosis, same plan. */
  public static PlanOutcome plan(
      Diagnosis diagnosis, List<Procedure> procedures, PlanSettings settings, Workers workers) {
    return new Planner(diagnosis, procedures, settings, workers).outcome();
  }

  private PlanOutcome outcome() {
    DiagnosisInput input = diagnosis.input();
    Weeks weeks = Weeks.of(input.now(), input.end(), settings);
    Setup setup = new Setup(diagnosis, options, chances, costs, settings, settling);
    PlanProblem problem = setup.problem(particles, weeks);
    Search search = new Search(problem, Search.USUAL_WIDTH);
    int[] listening = chosen(search, problem.nothing());
    CommandTrial trial =
        new CommandTrial(
            diagnosis,
            new CommandTrial.Sample(
                particles.thinned(THINNED_FOR_COMMANDS), chances, THINNED_FOR_COMMANDS),
            value,
            listening,
            options,
            list,
            workers);
    List<List<OptionValue>> values = new ArrayList<>();
    for (int w = 0; w < options.size(); w++) {
      values.add(List.of());
    }
    workers.each(options.size(), w -> values.set(w, values(w, listening, trial)));
    int[] choice =
        new CommandChoice(problem, search, candidates(values), settings.hazardLimit())
            .with(listening);
    PlanBook book = new PlanBook(problem, options, hazards(values), particles, choice, weeks);
    PlanFigures figures = book.figures(choice);
    return new PlanOutcome(
        values,
        choices(choice),
        figures.hours(),
        figures.found(),
        Math.max(figures.found(), upperBound(values)),
        figures.meanDays(),
        book.goingOn(),
        recoveries(),
        book,
        new AfterNext(diagnosis, particles).shares(book.missedNext(book.proposed())));
  }

  private int[] chosen(Search search, int[] begun) {
    return switch (settings.rule()) {
      case COVER -> search.cover(begun);
      case NEXT_BEST -> search.nextBest(begun);
      case LOOK_AHEAD -> search.lookAhead(begun);
    };
  }

  private Map<Integer, Procedure> choices(int[] choice) {
    Map<Integer, Procedure> choices = new LinkedHashMap<>();
    for (int w = 0; w < choice.length; w++) {
      if (choice[w] >= 0) {
        choices.put(w, options.get(w).get(choice[w]).procedure());
      }
    }
    return choices;
  }

  /** Every command of every window, as it was valued by itself. */
  private List<CommandChoice.Candidate> candidates(List<List<OptionValue>> values) {
    List<CommandChoice.Candidate> candidates = new ArrayList<>();
    for (int w = 0; w < values.size(); w++) {
      for (OptionValue value : values.get(w)) {
        if (value.option().sends()) {
          candidates.add(
              new CommandChoice.Candidate(
                  sent(w, value),
                  value.option().procedure().id(),
                  Math.max(value.command().adds(), value.command().addsAtBest()),
                  value.command().addsError(),
                  value.command().addsEarly(),
                  value.hazard()));
        }
      }
    }
    return candidates;
  }

  private PlanProblem.Sent sent(int window, OptionValue value) {
    return new PlanProblem.Sent(window, options.get(window).indexOf(value.option()));
  }

  private Map<PlanProblem.Sent, Double> hazards(List<List<OptionValue>> values) {
    Map<PlanProblem.Sent, Double> hazards = new HashMap<>();
    for (int w = 0; w < values.size(); w++) {
      for (OptionValue value : values.get(w)) {
        if (value.option().sends()) {
          hazards.put(sent(w, value), value.hazard());
        }
      }
    }
    return hazards;
  }

  private List<OptionValue> values(int window, int[] choice, CommandTrial trial) {
    double[] without = worthOf(window, -1, choice);
    Map<Listening, double[]> known = new HashMap<>();
    List<OptionValue> values = new ArrayList<>();
    for (int o = 0; o < options.get(window).size(); o++) {
      WindowOption option = options.get(window).get(o);
      int index = o;
      // what is sent or checked meanwhile does not change how a station listens
      double[] listening =
          option.listens()
              ? known.computeIfAbsent(option.listening(), l -> worthOf(window, index, choice))
              : without;
      values.add(value(window, o, listening, without, trial));
    }
    values.sort(
        Comparator.comparing((OptionValue v) -> v.hazard() > settings.hazardLimit())
            .thenComparing(Comparator.comparingDouble(OptionValue::score).reversed()));
    return values;
  }

  private double[] worthOf(int window, int option, int[] choice) {
    int[] changed = choice.clone();
    changed[window] = option;
    return value.gains(chances, changed, 0, 1);
  }

  private OptionValue value(
      int window, int index, double[] worth, double[] without, CommandTrial trial) {
    WindowOption option = options.get(window).get(index);
    double[] heard = heard(window, index);
    double bits =
        Information.bits(particles, informative(option, window, heard), diagnosis.sets().size());
    double mean = mean(heard, -1);
    double error = LeaveOneOut.error(group -> mean(heard, group));
    double hazard = 0;
    double byHorizon = worth[0];
    double early = worth[1];
    Optional<Double> reach = Optional.empty();
    OptionValue.Command sent = OptionValue.Command.NONE;
    if (option.procedure().change() instanceof Procedure.Settle settle) {
      double[] adds = settling.adds(settle.question(), window, trial.choice());
      byHorizon += adds[0];
      early += adds[1];
    }
    if (option.procedure().change() instanceof Procedure.Command command) {
      CommandTrial.Outcome outcome = trial.of(window, command);
      hazard = outcome.hazard();
      reach = Optional.of(outcome.reach());
      byHorizon += outcome.heard();
      early += outcome.early();
      sent =
          new OptionValue.Command(
              outcome.heard(), outcome.early(), outcome.heardError(), outcome.atBest());
    }
    double score = (early - without[1]) / Math.max(Costs.LEAST_HOURS, option.costHours());
    return new OptionValue(option, mean, error, clamp(byHorizon), bits, hazard, reach, sent, score);
  }

  /** Chance to hear in one window under one option, station health and slips included. */
  private double[] heard(int window, int option) {
    int station = diagnosis.windows().get(window).station();
    double[] heard = new double[particles.count()];
    for (int p = 0; p < heard.length; p++) {
      heard[p] = chances.works[p][station] * Particles.noSlip() * chances.heard[window][option][p];
    }
    return heard;
  }

  /**
   * The outcome that a procedure makes known: the known satellite for a self-check, the beacon for
   * all others.
   */
  private double[] informative(WindowOption option, int window, double[] heard) {
    if (!(option.procedure().change() instanceof Procedure.SelfCheck)) {
      return heard;
    }
    int station = diagnosis.windows().get(window).station();
    double[] check = new double[heard.length];
    for (int p = 0; p < check.length; p++) {
      check[p] = Diagnosis.checkHeard(chances.works[p][station]);
    }
    return check;
  }

  private double mean(double[] values, int withoutGroup) {
    double sum = 0;
    int count = 0;
    for (int p = 0; p < values.length; p++) {
      if (particles.group(p) != withoutGroup) {
        sum += values[p];
        count++;
      }
    }
    return count == 0 ? 0 : sum / count;
  }

  /**
   * Every window listened to in the way that is best for each possibility, and on top what the
   * commands that add most would add with the widest ear everywhere, as many as a plan may send: no
   * plan does better, but for sampling and for commands that help only together.
   */
  private double upperBound(List<List<OptionValue>> values) {
    int windows = options.size();
    double sum = 0;
    double[] best = new double[windows];
    for (int p = 0; p < particles.count(); p++) {
      for (int w = 0; w < windows; w++) {
        best[w] = 0;
        for (float[] option : chances.heard[w]) {
          best[w] = Math.max(best[w], option[p]);
        }
      }
      sum += value.of(best, chances.works[p])[0];
    }
    double commands =
        values.stream()
            .flatMap(List::stream)
            .map(v -> Math.max(0, v.command().addsAtBest()))
            .sorted(Comparator.reverseOrder())
            .limit(Setup.MOST_COMMANDS)
            .mapToDouble(Double::doubleValue)
            .sum();
    return clamp(sum / particles.count() + commands);
  }

  private List<PlanOutcome.Recovery> recoveries() {
    double now = diagnosis.input().seconds(diagnosis.input().now());
    List<SkyWindow> windows = diagnosis.windows();
    int causes = diagnosis.input().causes().size();
    List<List<Double>> back = new ArrayList<>();
    int[] having = new int[causes];
    for (int c = 0; c < causes; c++) {
      back.add(new ArrayList<>());
    }
    for (int p = 0; p < particles.count(); p++) {
      int particle = p;
      int first = Audible.from(0, windows.size(), w -> chances.audible[w][particle]);
      List<Integer> set = diagnosis.sets().get(particles.set(p)).causes();
      double[] onsets = particles.onsets(p);
      for (int slot = 0; slot < set.size(); slot++) {
        if (onsets[slot] <= now) {
          having[set.get(slot)]++;
          if (first != Audible.NEVER) {
            back.get(set.get(slot)).add(windows.get(first).from());
          }
        }
      }
    }
    List<PlanOutcome.Recovery> recoveries = new ArrayList<>();
    for (int c = 0; c < causes; c++) {
      recoveries.add(recovery(back.get(c), having[c]));
    }
    return recoveries;
  }

  private PlanOutcome.Recovery recovery(List<Double> back, int having) {
    back.sort(Comparator.naturalOrder());
    double probability = having == 0 ? 0 : (double) back.size() / having;
    return new PlanOutcome.Recovery(
        probability,
        quantile(back, having, 0.1),
        quantile(back, having, 0.5),
        quantile(back, having, 0.9),
        (double) having / particles.count());
  }

  private static Optional<Double> quantile(List<Double> rising, int having, double level) {
    int place = (int) Math.ceil(level * having) - 1;
    return having > 0 && place < rising.size()
        ? Optional.of(rising.get(Math.max(0, place)))
        : Optional.empty();
  }

  private static double clamp(double probability) {
    return Math.max(0, Math.min(1, probability));
  }
}

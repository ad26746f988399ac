package hark.plan;

import hark.ensemble.Diagnosis;
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
  private static final int THINNED_FOR_COMMANDS = 8;

  /**
   * A command enters the plan only when it adds this much to the chance of hearing by the horizon.
   * Judged.
   */
  private static final double COMMAND_MUST_ADD = 0.01;

  /** …and this many of its Monte-Carlo errors: nobody transmits on noise. */
  private static final double SURE_ERRORS = 2;

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
    Schedule schedule = new Schedule(options, chances, value, costs);
    int[] choice = schedule.choose(settings.hours());
    CommandTrial trial =
        new CommandTrial(
            diagnosis,
            new CommandTrial.Sample(
                particles.thinned(THINNED_FOR_COMMANDS), chances, THINNED_FOR_COMMANDS),
            value,
            choice,
            options,
            list,
            workers);
    List<List<OptionValue>> values = new ArrayList<>();
    for (int w = 0; w < options.size(); w++) {
      values.add(List.of());
    }
    workers.each(options.size(), w -> values.set(w, values(w, choice, trial)));
    double[] worth = value.mean(chances, choice, 1, 2);
    Map<Integer, Procedure> choices = choices(choice);
    double heard = worth[0] + addCommand(values, choices, choice);
    return new PlanOutcome(
        values,
        choices,
        hours(choice),
        heard,
        upperBound(values),
        worth[2],
        schedule.goingOn(),
        recoveries());
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

  /**
   * Puts the one command that adds most into the plan, if it adds enough; returns what it adds to
   * the chance.
   */
  private double addCommand(
      List<List<OptionValue>> values, Map<Integer, Procedure> choices, int[] choice) {
    double best = COMMAND_MUST_ADD;
    int window = -1;
    OptionValue chosen = null;
    for (int w = 0; w < choice.length; w++) {
      double heardAnyway =
          heardByHorizon(values.get(w), choice[w] < 0 ? null : options.get(w).get(choice[w]));
      for (OptionValue option : values.get(w)) {
        double adds = option.heardByHorizon() - heardAnyway;
        boolean allowed =
            option.option().sends() && option.hazard() <= settings.hazardLimit() && choice[w] >= 0;
        boolean sure = adds > SURE_ERRORS * option.command().addsError();
        if (allowed && sure && adds > best) {
          best = adds;
          window = w;
          chosen = option;
        }
      }
    }
    if (chosen == null) {
      return 0;
    }
    choices.put(window, chosen.option().procedure());
    return best;
  }

  private static double heardByHorizon(List<OptionValue> values, WindowOption option) {
    return values.stream()
        .filter(value -> value.option().equals(option))
        .mapToDouble(OptionValue::heardByHorizon)
        .findFirst()
        .orElse(1);
  }

  private double hours(int[] choice) {
    List<Integer> taken = new ArrayList<>();
    double[] extra = new double[choice.length];
    for (int w = 0; w < choice.length; w++) {
      if (choice[w] >= 0) {
        taken.add(w);
        extra[w] = options.get(w).get(choice[w]).procedure().costHours();
      }
    }
    return costs.hours(taken, extra);
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
      sent = new OptionValue.Command(outcome.heardError(), outcome.atBest());
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
   * Every window listened to in the way that is best for each possibility, and on top the most that
   * one command could add with the widest ear everywhere: no plan of listening with at most one
   * command does better, but for sampling.
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
    double command =
        values.stream()
            .flatMap(List::stream)
            .mapToDouble(v -> v.command().addsAtBest())
            .max()
            .orElse(0);
    return clamp(sum / particles.count() + Math.max(0, command));
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

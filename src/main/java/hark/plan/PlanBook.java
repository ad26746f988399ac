package hark.plan;

import hark.ensemble.LeaveOneOut;
import hark.ensemble.Particles;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A plan that can be asked: what it is worth, what each window in it or left out of it counts for,
 * what another choice would be worth, what one more hour would buy. A choice is a map from window
 * to the index of its option; a window that is not in it is left out. Not safe for several threads
 * at once.
 */
public final class PlanBook {
  /** Listening is looked for again within a day or so after something was heard, d. */
  private static final double AGAIN_DAYS = 3;

  private final PlanProblem problem;
  private final Effort effort;
  private final List<List<WindowOption>> options;
  private final Map<PlanProblem.Sent, Double> hazards;
  private final int[] group;
  private final int[] proposed;
  private final Weeks weeks;

  PlanBook(
      PlanProblem problem,
      List<List<WindowOption>> options,
      Map<PlanProblem.Sent, Double> hazards,
      Particles particles,
      int[] proposed,
      Weeks weeks) {
    this.problem = problem;
    this.effort = problem.effort();
    this.options = options;
    this.hazards = hazards;
    this.proposed = proposed.clone();
    this.weeks = weeks;
    group = new int[particles.count()];
    for (int p = 0; p < group.length; p++) {
      group[p] = particles.group(p);
    }
  }

  /** What the plan proposes: option by window. */
  public Map<Integer, Integer> proposed() {
    return map(proposed);
  }

  private static Map<Integer, Integer> map(int[] choice) {
    Map<Integer, Integer> map = new TreeMap<>();
    for (int w = 0; w < choice.length; w++) {
      if (choice[w] >= 0) {
        map.put(w, choice[w]);
      }
    }
    return map;
  }

  private int[] array(Map<Integer, Integer> choice) {
    int[] array = problem.nothing();
    choice.forEach((window, option) -> array[window] = option);
    return array;
  }

  /** The options of a window, as they are numbered here. */
  public List<WindowOption> options(int window) {
    return options.get(window);
  }

  /** What a choice is worth. */
  public PlanFigures figures(Map<Integer, Integer> choice) {
    return figures(array(choice));
  }

  PlanFigures figures(int[] choice) {
    Worth worth = problem.worth(choice, PlanProblem.VALUE);
    List<PlanProblem.Sent> sent = problem.sent(choice);
    double hazard = sent.stream().mapToDouble(each -> hazards.getOrDefault(each, 0.0)).sum();
    return new PlanFigures(
        clamp(worth.found()),
        error(choice),
        worth.days(),
        meanHours(choice),
        effort.hours(choice),
        clamp(hazard),
        sent.size());
  }

  private static double clamp(double probability) {
    return Math.max(0, Math.min(1, probability));
  }

  /** Of listening alone; what commands change is sampled too coarsely to be split in groups. */
  private double error(int[] choice) {
    double[] missed = problem.missed(choice, PlanProblem.VALUE, group.length);
    return LeaveOneOut.error(
        without -> {
          double sum = 0;
          int count = 0;
          for (int p = PlanProblem.VALUE; p < missed.length; p += 2) {
            if (group[p] != without) {
              sum += 1 - missed[p];
              count++;
            }
          }
          return count == 0 ? 0 : sum / count;
        });
  }

  /** Hours of each window, by the chance that it is needed at all. */
  private double meanHours(int[] choice) {
    int[] begun = problem.nothing();
    double mean = 0;
    double hours = 0;
    double found = 0;
    for (int w = 0; w < choice.length; w++) {
      if (choice[w] >= 0) {
        begun[w] = choice[w];
        double more = effort.hours(begun);
        mean += (more - hours) * (1 - found);
        hours = more;
        found = problem.worth(begun, PlanProblem.VALUE).found();
      }
    }
    return mean;
  }

  /** Hours of people's time in each week of {@link #weeks}. */
  public double[] hoursByWeek(Map<Integer, Integer> choice) {
    return effort.byWeek(array(choice), weeks.weeks().size());
  }

  /** A week and its hours. */
  public record WeekHours(
      java.time.Instant from, java.time.Instant to, double granted, double spent, double planned) {}

  /** The weeks of the plan with what a choice takes of each. */
  public List<WeekHours> weeks(Map<Integer, Integer> choice) {
    double[] planned = hoursByWeek(choice);
    List<WeekHours> list = new ArrayList<>();
    for (int k = 0; k < planned.length; k++) {
      Weeks.Week week = weeks.weeks().get(k);
      list.add(
          new WeekHours(
              week.from(), week.to(), week.grantedHours(), week.spentHours(), planned[k]));
    }
    return list;
  }

  /** A limit that a choice does not keep to. */
  public enum Breach {
    WEEK_HOURS,
    ANTENNA_HOURS,
    COMMANDS
  }

  /** The limits a choice breaks. */
  public List<Breach> breaches(Map<Integer, Integer> choice) {
    int[] array = array(choice);
    List<Breach> breaches = new ArrayList<>();
    if (!effort.keepsHours(array, problem.limits())) {
      breaches.add(Breach.WEEK_HOURS);
    }
    if (!effort.keepsAntennas(array, problem.limits())) {
      breaches.add(Breach.ANTENNA_HOURS);
    }
    if (!effort.keepsGaps(array, problem.limits())) {
      breaches.add(Breach.COMMANDS);
    }
    return breaches;
  }

  /** Least time between two commands, h. */
  public double commandGapHours() {
    return 24 * problem.limits().commandGapDays();
  }

  /** Most commands in one plan. */
  public int mostCommands() {
    return problem.limits().mostCommands();
  }

  /**
   * What one window counts for.
   *
   * @param option taken there, or the one that would be; −1 where nothing is possible
   * @param hours that it takes in this plan, h
   * @param found what it adds to the chance of hearing by the horizon
   * @param days what it takes off the mean time to the first reception, days
   * @param early what it adds to the weight found early
   * @param fits whether it would keep to the limits beside the rest
   */
  public record Share(
      int option, double hours, double found, double days, double early, boolean fits) {}

  /** Each window's share in a choice, or what it would add if it were taken too. */
  public List<Share> shares(Map<Integer, Integer> choice) {
    int[] array = array(choice);
    Worth all = problem.worth(array);
    double hours = effort.hours(array);
    List<Share> shares = new ArrayList<>();
    for (int w = 0; w < array.length; w++) {
      shares.add(array[w] >= 0 ? taken(array, w, all, hours) : left(array, w, all, hours));
    }
    return shares;
  }

  private Share taken(int[] choice, int window, Worth all, double hours) {
    int option = choice[window];
    choice[window] = -1;
    Worth without = problem.worth(choice);
    double fewer = effort.hours(choice);
    choice[window] = option;
    return share(option, hours - fewer, without, all, true);
  }

  private static Share share(int option, double hours, Worth less, Worth more, boolean fits) {
    return new Share(
        option,
        hours,
        more.found() - less.found(),
        less.days() - more.days(),
        more.early() - less.early(),
        fits);
  }

  /** Commands left out are judged by their own figures, not here. */
  private Share left(int[] choice, int window, Worth all, double hours) {
    Share best = new Share(-1, 0, 0, 0, 0, true);
    for (int o = 0; o < problem.moves().get(window).size(); o++) {
      Move move = problem.moves().get(window).get(o);
      if (move.kind() == Move.Kind.STAY || move.sends()) {
        continue;
      }
      choice[window] = o;
      double more = effort.hours(choice) - hours;
      boolean fits = effort.fits(choice, problem.limits());
      Share share = share(o, more, all, problem.worth(choice), fits);
      choice[window] = -1;
      if (best.option() < 0 || rate(share) > rate(best)) {
        best = share;
      }
    }
    return best;
  }

  private static double rate(Share share) {
    return share.early() / Math.max(Costs.LEAST_HOURS, share.hours());
  }

  /** What an hour must bring, weight found early for each hour. */
  public double leastGainPerHour() {
    return problem.price();
  }

  /** The first window of a choice in which anything is done; empty when there is none. */
  public Optional<Integer> next(Map<Integer, Integer> choice) {
    return choice.keySet().stream()
        .filter(w -> effort.move(array(choice), w) != null)
        .min(Comparator.naturalOrder());
  }

  /**
   * Chance of each possibility to be missed in the next window of a choice, by particle; both
   * halves.
   */
  double[] missedNext(Map<Integer, Integer> choice) {
    int[] only = problem.nothing();
    next(choice).ifPresent(w -> only[w] = choice.get(w));
    double[] missed = problem.missed(only, PlanProblem.CHOOSE, group.length);
    double[] other = problem.missed(only, PlanProblem.VALUE, group.length);
    for (int p = PlanProblem.VALUE; p < missed.length; p += 2) {
      missed[p] = other[p];
    }
    return missed;
  }

  /**
   * After nothing was heard in the next window.
   *
   * @param choice what is best then; the next window is not in it any more
   * @param found chance to hear by the horizon all the same
   * @param hours still to be spent
   */
  public record After(Map<Integer, Integer> choice, double found, double hours) {}

  /**
   * What the plan becomes when nothing is heard in the next window. Nothing else can be learnt in a
   * window, so a plan that was best before is best after it, but for what the exchanges missed.
   */
  public After afterNothing(Map<Integer, Integer> choice) {
    Optional<Integer> next = next(choice);
    if (next.isEmpty()) {
      return new After(Map.of(), 0, 0);
    }
    int[] begun = array(choice);
    int[] first = problem.nothing();
    first[next.get()] = begun[next.get()];
    double before = problem.worth(first, PlanProblem.VALUE).found();
    double all = problem.worth(begun, PlanProblem.VALUE).found();
    Map<Integer, Integer> rest = new TreeMap<>(choice);
    rest.remove(next.get());
    double hours = effort.hours(begun) - effort.hours(first);
    return new After(rest, clamp((all - before) / Math.max(1e-9, 1 - before)), hours);
  }

  /**
   * After something was heard in the next window: where it is best heard again.
   *
   * @param window index; −1 when there is none
   * @param again chance to hear it there
   */
  public record Again(int window, int option, double again) {}

  /** The best later window for those possibilities that are heard in the next one. */
  public Again afterHeard(Map<Integer, Integer> choice) {
    double[] missed = missedNext(choice);
    int from = next(choice).orElse(Integer.MAX_VALUE);
    Again best = new Again(-1, -1, 0);
    double most = 0;
    for (int w = from == Integer.MAX_VALUE ? options.size() : from + 1; w < options.size(); w++) {
      for (int o = 0; o < options.get(w).size(); o++) {
        Move move = problem.moves().get(w).get(o);
        if (move.kind() != Move.Kind.LISTEN || move.outside()) {
          continue;
        }
        double chance = again(w, o, missed);
        double delay = problem.time().beginDays()[w] - problem.time().beginDays()[from];
        double worth = chance * Math.exp(-delay / AGAIN_DAYS);
        if (worth > most + 1e-6) {
          most = worth;
          best = new Again(w, o, chance);
        }
      }
    }
    return best;
  }

  private double again(int window, int option, double[] missed) {
    Rows rows = problem.halves().get(PlanProblem.CHOOSE);
    Rows others = problem.halves().get(PlanProblem.VALUE);
    return (chance(rows, window, option, missed) + chance(others, window, option, missed))
        / Math.max(1e-12, heard(rows, missed) + heard(others, missed));
  }

  private double chance(Rows rows, int window, int option, double[] missed) {
    float[] heard = rows.heard(window, option);
    int station = problem.time().station()[window];
    double sum = 0;
    for (int r = 0; heard != null && r < rows.count(); r++) {
      int p = rows.place(r);
      sum += (1 - missed[p]) * problem.noSlip() * heard[p] * works(rows, r, station, missed[p]);
    }
    return sum;
  }

  /** Whoever was heard was heard by a station that works; others keep their doubt. */
  private double works(Rows rows, int row, int station, double missed) {
    int next = next(proposed()).orElse(-1);
    boolean same = next >= 0 && problem.time().station()[next] == station && missed < 1;
    return same ? 1 : rows.works(row)[station];
  }

  private static double heard(Rows rows, double[] missed) {
    double sum = 0;
    for (int r = 0; r < rows.count(); r++) {
      sum += 1 - missed[rows.place(r)];
    }
    return sum;
  }

  /**
   * What one more hour in every week would buy.
   *
   * @param hours of it that would be used
   * @param found what it adds to the chance of hearing by the horizon
   * @param days what it takes off the mean time to the first reception, days
   */
  public record More(double hours, double found, double days) {}

  /** One more hour in every week of the plan, arranged as well as the plan itself. */
  public More oneMoreHour() {
    PlanProblem wider = problem.within(problem.limits().more(1));
    int[] choice = new Search(wider, Search.USUAL_WIDTH).rearranged(proposed);
    Worth before = problem.worth(proposed);
    Worth after = problem.worth(choice);
    return new More(
        effort.hours(choice) - effort.hours(proposed),
        after.found() - before.found(),
        before.days() - after.days());
  }

  /**
   * Hours and chance heard as the plan's windows are taken in the order of what they find for each
   * hour, and then beyond the plan, whatever an hour costs.
   */
  List<double[]> goingOn() {
    List<double[]> points = new ArrayList<>();
    int[] begun = problem.nothing();
    points.add(new double[] {0, 0});
    for (int w = bestNext(begun); w >= 0; w = bestNext(begun)) {
      begun[w] = proposed[w];
      points.add(point(begun));
    }
    PlanProblem free =
        new PlanProblem(
            problem.time(),
            problem.moves(),
            unlimited(),
            problem.halves(),
            problem.commands(),
            problem.noSlip(),
            problem.earlyDays(),
            NOTHING_GAINED);
    Search beyond = new Search(free, 0);
    beyond.extend(begun);
    int[] more = proposed.clone();
    for (int[] step : beyond.order()) {
      more[step[0]] = step[1];
      points.add(point(more));
    }
    return points;
  }

  private static final double NOTHING_GAINED = 1e-5;

  private Limits unlimited() {
    double[] weekHours = new double[problem.limits().weekHours().length];
    Arrays.fill(weekHours, Double.POSITIVE_INFINITY);
    return new Limits(
        weekHours,
        problem.limits().stationHours(),
        problem.limits().outsideHours(),
        problem.limits().commandGapDays(),
        problem.limits().mostCommands());
  }

  private double[] point(int[] choice) {
    return new double[] {
      effort.hours(choice), clamp(problem.worth(choice, PlanProblem.VALUE).found())
    };
  }

  private int bestNext(int[] begun) {
    double present = problem.worth(begun, PlanProblem.CHOOSE).early();
    double hours = effort.hours(begun);
    int best = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int w = 0; w < begun.length; w++) {
      if (begun[w] < 0 && proposed[w] >= 0) {
        begun[w] = proposed[w];
        double gain = problem.worth(begun, PlanProblem.CHOOSE).early() - present;
        double rate = gain / Math.max(Costs.LEAST_HOURS, effort.hours(begun) - hours);
        begun[w] = -1;
        best = rate > most ? w : best;
        most = Math.max(most, rate);
      }
    }
    return best;
  }
}

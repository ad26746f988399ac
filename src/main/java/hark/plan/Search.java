package hark.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Chooses windows and moves of one planning question: again and again the move that finds most
 * weight early for each further hour, while it is worth its hours and keeps to the limits; then
 * moves are exchanged, added and taken away while that does better. Gains of listening only shrink
 * as more is chosen, so a move whose old gain is too small need not be looked at again.
 *
 * <p>Commands are not chosen here: those of the choice begun with stay as they are.
 */
final class Search {
  /** A gain within so much of the best one is the same but for Monte-Carlo noise. Judged. */
  private static final double AS_GOOD = 0.95;

  /** Exchanges must do better by this much, or rounding would go round in circles. */
  private static final double BETTER = 1e-9;

  /** Rounds of exchanging; each looks at every window once. */
  private static final int MOST_ROUNDS = 4;

  /** Windows left out that an exchange tries, usually. */
  static final int USUAL_WIDTH = 5;

  private final PlanProblem problem;
  private final Effort effort;
  private final int width;
  private final List<int[]> order = new ArrayList<>();

  /**
   * @param width how many of the best windows left out an exchange tries for each one that is in
   */
  Search(PlanProblem problem, int width) {
    this.problem = problem;
    this.effort = problem.effort();
    this.width = width;
  }

  private record Step(int window, int move, double rate) {}

  /**
   * Greedy choice and exchanges, on top of what the given choice already does; begun once with what
   * finds most for each hour and once with what finds most, for where hours are few one large gain
   * may be better than several that are cheap.
   */
  int[] cover(int[] begun) {
    int[] cheap = begun.clone();
    extend(cheap);
    boolean tight = isTight(cheap);
    improve(cheap, begun);
    if (!tight) {
      return cheap;
    }
    int[] large = begun.clone();
    extendByGain(large);
    improve(large, begun);
    return problem.objective(large) > problem.objective(cheap) + BETTER ? large : cheap;
  }

  /** True when limits, not the price of an hour, keep further windows out. */
  private boolean isTight(int[] choice) {
    for (int[] add : outside(choice)) {
      choice[add[0]] = add[1];
      boolean fits = effort.fits(choice, problem.limits());
      choice[add[0]] = -1;
      if (!fits) {
        return true;
      }
    }
    return false;
  }

  private void extendByGain(int[] choice) {
    for (Step best = largest(choice, 0); best != null; best = largest(choice, 0)) {
      choice[best.window()] = best.move();
    }
  }

  /** The move from a window on that finds most and is worth its hours; null when there is none. */
  private Step largest(int[] choice, int from) {
    double present = early(choice);
    double hours = effort.hours(choice);
    Step best = null;
    for (int w = from; w < choice.length; w++) {
      for (int m = 0; choice[w] < 0 && m < problem.moves().get(w).size(); m++) {
        if (isChosenHere(w, m) && fitsWith(choice, w, m)) {
          choice[w] = m;
          double gain = early(choice) - present;
          double more = effort.hours(choice) - hours;
          choice[w] = -1;
          boolean better = best == null || gain > best.rate();
          best = better && gain > problem.price() * more ? new Step(w, m, gain) : best;
        }
      }
    }
    return best;
  }

  /** Listening arranged anew around the commands of a choice, beginning with what it has. */
  int[] rearranged(int[] begun) {
    int[] choice = begun.clone();
    int[] commands = commandsOnly(begun);
    extend(choice);
    improve(choice, commands);
    return choice;
  }

  private int[] commandsOnly(int[] choice) {
    int[] commands = problem.nothing();
    problem.sent(choice).forEach(sent -> commands[sent.window()] = sent.move());
    return commands;
  }

  /** Puts a move in, whatever must leave for it, and fills what room is left. */
  private double makeRoom(int[] choice, int[] add, int[] fixed, double best) {
    if (fitsWith(choice, add[0], add[1])) {
      return tryWith(choice, -1, add, best);
    }
    int[] kept = fixed.clone();
    kept[add[0]] = add[1];
    int[] tried = choice.clone();
    tried[add[0]] = add[1];
    tried = fitted(tried, kept);
    if (tried == null) {
      return best;
    }
    extend(tried);
    double worth = problem.objective(tried);
    if (worth <= best + BETTER) {
      return best;
    }
    System.arraycopy(tried, 0, choice, 0, choice.length);
    return worth;
  }

  /**
   * The same with as little listening given up as makes it fit the limits; null when it never does.
   */
  int[] fitted(int[] begun) {
    return fitted(begun, commandsOnly(begun));
  }

  private int[] fitted(int[] begun, int[] fixed) {
    int[] choice = begun.clone();
    while (!effort.fits(choice, problem.limits())) {
      int least = -1;
      double best = Double.NEGATIVE_INFINITY;
      for (int w = 0; w < choice.length; w++) {
        if (choice[w] >= 0 && fixed[w] < 0) {
          double without = without(choice, w);
          least = without > best ? w : least;
          best = Math.max(best, without);
        }
      }
      if (least < 0) {
        return null;
      }
      choice[least] = -1;
    }
    return choice;
  }

  /** Windows in the order in which the last extension took them, with the move: (window, move). */
  List<int[]> order() {
    return order;
  }

  /** Adds the best move again and again. */
  void extend(int[] choice) {
    PriorityQueue<Step> queue =
        new PriorityQueue<>(
            Comparator.comparingDouble((Step step) -> -step.rate())
                .thenComparingInt(Step::window)
                .thenComparingInt(Step::move));
    double present = early(choice);
    double hours = effort.hours(choice);
    for (int w = 0; w < choice.length; w++) {
      for (int m = 0; choice[w] < 0 && m < problem.moves().get(w).size(); m++) {
        if (isChosenHere(w, m)) {
          queue.add(new Step(w, m, rate(choice, w, m, present, hours)));
        }
      }
    }
    while (!queue.isEmpty()) {
      Step step = queue.poll();
      if (choice[step.window()] >= 0 || step.rate() <= problem.price()) {
        continue;
      }
      double fresh = rate(choice, step.window(), step.move(), present, hours);
      if (!queue.isEmpty() && fresh < queue.peek().rate()) {
        queue.add(new Step(step.window(), step.move(), fresh));
        continue;
      }
      if (fresh > problem.price()
          && take(choice, simplest(choice, step, fresh, present, hours), step)) {
        present = early(choice);
        hours = effort.hours(choice);
      }
    }
  }

  private boolean take(int[] choice, int move, Step step) {
    choice[step.window()] = move;
    if (!effort.fits(choice, problem.limits())) {
      choice[step.window()] = -1;
      return false;
    }
    order.add(new int[] {step.window(), move});
    return true;
  }

  private boolean isChosenHere(int window, int move) {
    Move.Kind kind = problem.moves().get(window).get(move).kind();
    return kind == Move.Kind.LISTEN || kind == Move.Kind.DESK;
  }

  /** The plainest move of a window that is as good as the best one but for noise. */
  private int simplest(int[] choice, Step step, double best, double present, double hours) {
    int simplest = step.move();
    List<Move> moves = problem.moves().get(step.window());
    for (int m = 0; m < moves.size(); m++) {
      boolean plainer = moves.get(m).plainness() < moves.get(simplest).plainness();
      if (plainer
          && isChosenHere(step.window(), m)
          && rate(choice, step.window(), m, present, hours) >= AS_GOOD * best) {
        simplest = m;
      }
    }
    return simplest;
  }

  private double early(int[] choice) {
    return problem.worth(choice, PlanProblem.CHOOSE).early();
  }

  /** Early-found weight for each further hour. */
  private double rate(int[] choice, int window, int move, double present, double hours) {
    choice[window] = move;
    double gain = early(choice) - present;
    double more = effort.hours(choice) - hours;
    choice[window] = -1;
    return gain / Math.max(Costs.LEAST_HOURS, more);
  }

  /** Exchanges while that does better; windows of {@code fixed} stay as they are. */
  private void improve(int[] choice, int[] fixed) {
    double best = problem.objective(choice);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double before = best;
      List<int[]> outside = outside(choice);
      for (int w = 0; w < choice.length; w++) {
        if (choice[w] >= 0 && fixed[w] < 0) {
          best = leave(choice, w, outside, best);
        }
      }
      for (int[] add : outside) {
        if (choice[add[0]] < 0) {
          best = makeRoom(choice, add, fixed, best);
        }
      }
      if (best <= before + BETTER) {
        return;
      }
    }
  }

  /** The best move of each window left out, the best windows first. */
  private List<int[]> outside(int[] choice) {
    double present = early(choice);
    double hours = effort.hours(choice);
    List<Step> steps = new ArrayList<>();
    for (int w = 0; w < choice.length; w++) {
      Step best = null;
      for (int m = 0; choice[w] < 0 && m < problem.moves().get(w).size(); m++) {
        double rate = isChosenHere(w, m) ? rate(choice, w, m, present, hours) : 0;
        best = rate > 0 && (best == null || rate > best.rate()) ? new Step(w, m, rate) : best;
      }
      if (best != null) {
        steps.add(best);
      }
    }
    steps.sort(Comparator.comparingDouble(Step::rate).reversed());
    return steps.stream().limit(width).map(step -> new int[] {step.window(), step.move()}).toList();
  }

  /** Takes a window's move away, or puts another one in its place, here or elsewhere. */
  private double leave(int[] choice, int window, List<int[]> outside, double before) {
    double best = before;
    int kept = choice[window];
    choice[window] = -1;
    double without = problem.objective(choice);
    choice[window] = kept;
    if (without > best + BETTER) {
      choice[window] = -1;
      return without;
    }
    for (int m = 0; m < problem.moves().get(window).size(); m++) {
      if (m != choice[window] && isChosenHere(window, m)) {
        best = tryInstead(choice, window, m, best);
      }
    }
    for (int[] add : outside) {
      if (choice[window] >= 0 && choice[add[0]] < 0) {
        best = tryWith(choice, window, add, best);
      }
    }
    return best;
  }

  /** Another way in the same window must be clearly better: plainness was weighed already. */
  private double tryInstead(int[] choice, int window, int move, double best) {
    int kept = choice[window];
    choice[window] = move;
    double tried =
        effort.fits(choice, problem.limits())
            ? problem.objective(choice)
            : Double.NEGATIVE_INFINITY;
    boolean fancier =
        problem.moves().get(window).get(move).plainness()
            > problem.moves().get(window).get(kept).plainness();
    double margin = fancier ? (1 - AS_GOOD) * Math.max(0, best - without(choice, window)) : 0;
    if (tried > best + margin + BETTER) {
      return tried;
    }
    choice[window] = kept;
    return best;
  }

  private double without(int[] choice, int window) {
    int kept = choice[window];
    choice[window] = -1;
    double objective = problem.objective(choice);
    choice[window] = kept;
    return objective;
  }

  private double tryWith(int[] choice, int leaving, int[] add, double best) {
    int kept = leaving < 0 ? -1 : choice[leaving];
    if (leaving >= 0) {
      choice[leaving] = -1;
    }
    choice[add[0]] = add[1];
    if (effort.fits(choice, problem.limits())) {
      double tried = problem.objective(choice);
      if (tried > best + BETTER) {
        return tried;
      }
    }
    choice[add[0]] = -1;
    if (leaving >= 0) {
      choice[leaving] = kept;
    }
    return best;
  }

  /**
   * The next move is the one that finds most early by itself; what comes before it is left out, and
   * so on after it.
   */
  int[] nextBest(int[] begun) {
    int[] choice = begun.clone();
    for (Step best = largest(choice, 0); best != null; best = largest(choice, best.window() + 1)) {
      choice[best.window()] = best.move();
      order.add(new int[] {best.window(), best.move()});
    }
    return choice;
  }

  private boolean fitsWith(int[] choice, int window, int move) {
    choice[window] = move;
    boolean fits = effort.fits(choice, problem.limits());
    choice[window] = -1;
    return fits;
  }

  /** Every move of the next window is tried with the best cover after it, and none too. */
  int[] lookAhead(int[] begun) {
    int[] best = cover(begun);
    double most = problem.objective(best);
    int next = 0;
    while (next < begun.length && (begun[next] >= 0 || !isOpen(next))) {
      next++;
    }
    for (int m = -1; next < begun.length && m < problem.moves().get(next).size(); m++) {
      int[] tried = begun.clone();
      tried[next] = m;
      if (m >= 0 && (!isChosenHere(next, m) || !effort.fits(tried, problem.limits()))) {
        continue;
      }
      int[] rest = new Search(m < 0 ? without(next) : problem, width).cover(tried);
      double worth = problem.objective(rest);
      if (worth > most + BETTER) {
        most = worth;
        best = rest;
      }
    }
    return best;
  }

  private boolean isOpen(int window) {
    for (int m = 0; m < problem.moves().get(window).size(); m++) {
      if (isChosenHere(window, m)) {
        return true;
      }
    }
    return false;
  }

  /** The same question in which nothing can be done in one window. */
  private PlanProblem without(int window) {
    List<List<Move>> moves = new ArrayList<>(problem.moves());
    moves.set(window, List.of());
    return new PlanProblem(
        problem.time(),
        moves,
        problem.limits(),
        problem.halves(),
        problem.commands(),
        problem.noSlip(),
        problem.earlyDays(),
        problem.price());
  }
}

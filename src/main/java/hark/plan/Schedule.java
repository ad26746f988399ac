package hark.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * A greedy choice of windows and ways of listening: again and again the option that finds most
 * weight early for each further hour, as long as hours are left. Chosen on one half of the
 * particles; the other half says what it is worth. Gains only shrink as more is chosen, so an
 * option whose old gain is too small need not be looked at again.
 */
final class Schedule {
  private static final double NOTHING_GAINED = 1e-5;

  /** A gain within so much of the best one is the same but for Monte-Carlo noise. Judged. */
  private static final double AS_GOOD = 0.95;

  private final List<List<WindowOption>> options;
  private final Chances chances;
  private final Value value;
  private final Costs costs;
  private final int[] choice;
  private final List<Integer> taken = new ArrayList<>();
  private final double[] extraHours;
  private final List<double[]> goingOn = new ArrayList<>();

  Schedule(List<List<WindowOption>> options, Chances chances, Value value, Costs costs) {
    this.options = options;
    this.chances = chances;
    this.value = value;
    this.costs = costs;
    choice = new int[options.size()];
    Arrays.fill(choice, -1);
    extraHours = new double[options.size()];
  }

  private record Step(int window, int option, double rate) {}

  /** Chooses within so many hours; afterwards the case for going on beyond them. */
  int[] choose(double hours) {
    extend(hours);
    int[] planned = choice.clone();
    goingOn.add(0, new double[] {0, 0});
    extend(Double.POSITIVE_INFINITY);
    return planned;
  }

  /** Hours and chance heard after each choice, in the order of choosing. */
  List<double[]> goingOn() {
    return goingOn;
  }

  private void extend(double hours) {
    PriorityQueue<Step> queue =
        new PriorityQueue<>(
            Comparator.comparingDouble((Step step) -> -step.rate())
                .thenComparingInt(Step::window)
                .thenComparingInt(Step::option));
    double present = early();
    for (int w = 0; w < choice.length; w++) {
      for (int o = 0; o < options.get(w).size(); o++) {
        WindowOption option = options.get(w).get(o);
        if (choice[w] < 0 && listensOnly(option)) {
          queue.add(new Step(w, o, rate(w, o, present)));
        }
      }
    }
    while (!queue.isEmpty()) {
      Step step = queue.poll();
      if (choice[step.window()] >= 0 || step.rate() < NOTHING_GAINED) {
        continue;
      }
      double fresh = rate(step.window(), step.option(), present);
      if (!queue.isEmpty() && fresh < queue.peek().rate()) {
        queue.add(new Step(step.window(), step.option(), fresh));
        continue;
      }
      Step simplest = simplest(step.window(), fresh, present);
      if (hoursWith(step.window(), simplest.option()) <= hours) {
        take(simplest);
        present = early();
      }
    }
  }

  /** The plainest way of listening of a window that is as good as the best one but for noise. */
  private Step simplest(int window, double best, double present) {
    Step simplest = null;
    int fewest = Integer.MAX_VALUE;
    for (int o = 0; o < options.get(window).size(); o++) {
      WindowOption option = options.get(window).get(o);
      if (option.procedure().change() instanceof Procedure.Listen listen) {
        double rate = rate(window, o, present);
        if (rate >= AS_GOOD * best && departures(listen) < fewest) {
          fewest = departures(listen);
          simplest = new Step(window, o, rate);
        }
      }
    }
    return simplest;
  }

  /**
   * How far a way of listening departs from the station's usual one: the more, the more can go
   * wrong.
   */
  private static int departures(Procedure.Listen listen) {
    return (listen.windowHz().isPresent() ? 1 : 0)
        + (listen.way().isPresent() ? 1 : 0)
        + (listen.offsetSeconds() != 0 ? 2 : 0)
        + (listen.otherCandidate() ? 3 : 0)
        + (listen.extraGainDb() > 0 ? 4 : 0);
  }

  private static boolean listensOnly(WindowOption option) {
    return option.procedure().change() instanceof Procedure.Listen;
  }

  private void take(Step step) {
    extraHours[step.window()] =
        options.get(step.window()).get(step.option()).procedure().costHours();
    choice[step.window()] = step.option();
    taken.add(step.window());
    goingOn.add(
        new double[] {costs.hours(taken, extraHours), value.gains(chances, choice, 1, 2)[0]});
  }

  private double early() {
    return value.gains(chances, choice, 0, 2)[1];
  }

  private double rate(int window, int option, double present) {
    choice[window] = option;
    double with = early();
    choice[window] = -1;
    double hours = hoursWith(window, option) - costs.hours(taken, extraHours);
    return (with - present) / Math.max(Costs.LEAST_HOURS, hours);
  }

  private double hoursWith(int window, int option) {
    List<Integer> more = new ArrayList<>(taken);
    more.add(window);
    double[] extra = extraHours.clone();
    extra[window] = options.get(window).get(option).procedure().costHours();
    return costs.hours(more, extra);
  }
}

package hark.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Planning questions in bare numbers, small enough to try every plan. */
final class SmallProblem {
  double[] weight = {1};
  double[][] works = {{1}};
  int[] station;
  double[] days;
  double[] sessionHours;
  double[] passHours;

  /** By window, move and possibility. */
  float[][][] heard;

  List<List<Move>> moves = new ArrayList<>();
  Limits limits;
  double horizonDays = 10;
  double earlyDays = 3;
  double price = 0;
  double noSlip = 1;
  PlanProblem.CommandRows commands = PlanProblem.CommandRows.NONE;

  PlanProblem problem() {
    int count = heard.length;
    double[] end = Arrays.stream(days).map(day -> day + 0.01).toArray();
    double[] antenna = new double[count];
    Arrays.fill(antenna, 0.2);
    Timetable time =
        new Timetable(
            station, days, end, sessionHours, passHours, antenna, new int[count], horizonDays);
    Rows rows = new Rows(weight, works, (w, m) -> heard[w][m]);
    return new PlanProblem(
        time, moves, limits, List.of(rows, rows), commands, noSlip, earlyDays, price);
  }

  /** One window a day at one station, each with the same costs; chances by window and move. */
  static SmallProblem of(double[] weight, float[][][] heard, double hoursEach, double hours) {
    SmallProblem small = new SmallProblem();
    int count = heard.length;
    small.weight = weight;
    small.works = new double[weight.length][];
    Arrays.fill(small.works, new double[] {1});
    small.heard = heard;
    small.station = new int[count];
    small.days = new double[count];
    small.sessionHours = new double[count];
    small.passHours = new double[count];
    for (int w = 0; w < count; w++) {
      small.days[w] = w * 0.5;
      small.passHours[w] = hoursEach;
      List<Move> here = new ArrayList<>();
      for (int m = 0; m < heard[w].length; m++) {
        here.add(Move.listening());
      }
      small.moves.add(here);
    }
    small.limits = Limits.hours(hours, 1);
    return small;
  }

  /** Anything goes: two stations that may be deaf, sittings, costs, half a dozen possibilities. */
  static SmallProblem random(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int windows = 5 + random.nextInt(2);
    int possibilities = 3 + random.nextInt(5);
    SmallProblem small = new SmallProblem();
    small.weight = new double[possibilities];
    small.works = new double[possibilities][2];
    double total = 0;
    for (int p = 0; p < possibilities; p++) {
      small.weight[p] = 0.1 + random.nextDouble();
      total += small.weight[p];
      small.works[p] =
          new double[] {0.6 + 0.4 * random.nextDouble(), 0.5 + 0.5 * random.nextDouble()};
    }
    for (int p = 0; p < possibilities; p++) {
      small.weight[p] /= total;
    }
    small.station = new int[windows];
    small.days = new double[windows];
    small.sessionHours = new double[windows];
    small.passHours = new double[windows];
    small.heard = new float[windows][][];
    double day = 0.1;
    for (int w = 0; w < windows; w++) {
      small.station[w] = random.nextInt(2);
      small.days[w] = day;
      day += random.nextBoolean() ? 0.065 : 0.4 + random.nextDouble();
      small.sessionHours[w] = 0.5 * random.nextDouble();
      small.passHours[w] = 0.1 + 0.5 * random.nextDouble();
      int moves = 1 + random.nextInt(3);
      List<Move> here = new ArrayList<>();
      small.heard[w] = new float[moves][possibilities];
      for (int m = 0; m < moves; m++) {
        double hours = random.nextInt(3) * 0.2;
        here.add(new Move(Move.Kind.LISTEN, hours, false, 0, 0, Optional.empty()));
        for (int p = 0; p < possibilities; p++) {
          small.heard[w][m][p] = random.nextInt(3) == 0 ? 0 : (float) random.nextDouble();
        }
      }
      small.moves.add(here);
    }
    small.limits = Limits.hours(0.8 + 2 * random.nextDouble(), 2);
    small.price = random.nextInt(2) * 0.02;
    small.noSlip = 0.97;
    return small;
  }

  /** The best plan of all there are. */
  static int[] best(PlanProblem problem) {
    int[] choice = problem.nothing();
    int[] best = choice.clone();
    double[] most = {problem.objective(choice)};
    tryFrom(problem, choice, 0, best, most);
    return best;
  }

  private static void tryFrom(
      PlanProblem problem, int[] choice, int window, int[] best, double[] most) {
    if (window == choice.length) {
      if (problem.effort().fits(choice, problem.limits())) {
        double objective = problem.objective(choice);
        if (objective > most[0]) {
          most[0] = objective;
          System.arraycopy(choice, 0, best, 0, choice.length);
        }
      }
      return;
    }
    for (int m = -1; m < problem.moves().get(window).size(); m++) {
      choice[window] = m;
      tryFrom(problem, choice, window + 1, best, most);
    }
    choice[window] = -1;
  }
}

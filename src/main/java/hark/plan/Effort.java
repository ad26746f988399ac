package hark.plan;

import java.util.Arrays;
import java.util.List;

/** What a choice costs, and whether it keeps to the limits. */
final class Effort {
  /**
   * Windows at one station that begin within this time of the one before share a sitting, d. Common
   * practice: people stay.
   */
  private static final double ONE_SITTING_DAYS = 2.5 / 24;

  private final Timetable time;
  private final List<List<Move>> moves;

  Effort(Timetable time, List<List<Move>> moves) {
    this.time = time;
    this.moves = moves;
  }

  /** What is done in a window; null when nothing is. */
  Move move(int[] choice, int window) {
    Move move = choice[window] < 0 ? null : moves.get(window).get(choice[window]);
    return move == null || move.kind() == Move.Kind.STAY ? null : move;
  }

  /** People's hours in each week, h. */
  double[] byWeek(int[] choice, int weeks) {
    double[] hours = new double[weeks];
    double[] sitting = new double[time.stations()];
    Arrays.fill(sitting, Double.NEGATIVE_INFINITY);
    for (int w = 0; w < choice.length; w++) {
      Move move = move(choice, w);
      if (move == null) {
        continue;
      }
      int station = time.station()[w];
      double session =
          time.beginDays()[w] - sitting[station] > ONE_SITTING_DAYS ? time.sessionHours()[w] : 0;
      sitting[station] = time.beginDays()[w];
      hours[time.week()[w]] += session + time.passHours()[w] + move.extraHours();
    }
    return hours;
  }

  /** People's hours of all weeks, h. */
  double hours(int[] choice) {
    return Arrays.stream(byWeek(choice, Timetable.MOST_WEEKS)).sum();
  }

  /** Whether a choice keeps to the limits. */
  boolean fits(int[] choice, Limits limits) {
    return keepsHours(choice, limits) && keepsAntennas(choice, limits) && keepsGaps(choice, limits);
  }

  boolean keepsHours(int[] choice, Limits limits) {
    double[] hours = byWeek(choice, limits.weekHours().length);
    for (int k = 0; k < hours.length; k++) {
      if (!Limits.within(hours[k], limits.weekHours()[k])) {
        return false;
      }
    }
    return true;
  }

  boolean keepsAntennas(int[] choice, Limits limits) {
    int weeks = limits.weekHours().length;
    double[][] station = new double[time.stations()][weeks];
    double[] outside = new double[weeks];
    for (int w = 0; w < choice.length; w++) {
      Move move = move(choice, w);
      if (move != null) {
        double[] used = move.outside() ? outside : station[time.station()[w]];
        used[time.week()[w]] += time.antennaHours()[w];
      }
    }
    boolean keeps = Arrays.stream(outside).allMatch(h -> Limits.within(h, limits.outsideHours()));
    for (int s = 0; s < station.length && keeps; s++) {
      double limit = limits.stationHours()[s];
      keeps = Arrays.stream(station[s]).allMatch(h -> Limits.within(h, limit));
    }
    return keeps;
  }

  boolean keepsGaps(int[] choice, Limits limits) {
    double last = Double.NEGATIVE_INFINITY;
    int commands = 0;
    for (int w = 0; w < choice.length; w++) {
      Move move = move(choice, w);
      if (move != null && move.sends()) {
        if (time.beginDays()[w] - last < limits.commandGapDays()) {
          return false;
        }
        last = time.beginDays()[w];
        commands++;
      }
    }
    return commands <= limits.mostCommands();
  }
}

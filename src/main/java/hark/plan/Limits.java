package hark.plan;

import java.util.Arrays;

/**
 * What a plan must keep to.
 *
 * @param weekHours people's hours left in each week, h
 * @param stationHours by station, hours of its antenna in a week; infinite when nobody counts them
 * @param outsideHours hours of other people's antennas in a week
 * @param commandGapDays least time between two commands
 * @param mostCommands in one plan
 */
record Limits(
    double[] weekHours,
    double[] stationHours,
    double outsideHours,
    double commandGapDays,
    int mostCommands) {
  /** Hours are numbers with rounding behind them, h. */
  private static final double ROUNDING = 1e-9;

  /** Only people's hours in one week count. */
  static Limits hours(double hours, int stations) {
    double[] free = new double[stations];
    Arrays.fill(free, Double.POSITIVE_INFINITY);
    return new Limits(new double[] {hours}, free, Double.POSITIVE_INFINITY, 0, Integer.MAX_VALUE);
  }

  /** The same with so many more people's hours in every week. */
  Limits more(double hours) {
    return new Limits(
        Arrays.stream(weekHours).map(week -> week + hours).toArray(),
        stationHours,
        outsideHours,
        commandGapDays,
        mostCommands);
  }

  /** True when so much is within a limit. */
  static boolean within(double used, double limit) {
    return used <= limit + ROUNDING;
  }
}

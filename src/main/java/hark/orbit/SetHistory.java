package hark.orbit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Successive sets of one object, held against each other. Pure. */
public final class SetHistory {
  private static final double DAY = 86400.0;

  /** Sets of the same hours say nothing about how an orbit is foretold. */
  private static final double LEAST_DAYS = 0.02;

  private SetHistory() {}

  /**
   * One step for each set but the first.
   *
   * @param sets of one object, in any order
   * @param usual along-track spread of a set, for judging the steps
   */
  public static List<SetStep> steps(List<ElementSet> sets, StateSpread usual, EarthModel earth) {
    List<ElementSet> inOrder =
        sets.stream().sorted(Comparator.comparing(ElementSet::epoch)).toList();
    List<SetStep> steps = new ArrayList<>();
    for (int i = 1; i < inOrder.size(); i++) {
      double days = Trajectory.between(inOrder.get(i - 1).epoch(), inOrder.get(i).epoch()) / DAY;
      if (days >= LEAST_DAYS) {
        steps.add(step(inOrder.get(i - 1), inOrder.get(i), usual, earth));
      }
    }
    return steps;
  }

  /** How the second set lies to the first, whosever they are. */
  public static SetStep step(
      ElementSet before, ElementSet after, StateSpread usual, EarthModel earth) {
    double days = Trajectory.between(before.epoch(), after.epoch()) / DAY;
    double[] foretold = new double[6];
    double[] found = new double[6];
    Trajectory old = Trajectory.of(before, earth);
    Trajectory now = Trajectory.of(after, earth);
    boolean valid = old.teme(old.secondsAt(after.epoch()), foretold) && now.teme(0, found);
    if (!valid) {
      return new SetStep(before, after, days, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }
    // far along a bent track a straight difference is short: aside is taken where it comes nearest
    double late = 0;
    for (int round = 0; round < 4; round++) {
      late += lateness(foretold, found);
      if (!old.teme(old.secondsAt(after.epoch()) - late, foretold)) {
        return new SetStep(before, after, days, late, Double.NaN, Double.NaN, Double.NaN);
      }
    }
    double[] normal = unit(cross(foretold));
    double radius = Trajectory.radius(foretold);
    double aside = 0;
    double above = 0;
    for (int k = 0; k < 3; k++) {
      aside += (found[k] - foretold[k]) * normal[k];
      above += (found[k] - foretold[k]) * foretold[k] / radius;
    }
    return new SetStep(before, after, days, late, aside, above, late / spread(usual, days));
  }

  /**
   * Spread of the difference of two sets so far apart: the older's error grown, the newer's new.
   */
  static double spread(StateSpread usual, double days) {
    double linear = usual.perDaySeconds() * days;
    double square = usual.perDay2Seconds() * days * days;
    double initial = usual.initialSeconds();
    return Math.sqrt(2 * initial * initial + linear * linear + square * square);
  }

  private static double lateness(double[] foretold, double[] found) {
    double speed2 = 0;
    double along = 0;
    for (int k = 0; k < 3; k++) {
      speed2 += foretold[3 + k] * foretold[3 + k];
      along += (found[k] - foretold[k]) * foretold[3 + k];
    }
    return -along / speed2;
  }

  private static double[] cross(double[] s) {
    return new double[] {
      s[1] * s[5] - s[2] * s[4], s[2] * s[3] - s[0] * s[5], s[0] * s[4] - s[1] * s[3]
    };
  }

  private static double[] unit(double[] v) {
    double length = Trajectory.radius(v);
    return new double[] {v[0] / length, v[1] / length, v[2] / length};
  }
}

package hark.ensemble;

import java.util.function.IntToDoubleFunction;

/** Monte-Carlo standard errors between the groups of bodies, each left out in turn. */
public final class LeaveOneOut {
  private LeaveOneOut() {}

  /** Standard error of a number, given how to compute it without a group. */
  public static double error(IntToDoubleFunction without) {
    double[][] replicate = new double[Draws.GROUPS][1];
    for (int group = 0; group < Draws.GROUPS; group++) {
      replicate[group][0] = without.applyAsDouble(group);
    }
    return Jackknife.spread(replicate)[0];
  }
}

package hark.plan;

import hark.ensemble.Cause;
import hark.ensemble.Diagnosis;
import hark.ensemble.Particles;
import java.util.ArrayList;
import java.util.List;

/** How the causes stand now, and how they will after the next planned window. */
final class AfterNext {
  private final Diagnosis diagnosis;
  private final Particles particles;

  AfterNext(Diagnosis diagnosis, Particles particles) {
    this.diagnosis = diagnosis;
    this.particles = particles;
  }

  /**
   * By cause: begun by now, then the same if nothing is heard, and if something is.
   *
   * @param missed chance of each possibility to be missed
   */
  List<PlanOutcome.CauseAfter> shares(double[] missed) {
    double now = diagnosis.input().seconds(diagnosis.input().now());
    int causes = diagnosis.input().causes().size();
    double[][] sum = new double[causes][3];
    double[] total = new double[3];
    for (int p = 0; p < missed.length; p++) {
      double[] weight = {1, missed[p], 1 - missed[p]};
      List<Integer> set = diagnosis.sets().get(particles.set(p)).causes();
      double[] onsets = particles.onsets(p);
      for (int k = 0; k < weight.length; k++) {
        total[k] += weight[k];
        for (int slot = 0; slot < set.size(); slot++) {
          sum[set.get(slot)][k] += onsets[slot] <= now ? weight[k] : 0;
        }
      }
    }
    List<PlanOutcome.CauseAfter> shares = new ArrayList<>();
    for (int c = 0; c < causes; c++) {
      double[] each = sum[c];
      for (int k = 0; k < each.length; k++) {
        each[k] = total[k] > 0 ? each[k] / total[k] : 0;
      }
      Cause cause = diagnosis.input().causes().get(c);
      shares.add(new PlanOutcome.CauseAfter(cause.id(), cause.title(), each[0], each[1], each[2]));
    }
    return shares;
  }
}

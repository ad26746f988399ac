package hark.plan;

import hark.ensemble.Diagnosis;
import hark.ensemble.SkyWindow;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a choice of listening is worth over a set of particles: chance to hear by the horizon, the
 * same found early (discounted by {@code exp(−delay/3 days)}), and the restricted mean time to the
 * first reception.
 */
final class Value {
  /**
   * A reception this much later is worth 1/e. Judged: within a few days batteries and launches'
   * interest fade.
   */
  private static final double EARLY_SECONDS = 3 * 86400.0;

  private final HeardBy heardBy;
  private final double[] discount;
  private final double[] endDays;
  private final double horizonDays;

  Value(Diagnosis diagnosis) {
    List<SkyWindow> windows = diagnosis.windows();
    double now = diagnosis.input().seconds(diagnosis.input().now());
    heardBy = new HeardBy(windows.stream().map(SkyWindow::station).toList());
    discount =
        windows.stream().mapToDouble(w -> Math.exp(-(w.from() - now) / EARLY_SECONDS)).toArray();
    endDays = windows.stream().mapToDouble(w -> (w.to() - now) / 86400).toArray();
    horizonDays = (diagnosis.input().seconds(diagnosis.input().end()) - now) / 86400;
  }

  /** Three numbers of one possibility: heard by the horizon, heard early, mean days to hear. */
  double[] of(double[] chance, double[] works) {
    double[] missed = heardBy.missed(chance, works);
    double before = 1;
    double early = 0;
    double days = 0;
    double at = 0;
    for (int w = 0; w < missed.length; w++) {
      early += (before - missed[w]) * discount[w];
      days += before * (endDays[w] - at);
      at = endDays[w];
      before = missed[w];
    }
    days += before * Math.max(0, horizonDays - at);
    return new double[] {1 - before, early, days};
  }

  /**
   * Heard by the horizon and heard early, averaged over every {@code stride}-th particle from
   * {@code first}. Asked very often: only windows with a choice are looked at.
   */
  double[] gains(Chances chances, int[] choice, int first, int stride) {
    int[] taken = IntStream.range(0, choice.length).filter(w -> choice[w] >= 0).toArray();
    float[][] heard = new float[taken.length][];
    for (int k = 0; k < taken.length; k++) {
      heard[k] = chances.heard[taken[k]][choice[taken[k]]];
    }
    HeardBy.Sum sum = heardBy.new Sum();
    double heardSum = 0;
    double earlySum = 0;
    int count = 0;
    for (int p = first; p < chances.works.length; p += stride) {
      sum.begin(chances.works[p]);
      double early = 0;
      for (int k = 0; k < taken.length; k++) {
        if (heard[k][p] > 0) {
          early += sum.listen(taken[k], heard[k][p]) * discount[taken[k]];
        }
      }
      heardSum += 1 - sum.missed();
      earlySum += early;
      count++;
    }
    return new double[] {heardSum / Math.max(1, count), earlySum / Math.max(1, count)};
  }

  /** All three numbers, averaged over every {@code stride}-th particle from {@code first}. */
  double[] mean(Chances chances, int[] choice, int first, int stride) {
    double[] sum = new double[3];
    double[] chance = new double[choice.length];
    int count = 0;
    for (int p = first; p < chances.works.length; p += stride) {
      for (int w = 0; w < choice.length; w++) {
        chance[w] = choice[w] < 0 ? 0 : chances.heard[w][choice[w]][p];
      }
      double[] one = of(chance, chances.works[p]);
      for (int k = 0; k < sum.length; k++) {
        sum[k] += one[k];
      }
      count++;
    }
    for (int k = 0; k < sum.length; k++) {
      sum[k] /= Math.max(1, count);
    }
    return sum;
  }
}

package hark.plan;

import hark.ensemble.Candidate;
import hark.ensemble.Diagnosis;
import hark.plan.Procedure.Question;
import java.util.List;
import java.util.function.Predicate;

/**
 * What it is worth to settle at a desk which object is ours, or how early or late it comes: from
 * the next window on, each possibility is listened to with the pointing that suits it best among
 * those the procedures offer. The way and the width of listening stay as planned.
 */
final class Settling {
  /** Such work comes to a result so often, 0…1. Judged. */
  private static final double SETTLED = 0.7;

  /** Beside the first, a candidate at least so likely leaves the question open, 0…1. Judged. */
  private static final double OPEN = 0.02;

  private final List<List<WindowOption>> options;
  private final Chances chances;
  private final Value value;

  Settling(List<List<WindowOption>> options, Chances chances, Value value) {
    this.options = options;
    this.chances = chances;
    this.value = value;
  }

  /** The track is never known for good; an object only where a curve could tell several apart. */
  static boolean isOpen(Question question, double[] objects, Diagnosis diagnosis) {
    if (question == Question.TRACK) {
      return true;
    }
    int open = 0;
    for (int k = 0; k < objects.length; k++) {
      String id = diagnosis.input().candidates().get(k).objectId();
      open += objects[k] >= OPEN && !id.equals(Candidate.NONE) ? 1 : 0;
    }
    return open > 1 && Diagnosis.lastHeard(diagnosis.input()).isPresent();
  }

  /**
   * What it adds to heard by the horizon and to heard early, averaged over all particles.
   *
   * @param window in which the desk works; what it finds counts in later ones
   * @param choice option taken in each window, −1 for none
   */
  double[] adds(Question question, int window, int[] choice) {
    double[] planned = new double[choice.length];
    double[] settled = new double[choice.length];
    double[] sum = new double[2];
    int particles = chances.works.length;
    for (int p = 0; p < particles; p++) {
      boolean differs = false;
      for (int w = 0; w < choice.length; w++) {
        planned[w] = choice[w] < 0 ? 0 : chances.heard[w][choice[w]][p];
        double better = w > window && choice[w] >= 0 ? better(question, w, p) : 0;
        settled[w] = Math.min(1, planned[w] + SETTLED * better);
        differs |= better > 0;
      }
      if (differs) {
        double[] before = value.of(planned, chances.works[p]);
        double[] after = value.of(settled, chances.works[p]);
        sum[0] += (after[0] - before[0]) / particles;
        sum[1] += (after[1] - before[1]) / particles;
      }
    }
    return sum;
  }

  /** What settling a question adds to the chance in a later window, by particle. */
  float[] betters(Question question, int window) {
    float[] more = new float[chances.works.length];
    for (int p = 0; p < more.length; p++) {
      more[p] = (float) (SETTLED * better(question, window, p));
    }
    return more;
  }

  /** How much better the best pointing is than the best one that believes the forecast. */
  private double better(Question question, int window, int particle) {
    Predicate<Procedure.Listen> mayAim =
        question == Question.OBJECT
            ? listen -> listen.offsetSeconds() == 0
            : listen -> !listen.otherCandidate();
    double believed = best(window, particle, l -> l.offsetSeconds() == 0 && !l.otherCandidate());
    return Math.max(0, best(window, particle, mayAim) - believed);
  }

  private double best(int window, int particle, Predicate<Procedure.Listen> allowed) {
    double best = 0;
    for (int o = 0; o < options.get(window).size(); o++) {
      Procedure.Change change = options.get(window).get(o).procedure().change();
      if (change instanceof Procedure.Listen listen
          && listen.extraGainDb() <= 0
          && allowed.test(listen)) {
        best = Math.max(best, chances.heard[window][o][particle]);
      }
    }
    return best;
  }
}

package hark.plan;

import hark.ensemble.CommandLink;
import hark.ensemble.Diagnosis;
import hark.ensemble.LeaveOneOut;
import hark.ensemble.Listening;
import hark.ensemble.Particles;
import hark.ensemble.SkyWindow;
import hark.ensemble.Workers;
import hark.power.OnboardCommand;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Commands tried on a thinned sample: each possibility that would receive one is simulated on from
 * that moment, and compared with what it does when nothing is sent.
 */
final class CommandTrial {
  /** A command less likely to be received than this is not simulated. */
  private static final double NOT_WORTH = 1e-3;

  /** Windows nearer than this are looked at more closely, s. */
  private static final double NEAR_SECONDS = 2 * 86400.0;

  private static final int LATER_STRIDE = 3;

  private final Diagnosis diagnosis;
  private final Sample thinned;
  private final Particles sample;
  private final double now;
  private final Value value;
  private final int[] choice;
  private final Particles.Hearing[] planned;
  private final Particles.Hearing[] widest;

  /**
   * What a command does.
   *
   * @param reach chance that it is received
   * @param hazard chance that the first audible time becomes later
   * @param heard change in the chance to hear by the horizon, the plan kept
   * @param heardError Monte-Carlo standard error of {@code heard}
   * @param early change in the weight found early
   * @param atBest change in the chance to hear by the horizon, the widest ear in every window
   */
  record Outcome(
      double reach, double hazard, double heard, double heardError, double early, double atBest) {}

  /**
   * Every {@code stride}-th of the possibilities, and what all of them let a station hear when
   * nothing is sent.
   */
  record Sample(Particles particles, Chances all, int stride) {
    double widest(int window, int particle) {
      return all.audible[window][particle * stride];
    }

    double heard(int window, int option, int particle) {
      return all.heard[window][option][particle * stride];
    }

    double[] works(int particle) {
      return all.works[particle * stride];
    }
  }

  CommandTrial(
      Diagnosis diagnosis,
      Sample thinned,
      Value value,
      int[] choice,
      List<List<WindowOption>> options,
      OptionList list,
      Workers workers) {
    this.diagnosis = diagnosis;
    this.thinned = thinned;
    this.sample = thinned.particles();
    this.value = value;
    this.choice = choice;
    this.now = diagnosis.input().seconds(diagnosis.input().now());
    int windows = diagnosis.windows().size();
    planned = new Particles.Hearing[windows];
    widest = new Particles.Hearing[windows];
    workers.each(
        windows,
        w -> {
          SkyWindow window = diagnosis.windows().get(w);
          Listening wide = list.widest(window);
          widest[w] = sample.hearing(window, wide);
          if (choice[w] >= 0) {
            Listening chosen = options.get(w).get(choice[w]).listening();
            planned[w] = chosen.equals(wide) ? widest[w] : sample.hearing(window, chosen);
          }
        });
  }

  /** Option taken in each window, −1 for none. */
  int[] choice() {
    return choice;
  }

  Outcome of(int window, Procedure.Command command) {
    CommandLink link = sample.commandLink(diagnosis.windows().get(window), command.anyCounter());
    // near windows are the ones decided on: later ones make do with every third possibility
    boolean near = diagnosis.windows().get(window).from() < now + NEAR_SECONDS;
    int stride = near ? 1 : LATER_STRIDE;
    double[] received = new double[sample.count()];
    double reach = 0;
    List<Integer> tried = new ArrayList<>();
    for (int p = 0; p < received.length; p++) {
      received[p] = sample.received(p, link, command.repeats());
      reach += received[p] / received.length;
      boolean reached = p % stride == 0 && received[p] > NOT_WORTH;
      if (reached && !sample.leavesAlone(p, command.command())) {
        tried.add(p);
      }
    }
    List<Particles.Branch> branches = sample.branches(tried, link.seconds(), command.command());
    double works = command.command() == OnboardCommand.RELEASE ? CommandLink.RELEASE_WORKS : 1;
    Difference[] changed = new Difference[received.length];
    for (int k = 0; k < branches.size(); k++) {
      int p = tried.get(k);
      changed[p] = difference(p, window, branches.get(k), received[p] * works);
    }
    List<Difference> differences = new ArrayList<>();
    for (int p = 0; p < received.length; p += stride) {
      boolean same = changed[p] == null;
      differences.add(same ? new Difference(sample.group(p), 0, 0, 0, 0) : changed[p]);
    }
    return outcome(reach, differences);
  }

  /** What a command changes in one possibility, times the chance that it is received. */
  private record Difference(int group, double later, double heard, double early, double atBest) {}

  private static Outcome outcome(double reach, List<Difference> differences) {
    double error =
        LeaveOneOut.error(
            without ->
                differences.stream()
                    .filter(difference -> difference.group() != without)
                    .mapToDouble(Difference::heard)
                    .average()
                    .orElse(0));
    return new Outcome(
        reach,
        mean(differences, Difference::later),
        mean(differences, Difference::heard),
        error,
        mean(differences, Difference::early),
        mean(differences, Difference::atBest));
  }

  private static double mean(List<Difference> differences, ToDoubleFunction<Difference> number) {
    return differences.stream().mapToDouble(number).average().orElse(0);
  }

  private Difference difference(int p, int window, Particles.Branch branch, double received) {
    int windows = widest.length;
    double[] works = thinned.works(p);
    double[] wideWithout = new double[windows];
    double[] wideWith = new double[windows];
    double[] without = new double[windows];
    double[] with = new double[windows];
    for (int w = 0; w < windows; w++) {
      boolean after = w > window;
      wideWithout[w] = thinned.widest(w, p);
      // chances are kept as floats: what a command leaves as it is must come out equal to the digit
      wideWith[w] = after ? (float) widest[w].chance(p, branch) : wideWithout[w];
      boolean listens = choice[w] >= 0;
      without[w] = listens ? thinned.heard(w, choice[w], p) : 0;
      with[w] = listens && after ? (float) planned[w].chance(p, branch) : without[w];
    }
    int silent = Audible.from(window + 1, windows, w -> wideWithout[w]);
    int sent = Audible.from(window + 1, windows, w -> wideWith[w]);
    double[] before = value.of(without, works);
    double[] after = value.of(with, works);
    double best = value.of(wideWith, works)[0] - value.of(wideWithout, works)[0];
    return new Difference(
        sample.group(p),
        sent > silent ? received : 0,
        received * (after[0] - before[0]),
        received * (after[1] - before[1]),
        received * best);
  }
}

package hark.plan;

import hark.ensemble.CommandLink;
import hark.ensemble.Diagnosis;
import hark.ensemble.Listening;
import hark.ensemble.Particles;
import hark.ensemble.SkyWindow;
import hark.ensemble.Workers;
import hark.power.OnboardCommand;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Commands tried on a thinned sample: each possibility that would receive one is simulated on from
 * that moment, and compared with what it does when nothing is sent.
 */
final class CommandTrial {
  /** A command less likely to be received than this is not simulated. */
  private static final double NOT_WORTH = 1e-3;

  /** A second try frees a stuck antenna about so often. Judged. */
  private static final double RELEASE_WORKS = 0.3;

  private final Diagnosis diagnosis;
  private final Particles sample;
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
   * @param early change in the weight found early
   */
  record Outcome(double reach, double hazard, double heard, double early) {}

  CommandTrial(
      Diagnosis diagnosis,
      Particles sample,
      Value value,
      int[] choice,
      List<List<WindowOption>> options,
      OptionList list,
      Workers workers) {
    this.diagnosis = diagnosis;
    this.sample = sample;
    this.value = value;
    this.choice = choice;
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

  Outcome of(int window, Procedure.Command command) {
    CommandLink link = sample.commandLink(diagnosis.windows().get(window));
    double[] sum = new double[4];
    Map<Integer, Particles.Branch> known = new HashMap<>();
    for (int p = 0; p < sample.count(); p++) {
      double received = sample.received(p, link, command.repeats());
      sum[0] += received;
      if (received > NOT_WORTH && !sample.leavesAlone(p, command.command())) {
        int particle = p;
        Particles.Branch branch =
            known.computeIfAbsent(
                sample.memberOf(p),
                m -> sample.branch(particle, link.seconds(), command.command()));
        double works = command.command() == OnboardCommand.RELEASE ? RELEASE_WORKS : 1;
        addDifference(sum, p, window, branch, received * works);
      }
    }
    double count = sample.count();
    return new Outcome(sum[0] / count, sum[1] / count, sum[2] / count, sum[3] / count);
  }

  private void addDifference(
      double[] sum, int p, int window, Particles.Branch branch, double received) {
    int windows = widest.length;
    int silent = Audible.from(window + 1, windows, w -> widest[w].chance(p));
    int sent = Audible.from(window + 1, windows, w -> widest[w].chance(p, branch));
    sum[1] += sent > silent ? received : 0;
    double[] works = new double[diagnosis.input().stations().size()];
    for (int s = 0; s < works.length; s++) {
      works[s] = sample.works(p, s);
    }
    double[] without = new double[windows];
    double[] with = new double[windows];
    for (int w = 0; w < windows; w++) {
      without[w] = choice[w] < 0 ? 0 : planned[w].chance(p);
      with[w] = choice[w] < 0 || w <= window ? without[w] : planned[w].chance(p, branch);
    }
    double[] before = value.of(without, works);
    double[] after = value.of(with, works);
    sum[2] += received * (after[0] - before[0]);
    sum[3] += received * (after[1] - before[1]);
  }
}

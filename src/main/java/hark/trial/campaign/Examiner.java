package hark.trial.campaign;

import hark.ensemble.BodyList;
import hark.ensemble.Candidate;
import hark.ensemble.Cause;
import hark.ensemble.CauseMarginal;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.EventSet;
import hark.ensemble.KeptEnsemble;
import hark.ensemble.Posterior;
import hark.ensemble.Sky;
import hark.ensemble.Workers;
import hark.evidence.Entry;
import hark.trial.score.Outcome;
import hark.trial.score.Ranks;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Gives a campaign's record to the diagnosis that users get and holds the answer to the truth. */
final class Examiner {
  /**
   * Two simulators that agree still differ by some thousandths of the capacity: truth and members
   * are both seen through an error of this size, which leaves right beliefs right.
   */
  private static final double CHARGE_SEEN_SD = 0.02;

  private final DiagnosisInput plain;
  private final Sky sky;
  private final World same;
  private final double end;

  Examiner(DiagnosisInput plain, Sky sky, World same) {
    this.plain = plain;
    this.sky = sky;
    this.same = same;
    end = plain.seconds(plain.now());
  }

  /** The diagnosis of a campaign from bodies of its own. */
  Posterior diagnose(Campaign campaign, int members, long seed, Workers workers) {
    return Posterior.of(input(members, seed, campaign.entries()), sky, workers);
  }

  /** Bodies that all campaigns can share. */
  KeptEnsemble kept(int members, long seed, Workers workers) {
    return KeptEnsemble.of(input(members, seed, List.of()), workers);
  }

  /** The diagnosis of a campaign from shared bodies. */
  Posterior diagnose(Campaign campaign, KeptEnsemble kept, Workers workers) {
    return kept.posterior(plain.now(), campaign.entries(), workers);
  }

  private DiagnosisInput input(int members, long seed, List<Entry> entries) {
    return new DiagnosisInput(
        plain.separation(),
        plain.now(),
        plain.end(),
        plain.body(),
        plain.beacons(),
        plain.receiver(),
        plain.candidates(),
        plain.stations(),
        plain.causes(),
        entries,
        plain.earth(),
        members,
        seed);
  }

  Outcome judge(int index, Campaign campaign, Posterior diagnosis, long seed) {
    Truth truth = campaign.truth();
    SplittableRandom random = new SplittableRandom(seed);
    double[] after = diagnosis.causes().stream().mapToDouble(CauseMarginal::posterior).toArray();
    double[] before = new double[after.length];
    boolean named = truth.events() <= Outcome.NAMED;
    boolean[] begun = new boolean[after.length];
    double[] causeRanks = new double[after.length];
    for (int c = 0; c < after.length; c++) {
      before[c] = same.namedBy(c, end);
      begun[c] = named && truth.begunBy(c, end);
      double[] noOrYes = {1 - after[c], after[c]};
      causeRanks[c] = Ranks.ofCategory(noOrYes, begun[c] ? 1 : 0, random.nextDouble());
    }
    double[] given = setOfTruth(diagnosis, truth);
    double[] objects = diagnosis.objects();
    BodyList bodies = diagnosis.bodyList();
    return new Outcome(
        index,
        campaign.drawn(),
        campaign.entries().size(),
        campaign.heard(),
        truth.events(),
        Math.log(Math.max(Ranks.LEAST, given[1])) - Math.log(given[0]),
        given[1] < Ranks.LEAST,
        before,
        after,
        begun,
        diagnosis.remainder(),
        objects,
        truth.object(),
        diagnosis.stations(),
        truth.works(),
        chargeRank(diagnosis, campaign.soc(), random),
        numberRanks(bodies, truth, random),
        onsetRanks(bodies, truth, random),
        causeRanks,
        Ranks.ofCategory(objects, truth.object(), random.nextDouble()),
        given[2],
        diagnosis.misfit());
  }

  /**
   * Weight of the truth's event set before and after, and effective bodies behind it; of the
   * remainder when it is larger.
   */
  private static double[] setOfTruth(Posterior diagnosis, Truth truth) {
    List<EventSet> sets = diagnosis.sets();
    double[] weights = diagnosis.setWeights();
    double rest = 1;
    for (int s = 0; s < weights.length; s++) {
      EventSet set = sets.get(s);
      boolean same = set.causes().size() == truth.events();
      for (int cause : set.causes()) {
        same &= !Double.isNaN(truth.onsets()[cause]);
      }
      if (same) {
        return new double[] {set.prior(), weights[s], diagnosis.effectiveBodies()[s]};
      }
      rest -= set.prior();
    }
    return new double[] {Math.max(Ranks.LEAST, rest), diagnosis.remainder(), 0};
  }

  private static double chargeRank(Posterior diagnosis, double soc, SplittableRandom random) {
    double[][] now = diagnosis.chargeNow();
    double seen = soc + CHARGE_SEEN_SD * random.nextGaussian();
    double below = 0;
    double total = 0;
    for (int b = 0; b < now[0].length; b++) {
      below += now[1][b] * Ranks.normalBelow((seen - now[0][b]) / CHARGE_SEEN_SD);
      total += now[1][b];
    }
    return Math.max(0, Math.min(1, below / total));
  }

  private double[] numberRanks(BodyList bodies, Truth truth, SplittableRandom random) {
    int numbers = truth.values().length;
    double[][] values = new double[numbers][bodies.count()];
    double[] weights = new double[bodies.count()];
    for (int b = 0; b < weights.length; b++) {
      weights[b] = bodies.weight(b);
      if (weights[b] > 0) {
        Map<String, Double> drawn = bodies.values(b, plain.body());
        for (int k = 0; k < numbers; k++) {
          values[k][b] = drawn.get(plain.body().keys().get(k));
        }
      }
    }
    double[] ranks = new double[numbers];
    for (int k = 0; k < numbers; k++) {
      ranks[k] = Ranks.ofValue(values[k], weights, truth.values()[k], random.nextDouble());
    }
    return ranks;
  }

  private List<Outcome.OnsetRank> onsetRanks(
      BodyList bodies, Truth truth, SplittableRandom random) {
    List<Outcome.OnsetRank> ranks = new ArrayList<>();
    for (int c = 0; c < truth.onsets().length; c++) {
      Cause.Onset rule = plain.causes().get(c).onset();
      boolean named = truth.events() <= Outcome.NAMED;
      boolean anyTime = rule == Cause.Onset.UNIFORM || rule == Cause.Onset.HAZARD;
      if (named && anyTime && truth.begunBy(c, end)) {
        ranks.add(new Outcome.OnsetRank(c, onsetRank(bodies, c, truth, random.nextDouble())));
      }
    }
    return ranks;
  }

  private double onsetRank(BodyList bodies, int cause, Truth truth, double u) {
    double below = 0;
    double total = 0;
    for (int b = 0; b < bodies.count(); b++) {
      for (BodyList.Sharer sharer : bodies.sharers(b)) {
        int slot = sharer.set().causes().indexOf(cause);
        if (slot >= 0 && sharer.onsets()[slot] <= end) {
          total += sharer.weight();
          below += sharer.onsets()[slot] < truth.onsets()[cause] ? sharer.weight() : 0;
        }
      }
    }
    return total > 0 ? below / total : u;
  }

  /** Names of the candidates, for reports. */
  List<String> objects() {
    return plain.candidates().stream().map(Candidate::objectId).toList();
  }
}

package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.PowerModel;
import hark.power.SimulationRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Chooses the hearing nodes of a group. Silence is explained either by the spacecraft or by an
 * unlucky hearing, and the unlucky ones are rare: many trial nodes are drawn from the prior,
 * weighed by all evidence as if the spacecraft sent without a break, and few are kept, a third of
 * them by the prior, a third by what was heard, a third by everything. Weights make up for the
 * choice, and every object keeps exactly its prior. Depends only on the mission, the whole evidence
 * and the seed.
 */
final class HearingProposal {
  /** Trial nodes for each object. */
  private static final int TRIALS = 160;

  /** Nodes kept for each object. */
  private static final int KEPT = 24;

  private final DiagnosisInput input;
  private final List<Clue> clues;
  private final Ear ear;

  HearingProposal(DiagnosisInput input, List<Clue> clues, Ear ear) {
    this.input = input;
    this.clues = clues;
    this.ear = ear;
  }

  /** The nodes of every group. */
  HearingNodes[] choose(Workers workers) {
    HearingNodes[] chosen = new HearingNodes[Draws.GROUPS];
    workers.each(Draws.GROUPS, group -> chosen[group] = choose(group));
    return chosen;
  }

  private HearingNodes choose(int group) {
    SplittableRandom random =
        new SplittableRandom(input.seed() * 7_368_787L + group * 104_729L + 5);
    HearingNodes trials = trials(random);
    drawStations(trials, group);
    double[][] likelihoods = likelihoods(trials);
    int objects = input.candidates().size();
    HearingNodes kept = HearingNodes.room(objects * KEPT, input.stations().size());
    // one offset for all objects: differences between objects are then differences of geometry
    double offset = random.nextDouble();
    for (int k = 0; k < objects; k++) {
      keep(trials, mixture(k, likelihoods[0], likelihoods[1]), k, offset, kept);
    }
    return kept;
  }

  private HearingNodes trials(SplittableRandom random) {
    double[] along = stratified(random);
    double[] power = stratified(random);
    double[] frequency = stratified(random);
    int count = input.candidates().size() * TRIALS;
    HearingNodes trials = HearingNodes.room(count, input.stations().size());
    for (int n = 0; n < count; n++) {
      int object = n / TRIALS;
      trials.object()[n] = object;
      trials.weight()[n] = input.candidates().get(object).prior() / TRIALS;
      trials.alongTrackZ()[n] = Uncertain.StandardNormal.quantile(along[n % TRIALS]);
      trials.powerQuantile()[n] = power[n % TRIALS];
      trials.frequencyQuantile()[n] = frequency[n % TRIALS];
    }
    return trials;
  }

  /** Errors of clocks and azimuths, from a generator of their own: the other draws stay. */
  private void drawStations(HearingNodes trials, int group) {
    SplittableRandom random =
        new SplittableRandom(input.seed() * 7_368_787L + group * 104_729L + 11);
    for (int s = 0; s < input.stations().size(); s++) {
      double[] clock = stratified(random);
      double[] azimuth = stratified(random);
      for (int n = 0; n < trials.count(); n++) {
        trials.clockZ()[s][n] = Uncertain.StandardNormal.quantile(clock[n % TRIALS]);
        trials.azimuthZ()[s][n] = Uncertain.StandardNormal.quantile(azimuth[n % TRIALS]);
      }
    }
  }

  private static double[] stratified(SplittableRandom random) {
    int[] order = Draws.permutation(TRIALS, random);
    double[] u = new double[TRIALS];
    for (int q = 0; q < TRIALS; q++) {
      u[q] = (order[q] + Math.min(1 - 1e-9, Math.max(1e-9, random.nextDouble()))) / TRIALS;
    }
    return u;
  }

  /**
   * Weight of each trial for a spacecraft that never stops sending: after what was heard, and after
   * all clues that do not read the body. Faults of stations count as deafness here: it is enough to
   * choose by.
   */
  private double[][] likelihoods(HearingNodes trials) {
    Body sending = sendingAlways();
    Member unharmed = new Member(0, 0, 0, new double[0], 1, RadioTimeline.UNHARMED);
    Weigher weigher = new Weigher(input, ear, 1, StationModes::coarse);
    NodeState heard = weigher.begin(trials);
    NodeState everything = weigher.begin(trials);
    for (Clue clue : clues) {
      if (clue instanceof BodyClue) {
        continue;
      }
      LazyTables tables = weigher.tables(clue, trials);
      weigher.apply(clue, unharmed, sending, tables, everything);
      if (clue instanceof Sound) {
        weigher.apply(clue, unharmed, sending, tables, heard);
      }
    }
    return new double[][] {heard.weights(), everything.weights()};
  }

  private Body sendingAlways() {
    PowerModel model = input.body().typical();
    double end = input.seconds(input.end());
    List<BodyHistory.BeaconSegment> segments = new ArrayList<>();
    for (int b = 0; b < model.beacons().size(); b++) {
      double interval = model.beacons().get(b).intervalSeconds();
      segments.add(new BodyHistory.BeaconSegment(b, model.quietSeconds(), interval, end));
    }
    SimulationRequest request =
        new SimulationRequest(end, 0, end, List.of(), new double[0], new double[0]);
    BodyHistory history =
        new BodyHistory(
            0,
            end,
            new float[1],
            new byte[1],
            segments,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return new Body(model, request, history);
  }

  /** Chance of choosing each trial of an object. */
  private static double[] mixture(int object, double[] heard, double[] everything) {
    double heardSum = sum(object, heard);
    double everythingSum = sum(object, everything);
    double[] chance = new double[TRIALS];
    for (int q = 0; q < TRIALS; q++) {
      int n = object * TRIALS + q;
      double byPrior = 1.0 / TRIALS;
      double byHeard = heardSum > 0 ? heard[n] / heardSum : byPrior;
      double byEverything = everythingSum > 0 ? everything[n] / everythingSum : byPrior;
      chance[q] = (byPrior + byHeard + byEverything) / 3;
    }
    return chance;
  }

  private static double sum(int object, double[] weights) {
    double sum = 0;
    for (int q = 0; q < TRIALS; q++) {
      sum += weights[object * TRIALS + q];
    }
    return sum;
  }

  /** Systematic choice; a trial chosen twice stands twice. */
  private void keep(
      HearingNodes trials, double[] chance, int object, double offset, HearingNodes kept) {
    int first = object * KEPT;
    int next = first;
    double sum = 0;
    double total = 0;
    for (int q = 0; q < TRIALS; q++) {
      sum += chance[q];
      boolean last = q == TRIALS - 1;
      while (next < first + KEPT && (last || sum * KEPT > next - first + offset)) {
        kept.copy(trials, object * TRIALS + q, next, 1 / chance[q]);
        total += 1 / chance[q];
        next++;
      }
    }
    for (int to = first; to < first + KEPT; to++) {
      kept.weight()[to] *= input.candidates().get(object).prior() / total;
    }
  }
}

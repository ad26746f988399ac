package hark.ensemble;

import hark.station.StationFault;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What the evidence leaves of the prior, as of now: event sets, causes, objects, stations, state of
 * charge. Nothing is looked ahead, so it is what {@link Diagnosis} begins with and what simulated
 * campaigns ask for. Immutable.
 */
public final class Posterior {
  private final Weighed weighed;
  private final DiagnosisInput input;
  private final Population population;
  private final Weighing weighing;
  private final Jackknife jackknife;
  private final Marginals marginals;

  /** Under likelihoods by member, which may leave out members that no longer count. */
  Posterior(Weighed weighed, double[] likelihood) {
    this.weighed = weighed;
    input = weighed.input();
    population = weighed.population();
    weighing = weighed.weighing();
    jackknife = new Jackknife(population, likelihood);
    marginals = new Marginals(input, population);
  }

  /**
   * Builds the ensemble and weighs the evidence. Same input, same answer, on any number of threads.
   */
  public static Posterior of(DiagnosisInput input, Workers workers) {
    return of(input, Sky.of(input), workers);
  }

  /** The same under a sky that other diagnoses of the mission at this time may share. */
  public static Posterior of(DiagnosisInput input, Sky sky, Workers workers) {
    Weighed weighed = Weighed.of(input, sky, workers);
    return new Posterior(weighed, weighed.likelihood());
  }

  Jackknife jackknife() {
    return jackknife;
  }

  /** What it was built from. */
  public DiagnosisInput input() {
    return input;
  }

  /** Event sets, the empty one first, then one for each cause, then pairs. */
  public List<EventSet> sets() {
    return population.sets;
  }

  /** Weight of each event set; with {@link #remainder} they sum to 1. */
  public double[] setWeights() {
    return jackknife.whole().set().clone();
  }

  /** Monte-Carlo standard errors of {@link #setWeights}. */
  public double[] setErrors() {
    return jackknife.errors(Weights::set);
  }

  /** Weight of all larger sets at the pairs' mean likelihood. */
  public double remainder() {
    return jackknife.whole().remainder();
  }

  /** Weight of all larger sets if they explained the evidence as well as any member does. */
  public double remainderBound() {
    return jackknife.whole().remainderBound();
  }

  /** One for each cause. */
  public List<CauseMarginal> causes() {
    return marginals.causes(jackknife);
  }

  /** Weight of a cause having begun before a time, s since separation. */
  double begunBefore(int cause, double seconds) {
    return marginals.begunBefore(jackknife.whole(), cause, seconds);
  }

  /** Causes that the evidence so far cannot tell apart. */
  public List<SharedLikelihood> sharedLikelihoods() {
    return marginals.groups(weighing.prefix);
  }

  /** Weight of any of these causes having begun by now, and its standard error. */
  public double[] anyBegun(List<Integer> causes) {
    double value = marginals.anyBegun(jackknife.whole(), causes);
    double error =
        jackknife.errors(weights -> new double[] {marginals.anyBegun(weights, causes)})[0];
    return new double[] {value, error};
  }

  /**
   * Weight of all that meets conditions on the causes begun by now, taken together, with its
   * standard error, {@code [condition][0 or 1]}; without sets of three events and more.
   *
   * @param conditions on indices of causes
   */
  public double[][] begunMeeting(List<Predicate<Set<Integer>>> conditions) {
    BegunTogether begun = new BegunTogether(population, input.seconds(input.now()));
    double[] values = begun.meeting(jackknife.whole(), conditions);
    double[] errors = jackknife.errors(weights -> begun.meeting(weights, conditions));
    double[][] both = new double[values.length][];
    for (int k = 0; k < both.length; k++) {
      both[k] = new double[] {values[k], errors[k]};
    }
    return both;
  }

  /** Posterior of each candidate. */
  public double[] objects() {
    double[] sums = new double[input.candidates().size()];
    double[] weights = jackknife.whole().member();
    double total = 0;
    for (int m = 0; m < weights.length; m++) {
      double[] shares = weighed.objectShares(m);
      for (int k = 0; k < sums.length; k++) {
        sums[k] += weights[m] * shares[k];
      }
      total += weights[m];
    }
    return scaled(sums, total);
  }

  /** Chance that each station works as believed. */
  public double[] stations() {
    double[] sums = new double[input.stations().size()];
    double[] weights = jackknife.whole().member();
    double total = 0;
    for (int m = 0; m < weights.length; m++) {
      for (int s = 0; s < sums.length; s++) {
        for (int n = 0; n < weighing.nodeShare[m].length; n++) {
          sums[s] += weights[m] * weighing.nodeShare[m][n] * weighing.works[s][m][n];
        }
      }
      total += weights[m];
    }
    return scaled(sums, total);
  }

  /**
   * How likely each station has each fault that could make a difference there, by station; with
   * {@link #stations} they sum to 1.
   */
  public List<Map<StationFault, Double>> stationFaults() {
    double[] weights = jackknife.whole().member();
    double total = Arrays.stream(weights).sum();
    List<Map<StationFault, Double>> all = new ArrayList<>();
    for (int s = 0; s < input.stations().size(); s++) {
      List<StationMode> modes = StationModes.of(input, s);
      Map<StationFault, Double> faults = new EnumMap<>(StationFault.class);
      for (int k = 0; k < modes.size(); k++) {
        double sum = 0;
        for (int m = 0; m < weights.length; m++) {
          sum += weights[m] * weighing.modes[s][m][k];
        }
        double share = sum / total;
        modes.get(k).fault().ifPresent(fault -> faults.put(fault, share));
      }
      all.add(faults);
    }
    return all;
  }

  private static double[] scaled(double[] sums, double total) {
    for (int k = 0; k < sums.length; k++) {
      sums[k] /= total;
    }
    return sums;
  }

  /** Index among the evidence of each row of {@link #bits}. */
  public int[] bitsEntries() {
    return weighed.clues().stream().mapToInt(Clue::entry).toArray();
  }

  /**
   * Change in log2 odds of each cause by each entry that weighs, {@code [row][cause]}, in the order
   * of time.
   */
  public double[][] bits() {
    return marginals.bits(weighing.prefix);
  }

  /** Predictive tail probability of the evidence. */
  public double misfit() {
    return Misfit.tail(
        population, weighing, jackknife.whole().member(), weighed.clues(), input.seed());
  }

  /** Every body with its weight, to simulate some of them again. */
  public BodyList bodyList() {
    return BodyList.of(input, weighed.light(), population, jackknife.whole().member());
  }

  /**
   * How well each row of {@link #bits} was expected, all evidence weighed: the chance of its
   * outcome, or for telemetered numbers the two-sided tail, 0…1.
   */
  public double[] entryTail() {
    return Misfit.byClue(population, weighing, jackknife.whole().member(), weighed.clues());
  }

  /** Number of simulated bodies. */
  public int bodies() {
    return population.bodies.size();
  }

  /**
   * Effective number of different bodies behind each event set: (Σw)²/Σw² over bodies, those of
   * several members counted once; 0 for a set without weight.
   */
  public double[] effectiveBodies() {
    return EffectiveBodies.bySet(population, jackknife.whole().member());
  }

  /**
   * State of charge, 0…1, and weight of every body, by {@code [0 or 1][body]}; read at most {@value
   * Population#GRID_SECONDS} s before now.
   */
  public double[][] chargeNow() {
    double[] soc = new double[population.bodies.size()];
    for (int b = 0; b < soc.length; b++) {
      float[] past = population.bodies.get(b).history().soc();
      soc[b] = past[past.length - 1];
    }
    return new double[][] {soc, population.bodyWeights(jackknife.whole().member())};
  }
}

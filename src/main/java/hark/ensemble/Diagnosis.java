package hark.ensemble;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.link.Way;
import hark.orbit.Eclipse;
import hark.power.Illumination;
import hark.power.OpenCircuit;
import hark.power.PowerModel;
import hark.station.Station;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The ensemble with all evidence weighed: what is wrong, how the battery is, what each coming
 * window offers. Built by {@link #of}; immutable afterwards. Every answer is a weighted sum over
 * members.
 */
public final class Diagnosis {
  private final DiagnosisInput input;
  private final List<Eclipse> eclipses;
  private final Illumination light;
  private final List<Clue> clues;
  private final List<SkyWindow> windows;
  private final double[] checkpoints;
  private final Population population;
  private final Body[] ahead;
  private final HearingNodes[] nodes;
  private final Ear ear;
  private final Weighing weighing;
  private final Sending sending;
  private final Jackknife jackknife;
  private final Marginals marginals;

  private Diagnosis(DiagnosisInput input, Sky sky, Workers workers) {
    this.input = input;
    eclipses = sky.eclipses();
    light = sky.illumination();
    Clues read = new Clues(input, sky);
    clues = read.all();
    windows = upcoming(input, sky, workers);
    checkpoints = checkpoints(input, windows);
    OnsetProposal proposal = proposal(input);
    population =
        Population.build(
            input, new Population.Setting(light, proposal, read.probeSeconds()), workers);
    ear = new Ear(input.beacons(), input.body().typical());
    nodes = new HearingProposal(input, clues, ear).choose(workers);
    Weigher weigher = new Weigher(input, ear, population.bodies.size());
    weighing = new Weighing(input.stations().size(), population, clues, nodes, weigher);
    weighing.run(workers);
    double[] likelihood = weighing.prefix[clues.size()].clone();
    double[] weights = Weights.of(population, likelihood, Weights.NO_GROUP).member();
    ahead = population.lookAhead(input, light, weights, checkpoints, workers);
    for (int m = 0; m < likelihood.length; m++) {
      likelihood[m] = ahead[population.members.get(m).body()] == null ? 0 : likelihood[m];
    }
    jackknife = new Jackknife(population, likelihood);
    sending = new Sending(population, ahead, objectShares(workers));
    marginals = new Marginals(input, population);
  }

  /**
   * Builds the ensemble and weighs the evidence. Same input, same answer, whatever the number of
   * threads.
   */
  public static Diagnosis of(DiagnosisInput input, Workers workers) {
    return new Diagnosis(input, Sky.of(input), workers);
  }

  /** The same under a sky that other diagnoses of the mission at this time may share. */
  public static Diagnosis of(DiagnosisInput input, Sky sky, Workers workers) {
    sky.requireSame(input);
    return new Diagnosis(input, sky, workers);
  }

  /** Share of each object in the hearings of each member. */
  private double[][] objectShares(Workers workers) {
    double[][] shares = new double[population.members.size()][input.candidates().size()];
    workers.each(
        shares.length,
        m -> {
          HearingNodes group = nodes[population.members.get(m).group()];
          for (int n = 0; n < group.count(); n++) {
            shares[m][group.object()[n]] += weighing.nodeShare[m][n];
          }
        });
    return shares;
  }

  private static List<SkyWindow> upcoming(DiagnosisInput input, Sky sky, Workers workers) {
    List<List<SkyWindow>> byStation = new ArrayList<>();
    for (int s = 0; s < input.stations().size(); s++) {
      byStation.add(List.of());
    }
    workers.each(byStation.size(), s -> byStation.set(s, sky.upcoming(s)));
    return byStation.stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparingDouble(SkyWindow::from).thenComparingInt(SkyWindow::station))
        .toList();
  }

  private static double[] checkpoints(DiagnosisInput input, List<SkyWindow> windows) {
    return windows.stream()
        .filter(window -> input.stations().get(window.station()).transmit().isPresent())
        .mapToDouble(window -> sendingTime(input, window))
        .filter(seconds -> seconds > input.seconds(input.now()))
        .distinct()
        .sorted()
        .toArray();
  }

  /**
   * When a command would be sent in a window: at the culmination of the likeliest object that rises
   * in it.
   */
  public static double sendingTime(DiagnosisInput input, SkyWindow window) {
    return window
        .passes()
        .get(heaviest(input, window))
        .map(pass -> input.seconds(pass.culmination()))
        .orElseThrow();
  }

  /** The likeliest candidate that rises in a window. */
  public static int heaviest(DiagnosisInput input, SkyWindow window) {
    int best = -1;
    for (int k = 0; k < window.passes().size(); k++) {
      boolean rises = window.passes().get(k).isPresent();
      if (rises
          && (best < 0
              || input.candidates().get(k).prior() > input.candidates().get(best).prior())) {
        best = k;
      }
    }
    return best;
  }

  private static OnsetProposal proposal(DiagnosisInput input) {
    double heard =
        lastHeard(input.evidence())
            .map(input::seconds)
            .orElse(input.body().typical().quietSeconds());
    double[] silences =
        input.evidence().stream()
            .filter(entry -> entry.evidence() instanceof Evidence.NothingHeard)
            .mapToDouble(entry -> input.seconds(entry.evidence().at()))
            .filter(seconds -> seconds > heard)
            .sorted()
            .toArray();
    return new OnsetProposal(heard, silences, input.seconds(input.now()));
  }

  /** End of the last reception among entries in force. */
  public static Optional<Instant> lastHeard(List<Entry> evidence) {
    return evidence.stream()
        .map(Entry::evidence)
        .filter(Evidence.Heard.class::isInstance)
        .map(heard -> ((Evidence.Heard) heard).to())
        .max(Comparator.naturalOrder());
  }

  /** How a beacon is listened for when nothing else is said. */
  public static Way usualWay(BeaconRadio beacon, Station station) {
    return Clues.usualWay(beacon, station);
  }

  /** Chance that a known satellite is heard by a station that works with a given probability. */
  public static double checkHeard(double works) {
    return Clues.checkHeard(works);
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

  /** Posterior of each candidate. */
  public double[] objects() {
    double[] sums = new double[input.candidates().size()];
    double[] weights = jackknife.whole().member();
    double total = 0;
    for (int m = 0; m < weights.length; m++) {
      for (int k = 0; k < sums.length; k++) {
        sums[k] += weights[m] * sending.objectShare(m, k);
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

  private static double[] scaled(double[] sums, double total) {
    for (int k = 0; k < sums.length; k++) {
      sums[k] /= total;
    }
    return sums;
  }

  /** Index among the evidence of each row of {@link #bits}. */
  public int[] bitsEntries() {
    return clues.stream().mapToInt(Clue::entry).toArray();
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
    return Misfit.tail(population, weighing, jackknife.whole().member(), clues, input.seed());
  }

  /** State of charge and bus states against time, from a day before now to the horizon. */
  public List<EnergyFan.Point> energy(Workers workers) {
    return EnergyFan.of(
        EnergyFan.Source.of(population, ahead, jackknife.whole().member()), workers);
  }

  /** State of charge now, 0…1, and weight of every body, by {@code [0 or 1][body]}. */
  public double[][] chargeNow() {
    double[] soc = new double[population.bodies.size()];
    for (int b = 0; b < soc.length; b++) {
      float[] past = population.bodies.get(b).history().soc();
      soc[b] = past[past.length - 1];
    }
    return new double[][] {soc, population.bodyWeights(jackknife.whole().member())};
  }

  /** Every body with its weight, to simulate some of them again. */
  public BodyList bodyList() {
    return BodyList.of(input, light, population, jackknife.whole().member());
  }

  /** Shadows from separation to the horizon. */
  public List<Eclipse> eclipses() {
    return eclipses;
  }

  /** Share of full sunlight at a time, 0…1. */
  public double sunlitAt(double seconds) {
    return light.fractionAt(seconds);
  }

  /** State of charge at which the typical body's bus would cut off at its least load, 0…1. */
  public double cutoffSoc() {
    PowerModel typical = input.body().typical();
    PowerModel.Battery battery = typical.battery();
    OpenCircuit curve = new OpenCircuit(battery.openCircuit(), battery.series());
    return curve.socAt(typical.bus().thresholds().cutoffVolts());
  }

  /** Coming windows of all stations, rising. */
  public List<SkyWindow> windows() {
    return windows;
  }

  /** Number of simulated bodies. */
  public int bodies() {
    return population.bodies.size();
  }

  /**
   * Chance that at least one burst is sent above the mask in a coming window, and its standard
   * error.
   */
  public double[] beaconOn(int window) {
    double[] sends = sending.in(windows.get(window), jackknife.whole().member());
    double value = mean(jackknife.whole(), sends);
    double error = jackknife.errors(weights -> new double[] {mean(weights, sends)})[0];
    return new double[] {value, error};
  }

  private static double mean(Weights weights, double[] values) {
    double sum = 0;
    double total = 0;
    for (int m = 0; m < values.length; m++) {
      sum += weights.member()[m] * values[m];
      total += weights.member()[m];
    }
    return sum / total;
  }

  /**
   * A sample of members and hearings with equal weights, for everything about the coming windows.
   */
  public Particles particles(int count) {
    return Particles.draw(
        new Particles.Source(input, light, population, ahead, nodes, weighing, ear, checkpoints),
        jackknife.whole().member(),
        count);
  }
}

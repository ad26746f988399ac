package hark.ensemble;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.link.Way;
import hark.orbit.Eclipse;
import hark.power.Illumination;
import hark.power.OpenCircuit;
import hark.power.PowerModel;
import hark.station.Station;
import hark.station.StationFault;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The ensemble with all evidence weighed: what is wrong, how the battery is, what each coming
 * window offers. Built by {@link #of}; immutable afterwards. Every answer is a weighted sum over
 * members.
 */
public final class Diagnosis {
  private final DiagnosisInput input;
  private final Weighed weighed;
  private final Illumination light;
  private final List<SkyWindow> windows;
  private final double[] checkpoints;
  private final Population population;
  private final Body[] ahead;
  private final Posterior posterior;
  private final Jackknife jackknife;
  private final Sending sending;

  /** Gives bodies beyond now, by body; null for those that carry no weight worth counting. */
  @FunctionalInterface
  interface LookAhead {
    /** By weights of members and times at which a command may be sent. */
    Body[] of(double[] memberWeight, double[] checkpointSeconds);
  }

  private Diagnosis(Weighed weighed, LookAhead look, Workers workers) {
    this.input = weighed.input();
    this.weighed = weighed;
    light = weighed.light();
    population = weighed.population();
    windows = upcoming(input, weighed.sky(), workers);
    checkpoints = checkpoints(input, windows);
    double[] likelihood = weighed.likelihood();
    double[] weights = Weights.of(population, likelihood, Weights.NO_GROUP).member();
    ahead = look.of(weights, checkpoints);
    for (int m = 0; m < likelihood.length; m++) {
      likelihood[m] = ahead[population.members.get(m).body()] == null ? 0 : likelihood[m];
    }
    posterior = new Posterior(weighed, likelihood);
    jackknife = posterior.jackknife();
    sending = new Sending(population, ahead, objectShares(workers));
  }

  /**
   * Builds the ensemble and weighs the evidence. Same input, same answer, whatever the number of
   * threads.
   */
  public static Diagnosis of(DiagnosisInput input, Workers workers) {
    return of(input, Sky.of(input), workers);
  }

  /** The same under a sky that other diagnoses of the mission at this time may share. */
  public static Diagnosis of(DiagnosisInput input, Sky sky, Workers workers) {
    Weighed weighed = Weighed.of(input, sky, workers);
    LookAhead flown =
        (weights, checkpoints) ->
            weighed.population().lookAhead(input, weighed.light(), weights, checkpoints, workers);
    return of(weighed, flown, workers);
  }

  /** From what was weighed already. */
  static Diagnosis of(Weighed weighed, LookAhead look, Workers workers) {
    return new Diagnosis(weighed, look, workers);
  }

  /** Share of each object in the hearings of each member. */
  private double[][] objectShares(Workers workers) {
    double[][] shares = new double[population.members.size()][];
    workers.each(shares.length, m -> shares[m] = weighed.objectShares(m));
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

  /** End of the last reception of ours among entries in force. */
  public static Optional<Instant> lastHeard(DiagnosisInput input) {
    return input.evidence().stream()
        .map(Entry::evidence)
        .filter(Evidence.Heard.class::isInstance)
        .map(Evidence.Heard.class::cast)
        .filter(heard -> !input.isForeign(heard))
        .map(Evidence.Heard::to)
        .max(Comparator.naturalOrder());
  }

  /** How a beacon is listened for when nothing else is said. */
  public static Way usualWay(BeaconRadio beacon, Station station) {
    return ListeningClues.usualWay(beacon, station);
  }

  /** Chance that a known satellite is heard by a station that works with a given probability. */
  public static double checkHeard(double works) {
    return Check.heardBy(works);
  }

  /** What it was built from. */
  public DiagnosisInput input() {
    return input;
  }

  /** What the evidence leaves of the prior, as of now. */
  public Posterior posterior() {
    return posterior;
  }

  /**
   * What entries that were added since make of it, on the possibilities that are there: nothing is
   * simulated or drawn, so it takes a moment and is provisional. Empty when that cannot be said:
   * entries are gone or changed, or an added one asks for new simulations (telemetry, a command) or
   * lies across this diagnosis' time.
   *
   * @param later the same mission with more evidence, perhaps at a later time
   */
  public Optional<Posterior> provisional(DiagnosisInput later, Workers workers) {
    return new Additions(weighed, ahead).posterior(later, workers);
  }

  /** Event sets, the empty one first, then one for each cause, then pairs. */
  public List<EventSet> sets() {
    return posterior.sets();
  }

  /** Weight of each event set; with {@link #remainder} they sum to 1. */
  public double[] setWeights() {
    return posterior.setWeights();
  }

  /** Monte-Carlo standard errors of {@link #setWeights}. */
  public double[] setErrors() {
    return posterior.setErrors();
  }

  /** Effective number of different bodies behind each event set. */
  public double[] effectiveBodies() {
    return posterior.effectiveBodies();
  }

  /** Weight of all larger sets at the pairs' mean likelihood. */
  public double remainder() {
    return posterior.remainder();
  }

  /** Weight of all larger sets if they explained the evidence as well as any member does. */
  public double remainderBound() {
    return posterior.remainderBound();
  }

  /** One for each cause. */
  public List<CauseMarginal> causes() {
    return posterior.causes();
  }

  /** Causes that the evidence so far cannot tell apart. */
  public List<SharedLikelihood> sharedLikelihoods() {
    return posterior.sharedLikelihoods();
  }

  /** Weight of any of these causes having begun by now, and its standard error. */
  public double[] anyBegun(List<Integer> causes) {
    return posterior.anyBegun(causes);
  }

  /** As {@link Posterior#begunMeeting}. */
  public double[][] begunMeeting(List<Predicate<Set<Integer>>> conditions) {
    return posterior.begunMeeting(conditions);
  }

  /** Posterior of each candidate. */
  public double[] objects() {
    return posterior.objects();
  }

  /** Chance that each station works as believed. */
  public double[] stations() {
    return posterior.stations();
  }

  /** How likely each station has each fault; with {@link #stations} they sum to 1. */
  public List<Map<StationFault, Double>> stationFaults() {
    return posterior.stationFaults();
  }

  /** Index among the evidence of each row of {@link #bits}. */
  public int[] bitsEntries() {
    return posterior.bitsEntries();
  }

  /**
   * Change in log2 odds of each cause by each entry that weighs, {@code [row][cause]}, in the order
   * of time.
   */
  public double[][] bits() {
    return posterior.bits();
  }

  /** How well each row of {@link #bits} was expected; see {@link Posterior#entryTail}. */
  public double[] entryTail() {
    return posterior.entryTail();
  }

  /** Predictive tail probability of the evidence. */
  public double misfit() {
    return posterior.misfit();
  }

  /** State of charge and bus states against time, from a day before now to the horizon. */
  public List<EnergyFan.Point> energy(Workers workers) {
    return EnergyFan.of(
        EnergyFan.Source.of(population, ahead, jackknife.whole().member()), workers);
  }

  /** State of charge now, 0…1, and weight of every body, by {@code [0 or 1][body]}. */
  public double[][] chargeNow() {
    return posterior.chargeNow();
  }

  /** Every body with its weight, to simulate some of them again. */
  public BodyList bodyList() {
    return posterior.bodyList();
  }

  /** Shadows from separation to the horizon. */
  public List<Eclipse> eclipses() {
    return weighed.sky().eclipses();
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
        new Particles.Source(
            input,
            light,
            population,
            ahead,
            weighed.nodes(),
            weighed.weighing(),
            weighed.ear(),
            checkpoints),
        jackknife.whole().member(),
        count);
  }
}

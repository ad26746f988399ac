package hark.ensemble;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.link.Way;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.power.Bodies;
import hark.station.HorizonMask;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Site;
import hark.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * A small invented mission for tests of the weighing: two stations, two candidates, a handful of
 * causes.
 */
public final class SmallCase {
  public static final Instant SEPARATION = Instant.parse("2026-10-06T04:26:00Z");
  public static final String NEAR = "Nearby";
  public static final String FAR = "Farland";

  private static final String ELEMENTS =
      """
      OBJECT A
      1 97311U 26731B   26280.58472222  .00000600  00000-0  14000-3 0    30
      2 97311  97.4100 180.0000 0011300  74.2000 305.0000 15.19210000   211
      OBJECT B
      1 97312U 26731C   26280.61250000  .00000600  00000-0  16000-3 0    35
      2 97312  97.4088 180.0294 0011600  78.2000  92.5427 15.19174833   213
      """;

  public Instant now = Instant.parse("2026-10-10T06:00:00Z");
  public double horizonDays = 1;
  public long seed = 1;
  public int bodiesPerSet = 60;
  public int threads = 2;
  public double requiredSnrDb = 8;
  public double noiseKelvin = 900;
  public Optional<String> callSign = Optional.empty();
  public Station.Polarisation polarisation = Station.Polarisation.LINEAR;
  public List<Cause> causes = new ArrayList<>(usualCauses());
  public final List<Entry> evidence = new ArrayList<>();
  public Bodies bodies = new Bodies();

  /**
   * Causes of each sort: one that mutes, one just like it, one that weakens, two of power, one
   * without effect on hearing.
   */
  public static List<Cause> usualCauses() {
    return List.of(
        cause("transmitter_dead", 0.03, Cause.Onset.UNIFORM, new Effect.TransmitterOff()),
        cause("lost", 0.01, Cause.Onset.UNIFORM, new Effect.SpacecraftLost()),
        cause("weak", 0.05, Cause.Onset.UNIFORM, new Effect.TransmitterWeak(Uncertain.of(8))),
        cause("deaf", 0.02, Cause.Onset.UNIFORM, new Effect.ReceiverDeaf()),
        cause("charge_path", 0.03, Cause.Onset.UNIFORM, new Effect.ChargePathOpen(false)),
        cause("hung", 0.05, Cause.Onset.UNIFORM, new Effect.ComputerHung(Uncertain.of(0))));
  }

  public static Cause cause(String id, double probability, Cause.Onset onset, Effect effect) {
    return new Cause(
        id,
        id.replace('_', ' '),
        "power",
        probability,
        onset,
        List.of(effect),
        Set.of(Cause.ClearsOn.POWER_CYCLE, Cause.ClearsOn.COMMAND),
        "invented",
        "invented",
        List.of());
  }

  public static Station station(
      String name, double latitudeDeg, double longitudeDeg, double noiseKelvin) {
    return new Station(
        new Site(name, latitudeDeg, longitudeDeg, 20),
        HorizonMask.flat(5),
        new Station.Receive(13, noiseKelvin, List.of(), 40, Station.Polarisation.RHCP, 3000, false),
        name.equals(NEAR)
            ? Optional.of(
                new Station.Transmit(
                    50,
                    13,
                    new Station.Licence(
                        "club",
                        List.of(new double[] {435, 438}),
                        Optional.empty(),
                        List.of("lead"))))
            : Optional.empty(),
        0.2,
        0.93,
        new Station.Cost(0.3, 0.4, 1.5));
  }

  public List<Station> stations() {
    return List.of(station(NEAR, 51.4, 4.9, noiseKelvin), station(FAR, 37.9, -25.3, noiseKelvin));
  }

  public List<Candidate> candidates() {
    List<ElementSet> sets = ElementSets.parse("small.tle", ELEMENTS);
    OrbitSource.AlongTrack spread = new OrbitSource.AlongTrack(1.5, 2, 0.5);
    return List.of(
        new Candidate("97311", List.of(sets.get(0)), spread, 0.6),
        new Candidate("97312", List.of(sets.get(1)), spread, 0.3),
        new Candidate(Candidate.NONE, List.of(sets.get(0)), spread, 0.1));
  }

  public DiagnosisInput input() {
    Uncertain soc = new Uncertain.Uniform(0.55, 0.95);
    Uncertain area = new Uncertain.Normal(0.0060, 0.0006);
    BodyPrior prior =
        new BodyPrior(
            List.of("soc", "area"),
            List.of(soc, area),
            values -> bodies.model(values[0], values[1]));
    BeaconRadio beacon =
        new BeaconRadio(
            "main",
            436.73e6,
            new Uncertain.Normal(13, 3),
            new Uncertain.Normal(0, 500),
            polarisation,
            1200,
            BeaconRadio.Form.FRAMES,
            requiredSnrDb,
            4,
            new BeaconRadio.Telling(callSign, false));
    ReceiverRadio receiver =
        new ReceiverRadio(436.73e6, -108, 0, true, ReceiverRadio.Authentication.COUNTER, false);
    return new DiagnosisInput(
        SEPARATION,
        now,
        now.plusMillis((long) (horizonDays * 86_400_000)),
        prior,
        List.of(beacon),
        receiver,
        candidates(),
        stations(),
        List.copyOf(causes),
        List.copyOf(evidence),
        EarthModel.bundled(),
        bodiesPerSet,
        seed);
  }

  public Diagnosis diagnose() {
    return with(workers -> Diagnosis.of(input(), workers));
  }

  /** The battery's fan of the diagnosis. */
  public List<EnergyFan.Point> energy() {
    return with(workers -> Diagnosis.of(input(), workers).energy(workers));
  }

  /** Runs something with the case's own number of threads. */
  public <T> T with(java.util.function.Function<Workers, T> work) {
    ExecutorService executor = Executors.newFixedThreadPool(threads);
    try {
      return work.apply(new Workers(executor, threads));
    } finally {
      executor.shutdownNow();
    }
  }

  /** The n-th pass of the first candidate over a station since separation. */
  public Pass pass(String stationName, int n) {
    Station station =
        stations().stream().filter(s -> s.name().equals(stationName)).findFirst().orElseThrow();
    return Passes.find(
            hark.orbit.Trajectory.of(candidates().get(0).sets().get(0), EarthModel.bundled()),
            station.site(),
            station.mask(),
            SEPARATION,
            SEPARATION.plus(Duration.ofDays(5)))
        .stream()
        .filter(pass -> pass.maxElevationDeg() > 15)
        .skip(n)
        .findFirst()
        .orElseThrow();
  }

  public SmallCase heard(String station, int n) {
    Pass pass = pass(station, n);
    return add(
        new Evidence.Heard(
            station,
            pass.aos(),
            pass.los(),
            OptionalDouble.of(14),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  public SmallCase nothing(String station, int n) {
    return nothing(station, n, Way.DECODER, 3000);
  }

  public SmallCase nothing(String station, int n, Way way, double windowHz) {
    Pass pass = pass(station, n);
    return add(
        new Evidence.NothingHeard(
            station,
            pass.aos(),
            pass.los(),
            Optional.of(way),
            OptionalDouble.empty(),
            OptionalDouble.of(windowHz),
            0,
            Optional.empty(),
            0));
  }

  public SmallCase check(String station, int n, boolean heard) {
    Instant at = pass(station, n).los().plusSeconds(600);
    return add(
        new Evidence.StationCheck(
            station,
            at,
            heard,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  public SmallCase volts(Instant at, double volts) {
    return add(new Evidence.Telemetry(at, volts, OptionalDouble.of(0.05)));
  }

  public SmallCase add(Evidence what) {
    evidence.add(new Entry(evidence.size() + 1, what.at(), "", "", Map.of(), what));
    return this;
  }
}

package hark.console;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.Window;
import hark.assessment.AssessmentFixture;
import hark.assessment.FixtureWindows;
import hark.assessment.ReviewCaseFixture;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.evidence.EvidenceBook;
import hark.evidence.EvidenceContext;
import hark.journal.Journal;
import hark.problem.Problem;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;

/**
 * An invented mission for tests of the page: its record is real and checked like any other, its
 * numbers are made up and shift a little with every entry, so that a test can see them change.
 */
final class FixtureModel implements ConsoleModel {
  private static final Duration STEP = Duration.ofMinutes(95);

  private static final int SILENT = 12;

  private boolean bare;
  private final List<Entry> entries = new ArrayList<>();
  private final Map<String, Integer> delivered = new java.util.concurrent.ConcurrentHashMap<>();
  private final AtomicReference<RuntimeException> failure = new AtomicReference<>();
  private final boolean ownClock;
  private final Optional<Rehearsal> rehearsal;
  private final FixtureEnergy energy = new FixtureEnergy();
  private final FixturePapers papers = new FixturePapers();
  private final AtomicReference<Problem> fault = new AtomicReference<>();

  FixtureModel(boolean ownClock) {
    this(ownClock, Optional.empty());
  }

  /** The same under the clock of a rehearsal. */
  static FixtureModel rehearsed(Rehearsal clock) {
    return new FixtureModel(false, Optional.of(clock));
  }

  /** A mission of which nothing is written down and that no station sees. */
  static FixtureModel bare() {
    FixtureModel model = new FixtureModel(true);
    model.entries.clear();
    model.bare = true;
    return model;
  }

  private FixtureModel(boolean ownClock, Optional<Rehearsal> rehearsal) {
    this.ownClock = ownClock;
    this.rehearsal = rehearsal;
    record(
        "heard",
        Map.of(
            "station",
            "Fen Hill",
            "from",
            "2026-11-05T09:51:10Z",
            "to",
            "2026-11-05T09:58:00Z",
            "level_db",
            "14"));
    record(
        "heard",
        Map.of(
            "station",
            "Quay",
            "from",
            "2026-11-06T15:22:40Z",
            "to",
            "2026-11-06T15:29:00Z",
            "level_db",
            "8"));
    record("telemetry", Map.of("at", "2026-11-06T15:24:00Z", "volts", "7.05"));
    Instant silent = at("2026-11-06T22:10:00Z");
    for (int i = 0; i < SILENT; i++) {
      Instant from = i == SILENT - 1 ? at("2026-11-14T07:41:00Z") : silent.plusSeconds(57_600L * i);
      record(
          "nothing-heard",
          Map.of(
              "station",
              "Fen Hill",
              "from",
              from.toString(),
              "to",
              from.plusSeconds(540).toString()));
    }
  }

  FixturePapers papersOfDemo() {
    return papers;
  }

  @Override
  public Optional<MissionPapers> papers() {
    return Optional.of(papers.papers());
  }

  @Override
  public Optional<Journal.Verification> chain() {
    int entries = entries().size();
    Journal.Head head = new Journal.Head(entries, "3f2a".repeat(16));
    return Optional.of(new Journal.Verification(entries, head, Optional.ofNullable(fault.get())));
  }

  /** The chain is found broken from now on. */
  void breakChain(Problem why) {
    fault.set(why);
  }

  FixtureEnergy energy() {
    return energy;
  }

  /** Makes the next recomputation fail. */
  void failNext(RuntimeException why) {
    failure.set(why);
  }

  @Override
  public Answer assess() {
    RuntimeException broken = failure.getAndSet(null);
    if (broken != null) {
      throw broken;
    }
    if (bare) {
      return new Answer(nothingKnown(), Optional.of(energy));
    }
    int more = entries().size() - 3 - SILENT;
    Assessment base = AssessmentFixture.sandpiper().build();
    Assessment assessment =
        AssessmentFixture.sandpiper()
            .silence(new Assessment.Silence(base.silence().lastHeard(), 11 + more))
            .causes(base.causes().stream().map(cause -> shifted(cause, more)).toList())
            .groups(base.groups().stream().map(group -> shifted(group, more)).toList())
            .windows(windows(more))
            .warnings(List.of())
            .build();
    return new Answer(
        assessment,
        Optional.of(energy),
        Optional.empty(),
        Optional.of(ReviewCaseFixture::sandpiper));
  }

  private static Assessment nothingKnown() {
    return AssessmentFixture.sandpiper()
        .windows(List.of())
        .evidence(List.of())
        .plan(new Assessment.Plan(List.of(), 0, 0, 0, Double.NaN))
        .goingOn(List.of())
        .silence(new Assessment.Silence(Optional.empty(), 0))
        .build();
  }

  @Override
  public synchronized List<Entry> entries() {
    return List.copyOf(entries);
  }

  @Override
  public int append(NewEntry entry) {
    Map<String, String> keys = new TreeMap<>(entry.keys());
    keys.keySet().removeAll(List.of("who", "note"));
    int number = record(entry.kind(), keys);
    entry.token().ifPresent(token -> delivered.put(token, number));
    return number;
  }

  @Override
  public Optional<Integer> delivered(String token) {
    return Optional.ofNullable(delivered.get(token));
  }

  @Override
  public List<PastWindow> pastWindows() {
    if (bare) {
      return List.of();
    }
    return List.of(
        new PastWindow("Fen Hill", at("2026-11-14T07:41:00Z"), at("2026-11-14T07:50:00Z"), 41),
        new PastWindow("Quay", at("2026-11-13T20:12:30Z"), at("2026-11-13T20:21:00Z"), 55));
  }

  /**
   * A straight flight over flat ground, seen from beside it: the shape is right, the place is not.
   */
  @Override
  public Optional<SkyView> sky(Window window) {
    List<Direction> skyline = new ArrayList<>();
    for (int azimuth = 0; azimuth <= 360; azimuth += 5) {
      double hills =
          6 + 4 * Math.sin(Math.toRadians(3 * azimuth)) + 5 * Math.sin(Math.toRadians(azimuth));
      skyline.add(new Direction(azimuth, Math.max(3, hills)));
    }
    List<Track> tracks = new ArrayList<>();
    window
        .geometry()
        .forEach(
            pass ->
                tracks.add(
                    new Track(
                        pass.object(),
                        pass.aos(),
                        Duration.between(pass.aos(), pass.los()).toSeconds() / 40.0,
                        flight(pass.maxElevationDeg()))));
    return Optional.of(new SkyView(skyline, tracks));
  }

  private static List<Direction> flight(double maxElevationDeg) {
    List<Direction> points = new ArrayList<>();
    double aside = 500 / Math.tan(Math.toRadians(maxElevationDeg));
    for (int i = 0; i <= 40; i++) {
      double along = (i - 20) * 120;
      double azimuth = 120 - Math.toDegrees(Math.atan2(along, aside));
      double drop = 0.00009 * (along * along + aside * aside);
      double elevation = Math.toDegrees(Math.atan2(500 - drop, Math.hypot(along, aside)));
      points.add(
          new Direction(Math.floorMod(Math.round(azimuth * 100), 36_000) / 100.0, elevation));
    }
    return points;
  }

  @Override
  public Optional<PassView> pass(Window window) {
    return Optional.of(FixturePass.of(window, sky(window).orElseThrow()));
  }

  @Override
  public Map<String, List<String>> mayAuthorise() {
    return Map.of("Fen Hill", List.of("lead"));
  }

  @Override
  public Instant now() {
    return rehearsal.map(Rehearsal::instant).orElse(AssessmentFixture.NOW);
  }

  @Override
  public Optional<Rehearsal> rehearsal() {
    return rehearsal;
  }

  @Override
  public boolean ownClock() {
    return ownClock;
  }

  @Override
  public String notice() {
    return ownClock ? "This is the demo: what you write down is forgotten when it stops." : "";
  }

  private synchronized int record(String kind, Map<String, String> keys) {
    Instant latest = ownClock ? Instant.MAX : now();
    EvidenceContext context =
        new EvidenceContext(
            now(),
            AssessmentFixture.SEPARATION,
            latest,
            List.of("Fen Hill", "Quay"),
            List.of("98101", "98102", "98103"),
            (station, time) -> Optional.empty());
    EvidenceBook.Draft draft = EvidenceBook.draft(entries, kind, keys, context);
    int number = entries.size() + 1;
    Evidence evidence = draft.evidence();
    entries.add(new Entry(number, now(), "", "", draft.keys(), evidence));
    return number;
  }

  private static Assessment.Group shifted(Assessment.Group group, int more) {
    return new Assessment.Group(
        group.id(),
        group.title(),
        group.causes(),
        group.prior(),
        Math.min(1, group.posterior() * Math.pow(1.08, more)),
        group.error(),
        group.wouldSeparate(),
        group.separators());
  }

  private static CauseView shifted(CauseView cause, int more) {
    double factor = Math.pow(cause.inseparableGroup().isPresent() ? 1.08 : 0.94, more);
    return new CauseView(
        cause.id(),
        cause.title(),
        cause.branch(),
        cause.prior(),
        Math.min(1, cause.posterior() * factor),
        cause.later(),
        cause.error(),
        cause.ifPriorHalved(),
        cause.ifPriorDoubled(),
        cause.inseparableGroup(),
        cause.selfRecovery(),
        cause.mechanism(),
        cause.signature(),
        cause.detail());
  }

  /** Three days of passes at two stations, some of them together. */
  private static List<Window> windows(int more) {
    List<Window> windows = new ArrayList<>(FixtureWindows.windows());
    double fading = Math.pow(0.9, more);
    Instant start = at("2026-11-14T13:52:00Z");
    for (int i = 0; i < 28; i++) {
      Instant aos = start.plus(STEP.multipliedBy(i));
      int hour = Math.floorMod((int) (aos.getEpochSecond() / 3600), 24);
      if (hour > 2 && hour < 7) {
        continue;
      }
      double elevation = 8 + Math.floorMod(i * 37, 70);
      String station = i % 3 == 0 ? "Fen Hill" : "Quay";
      windows.add(window(station, aos, elevation, 0.18 * fading * elevation / 90));
      if (i % 4 == 1) {
        windows.add(window("Fen Hill", aos.plusSeconds(130), elevation * 0.8, 0.1 * fading));
      }
    }
    windows.sort(java.util.Comparator.comparing(Window::aos));
    return windows.stream().map(window -> heardLess(window, fading)).toList();
  }

  private static Window window(String station, Instant aos, double elevationDeg, double heard) {
    long seconds = 240 + Math.round(4 * elevationDeg);
    Optional<String> planned =
        elevationDeg > 55
            ? Optional.of(station.equals("Quay") ? "listen" : "listen-wide")
            : Optional.empty();
    return FixtureWindows.window(
        station, aos.toString(), seconds, elevationDeg, 0.3 + heard, heard, planned);
  }

  private static Window heardLess(Window w, double factor) {
    return new Window(
        w.id(),
        w.station(),
        w.aos(),
        w.culmination(),
        w.los(),
        w.maxElevationDeg(),
        w.geometry(),
        w.beaconOn() * factor,
        w.beaconOnError(),
        w.socP25(),
        w.socP50(),
        w.socP75(),
        w.minutesSinceSunrise(),
        w.unattended(),
        w.planned(),
        w.options(),
        w.notAvailable());
  }

  private static Instant at(String time) {
    return Instant.parse(time);
  }
}

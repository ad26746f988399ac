package hark.console;

import hark.assessment.Assessment.Window;
import hark.console.ConsoleModel.Direction;
import hark.console.ConsoleModel.PastWindow;
import hark.console.ConsoleModel.SkyView;
import hark.console.ConsoleModel.Track;
import hark.ensemble.OrbitSource;
import hark.evidence.EvidenceContext.Span;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.Trajectory;
import hark.station.Look;
import hark.station.Looks;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the page shows of passes beside the assessment: those over, and where to point. */
final class MissionSky {
  /** How far back an outcome can be picked from a list; older ones are typed. */
  static final Duration PAST = Duration.ofDays(7);

  private static final Duration NEAR = Duration.ofMinutes(10);
  private static final int SKYLINE_STEP_DEG = 2;
  private static final int TRACK_POINTS = 60;

  private final Mission mission;
  private final EarthModel earth;

  MissionSky(Mission mission, EarthModel earth) {
    this.mission = mission;
    this.earth = earth;
  }

  /** Windows over by now, of the heaviest candidate, latest first. */
  List<PastWindow> past(Instant now) {
    Instant from = latest(now.minus(PAST), mission.separation());
    if (!from.isBefore(now)) {
      return List.of();
    }
    List<PastWindow> windows = new ArrayList<>();
    for (Station station : mission.stations()) {
      passes(station, from, now).stream()
          .filter(pass -> !pass.los().isAfter(now))
          .map(MissionSky::window)
          .forEach(windows::add);
    }
    windows.sort(Comparator.comparing(PastWindow::from).reversed());
    return List.copyOf(windows);
  }

  /** The pass of the heaviest candidate under way at a time, or beginning or ending close to it. */
  Optional<Span> find(String stationName, Instant time) {
    return mission.stations().stream()
        .filter(station -> station.name().equals(stationName))
        .flatMap(station -> passes(station, time.minus(NEAR), time.plus(NEAR)).stream())
        .min(Comparator.comparing(pass -> Duration.between(pass.aos(), time).abs()))
        .map(pass -> new Span(pass.aos(), pass.los()));
  }

  /** The skyline and every candidate's track while a window lasts. */
  Optional<SkyView> view(Window window) {
    return station(window.station())
        .map(station -> new SkyView(skyline(station), tracks(station, window)));
  }

  /** A station by its name. */
  Optional<Station> station(String name) {
    return mission.stations().stream().filter(station -> station.name().equals(name)).findFirst();
  }

  /** All that the station cannot see beneath, all round. */
  static List<Direction> skyline(Station station) {
    List<Direction> line = new ArrayList<>();
    for (int azimuth = 0; azimuth <= 360; azimuth += SKYLINE_STEP_DEG) {
      line.add(new Direction(azimuth, station.mask().elevationDegAt(azimuth % 360)));
    }
    return line;
  }

  private List<Track> tracks(Station station, Window window) {
    List<Track> tracks = new ArrayList<>();
    window
        .geometry()
        .forEach(
            pass ->
                elements(pass.object(), pass.aos())
                    .map(set -> track(station, set, pass.aos(), pass.los()))
                    .ifPresent(tracks::add));
    return tracks;
  }

  private Track track(Station station, ElementSet set, Instant aos, Instant los) {
    double step = Duration.between(aos, los).toMillis() / 1000.0 / TRACK_POINTS;
    Trajectory trajectory = Trajectory.of(set, earth);
    Look[] looks = Looks.sample(trajectory, station.site(), aos, step, TRACK_POINTS + 1);
    List<Direction> points = new ArrayList<>();
    for (Look look : looks) {
      if (Double.isFinite(look.elevationDeg())) {
        points.add(new Direction(look.azimuthDeg(), look.elevationDeg()));
      }
    }
    return new Track(set.objectId(), aos, step, points);
  }

  private List<Pass> passes(Station station, Instant from, Instant to) {
    return heaviest()
        .flatMap(object -> elements(object, to))
        .map(set -> Trajectory.of(set, earth))
        .map(trajectory -> Passes.find(trajectory, station.site(), station.mask(), from, to))
        .orElse(List.of());
  }

  private Optional<String> heaviest() {
    return mission.sources().stream()
        .flatMap(source -> source.candidates().entrySet().stream())
        .max(Map.Entry.<String, Double>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey);
  }

  /** A candidate's element set in force. */
  Optional<ElementSet> elements(String object, Instant time) {
    List<ElementSet> all =
        mission.sources().stream().map(OrbitSource::sets).flatMap(List::stream).toList();
    return ElementSets.inForce(all, time).stream()
        .filter(set -> set.objectId().equals(object))
        .findFirst();
  }

  private static PastWindow window(Pass pass) {
    return new PastWindow(pass.site(), pass.aos(), pass.los(), pass.maxElevationDeg());
  }

  private static Instant latest(Instant a, Instant b) {
    return a.isAfter(b) ? a : b;
  }
}

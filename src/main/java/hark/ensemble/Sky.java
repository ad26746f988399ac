package hark.ensemble;

import hark.orbit.Eclipse;
import hark.orbit.Eclipses;
import hark.orbit.ElementSet;
import hark.orbit.Sun;
import hark.orbit.Trajectory;
import hark.power.Illumination;
import hark.power.SunPath;
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
import java.util.concurrent.ConcurrentHashMap;

/**
 * Passes, paths and sunlight of the candidates. Trajectories are made anew for each task: they are
 * not thread-safe. What was worked out is kept, so that diagnoses of one mission at one time whose
 * evidence differs can share a sky; several threads may ask at once.
 */
public final class Sky {
  /** No object is looked for earlier or later than this, s. */
  private static final double MARGIN_SECONDS = 300;

  private static final double STEP_SECONDS = 10;

  /** Paths kept at most; more are worked out again each time. */
  private static final int MOST_KEPT = 20_000;

  private final DiagnosisInput input;
  private final Map<Span, List<PassGeometry>> kept;
  private Optional<Light> light = Optional.empty();

  private Sky(DiagnosisInput input, Map<Span, List<PassGeometry>> kept) {
    this.input = input;
    this.kept = kept;
  }

  /** The sky of a mission between separation and horizon; evidence, seed and bodies are ignored. */
  public static Sky of(DiagnosisInput input) {
    return new Sky(input, new ConcurrentHashMap<>());
  }

  /**
   * The sky of the same mission at another time, under the same sunlight; both know the paths that
   * either has worked out.
   */
  Sky at(DiagnosisInput other) {
    Sky there = new Sky(other, kept);
    there.light = Optional.of(light());
    return there;
  }

  /** Shadows and what they leave of the Sun. */
  private record Light(List<Eclipse> eclipses, Illumination illumination) {}

  /**
   * A stretch of time at a station.
   *
   * @param sets index of the element set in use, by candidate
   */
  private record Span(int station, Instant from, Instant to, List<Integer> sets) {}

  /** Refuses to serve another mission or another time. */
  void requireSame(DiagnosisInput other) {
    boolean same =
        input.separation().equals(other.separation())
            && input.now().equals(other.now())
            && input.end().equals(other.end())
            && input.candidates().equals(other.candidates())
            && input.stations().equals(other.stations());
    if (!same) {
      throw new IllegalArgumentException("the sky was made for another mission or another time");
    }
  }

  /**
   * Shadows of the likeliest object from separation to the horizon; the others fly within seconds
   * of it.
   */
  public List<Eclipse> eclipses() {
    return light().eclipses();
  }

  /** Sunlight on the body, from the shadows above and the Sun's place on the way. */
  public Illumination illumination() {
    return light().illumination();
  }

  private synchronized Light light() {
    if (light.isEmpty()) {
      List<Eclipse> found = List.copyOf(findEclipses());
      light = Optional.of(new Light(found, illumination(found)));
    }
    return light.get();
  }

  private List<Eclipse> findEclipses() {
    Candidate likeliest = input.candidates().get(input.likeliestCandidate());
    List<Eclipse> all = new ArrayList<>();
    Instant from = input.separation();
    while (from.isBefore(input.end())) {
      Instant to = earlier(from.plus(Duration.ofDays(1)), input.end());
      ElementSet set =
          likeliest.setAt(from.plus(Duration.between(from, to).dividedBy(2)), input.now());
      for (Eclipse eclipse : Eclipses.find(Trajectory.of(set, input.earth()), from, to)) {
        boolean known =
            !all.isEmpty()
                && !eclipse.penumbraEntry().isAfter(all.get(all.size() - 1).penumbraExit());
        if (!known) {
          all.add(eclipse);
        }
      }
      from = to;
    }
    return all;
  }

  private static Instant earlier(Instant a, Instant b) {
    return a.isBefore(b) ? a : b;
  }

  private Illumination illumination(List<Eclipse> eclipses) {
    double[][] edges = new double[4][eclipses.size()];
    for (int k = 0; k < eclipses.size(); k++) {
      Eclipse eclipse = eclipses.get(k);
      double in = input.seconds(eclipse.penumbraEntry());
      double out = input.seconds(eclipse.penumbraExit());
      edges[0][k] = in;
      edges[1][k] = eclipse.umbraEntry().map(input::seconds).orElse(0.5 * (in + out));
      edges[2][k] = eclipse.umbraExit().map(input::seconds).orElse(0.5 * (in + out));
      edges[3][k] = out;
    }
    Optional<SunPath> path = SunWalk.path(input);
    if (path.isEmpty()) {
      double distance = Sun.at(input.now()).distanceMeters();
      return new Illumination(edges, SunWalk.irradiance(distance));
    }
    return new Illumination(edges, path.get());
  }

  /** The window from one time to another at a station, with every candidate's path. */
  SkyWindow window(int stationIndex, Instant from, Instant to, List<Optional<Pass>> passes) {
    Span span = new Span(stationIndex, from, to, sets(from));
    List<PassGeometry> paths = kept.get(span);
    if (paths == null) {
      paths = paths(input.stations().get(stationIndex), from, to);
      if (kept.size() < MOST_KEPT) {
        kept.put(span, paths);
      }
    }
    return new SkyWindow(stationIndex, input.seconds(from), input.seconds(to), paths, passes);
  }

  private List<Integer> sets(Instant time) {
    return input.candidates().stream()
        .map(candidate -> candidate.sets().indexOf(candidate.setAt(time, input.now())))
        .toList();
  }

  /** The window at any place, with paths as much wider as the clock there may be wrong. */
  SkyWindow elsewhere(Station station, Instant from, Instant to, double clockSdSeconds) {
    long margin = (long) Math.ceil(2 * clockSdSeconds);
    List<PassGeometry> paths = paths(station, from.minusSeconds(margin), to.plusSeconds(margin));
    return new SkyWindow(-1, input.seconds(from), input.seconds(to), paths, List.of());
  }

  private List<PassGeometry> paths(Station station, Instant from, Instant to) {
    Instant start = from.minusMillis((long) (1000 * MARGIN_SECONDS));
    int count =
        2
            + (int)
                ((Duration.between(from, to).toMillis() / 1000.0 + 2 * MARGIN_SECONDS)
                    / STEP_SECONDS);
    List<PassGeometry> paths = new ArrayList<>();
    for (Candidate candidate : input.candidates()) {
      Trajectory trajectory = Trajectory.of(candidate.setAt(from, input.now()), input.earth());
      Look[] looks = Looks.sample(trajectory, station.site(), start, STEP_SECONDS, count);
      PassGeometry path =
          new PassGeometry(input.seconds(start), STEP_SECONDS, looks, station.mask());
      paths.add(station.rotator().map(path::steeredBy).orElse(path));
    }
    return List.copyOf(paths);
  }

  /**
   * All windows of a station between now and the horizon, rising: passes of different candidates
   * that overlap are one.
   */
  List<SkyWindow> upcoming(int stationIndex) {
    Station station = input.stations().get(stationIndex);
    List<Indexed> passes = new ArrayList<>();
    for (int k = 0; k < input.candidates().size(); k++) {
      Candidate candidate = input.candidates().get(k);
      if (candidate.objectId().equals(Candidate.NONE)) {
        continue;
      }
      Trajectory trajectory =
          Trajectory.of(candidate.setAt(input.end(), input.now()), input.earth());
      for (Pass pass :
          Passes.find(trajectory, station.site(), station.mask(), input.now(), input.end())) {
        passes.add(new Indexed(k, pass));
      }
    }
    passes.sort(
        Comparator.comparing((Indexed indexed) -> indexed.pass().aos())
            .thenComparing(Indexed::candidate));
    List<SkyWindow> windows = new ArrayList<>();
    List<Indexed> together = new ArrayList<>();
    for (Indexed next : passes) {
      if (!together.isEmpty() && next.pass().aos().isAfter(end(together))) {
        windows.add(merged(stationIndex, together));
        together.clear();
      }
      together.add(next);
    }
    if (!together.isEmpty()) {
      windows.add(merged(stationIndex, together));
    }
    return windows;
  }

  private record Indexed(int candidate, Pass pass) {}

  private static Instant end(List<Indexed> passes) {
    return passes.stream()
        .map(indexed -> indexed.pass().los())
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private SkyWindow merged(int stationIndex, List<Indexed> together) {
    List<Optional<Pass>> byCandidate = new ArrayList<>();
    for (int k = 0; k < input.candidates().size(); k++) {
      int candidate = k;
      byCandidate.add(
          together.stream()
              .filter(indexed -> indexed.candidate() == candidate)
              .map(Indexed::pass)
              .findFirst());
    }
    return window(stationIndex, together.get(0).pass().aos(), end(together), byCandidate);
  }
}

package hark.trial.campaign;

import hark.ensemble.Candidate;
import hark.ensemble.DiagnosisInput;
import hark.orbit.ElementSet;
import hark.orbit.Trajectory;
import hark.station.Look;
import hark.station.Looks;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Station;
import hark.trial.PlainPath;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The windows of a mission from separation to the diagnosis and the path of each candidate in them.
 * Worked out once; all campaigns share it.
 */
public final class Geometry {
  /** Paths reach so far beyond a window: who comes later than that is not heard in it, s. */
  private static final double MARGIN = 900;

  private static final double STEP = 5;

  /** The object nobody catalogued flies so much wider around the likeliest one. */
  private static final double NONE_WIDER = 20;

  private final DiagnosisInput input;

  /** Rising. */
  private final List<Window> windows;

  /**
   * Objects above one station.
   *
   * @param sdSeconds of the along-track error in the middle of it, by candidate
   */
  public record Window(
      int station, Instant from, Instant to, List<PlainPath> paths, double[] sdSeconds) {}

  private record Span(Instant from, Instant to) {}

  /** All windows from separation to the input's now. */
  public Geometry(DiagnosisInput input) {
    this.input = input;
    List<Window> all = new ArrayList<>();
    for (int s = 0; s < input.stations().size(); s++) {
      for (Span span : spans(input.stations().get(s))) {
        all.add(window(s, span));
      }
    }
    all.sort(Comparator.comparing(Window::from).thenComparing(Window::station));
    windows = List.copyOf(all);
  }

  /** Rising. */
  public List<Window> windows() {
    return windows;
  }

  private List<Span> spans(Station station) {
    List<Span> passes = new ArrayList<>();
    for (Candidate candidate : input.candidates()) {
      if (candidate.objectId().equals(Candidate.NONE)) {
        continue;
      }
      Instant day = input.separation();
      while (day.isBefore(input.now())) {
        Instant next = day.plus(Duration.ofDays(1));
        Trajectory path = trajectory(candidate, day.plus(Duration.ofHours(12)));
        for (Pass pass : Passes.find(path, station.site(), station.mask(), day, next)) {
          boolean inside = !pass.aos().isBefore(day) && pass.aos().isBefore(next);
          if (inside && pass.los().isBefore(input.now())) {
            passes.add(new Span(pass.aos(), pass.los()));
          }
        }
        day = next;
      }
    }
    passes.sort(Comparator.comparing(Span::from));
    return merged(passes);
  }

  private static List<Span> merged(List<Span> passes) {
    List<Span> merged = new ArrayList<>();
    for (Span pass : passes) {
      Span last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last == null || pass.from().isAfter(last.to())) {
        merged.add(pass);
      } else if (pass.to().isAfter(last.to())) {
        merged.set(merged.size() - 1, new Span(last.from(), pass.to()));
      }
    }
    return merged;
  }

  private Window window(int s, Span span) {
    Station station = input.stations().get(s);
    Instant start = span.from().minusMillis((long) (1000 * MARGIN));
    double length = Duration.between(span.from(), span.to()).toMillis() / 1000.0 + 2 * MARGIN;
    int count = 2 + (int) (length / STEP);
    Instant middle = span.from().plus(Duration.between(span.from(), span.to()).dividedBy(2));
    List<PlainPath> paths = new ArrayList<>();
    double[] sd = new double[input.candidates().size()];
    for (int k = 0; k < sd.length; k++) {
      Candidate candidate = input.candidates().get(k);
      Look[] looks =
          Looks.sample(trajectory(candidate, span.from()), station.site(), start, STEP, count);
      PlainPath path = new PlainPath(input.seconds(start), STEP, looks, station.mask());
      boolean lags = station.rotator().map(Station.Rotator::keyhole).orElse(false);
      paths.add(lags ? path.followedBy(station.rotator().get().rateDegPerSecond()) : path);
      sd[k] = sdSeconds(candidate, middle);
    }
    return new Window(s, span.from(), span.to(), paths, sd);
  }

  private Trajectory trajectory(Candidate candidate, Instant time) {
    return Trajectory.of(nearest(candidate, time), input.earth());
  }

  /** Of the sets known at the end, the one made nearest to a time: as a crew would look back. */
  private ElementSet nearest(Candidate candidate, Instant time) {
    ElementSet best = null;
    for (ElementSet set : candidate.sets()) {
      boolean known = !set.epoch().isAfter(input.now());
      if (known && (best == null || apart(set, time).compareTo(apart(best, time)) < 0)) {
        best = set;
      }
    }
    return best == null ? candidate.sets().get(candidate.sets().size() - 1) : best;
  }

  private static Duration apart(ElementSet set, Instant time) {
    return Duration.between(set.epoch(), time).abs();
  }

  private double sdSeconds(Candidate candidate, Instant time) {
    ElementSet set = nearest(candidate, time);
    double days = apart(set, time).toMillis() / 86_400_000.0;
    double sd = candidate.alongTrack().of(set).sdSeconds(days);
    return candidate.objectId().equals(Candidate.NONE) ? NONE_WIDER * sd : sd;
  }
}

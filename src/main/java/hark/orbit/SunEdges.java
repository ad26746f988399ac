package hark.orbit;

import hark.orbit.MeanOrbit.Shift;
import hark.orbit.ShadowPart.Kind;
import hark.orbit.SunSpans.Span;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Seasons with the spread of their dates: the search is done again with each doubt once up and once
 * down; half the distances between the dates so found are added in squares.
 */
final class SunEdges {
  private static final double DAY = 86400;

  /** So far past the ends of what was asked for an edge may move, s. */
  private static final double ROOM_SECONDS = 60 * DAY;

  private final double from;
  private final double to;
  private final DoubleFunction<Instant> clock;
  private final List<Span> spans;
  private final List<List<List<Span>>> shifted = new ArrayList<>();

  SunEdges(ElementSet set, MeanOrbit orbit, SunDoubt doubt, Asked asked) {
    this.from = asked.from();
    this.to = asked.to();
    this.clock = asked.clock();
    this.spans = SunSpans.clear(orbit, asked.kind(), from, to);
    if (spans.stream().allMatch(span -> span.startCut() && span.endCut())) {
      return; // no edge, no spread
    }
    for (Shift[] pair : doubt.shifts(orbit)) {
      List<List<Span>> both = new ArrayList<>();
      for (Shift shift : pair) {
        MeanOrbit other = MeanOrbit.shifted(set, orbit, shift);
        both.add(SunSpans.clear(other, asked.kind(), from - ROOM_SECONDS, to + ROOM_SECONDS));
      }
      shifted.add(both);
    }
  }

  /** What is looked for, s since the epoch, and how such times become instants. */
  record Asked(double from, double to, Kind kind, DoubleFunction<Instant> clock) {}

  /** Stretches clear of the shadow. */
  List<SunSeason> clear() {
    return spans.stream()
        .map(span -> new SunSeason(edge(span, true), edge(span, false), isSure(span)))
        .toList();
  }

  /** What lies between them: every orbit meets the shadow. */
  List<SunSeason> shaded() {
    List<SunSeason> found = new ArrayList<>();
    SunSeason.Edge start = new SunSeason.Edge(clock.apply(from), 0, true);
    for (SunSeason light : clear()) {
      if (!light.from().cut()) {
        found.add(new SunSeason(start, light.from(), light.sure()));
      }
      start = light.to();
    }
    if (spans.isEmpty() || !spans.get(spans.size() - 1).endCut()) {
      found.add(new SunSeason(start, new SunSeason.Edge(clock.apply(to), 0, true), true));
    }
    return found;
  }

  private SunSeason.Edge edge(Span span, boolean start) {
    double seconds = span.edge(start);
    if (start ? span.startCut() : span.endCut()) {
      return new SunSeason.Edge(clock.apply(seconds), 0, true);
    }
    double squares = 0;
    for (List<List<Span>> pair : shifted) {
      double moved = 0;
      for (List<Span> other : pair) {
        moved += distance(span, start, other) / 2;
      }
      squares += moved * moved;
    }
    return new SunSeason.Edge(clock.apply(seconds), Math.sqrt(squares) / DAY, false);
  }

  /** How far an edge moved; half the season when that does not come. */
  private static double distance(Span span, boolean start, List<Span> others) {
    return others.stream()
        .filter(span::overlaps)
        .mapToDouble(other -> Math.abs(other.edge(start) - span.edge(start)))
        .min()
        .orElse((span.to() - span.from()) / 2);
  }

  private boolean isSure(Span span) {
    return shifted.stream()
        .flatMap(List::stream)
        .allMatch(others -> others.stream().anyMatch(span::overlaps));
  }
}

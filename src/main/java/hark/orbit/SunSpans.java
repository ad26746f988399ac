package hark.orbit;

import hark.orbit.ShadowPart.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Finds the stretches in which an orbit stays clear of a shadow. Seconds since the epoch. */
final class SunSpans {
  /** Half the time in which the clearance of any orbit bends noticeably, s. */
  private static final double STEP_SECONDS = 43200;

  private static final double TOLERANCE_SECONDS = 1;

  /** A stretch; an end that lies on the search's own is not an edge. */
  record Span(double from, double to, boolean startCut, boolean endCut) {
    boolean overlaps(Span other) {
      return from < other.to && other.from < to;
    }

    double edge(boolean start) {
      return start ? from : to;
    }
  }

  private final DoubleUnaryOperator clear;
  private final List<double[]> samples = new ArrayList<>();

  private SunSpans(MeanOrbit orbit, Kind kind) {
    this.clear = seconds -> new SunPlane(orbit, seconds).clearRad(kind);
  }

  static List<Span> clear(MeanOrbit orbit, Kind kind, double from, double to) {
    SunSpans search = new SunSpans(orbit, kind);
    search.sample(from, Math.min(to, orbit.endSeconds()));
    return search.spans();
  }

  private void sample(double from, double to) {
    if (!(to > from)) {
      return;
    }
    int parts = (int) Math.ceil((to - from) / STEP_SECONDS);
    for (int i = 0; i <= parts; i++) {
      double t = i == parts ? to : from + i * STEP_SECONDS;
      samples.add(new double[] {t, clear.applyAsDouble(t)});
    }
    for (int i = samples.size() - 2; i > 0; i--) {
      between(i);
    }
  }

  /** Adds a point on the other side of nothing that the samples stepped over, if there is one. */
  private void between(int i) {
    double sign = Math.signum(samples.get(i)[1]);
    double before = sign * samples.get(i - 1)[1];
    double here = sign * samples.get(i)[1];
    double after = sign * samples.get(i + 1)[1];
    if (here <= before && here < after && here < Math.max(before, after) - here) {
      double a = samples.get(i - 1)[0];
      double b = samples.get(i + 1)[0];
      double t = Roots.least(x -> sign * clear.applyAsDouble(x), a, b, TOLERANCE_SECONDS);
      double value = clear.applyAsDouble(t);
      if (sign * value < 0) {
        samples.add(t < samples.get(i)[0] ? i : i + 1, new double[] {t, value});
      }
    }
  }

  private List<Span> spans() {
    List<Span> found = new ArrayList<>();
    double start = Double.NaN;
    boolean cut = false;
    for (int i = 0; i < samples.size(); i++) {
      double[] now = samples.get(i);
      if (i == 0 ? now[1] >= 0 : now[1] >= 0 && samples.get(i - 1)[1] < 0) {
        start = i == 0 ? now[0] : root(samples.get(i - 1), now);
        cut = i == 0;
      } else if (i > 0 && now[1] < 0 && samples.get(i - 1)[1] >= 0) {
        found.add(new Span(start, root(samples.get(i - 1), now), cut, false));
        start = Double.NaN;
      }
    }
    if (!Double.isNaN(start)) {
      found.add(new Span(start, samples.get(samples.size() - 1)[0], cut, true));
    }
    return found;
  }

  private double root(double[] a, double[] b) {
    return Roots.between(clear, new double[] {a[0], a[1], b[0], b[1]}, TOLERANCE_SECONDS);
  }
}

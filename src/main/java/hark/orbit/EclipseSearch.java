package hark.orbit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Walks along a trajectory and finds the edges of the Earth's shadow. */
final class EclipseSearch {
  /** Short against every orbit: the margin has one minimum a revolution. */
  private static final double STEP_SECONDS = 60;

  private static final double TOLERANCE_SECONDS = 1e-4;

  /** No orbit around the Earth stays in its shadow this long. */
  private static final double LONGEST_SECONDS = 86400;

  /** Past an exit by this much the walk goes on, s. */
  private static final double CLEAR_SECONDS = 1;

  private final Trajectory trajectory;
  private final Shadow shadow;
  private final double[] state = new double[6];

  EclipseSearch(Trajectory trajectory, Shadow shadow) {
    this.trajectory = trajectory;
    this.shadow = shadow;
  }

  List<Eclipse> find(double from, double to) {
    double decay = Validity.end(trajectory, from, to + LONGEST_SECONDS);
    double horizon = Double.isNaN(decay) ? to + LONGEST_SECONDS : decay - 2e-3;
    double end = Math.min(to, horizon);
    List<Eclipse> found = new ArrayList<>();
    double t = start(from);
    while (t < end) {
      double next = Math.min(t + STEP_SECONDS, horizon);
      double lowest = dip(t, next, Math.min(next + STEP_SECONDS, horizon));
      if (Double.isNaN(lowest)) {
        t = next;
        continue;
      }
      double entry = edge(t, lowest, 1);
      double exit = leave(lowest, horizon);
      if (exit > from && entry < end) {
        found.add(eclipse(entry, exit, horizon));
      }
      t = Math.max(next, exit + CLEAR_SECONDS);
    }
    return found;
  }

  /** Before the shadow that the span may begin in. */
  private double start(double from) {
    double t = from;
    while (outer(t) <= 0 && from - t < LONGEST_SECONDS) {
      t -= STEP_SECONDS;
    }
    return t;
  }

  /** A time inside the penumbra between a and c, seen from three points; NaN when there is none. */
  private double dip(double a, double b, double c) {
    double fa = outer(a);
    double fb = outer(b);
    if (fb <= 0) {
      return b;
    }
    if (fa <= 0) {
      return a;
    }
    if (fb < fa && fb < outer(c)) {
      double lowest = Roots.least(this::outer, a, c, 1e-2);
      return outer(lowest) < 0 ? lowest : Double.NaN;
    }
    return Double.NaN;
  }

  private double leave(double inside, double horizon) {
    double t = inside;
    while (t < horizon) {
      double next = Math.min(t + STEP_SECONDS, horizon);
      if (outer(next) > 0) {
        return edge(t, next, 1);
      }
      t = next;
    }
    return horizon;
  }

  private Eclipse eclipse(double entry, double exit, double horizon) {
    double deepest = deepest(entry, exit);
    boolean umbra = inner(deepest) < 0;
    Optional<Instant> in = Optional.empty();
    Optional<Instant> out = Optional.empty();
    if (umbra) {
      boolean cut = exit >= horizon && inner(exit) < 0;
      in = Optional.of(trajectory.instantAt(edge(entry, deepest, -1)));
      out = Optional.of(trajectory.instantAt(cut ? exit : edge(deepest, exit, -1)));
    }
    return new Eclipse(trajectory.instantAt(entry), in, out, trajectory.instantAt(exit));
  }

  /** Where the Sun is deepest behind the Earth between two edges. */
  private double deepest(double entry, double exit) {
    double best = entry;
    double bestValue = inner(entry);
    int parts = Math.max(4, (int) Math.ceil((exit - entry) / STEP_SECONDS));
    double step = (exit - entry) / parts;
    for (int i = 1; i <= parts; i++) {
      double value = inner(entry + i * step);
      if (value < bestValue) {
        bestValue = value;
        best = entry + i * step;
      }
    }
    if (bestValue < 0) {
      return best;
    }
    double low = Math.max(entry, best - step);
    return Roots.least(this::inner, low, Math.min(exit, best + step), 1e-2);
  }

  private double edge(double a, double b, int side) {
    double fa = side > 0 ? outer(a) : inner(a);
    double fb = side > 0 ? outer(b) : inner(b);
    if (Math.signum(fa) == Math.signum(fb)) {
      return a; // the walk back was cut by its limit
    }
    return Roots.between(
        side > 0 ? this::outer : this::inner, new double[] {a, fa, b, fb}, TOLERANCE_SECONDS);
  }

  /** Negative inside the penumbra, rad. */
  private double outer(double seconds) {
    look(seconds);
    return shadow.marginRad() - shadow.sunRadiusRad();
  }

  /** Negative inside the umbra, rad. */
  private double inner(double seconds) {
    look(seconds);
    return shadow.marginRad() + shadow.sunRadiusRad();
  }

  private void look(double seconds) {
    trajectory.teme(seconds, state);
    shadow.look(trajectory.unixSeconds(seconds), state);
  }
}

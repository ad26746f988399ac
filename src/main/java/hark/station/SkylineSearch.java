package hark.station;

import hark.orbit.Roots;
import hark.orbit.Trajectory;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts stays above the lowest point of a skyline into stays above the skyline itself.
 *
 * <p>Steps follow the object's motion across the sky, so that the skyline is looked at every
 * quarter of a degree; a stay shorter than a step is found by the maximum between its neighbours.
 */
final class SkylineSearch {
  private static final double STEP_DEG = 0.25;
  private static final double[] STEP_SECONDS = {0.1, 30};
  private static final double TOLERANCE_SECONDS = 1e-4;

  private final Trajectory trajectory;
  private final HorizonMask mask;
  private final SiteFrame frame;
  private final double[] state = new double[6];
  private double stepSeconds;

  SkylineSearch(Trajectory trajectory, Site site, HorizonMask mask) {
    this.trajectory = trajectory;
    this.mask = mask;
    this.frame = new SiteFrame(site);
  }

  List<Arc> cut(List<Arc> arcs) {
    List<Arc> cut = new ArrayList<>();
    for (Arc arc : arcs) {
      cutOne(arc, cut);
    }
    return cut;
  }

  private void cutOne(Arc arc, List<Arc> cut) {
    double before = arc.rise();
    double here = arc.rise();
    double overBefore = Double.NEGATIVE_INFINITY;
    double overHere = over(here);
    double rise = overHere > 0 ? here : Double.NaN;
    while (here < arc.set()) {
      double next = Math.min(here + stepSeconds, arc.set());
      double overNext = over(next);
      if (overHere <= 0 && overNext > 0) {
        rise = edge(here, next);
      } else if (overHere > 0 && overNext <= 0) {
        cut.add(arc(rise, edge(here, next), arc));
        rise = Double.NaN;
      } else if (overHere <= 0 && overHere >= overBefore && overHere >= overNext) {
        between(before, next, arc, cut);
      }
      before = here;
      overBefore = overHere;
      here = next;
      overHere = overNext;
      over(here); // sets the next step
    }
    if (!Double.isNaN(rise)) {
      cut.add(arc(rise, arc.set(), arc));
    }
  }

  /** A maximum below the skyline at the steps may still reach over it between them. */
  private void between(double a, double b, Arc whole, List<Arc> cut) {
    double top = Roots.least(t -> -over(t), a, b, 1e-3);
    if (over(top) > 0) {
      cut.add(arc(edge(a, top), edge(top, b), whole));
    }
  }

  private double edge(double a, double b) {
    return Roots.between(this::over, a, b, TOLERANCE_SECONDS);
  }

  /** The culmination of a part: the whole arc's, or the highest of the part. */
  private Arc arc(double rise, double set, Arc whole) {
    double top = whole.culmination();
    if (top <= rise || top >= set) {
      top = highest(rise, set);
    }
    return new Arc(rise, top, set);
  }

  private double highest(double rise, double set) {
    double best = rise;
    double bestElevation = elevation(rise);
    int parts = 64;
    for (int i = 1; i <= parts; i++) {
      double t = rise + (set - rise) * i / parts;
      double elevation = elevation(t);
      if (elevation > bestElevation) {
        best = t;
        bestElevation = elevation;
      }
    }
    double step = (set - rise) / parts;
    double low = Math.max(rise, best - step);
    double high = Math.min(set, best + step);
    double refined = Roots.least(t -> -elevation(t), low, high, 1e-3);
    return elevation(refined) > bestElevation ? refined : best;
  }

  private double elevation(double t) {
    trajectory.earthFixed(t, state);
    frame.look(state);
    return frame.elevationDeg();
  }

  /** Degrees above the skyline; also sets the step that fits the motion there. */
  private double over(double t) {
    double elevation = elevation(t);
    double fit = STEP_DEG / frame.degreesPerSecond(state);
    stepSeconds = Math.max(STEP_SECONDS[0], Math.min(STEP_SECONDS[1], fit));
    return elevation - mask.elevationDegAt(frame.azimuthDeg());
  }
}

package hark.station;

import hark.orbit.OrbitShape;
import hark.orbit.Roots;
import hark.orbit.Trajectory;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds every stay of an object above one elevation by safe skipping.
 *
 * <p>Far from the site the walk jumps: the angle at the Earth's centre between site and object must
 * shrink to that of the horizon before anything can be seen, and cannot shrink faster than the
 * object's perigee rate plus the Earth's. Near the site the walk steps evenly and looks at the
 * slope of the elevation, so a stay between two steps is found by its maximum, however short it is.
 */
final class ArcSearch {
  /** A stay is followed this far beyond the span, s. */
  static final double FOLLOW_SECONDS = 3 * 86400.0;

  /** Even step of the walk as an angle of the object's motion, rad; finer for eccentric orbits. */
  private static final double ROUND_STEP_RAD = 0.10;

  private static final double ECCENTRIC_STEP_RAD = 0.04;
  private static final double ECCENTRIC = 0.05;
  private static final double[] STEP_SECONDS = {15, 300};

  /** Geodetic and geocentric zenith differ by less than this, rad. */
  private static final double ZENITH_RAD = Math.toRadians(0.2);

  /** Osculating shapes breathe by less than this part between the looks taken at them. */
  private static final double SHAPE_MARGIN = 0.03;

  private static final double EARTH_RATE = 7.2921159e-5;
  private static final double TOLERANCE_SECONDS = 1e-4;
  private static final int SHAPE_LOOKS = 8;

  private final Trajectory trajectory;
  private final SiteFrame frame;
  private final double threshold;
  private final double thresholdRad;
  private final double[] state = new double[6];

  private double rateBound;
  private double horizonRad;
  private double step;

  private final List<Arc> arcs = new ArrayList<>();
  private double rise = Double.NaN;
  private double best = Double.NaN;
  private double bestSine = Double.NEGATIVE_INFINITY;

  ArcSearch(Trajectory trajectory, Site site, double elevationDeg) {
    this.trajectory = trajectory;
    this.frame = new SiteFrame(site);
    this.thresholdRad = Math.toRadians(elevationDeg);
    this.threshold = Math.sin(thresholdRad);
  }

  /** One point of the walk: sine of the elevation over the threshold, its rate, and safe time. */
  private record Node(double t, double over, double rate, double safeSeconds) {
    boolean isUp() {
      return over > 0;
    }
  }

  /** Stays that touch a span, and perhaps some just outside it. */
  List<Arc> find(double from, double to) {
    double horizon = lastValid(from, to + FOLLOW_SECONDS);
    if (horizon < from) {
      return arcs;
    }
    bound(from, Math.min(to, horizon));
    double start = outOfView(from, -1, from - FOLLOW_SECONDS, from);
    double end = outOfView(Math.min(to, horizon), 1, horizon, Math.min(to, horizon));
    walk(start, end);
    return arcs;
  }

  private double lastValid(double from, double to) {
    return trajectory
        .validUntil(trajectory.instantAt(from), trajectory.instantAt(to))
        .map(end -> trajectory.secondsAt(end) - 2e-3)
        .orElse(to);
  }

  /** Takes the extremes of the osculating orbit over the span. */
  private void bound(double from, double to) {
    double farthest = 0;
    double fastest = 0;
    double eccentricity = 0;
    for (int i = 0; i <= SHAPE_LOOKS; i++) {
      if (trajectory.teme(from + (to - from) * i / SHAPE_LOOKS, state)) {
        OrbitShape shape = OrbitShape.of(state);
        farthest = Math.max(farthest, shape.apogeeMeters());
        fastest = Math.max(fastest, shape.perigeeRate());
        eccentricity = Math.max(eccentricity, shape.eccentricity());
      }
    }
    rateBound = fastest * (1 + SHAPE_MARGIN) + EARTH_RATE;
    double lowest = thresholdRad - ZENITH_RAD;
    double ratio = frame.distance() / (farthest * (1 + SHAPE_MARGIN));
    horizonRad = Math.PI / 2 - lowest - Math.asin(Math.min(1, ratio * Math.cos(lowest)));
    double angle = eccentricity < ECCENTRIC ? ROUND_STEP_RAD : ECCENTRIC_STEP_RAD;
    step = Math.max(STEP_SECONDS[0], Math.min(STEP_SECONDS[1], angle / rateBound));
  }

  /**
   * The nearest step out of view, walking away from a time; {@code otherwise} when there is none.
   */
  private double outOfView(double time, int direction, double limit, double otherwise) {
    double t = time;
    while ((limit - t) * direction > 0) {
      if (!node(t).isUp()) {
        return t;
      }
      t += direction * step;
    }
    boolean reaches = direction > 0 && limit < time + FOLLOW_SECONDS && isUpAt(limit);
    return reaches ? limit : otherwise; // followed to the end of the elements
  }

  private boolean isUpAt(double t) {
    return node(t).isUp();
  }

  private void walk(double start, double end) {
    Node here = node(start);
    if (here.isUp()) {
      open(start);
      offer(start, here.over());
    }
    while (here.t() < end) {
      double jump = Math.max(step, here.safeSeconds());
      Node next = node(Math.min(end, here.t() + jump));
      if (here.safeSeconds() <= step) {
        between(here, next);
      }
      here = next;
    }
    if (!Double.isNaN(rise)) {
      offer(end, here.over());
      close(end);
    }
  }

  private void between(Node a, Node b) {
    if (a.rate() > 0 && b.rate() < 0) {
      top(a, b);
    } else if (a.rate() < 0 && b.rate() > 0 && a.isUp() && b.isUp()) {
      dip(a, b);
    } else if (a.isUp() != b.isUp()) {
      cross(a, b);
    }
  }

  private void top(Node a, Node b) {
    Node top = node(extreme(a, b));
    if (!top.isUp()) {
      return;
    }
    if (!a.isUp()) {
      cross(a, top);
    }
    offer(top.t(), top.over());
    if (!b.isUp()) {
      cross(top, b);
    }
  }

  private void dip(Node a, Node b) {
    Node low = node(extreme(a, b));
    if (!low.isUp()) {
      cross(a, low);
      cross(low, b);
    }
  }

  private void cross(Node a, Node b) {
    double edge = edge(a, b);
    if (b.isUp()) {
      open(edge);
    } else {
      close(edge);
    }
  }

  private void open(double t) {
    rise = t;
    best = t;
    bestSine = Double.NEGATIVE_INFINITY;
  }

  private void offer(double t, double sine) {
    if (sine > bestSine) {
      bestSine = sine;
      best = t;
    }
  }

  private void close(double t) {
    arcs.add(new Arc(rise, best, t));
    rise = Double.NaN;
  }

  private double extreme(Node a, Node b) {
    double[] ends = {a.t(), a.rate(), b.t(), b.rate()};
    return Roots.between(t -> node(t).rate(), ends, TOLERANCE_SECONDS);
  }

  /** Newton's rule held inside the bracket: the slope is known and the curve is nearly straight. */
  private double edge(Node a, Node b) {
    double up = a.isUp() ? a.t() : b.t();
    double down = a.isUp() ? b.t() : a.t();
    double t = a.t() - a.over() * (b.t() - a.t()) / (b.over() - a.over());
    for (int i = 0; i < 60; i++) {
      Node here = node(t);
      if (here.isUp()) {
        up = t;
      } else {
        down = t;
      }
      double newton = t - here.over() / here.rate();
      boolean inside = (newton - up) * (newton - down) < 0;
      double next = inside ? newton : (up + down) / 2;
      if (Math.abs(next - t) < TOLERANCE_SECONDS) {
        return next;
      }
      t = next;
    }
    return t;
  }

  private Node node(double t) {
    if (!trajectory.earthFixed(t, state)) {
      return new Node(t, -2, 0, 0);
    }
    frame.look(state);
    double over = frame.sineOfElevation() - threshold;
    double safe = over > 0 ? 0 : (frame.centralAngle(state) - horizonRad) / rateBound;
    return new Node(t, over, frame.sineRate(), safe);
  }
}

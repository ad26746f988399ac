package hark.station;

import hark.orbit.Eclipses;
import hark.orbit.Trajectory;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Passes of an object over a site.
 *
 * <p>A pass lasts from rising above the mask to setting below it; where a skyline cuts one arc in
 * two, there are two passes. The culmination is the highest point of the pass, also when the arc
 * has several maxima. A pass in progress at an edge of the span keeps its true AOS or LOS outside
 * it. An object that stays in view for more than three days beyond an edge has no AOS (or LOS)
 * worth naming: its pass is cut at the edge of the span, so one that never sets gives a single pass
 * as long as the span. Where the elements stop being valid, the pass ends with them.
 */
public final class Passes {
  private Passes() {}

  /** All passes that touch a span, by AOS. */
  public static List<Pass> find(
      Trajectory trajectory, Site site, HorizonMask mask, Instant from, Instant to) {
    double start = trajectory.secondsAt(from);
    double end = trajectory.secondsAt(to);
    List<Pass> passes = new ArrayList<>();
    for (Arc arc : arcs(trajectory, site, mask, start, end)) {
      if (arc.set() > start && arc.rise() < end) {
        passes.add(pass(trajectory, site, arc));
      }
    }
    return passes;
  }

  private static List<Arc> arcs(
      Trajectory trajectory, Site site, HorizonMask mask, double start, double end) {
    ArcSearch search = new ArcSearch(trajectory, site, mask.rangeDeg()[0]);
    List<Arc> arcs = search.find(start, end);
    return mask.isFlat() ? arcs : new SkylineSearch(trajectory, site, mask).cut(arcs);
  }

  private static Pass pass(Trajectory trajectory, Site site, Arc arc) {
    Look rise = look(trajectory, site, arc.rise());
    Look top = look(trajectory, site, arc.culmination());
    Look set = look(trajectory, site, arc.set());
    return new Pass(
        trajectory.elements().objectId(),
        site.name(),
        trajectory.instantAt(arc.rise()),
        trajectory.instantAt(arc.culmination()),
        trajectory.instantAt(arc.set()),
        top.elevationDeg(),
        rise.azimuthDeg(),
        top.azimuthDeg(),
        set.azimuthDeg(),
        top.rangeMeters() / 1000,
        Eclipses.sunlitAt(trajectory, arc.culmination()));
  }

  private static Look look(Trajectory trajectory, Site site, double seconds) {
    return Looks.at(trajectory, site, trajectory.instantAt(seconds));
  }
}

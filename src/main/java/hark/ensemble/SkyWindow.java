package hark.ensemble;

import hark.station.Pass;
import java.util.List;
import java.util.Optional;

/**
 * A stretch of time at one station with the path of each candidate over it.
 *
 * @param station index into the mission's stations; −1 for a place that is none of them
 * @param from start, s since separation
 * @param to end, s since separation
 * @param paths one for each candidate, in their order
 * @param passes predicted pass of each candidate, in their order; empty for one that does not rise
 *     in it
 */
public record SkyWindow(
    int station, double from, double to, List<PassGeometry> paths, List<Optional<Pass>> passes) {
  /** The same, so much later, s. */
  SkyWindow shifted(double seconds) {
    return new SkyWindow(station, from + seconds, to + seconds, paths, passes);
  }
}

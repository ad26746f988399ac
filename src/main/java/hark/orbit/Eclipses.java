package hark.orbit;

import java.time.Instant;
import java.util.List;

/**
 * Shadow passages: the Sun's disc against the WGS-84 ellipsoid, no atmosphere (which would widen
 * the shadow's rim by some seconds for low orbits).
 */
public final class Eclipses {
  private Eclipses() {}

  /**
   * All passages that touch a span, in order, with the true edges even where these lie outside it.
   * Where the elements end inside the shadow, the passage ends with them.
   */
  public static List<Eclipse> find(Trajectory trajectory, Instant from, Instant to) {
    double start = trajectory.secondsAt(from);
    double end = trajectory.secondsAt(to);
    return new EclipseSearch(trajectory, new Shadow()).find(start, end);
  }

  /** True when any of the Sun's disc is seen from the object; false for elements not valid then. */
  public static boolean sunlitAt(Trajectory trajectory, Instant time) {
    return sunlitAt(trajectory, trajectory.secondsAt(time));
  }

  /** As above, with the time in seconds since the epoch of the elements. */
  public static boolean sunlitAt(Trajectory trajectory, double seconds) {
    double[] state = new double[6];
    if (!trajectory.teme(seconds, state)) {
      return false;
    }
    Shadow shadow = new Shadow();
    shadow.look(trajectory.unixSeconds(seconds), state);
    return shadow.marginRad() > -shadow.sunRadiusRad();
  }
}

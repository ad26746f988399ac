package hark.station;

import hark.orbit.Trajectory;
import java.time.Instant;
import java.util.Arrays;

/** Directions, ranges and range rates of an object from a site, without refraction. */
public final class Looks {
  private static final Look NOTHING = new Look(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

  private Looks() {}

  /** One look; all four numbers are NaN when the elements are not valid then. */
  public static Look at(Trajectory trajectory, Site site, Instant time) {
    return sample(trajectory, site, time, 1, 1)[0];
  }

  /**
   * Looks at even steps; NaN where the elements are not valid.
   *
   * @param stepSeconds between looks
   * @param count how many
   */
  public static Look[] sample(
      Trajectory trajectory, Site site, Instant start, double stepSeconds, int count) {
    SiteFrame frame = new SiteFrame(site);
    double[] state = new double[6];
    double first = trajectory.secondsAt(start);
    Look[] looks = new Look[count];
    Arrays.setAll(
        looks,
        i -> {
          if (!trajectory.earthFixed(first + i * stepSeconds, state)) {
            return NOTHING;
          }
          frame.look(state);
          return frame.toLook();
        });
    return looks;
  }

  /**
   * One look at an object that runs late on its orbit.
   *
   * @param seconds since the epoch of the elements, when it is looked at
   * @param lateSeconds it is where the elements had it so much earlier
   */
  public static Look late(Trajectory trajectory, Site site, double seconds, double lateSeconds) {
    double[] state = new double[6];
    if (!trajectory.earthFixedLate(seconds, lateSeconds, state)) {
      return NOTHING;
    }
    SiteFrame frame = new SiteFrame(site);
    frame.look(state);
    return frame.toLook();
  }
}

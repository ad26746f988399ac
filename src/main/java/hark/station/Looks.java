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
}

package hark.orbit;

import java.time.Instant;
import java.util.Arrays;

/**
 * Where the Sun stands as an object flies, on an even grid.
 *
 * @param from time of the first point
 * @param stepSeconds between points
 * @param direction of the Sun, TEME unit vectors, {@code [axis][point]}
 * @param distanceMeters of the Sun
 * @param sinBeta sine of the angle between the Sun and the orbital plane, positive on the side of
 *     the normal (position × velocity)
 * @param phaseRad angle travelled since the Sun's noon, without wrapping, rising: the Sun stands at
 *     cosβ·cosν towards the zenith, −cosβ·sinν ahead and sinβ along the normal. Within some
 *     hundredths of a degree of β = ±90° there is no noon and it means nothing
 */
public record SunGeometry(
    Instant from,
    double stepSeconds,
    double[][] direction,
    double[] distanceMeters,
    double[] sinBeta,
    double[] phaseRad) {

  /** Number of points; fewer than asked for where the elements end, even none. */
  public int size() {
    return sinBeta.length;
  }

  /**
   * Along a trajectory.
   *
   * @param stepSeconds less than half a revolution
   * @param count points wanted, at least one
   */
  public static SunGeometry along(
      Trajectory trajectory, Instant from, double stepSeconds, int count) {
    double period = trajectory.elements().periodSeconds();
    if (!(stepSeconds > 0 && stepSeconds < period / 2) || count < 1) {
      throw new IllegalArgumentException(
          count + " points " + stepSeconds + " s apart on an orbit of " + period + " s");
    }
    Walk walk = new Walk(count, 2 * Math.PI / period * stepSeconds);
    double start = trajectory.secondsAt(from);
    int done = 0;
    while (done < count && walk.look(trajectory, start + done * stepSeconds, done)) {
      done++;
    }
    return walk.upTo(from, stepSeconds, done);
  }

  private static final class Walk {
    private final double[][] direction;
    private final double[] distance;
    private final double[] sinBeta;
    private final double[] phase;
    private final double usualAdvance;
    private final double[] state = new double[6];
    private final double[] sun = new double[3];

    Walk(int count, double usualAdvance) {
      this.direction = new double[3][count];
      this.distance = new double[count];
      this.sinBeta = new double[count];
      this.phase = new double[count];
      this.usualAdvance = usualAdvance;
    }

    boolean look(Trajectory trajectory, double seconds, int k) {
      if (!trajectory.teme(seconds, state)) {
        return false;
      }
      Sun.position(trajectory.unixSeconds(seconds), sun);
      double d = Trajectory.radius(sun);
      double r = Trajectory.radius(state);
      double hx = state[1] * state[5] - state[2] * state[4];
      double hy = state[2] * state[3] - state[0] * state[5];
      double hz = state[0] * state[4] - state[1] * state[3];
      double h = Math.sqrt(hx * hx + hy * hy + hz * hz);
      double up = (sun[0] * state[0] + sun[1] * state[1] + sun[2] * state[2]) / (d * r);
      double aheadX = hy * state[2] - hz * state[1];
      double aheadY = hz * state[0] - hx * state[2];
      double aheadZ = hx * state[1] - hy * state[0];
      double ahead = (sun[0] * aheadX + sun[1] * aheadY + sun[2] * aheadZ) / (d * h * r);
      for (int axis = 0; axis < 3; axis++) {
        direction[axis][k] = sun[axis] / d;
      }
      distance[k] = d;
      sinBeta[k] = (sun[0] * hx + sun[1] * hy + sun[2] * hz) / (d * h);
      double wrapped = Math.atan2(-ahead, up);
      phase[k] = k == 0 ? wrapped : near(wrapped, phase[k - 1] + usualAdvance);
      return true;
    }

    SunGeometry upTo(Instant from, double stepSeconds, int n) {
      double[][] cut = new double[3][];
      for (int axis = 0; axis < 3; axis++) {
        cut[axis] = Arrays.copyOf(direction[axis], n);
      }
      return new SunGeometry(
          from,
          stepSeconds,
          cut,
          Arrays.copyOf(distance, n),
          Arrays.copyOf(sinBeta, n),
          Arrays.copyOf(phase, n));
    }
  }

  /** The angle that differs from one by whole turns and is nearest to another, rad. */
  public static double near(double angle, double other) {
    return angle + 2 * Math.PI * Math.rint((other - angle) / (2 * Math.PI));
  }
}

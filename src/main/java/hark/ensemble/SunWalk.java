package hark.ensemble;

import hark.orbit.ElementSet;
import hark.orbit.Sun;
import hark.orbit.SunGeometry;
import hark.orbit.Trajectory;
import hark.power.SunPath;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * The Sun from separation to the horizon as seen from the likeliest object, day by day with the
 * element set in use. Where elements end the orbit goes on as it was.
 */
final class SunWalk {
  /** Between points a circular orbit's phase is straight; so is that of others, nearly, s. */
  private static final double STEP_SECONDS = 240;

  private static final int STEPS_A_DAY = 360;

  /** Solar irradiance at 1 au, W/m². IAU 2015 Resolution B3 (nominal total solar irradiance). */
  static final double IRRADIANCE_1AU = 1361.0;

  private final DiagnosisInput input;
  private final int count;
  private final double[][] direction;
  private final double[] irradiance;
  private final double[] phase;
  private final double[] sinBeta;
  private int done;

  private SunWalk(DiagnosisInput input) {
    this.input = input;
    this.count = 2 + (int) (input.seconds(input.end()) / STEP_SECONDS);
    this.direction = new double[3][count];
    this.irradiance = new double[count];
    this.phase = new double[count];
    this.sinBeta = new double[count];
  }

  /** Irradiance at a distance, W/m². */
  static double irradiance(double distanceMeters) {
    double au = distanceMeters / Sun.ASTRONOMICAL_UNIT_METERS;
    return IRRADIANCE_1AU / (au * au);
  }

  /** Empty when the elements are not valid even at separation. */
  static Optional<SunPath> path(DiagnosisInput input) {
    SunWalk walk = new SunWalk(input);
    while (walk.done < walk.count) {
      walk.day(Math.min(STEPS_A_DAY, walk.count - walk.done));
      if (walk.done == 0) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new SunPath(STEP_SECONDS, walk.irradiance, walk.direction, walk.phase, walk.sinBeta));
  }

  private void day(int points) {
    Instant from = input.instant(done * STEP_SECONDS);
    Candidate likeliest = input.candidates().get(input.likeliestCandidate());
    ElementSet set =
        likeliest.setAt(
            from.plus(Duration.ofMillis((long) (points * STEP_SECONDS * 500))), input.now());
    double advance = 2 * Math.PI / set.periodSeconds() * STEP_SECONDS;
    Trajectory trajectory = Trajectory.of(set, input.earth());
    SunGeometry sun = SunGeometry.along(trajectory, from, STEP_SECONDS, points);
    append(sun, advance);
    for (int k = sun.size(); k < points && done > 0; k++) {
      goOn(advance);
    }
  }

  private void append(SunGeometry sun, double advance) {
    int n = sun.size();
    if (n == 0) {
      return;
    }
    for (int axis = 0; axis < 3; axis++) {
      System.arraycopy(sun.direction()[axis], 0, direction[axis], done, n);
    }
    System.arraycopy(sun.sinBeta(), 0, sinBeta, done, n);
    double first = sun.phaseRad()[0];
    double turns = done == 0 ? 0 : SunGeometry.near(first, phase[done - 1] + advance) - first;
    for (int k = 0; k < n; k++) {
      irradiance[done + k] = irradiance(sun.distanceMeters()[k]);
      phase[done + k] = sun.phaseRad()[k] + turns;
    }
    done += n;
  }

  private void goOn(double advance) {
    for (double[] axis : direction) {
      axis[done] = axis[done - 1];
    }
    sinBeta[done] = sinBeta[done - 1];
    irradiance[done] = irradiance[done - 1];
    phase[done] = phase[done - 1] + advance;
    done++;
  }
}

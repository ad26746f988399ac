package hark.orbit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * From a state, or a row of states, to the path through it: the given rows as they are, before and
 * behind them gravity and air.
 *
 * @param epoch time of second 0
 * @param given rows at even steps, TEME, the first at the epoch
 */
record StatePath(
    Instant epoch,
    double stepSeconds,
    List<double[]> given,
    DragBody body,
    Known known,
    EarthModel earth) {
  /** So long the path is computed; a state alone says little about a fortnight later. */
  private static final double FORWARD_SECONDS = 14 * 86400.0;

  /** And so long before it. */
  private static final double BACK_SECONDS = 6 * 3600.0;

  private static final double DAY = 86400.0;

  /** Rows lie a minute apart in a low orbit, and closer for one that turns faster at perigee. */
  private static final double STEP_TURN_RAD = 0.066;

  /**
   * What is known of a state's error.
   *
   * @param alongMeters spread of the place along the track
   * @param axisMeters spread of the semi-major axis
   */
  record Known(double alongMeters, double axisMeters) {
    /**
     * When a message does not say: 200 m, and an axis in doubt by a push of 0.2 m/s along the track
     * (2 dv / n, 370 m at 500 km), about what a deployer's spring leaves open. Judged.
     */
    static final Known USUAL = new Known(200, 370);
  }

  static StatePath of(Instant epoch, double[] state, EarthModel earth) {
    return new StatePath(epoch, step(state), List.of(state), DragBody.USUAL, Known.USUAL, earth);
  }

  /** How far apart rows may lie for a state's orbit, s. */
  static double step(double[] state) {
    return Math.min(
        60, Math.max(1, Math.floor(STEP_TURN_RAD / OrbitShape.of(state).perigeeRate())));
  }

  StatePath pulling(DragBody other) {
    return new StatePath(epoch, stepSeconds, given, other, known, earth);
  }

  StatePath knownTo(Known other) {
    return new StatePath(epoch, stepSeconds, given, body, other, earth);
  }

  ElementSet elementSet(String id, Optional<String> name, String origin) {
    StateForces forces = new StateForces(epoch, earth);
    PathTable table = table(forces);
    MeanFit fit = MeanFit.of(epoch, table, body.bstar(), earth);
    return new ElementSet(id, name, epoch, fit.mean(), origin).along(table, spread(forces));
  }

  PathTable table(StateForces forces) {
    int before = (int) (BACK_SECONDS / stepSeconds) + 1;
    List<double[]> rows = new ArrayList<>(forces.rows(0, given.get(0), body, -stepSeconds, before));
    Collections.reverse(rows);
    double start = -(rows.size() - 1) * stepSeconds;
    rows.remove(rows.size() - 1);
    rows.addAll(given);
    double last = (given.size() - 1) * stepSeconds;
    if (last < FORWARD_SECONDS) {
      int after = (int) ((FORWARD_SECONDS - last) / stepSeconds) + 1;
      rows.remove(rows.size() - 1);
      rows.addAll(forces.rows(last, given.get(given.size() - 1), body, stepSeconds, after));
    }
    return new PathTable(start, stepSeconds, rows);
  }

  /**
   * Along-track spread: the place at the epoch; then what an axis in doubt adds, 3/2 n δa each
   * second; then the air's pull in doubt, taken from the path flown once more for a day.
   */
  private StateSpread spread(StateForces forces) {
    double[] state = given.get(0);
    double speed = Math.sqrt(state[3] * state[3] + state[4] * state[4] + state[5] * state[5]);
    double radius = Trajectory.radius(state);
    double rate = speed / radius;
    double perDay = 1.5 * rate * known.axisMeters() * DAY / speed;
    return new StateSpread(
        Math.max(0.01, known.alongMeters() / speed), perDay, pullSeconds(forces, state));
  }

  private double pullSeconds(StateForces forces, double[] state) {
    List<double[]> usual = forces.rows(0, state, body, DAY, 2);
    List<double[]> pulled = forces.rows(0, state, body.pulled(body.factor()), DAY, 2);
    if (usual.size() < 2 || pulled.size() < 2) {
      return 0;
    }
    double[] a = usual.get(1);
    double[] b = pulled.get(1);
    double speed2 = a[3] * a[3] + a[4] * a[4] + a[5] * a[5];
    double along = (b[0] - a[0]) * a[3] + (b[1] - a[1]) * a[4] + (b[2] - a[2]) * a[5];
    return Math.abs(along) / speed2;
  }
}

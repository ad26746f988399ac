package hark.signal;

import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.Trajectory;
import hark.station.Looks;
import java.time.Instant;

/**
 * How an object may move: a few numbers, each with a normal prior of mean 0. Numbers are given in
 * standard deviations of their prior.
 */
interface Motion {
  /** How many numbers. */
  int size();

  /** The path for given numbers. */
  Path path(double[] z);

  /** Range rates along a path. */
  interface Path {
    /**
     * Time derivative of the range, m/s; NaN when the elements are not valid then.
     *
     * @param seconds since the question's first point, true time
     */
    double rangeRate(Listener listener, double seconds);
  }

  /**
   * Late on its orbit by one number.
   *
   * @param start time of second 0
   */
  record Late(Suspect suspect, EarthModel earth, Instant start) implements Motion {
    @Override
    public int size() {
      return 1;
    }

    @Override
    public Path path(double[] z) {
      Trajectory trajectory = Trajectory.of(suspect.elements(), earth);
      double first = trajectory.secondsAt(start);
      double late = z[0] * suspect.lateSdSeconds();
      return (listener, seconds) ->
          Looks.late(trajectory, listener.site(), first + seconds, late).rangeRateMetersPerSecond();
    }
  }

  /**
   * Mean anomaly, node and mean motion corrected.
   *
   * @param spread of the corrections
   */
  record Corrected(ElementSet elements, Spread spread, EarthModel earth, Instant start)
      implements Motion {
    /**
     * Priors of the corrections.
     *
     * @param meanMotionRatio of the mean motion's relative error; 0 keeps the mean motion
     */
    record Spread(double meanAnomalyDeg, double raanDeg, double meanMotionRatio) {}

    @Override
    public int size() {
      return spread.meanMotionRatio() > 0 ? 3 : 2;
    }

    ElementSet elements(double[] z) {
      double ratio = size() > 2 ? 1 + z[2] * spread.meanMotionRatio() : 1;
      return elements.corrected(z[0] * spread.meanAnomalyDeg(), z[1] * spread.raanDeg(), ratio);
    }

    @Override
    public Path path(double[] z) {
      Trajectory trajectory = Trajectory.of(elements(z), earth);
      double first = trajectory.secondsAt(start);
      return (listener, seconds) ->
          Looks.late(trajectory, listener.site(), first + seconds, 0).rangeRateMetersPerSecond();
    }
  }
}

package hark.signal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * All points of all curves in plain arrays. Seconds count from the first point.
 *
 * @param start time of second 0
 * @param seconds of each point, by the station's clock
 * @param fromMiddle seconds from the middle of its curve
 * @param frequencyHz measured
 * @param sigmaHz given spread; NaN when none was
 * @param curve index of its curve
 * @param listener index of its station
 */
record Points(
    Instant start,
    double[] seconds,
    double[] fromMiddle,
    double[] frequencyHz,
    double[] sigmaHz,
    int[] curve,
    int[] listener) {

  static Points of(WhoseQuestion question, List<boolean[]> kept) {
    List<double[]> rows = new ArrayList<>();
    Instant start = question.curves().get(0).points().get(0).time();
    for (int c = 0; c < question.curves().size(); c++) {
      DopplerCurve curve = question.curves().get(c);
      List<DopplerPoint> points = curve.points();
      double middle =
          0.5
              * (seconds(start, points.get(0).time())
                  + seconds(start, points.get(points.size() - 1).time()));
      for (int i = 0; i < points.size(); i++) {
        if (kept.get(c)[i]) {
          DopplerPoint point = points.get(i);
          double at = seconds(start, point.time());
          rows.add(
              new double[] {
                at, at - middle, point.frequencyHz(), point.sigmaHz(), c, question.listenerOf(curve)
              });
        }
      }
    }
    return of(start, rows);
  }

  int count() {
    return seconds.length;
  }

  /** Every so-many-th point, so that at most about a number of them remain. */
  Points thinned(int most) {
    int stride = Math.max(1, (count() + most - 1) / most);
    List<double[]> rows = new ArrayList<>();
    for (int i = 0; i < count(); i += stride) {
      rows.add(
          new double[] {
            seconds[i], fromMiddle[i], frequencyHz[i], sigmaHz[i], curve[i], listener[i]
          });
    }
    return stride == 1 ? this : of(start, rows);
  }

  private static Points of(Instant start, List<double[]> rows) {
    return new Points(
        start,
        column(rows, 0),
        column(rows, 1),
        column(rows, 2),
        column(rows, 3),
        whole(rows, 4),
        whole(rows, 5));
  }

  boolean anyWithoutSpread() {
    for (double sigma : sigmaHz) {
      if (Double.isNaN(sigma)) {
        return true;
      }
    }
    return false;
  }

  private static double seconds(Instant start, Instant time) {
    return Duration.between(start, time).toNanos() / 1e9;
  }

  private static double[] column(List<double[]> rows, int which) {
    return rows.stream().mapToDouble(row -> row[which]).toArray();
  }

  private static int[] whole(List<double[]> rows, int which) {
    return rows.stream().mapToInt(row -> (int) row[which]).toArray();
  }
}

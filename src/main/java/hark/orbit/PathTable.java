package hark.orbit;

import java.util.List;

/**
 * A computed path: states at even steps, between them cubic in position with the velocities at both
 * ends (at 60 s in a low orbit right to 0.4 m). Immutable; safe to share.
 */
final class PathTable {
  private final double startSeconds;
  private final double stepSeconds;
  private final double[] rows;

  /**
   * From rows.
   *
   * @param startSeconds of the first row, from the epoch
   * @param rows six numbers each, TEME, m and m/s
   */
  PathTable(double startSeconds, double stepSeconds, List<double[]> rows) {
    this.startSeconds = startSeconds;
    this.stepSeconds = stepSeconds;
    this.rows = new double[6 * rows.size()];
    for (int i = 0; i < rows.size(); i++) {
      System.arraycopy(rows.get(i), 0, this.rows, 6 * i, 6);
    }
  }

  double startSeconds() {
    return startSeconds;
  }

  double endSeconds() {
    return startSeconds + (rows.length / 6 - 1) * stepSeconds;
  }

  /** The state at a time; false outside of the table. */
  boolean at(double seconds, double[] into) {
    double place = (seconds - startSeconds) / stepSeconds;
    int last = rows.length / 6 - 1;
    if (!(place >= 0 && place <= last)) {
      return false;
    }
    int row = (int) Math.min(last - 1, Math.floor(place));
    double u = place - row;
    for (int k = 0; k < 3; k++) {
      double p0 = rows[6 * row + k];
      double p1 = rows[6 * row + 6 + k];
      double m0 = rows[6 * row + 3 + k] * stepSeconds;
      double m1 = rows[6 * row + 9 + k] * stepSeconds;
      double a = 2 * (p0 - p1) + m0 + m1;
      double b = 3 * (p1 - p0) - 2 * m0 - m1;
      into[k] = p0 + u * (m0 + u * (b + u * a));
      into[3 + k] = (m0 + u * (2 * b + 3 * u * a)) / stepSeconds;
    }
    return true;
  }
}

package hark.cli;

import java.io.PrintWriter;
import java.util.Locale;

/** A line on standard error that says how far long work has come and how long it will take. */
final class ProgressBar {
  private static final int WIDTH = 30;
  private static final long NANOS_BETWEEN = 500_000_000L;

  private final PrintWriter err;
  private final String what;
  private final int total;
  private final long start = System.nanoTime();
  private long shown = start - NANOS_BETWEEN;
  private int first = -1;

  ProgressBar(PrintWriter err, String what, int total) {
    this.err = err;
    this.what = what;
    this.total = total;
  }

  /** So many are done; what was done before the first call does not count for the pace. */
  synchronized void show(int done) {
    first = first < 0 ? done : first;
    long now = System.nanoTime();
    if (now - shown < NANOS_BETWEEN && done < total) {
      return;
    }
    shown = now;
    int filled = (int) ((long) WIDTH * done / total);
    String left = done > first ? left((now - start) / 1e9 * (total - done) / (done - first)) : "";
    err.printf(
        Locale.ROOT,
        "\r[%s%s] %d of %d %s%s   ",
        "#".repeat(filled),
        ".".repeat(WIDTH - filled),
        done,
        total,
        what,
        left);
    err.flush();
  }

  private static String left(double seconds) {
    return seconds < 90
        ? String.format(Locale.ROOT, ", %.0f s left", seconds)
        : String.format(Locale.ROOT, ", %.0f min left", seconds / 60);
  }

  /** Leaves the line. */
  synchronized void end() {
    err.println();
    err.flush();
  }
}

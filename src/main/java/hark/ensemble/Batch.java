package hark.ensemble;

import java.util.Arrays;

/**
 * Rows of draws taken from guides, and the density they were drawn from. Each group has guides of
 * its own, of equal share.
 */
final class Batch {
  private final RowGuide[][] guides;
  private final int size;
  private double[] known = new double[0];

  /** Guides by {@code [group][part]} and the number of rows. */
  Batch(RowGuide[][] guides, int size) {
    this.guides = guides;
    this.size = size;
  }

  int size() {
    return size;
  }

  /**
   * New rows, as many for each group, from even draws that are the same for every batch of a stage.
   */
  double[][] rows(Draws even) {
    double[][] rows = new double[size][];
    for (int k = 0; k < size; k++) {
      double[] drawn = even.row(k);
      double[] row = Arrays.copyOf(drawn, drawn.length - 1);
      RowGuide[] parts = guides[Draws.groupOf(k)];
      double pick = drawn[drawn.length - 1] * parts.length;
      int part = Math.min(parts.length - 1, (int) pick);
      parts[part].guide(pick - part, row);
      rows[k] = row;
    }
    return rows;
  }

  /** Density at a row over that of the prior, for the row's own group; remembered. */
  double density(Draws draws, int draw) {
    if (known.length < draws.bodies()) {
      int before = known.length;
      known = Arrays.copyOf(known, draws.bodies());
      Arrays.fill(known, before, known.length, Double.NaN);
    }
    if (Double.isNaN(known[draw])) {
      double sum = 0;
      RowGuide[] parts = guides[Draws.groupOf(draw)];
      for (RowGuide part : parts) {
        sum += part.density(draws.row(draw)) / parts.length;
      }
      known[draw] = sum;
    }
    return known[draw];
  }
}

package hark.ensemble;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Takes a {@link Guide} to the places in a row of draws that it speaks of; the other numbers of the
 * row stay even.
 *
 * @param places in the row, one for each number of the guide
 * @param even share of each place's quantiles that mean something else, below it; 0 for most
 */
record RowGuide(Guide guide, int[] places, double[] even) {
  private static final NormalDistribution STANDARD = new NormalDistribution();

  /** Density at a row over that of the prior. */
  double density(double[] row) {
    double[] z = new double[places.length];
    double stretched = 1;
    for (int k = 0; k < z.length; k++) {
      double u = row[places[k]];
      if (u < even[k]) {
        return 0;
      }
      z[k] = standard((u - even[k]) / (1 - even[k]));
      stretched /= 1 - even[k];
    }
    return stretched * guide.density(z);
  }

  /** Moves a row of even draws to where the guide wants it. */
  void guide(double pick, double[] row) {
    double[] e = new double[places.length];
    for (int k = 0; k < e.length; k++) {
      e[k] = standard(row[places[k]]);
    }
    double[] z = guide.row(pick, e);
    for (int k = 0; k < z.length; k++) {
      double u = even[k] + (1 - even[k]) * STANDARD.cumulativeProbability(z[k]);
      row[places[k]] = Draws.inside(u);
    }
  }

  static double standard(double u) {
    return Uncertain.StandardNormal.quantile(Draws.inside(u));
  }
}

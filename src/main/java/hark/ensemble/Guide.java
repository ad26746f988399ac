package hark.ensemble;

/**
 * Where more rows of draws are taken: partly from the prior, partly around what sharp evidence asks
 * for, partly around rows that have explained the evidence so far. Its density against the prior is
 * known exactly, so that weights can make up for it (a defensive mixture after Hesterberg 1995,
 * Owen &amp; Zhou 2000). Rows are standardised: each number a standard normal by the prior.
 *
 * @param aimed around what sharp evidence asks for
 * @param kernel around 0, the shape of what surrounds each centre
 * @param centres rows that explained the evidence
 * @param shares of the centres, summing to 1; none when nothing did
 */
record Guide(Bell aimed, Bell kernel, double[][] centres, double[] shares) {
  private static final double KEPT_PRIOR = 0.2;
  private static final double AIMED = 0.35;

  private double aimedShare() {
    return centres.length == 0 ? 1 - KEPT_PRIOR : AIMED;
  }

  /** Density at a row over that of the prior. */
  double density(double[] z) {
    double around = 0;
    for (int j = 0; j < centres.length; j++) {
      around += shares[j] * kernel.ratio(z, centres[j]);
    }
    double aim = aimed.ratio(z, new double[z.length]);
    return KEPT_PRIOR + aimedShare() * aim + (1 - KEPT_PRIOR - aimedShare()) * around;
  }

  /**
   * A row.
   *
   * @param pick of the part, 0…1
   * @param e standard normal numbers
   */
  double[] row(double pick, double[] e) {
    if (pick < KEPT_PRIOR) {
      return e;
    }
    double rest = (pick - KEPT_PRIOR - aimedShare()) / (1 - KEPT_PRIOR - aimedShare());
    if (!(rest >= 0)) {
      return aimed.point(e);
    }
    int j = 0;
    double sum = shares[0];
    while (j < shares.length - 1 && sum <= rest) {
      j++;
      sum += shares[j];
    }
    double[] z = kernel.point(e);
    for (int d = 0; d < z.length; d++) {
      z[d] += centres[j][d];
    }
    return z;
  }
}

package hark.ensemble;

/** The normal density. */
final class Normal {
  private Normal() {}

  static double density(double value, double mean, double sd) {
    double z = (value - mean) / sd;
    return Math.exp(-0.5 * z * z) / (sd * Math.sqrt(2 * Math.PI));
  }
}

package hark.orbit;

/** Position and velocity in some frame, m and m/s. */
public record State(
    double xMeters,
    double yMeters,
    double zMeters,
    double vxMetersPerSecond,
    double vyMetersPerSecond,
    double vzMetersPerSecond) {
  static State of(double[] six) {
    return new State(six[0], six[1], six[2], six[3], six[4], six[5]);
  }
}

package hark.link;

/** Doppler shift of a carrier, to first order in the velocity. */
public final class Doppler {
  private Doppler() {}

  /**
   * Shift of what is received, Hz; positive when approaching. First order: the second-order terms
   * are under 0.3 Hz at 437 MHz and 7.5 km/s.
   *
   * @param frequencyHz of the transmitter
   * @param rangeRateMetersPerSecond time derivative of the range; negative when approaching
   */
  public static double shiftHz(double frequencyHz, double rangeRateMetersPerSecond) {
    return -frequencyHz * rangeRateMetersPerSecond / LinkBudget.SPEED_OF_LIGHT;
  }
}

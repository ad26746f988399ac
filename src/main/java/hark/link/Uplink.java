package hark.link;

/** Whether a command that is sent is also received. */
public final class Uplink {
  /**
   * Spread of a receiver's threshold, dB: ageing, temperature, frequency error. Common practice.
   */
  private static final double WIDTH_DB = 1.5;

  private Uplink() {}

  /** Radiated power on the antenna's axis, dBm. */
  public static double eirpDbm(double powerWatts, double gainDbi) {
    return 10 * Math.log10(1000 * powerWatts) + gainDbi;
  }

  /**
   * Level at the receiver on board, dBm.
   *
   * @param lossesDb everything on the way but free space: atmosphere, polarisation, pointing, dB
   */
  public static double receivedDbm(
      double eirpDbm, double frequencyHz, double rangeMeters, double lossesDb, double gainDbi) {
    return eirpDbm - LinkBudget.freeSpaceLossDb(frequencyHz, rangeMeters) - lossesDb + gainDbi;
  }

  /**
   * Chance that one try is received by a receiver that is powered and listening: a normal curve
   * around its sensitivity, 1.5 dB wide.
   *
   * @param sensitivityDbm level received half of the time, dBm
   */
  public static double successProbability(double receivedDbm, double sensitivityDbm) {
    return NormalCurve.below((receivedDbm - sensitivityDbm) / WIDTH_DB);
  }

  /** The same with independent normal fading of {@code fadingSdDb} around the level. */
  public static double fadedSuccessProbability(
      double receivedDbm, double sensitivityDbm, double fadingSdDb) {
    double spread = Math.sqrt(WIDTH_DB * WIDTH_DB + fadingSdDb * fadingSdDb);
    return NormalCurve.below((receivedDbm - sensitivityDbm) / spread);
  }
}

package hark.link;

/**
 * How far people keep from a transmitting antenna, in its main beam. For a caution on a page, in
 * the far field and with steady power; the rules of the place and the licence holder decide.
 */
public final class RfExposure {
  /**
   * A ground that reflects raises the field 1.6 times, the power density 2.56 times. From memory of
   * the usual guidance.
   */
  public static final double GROUND_REFLECTION = 2.56;

  private RfExposure() {}

  /** Whose limit for the general public. */
  public enum Limit {
    /** 47 CFR 1.1310, general population, 30 MHz–100 GHz. */
    FCC,
    /** ICNIRP 1998 reference levels, general public, 10 MHz–300 GHz. */
    ICNIRP_1998
  }

  /** Largest power density allowed, W/m². NaN outside the limit's frequencies. */
  public static double densityWattsPerSquareMeter(Limit limit, double frequencyHz) {
    double mhz = frequencyHz / 1e6;
    return limit == Limit.FCC ? fcc(mhz) : icnirp(mhz);
  }

  /**
   * Distance at which the limit is met on the axis, m.
   *
   * @param eirpWatts radiated power, W
   * @param reflection 1 in free space, {@link #GROUND_REFLECTION} over ground
   */
  public static double distanceMeters(
      Limit limit, double frequencyHz, double eirpWatts, double reflection) {
    double density = densityWattsPerSquareMeter(limit, frequencyHz);
    return Math.sqrt(reflection * eirpWatts / (4 * Math.PI * density));
  }

  private static double fcc(double mhz) {
    if (mhz < 30 || mhz > 100_000) {
      return Double.NaN;
    }
    return mhz < 300 ? 2 : mhz < 1500 ? mhz / 150 : 10;
  }

  private static double icnirp(double mhz) {
    if (mhz < 10 || mhz > 300_000) {
      return Double.NaN;
    }
    return mhz < 400 ? 2 : mhz < 2000 ? mhz / 200 : 10;
  }
}

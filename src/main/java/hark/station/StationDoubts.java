package hark.station;

import java.util.EnumMap;
import java.util.Map;

/**
 * How far a station may differ from its description: nuisances of every hearing, each with its
 * prior. Clock and azimuth errors are small, normal and persistent; a fault is large and rare.
 *
 * @param worksWithProbability belief at separation that the station works as believed, 0…1
 * @param faultShares how the rest is divided among faults; relative weights, none negative, at
 *     least one positive
 * @param sizes how large faults are that have a size
 * @param clockSdSeconds standard deviation of the station clock's error, s
 * @param azimuthSdDeg standard deviation of the antenna's azimuth error, degrees
 * @param minutesLostShare share of a sitting's minutes in which nothing would be noticed, 0…1:
 *     tuning, talk, a program that was not running yet
 */
public record StationDoubts(
    double worksWithProbability,
    Map<StationFault, Double> faultShares,
    Sizes sizes,
    double clockSdSeconds,
    double azimuthSdDeg,
    double minutesLostShare) {

  /** Refuses what is no probability, no share or no spread. */
  public StationDoubts {
    share("probability to work", worksWithProbability);
    share("share of lost minutes", minutesLostShare);
    notNegative("clock error", clockSdSeconds);
    notNegative("azimuth error", azimuthSdDeg);
    double sum = 0;
    for (Map.Entry<StationFault, Double> entry : faultShares.entrySet()) {
      notNegative("share of " + entry.getKey().key(), entry.getValue());
      sum += entry.getValue();
    }
    if (!(sum > 0)) {
      throw new IllegalArgumentException("no fault has a share above 0");
    }
    faultShares = Map.copyOf(new EnumMap<>(faultShares));
  }

  /**
   * How large faults are that have a size.
   *
   * @param insensitiveDb weaker than believed, dB
   * @param frequencyHz tuned so much too low, Hz
   * @param azimuthDeg turned too far to the east, degrees
   * @param clockSeconds the clock is late by so much, s
   */
  public record Sizes(
      double insensitiveDb, double frequencyHz, double azimuthDeg, double clockSeconds) {
    /**
     * Judged. 12 dB: a preamplifier less its gain against the cable. 10 kHz: some 20 ppm at 437
     * MHz. 60°: neither a small slip nor the back of the antenna. 60 s: a computer without time
     * server for a season.
     */
    public static final Sizes USUAL = new Sizes(12, 10_000, 60, 60);

    /** Refuses what is not a number. */
    public Sizes {
      if (!Double.isFinite(insensitiveDb + frequencyHz + azimuthDeg + clockSeconds)) {
        throw new IllegalArgumentException("the size of a fault is not a number");
      }
    }
  }

  /** Azimuth error of a station whose crew says nothing, degrees. Common practice: set by eye. */
  public static final double USUAL_AZIMUTH_SD_DEG = 3;

  /** Minutes lost at a station whose crew says nothing, 0…1. Judged. */
  public static final double USUAL_MINUTES_LOST = 0.03;

  /** Everything as usual but the two numbers that every description had from the beginning. */
  public static StationDoubts usual(double worksWithProbability, double clockSdSeconds) {
    Map<StationFault, Double> shares = new EnumMap<>(StationFault.class);
    for (StationFault fault : StationFault.values()) {
      shares.put(fault, fault.usualShare());
    }
    return new StationDoubts(
        worksWithProbability,
        shares,
        Sizes.USUAL,
        clockSdSeconds,
        USUAL_AZIMUTH_SD_DEG,
        USUAL_MINUTES_LOST);
  }

  private static void share(String what, double value) {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(what + " " + value + " is outside [0, 1]");
    }
  }

  private static void notNegative(String what, double value) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(what + " " + value + " is negative or no number");
    }
  }
}

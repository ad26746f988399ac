package hark.trial;

/**
 * How a station really differs from its description, all the time.
 *
 * @param lossDb weaker than believed, dB; infinite when nothing is heard
 * @param tunedLowHz stands so much below where it should
 * @param dopplerFactor share of the Doppler shift that is followed: 1 as it should be, 0 none, −1
 *     the wrong way
 * @param turnedDeg the antenna stands too far to the east, degrees
 * @param lateSeconds the clock is late, s
 * @param attended share of the minutes in which something would be noticed, 0…1
 */
public record PlainFlaws(
    double lossDb,
    double tunedLowHz,
    double dopplerFactor,
    double turnedDeg,
    double lateSeconds,
    double attended) {
  /** A station exactly as described. */
  public static final PlainFlaws NONE = new PlainFlaws(0, 0, 1, 0, 0, 1);

  /** The same with pointing and tuning so much later, s. */
  public PlainFlaws later(double seconds) {
    return new PlainFlaws(
        lossDb, tunedLowHz, dopplerFactor, turnedDeg, lateSeconds + seconds, attended);
  }
}

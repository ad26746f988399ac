package hark.signal;

import java.time.Instant;

/**
 * One measured frequency.
 *
 * @param time by the station's clock
 * @param frequencyHz as received, Hz
 * @param sigmaHz its standard deviation, Hz; NaN when nobody said
 */
public record DopplerPoint(Instant time, double frequencyHz, double sigmaHz) {
  /** Refuses what is not a frequency and spreads that are not positive. */
  public DopplerPoint {
    if (!(frequencyHz > 0 && frequencyHz < 1e12)) {
      throw new IllegalArgumentException("frequency " + frequencyHz + " Hz");
    }
    if (!Double.isNaN(sigmaHz) && !(sigmaHz > 0 && sigmaHz < 1e9)) {
      throw new IllegalArgumentException("spread " + sigmaHz + " Hz");
    }
  }
}

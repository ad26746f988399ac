package hark.signal;

import hark.orbit.ElementSet;

/**
 * An object whose signal it may be.
 *
 * @param objectId catalogue number, or the word for none of them
 * @param elements its orbit; for none of them that of the likeliest
 * @param prior weight before the curve, 0…1
 * @param lateSdSeconds spread of its along-track error at the time of the curve, s
 */
public record Suspect(String objectId, ElementSet elements, double prior, double lateSdSeconds) {
  /** Refuses weights outside [0, 1] and spreads that are not positive. */
  public Suspect {
    if (!(prior >= 0 && prior <= 1)) {
      throw new IllegalArgumentException("prior " + prior + " is outside [0, 1]");
    }
    if (!(lateSdSeconds > 0)) {
      throw new IllegalArgumentException("along-track spread " + lateSdSeconds + " s");
    }
  }
}

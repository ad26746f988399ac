package hark.signal;

/**
 * What is believed of the transmitter's carrier before a curve is seen.
 *
 * @param nominalHz as the data sheet has it
 * @param offsetHz mean of its error
 * @param sdHz spread of its error; each pass has one of its own
 * @param driftSdHzPerSecond spread of its drift during a pass
 */
public record Carrier(double nominalHz, double offsetHz, double sdHz, double driftSdHzPerSecond) {
  /**
   * Drift of a small transmitter that warms up while it sends: about 100 Hz in five minutes at 437
   * MHz. Judged.
   */
  public static final double USUAL_DRIFT_SD_HZ_PER_SECOND = 0.3;

  /** Refuses spreads that are not positive. */
  public Carrier {
    if (!(nominalHz > 0 && sdHz > 0 && driftSdHzPerSecond > 0)) {
      throw new IllegalArgumentException(
          "carrier " + nominalHz + " Hz, spread " + sdHz + " Hz, drift " + driftSdHzPerSecond);
    }
  }

  double centreHz() {
    return nominalHz + offsetHz;
  }
}

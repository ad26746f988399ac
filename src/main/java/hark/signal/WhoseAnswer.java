package hark.signal;

import java.util.Comparator;
import java.util.List;

/**
 * What curves say of each suspect.
 *
 * @param found in the order of the suspects
 * @param setAside points that none of them explains
 * @param tail chance of residuals as large as the likeliest suspect's; near 0 means that it does
 *     not fit
 * @param scaleHz spread of the points for which none was given, Hz
 */
public record WhoseAnswer(
    List<Found> found, List<DopplerPoint> setAside, double tail, double scaleHz) {
  /** A suspect counts as found from this weight on. */
  public static final double SURE = 0.95;

  /** Below this the likeliest suspect does not fit. */
  public static final double HARDLY_FITS = 1e-3;

  /**
   * One suspect.
   *
   * @param rmsHz of its residuals
   * @param lateSeconds later on its orbit than the elements have it, and its spread
   * @param carrierHz by curve, at its middle
   * @param driftHzPerSecond by curve
   * @param clockSeconds error of each station's clock, positive when it runs ahead
   * @param residualHz model minus measured by curve and point; NaN where set aside
   */
  public record Found(
      String objectId,
      double prior,
      double posterior,
      double rmsHz,
      double lateSeconds,
      double lateSdSeconds,
      double[] carrierHz,
      double[] driftHzPerSecond,
      double[] clockSeconds,
      List<double[]> residualHz) {}

  /** What may be said. */
  public enum Verdict {
    /** One suspect carries 95 % or more, and it fits. */
    FOUND,
    /** None does: the curves leave several. */
    CANNOT_TELL,
    /** Whoever carries most, it does not fit. */
    FITS_NONE
  }

  /** The heaviest suspect. */
  public Found likeliest() {
    return found.stream().max(Comparator.comparingDouble(Found::posterior)).orElseThrow();
  }

  /** What may be said; it abstains rather than guess. */
  public Verdict verdict() {
    if (tail < HARDLY_FITS) {
      return Verdict.FITS_NONE;
    }
    return likeliest().posterior() >= SURE ? Verdict.FOUND : Verdict.CANNOT_TELL;
  }
}

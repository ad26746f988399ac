package hark.link;

/**
 * The chance that one burst is noticed, by the way of listening. Each way is a normal curve in dB
 * around a threshold: {@code Φ((snr − required − offset) / width)}. Kernels call these hundreds of
 * millions of times: nothing is allocated and the normal curve comes from a table.
 *
 * <p>Offsets and widths are in {@link #offsetDb} and {@link #widthDb}, with their reasons. They
 * hold for a burst of at least some hundred looks (duration × bandwidth), such as 1.5 s of a 1200
 * Hz beacon; for shorter or narrower bursts make a {@link Detector}, which never lets a way do
 * better than the energy detector could.
 */
public final class Detection {
  private Detection() {}

  /**
   * Threshold of a way relative to the decoder's, dB.
   *
   * <ul>
   *   <li>Decoder: 0 by definition; {@code requiredSnrDb} is its 50 % point.
   *   <li>Ear: −5. A person notices a burst well before it can be read. Common practice.
   *   <li>Waterfall: −9. The eye adds up a second or two along a line. Common practice.
   *   <li>Recording: −13. A search along the predicted Doppler curve. The energy detector for 1800
   *       looks at a false-alarm rate of 1e-6 needs −9.3 dB (Urkowitz, exact); with a decoder at 10
   *       dB this offset asks for −3 dB, 6.3 dB more, for an unknown noise level, interference and
   *       frequency. The margin is judged.
   * </ul>
   */
  public static double offsetDb(Way way) {
    return switch (way) {
      case DECODER -> 0;
      case EAR -> -5;
      case WATERFALL -> -9;
      case RECORDING -> -13;
    };
  }

  /**
   * Standard deviation of the threshold, dB. Decoders are steep (1 dB); a program on a recording is
   * steady but its noise is not (1.5 dB); people differ and tire (2.5 dB). Common practice.
   */
  public static double widthDb(Way way) {
    return switch (way) {
      case DECODER -> 1;
      case RECORDING -> 1.5;
      case EAR, WATERFALL -> 2.5;
    };
  }

  /**
   * Chance that one burst is noticed, at a steady level.
   *
   * @param snrDb signal over noise in the beacon's bandwidth, dB
   * @param requiredSnrDb 50 % point of the decoder in the same bandwidth, dB
   */
  public static double probability(Way way, double snrDb, double requiredSnrDb) {
    return NormalCurve.below((snrDb - requiredSnrDb - offsetDb(way)) / widthDb(way));
  }

  /**
   * The same with fading that is normal in dB and drawn anew for each burst: exact, since a normal
   * threshold and a normal level differ by a normal number.
   *
   * @param fadingSdDb standard deviation of the level around {@code snrDb}, dB
   */
  public static double fadedProbability(
      Way way, double snrDb, double requiredSnrDb, double fadingSdDb) {
    double width = widthDb(way);
    double spread = Math.sqrt(width * width + fadingSdDb * fadingSdDb);
    return NormalCurve.below((snrDb - requiredSnrDb - offsetDb(way)) / spread);
  }

  /**
   * Mistuning: the part of a burst's band that lies in the band listened to, 0…1. 1 inside, a
   * straight edge one bandwidth wide, one half where the carrier sits on the edge. Multiplies the
   * chance of detection.
   *
   * @param offsetHz carrier from the middle of the band listened to, Hz, either sign
   * @param halfWidthHz half-width of the band listened to, Hz
   * @param bandwidthHz of the burst, Hz; positive
   */
  public static double inWindow(double offsetHz, double halfWidthHz, double bandwidthHz) {
    double part = (halfWidthHz - Math.abs(offsetHz)) / bandwidthHz + 0.5;
    return part <= 0 ? 0 : Math.min(1, part);
  }
}

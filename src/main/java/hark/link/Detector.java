package hark.link;

/**
 * One way of listening to one beacon: threshold and width made once, asked for every burst.
 *
 * @param thresholdDb signal over noise noticed half of the time, dB in the beacon's bandwidth
 * @param widthDb standard deviation of the threshold, dB
 */
public record Detector(double thresholdDb, double widthDb) {
  /** False alarms a listener allows himself per burst time. Common practice. */
  private static final double FALSE_ALARM = 1e-6;

  /** More looks than this change the bound by less than the model is worth. */
  private static final int MOST_LOOKS = 20_000;

  /** Refuses what is not a number, and a width that is not positive. */
  public Detector {
    if (!Double.isFinite(thresholdDb) || !(widthDb > 0)) {
      throw new IllegalArgumentException(
          "threshold " + thresholdDb + " dB with width " + widthDb + " dB");
    }
  }

  /**
   * The detector of a way for bursts of this length and width: the way's own offset from the
   * decoder, but never below what the energy detector needs for such a burst at a false-alarm rate
   * of 1e-6. The decoder itself knows the waveform and is not so bounded. Takes some milliseconds.
   */
  public static Detector of(
      Way way, double requiredSnrDb, double durationSeconds, double bandwidthHz) {
    double threshold = requiredSnrDb + Detection.offsetDb(way);
    if (way != Way.DECODER) {
      double looks = Math.min(MOST_LOOKS, Math.max(1, durationSeconds * bandwidthHz));
      double bound = EnergyDetector.requiredSnrDb(FALSE_ALARM, (int) Math.round(looks), 0.5);
      threshold = Math.max(threshold, Math.min(bound, requiredSnrDb));
    }
    return new Detector(threshold, Detection.widthDb(way));
  }

  /** Chance that a burst of this level is noticed. */
  public double probability(double snrDb) {
    return NormalCurve.below((snrDb - thresholdDb) / widthDb);
  }

  /** The same with independent normal fading of {@code fadingSdDb} around the level. */
  public double fadedProbability(double snrDb, double fadingSdDb) {
    double spread = Math.sqrt(widthDb * widthDb + fadingSdDb * fadingSdDb);
    return NormalCurve.below((snrDb - thresholdDb) / spread);
  }
}

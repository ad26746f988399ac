package hark.trial.score;

/**
 * How near the diagnosis came to the one with far more bodies, on one fixed case.
 *
 * @param variation half the sum of absolute differences of the event sets' weights, 0…1
 * @param mostApart largest difference of a cause's chance
 * @param setGain gain of the logarithmic score over the prior, by event sets
 * @param largeSetGain the same of the large sample
 * @param causeGain gain over the prior, by causes
 * @param largeCauseGain the same of the large sample
 */
public record Closeness(
    int index,
    double variation,
    double mostApart,
    double setGain,
    double largeSetGain,
    double causeGain,
    double largeCauseGain) {
  /** Compares two examinations of the same campaign. */
  public static Closeness of(Outcome usual, Outcome large, double[] sets, double[] largeSets) {
    double variation = 0;
    for (int s = 0; s < sets.length; s++) {
      variation += 0.5 * Math.abs(sets[s] - largeSets[s]);
    }
    double most = 0;
    for (int c = 0; c < usual.after().length; c++) {
      most = Math.max(most, Math.abs(usual.after()[c] - large.after()[c]));
    }
    return new Closeness(
        usual.index(),
        variation,
        most,
        usual.setGain(),
        large.setGain(),
        usual.causeGain(),
        large.causeGain());
  }
}

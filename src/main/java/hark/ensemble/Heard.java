package hark.ensemble;

/**
 * What a clue says of one member at each node, for each mode of the station's health.
 *
 * @param likelihood by {@code [mode][node]}; null for a mode in which nothing can be noticed
 * @param deaf likelihood for those modes
 * @param outcome chance of the kind of outcome alone, likewise; the same as {@code likelihood}
 *     where no number was read
 * @param deafOutcome for the modes in which nothing can be noticed
 */
record Heard(double[][] likelihood, double deaf, double[][] outcome, double deafOutcome) {
  /** The same at every node whatever the station's health, because nothing is sent. */
  static Heard nothing(ListeningClue clue, int modes) {
    double[][] none = new double[modes][];
    return new Heard(
        none,
        clue.likelihood(Reception.DEAF, 0),
        none,
        clue.readsNumber() ? clue.outcome(Reception.DEAF, 0) : clue.likelihood(Reception.DEAF, 0));
  }
}

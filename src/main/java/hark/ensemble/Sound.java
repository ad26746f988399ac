package hark.ensemble;

/**
 * Heard, and taken for ours. Either ours was detected, or something else was taken for it.
 *
 * @param levelDb over noise; NaN when not written down
 * @param sdDb spread of that reading and of the antenna's pattern together
 */
record Sound(int entry, SkyWindow window, Listening listening, double levelDb, double sdDb)
    implements ListeningClue {
  /**
   * Something else was taken for ours: a neighbour or interference, per window. Prior of the
   * design's nuisances.
   */
  private static final double NOT_OURS = 0.02;

  /** Levels of what is not ours may lie anywhere in so many dB. */
  private static final double NOT_OURS_SPREAD_DB = 30;

  @Override
  public double likelihood(Reception reception, int node) {
    boolean level = readsNumber();
    double notOurs = level ? NOT_OURS / NOT_OURS_SPREAD_DB : NOT_OURS;
    double detected = reception.detected(node);
    double density = level && detected > 0 ? levelDensity(reception.strongestDb(node)) : 1;
    return notOurs + (1 - NOT_OURS) * detected * density;
  }

  private double levelDensity(double expectedDb) {
    return Double.isNaN(expectedDb) ? 0 : Normal.density(levelDb, expectedDb, sdDb);
  }

  @Override
  public boolean readsNumber() {
    return !Double.isNaN(levelDb);
  }

  @Override
  public double outcome(Reception reception, int node) {
    return NOT_OURS + (1 - NOT_OURS) * reception.detected(node);
  }
}

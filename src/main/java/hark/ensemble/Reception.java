package hark.ensemble;

/**
 * What a member lets a station meet in a window at each node.
 *
 * @param detect chance that at least one burst is noticed, by node, a failed sitting counted; empty
 *     when nothing can be noticed
 * @param level density of a level that was read off, at a node; worked out only where it is asked
 *     for
 * @param pitch density of a measured frequency at a node
 */
record Reception(double[] detect, Levels level, Pitches pitch) {
  /** Of a station that hears nothing. */
  static final Reception DEAF = new Reception(new double[0], (db, sd, node) -> 0, (p, node) -> 0);

  /** Answers the density of a level that was read off. */
  @FunctionalInterface
  interface Levels {
    /** Density at a node, 1/dB. */
    double density(double levelDb, double readSdDb, int node);
  }

  /** Answers the density of a measured frequency. */
  @FunctionalInterface
  interface Pitches {
    /** Density at a node, 1/Hz. */
    double density(Pitch pitch, int node);
  }

  double detected(int node) {
    return detect.length == 0 ? 0 : detect[node];
  }

  double levelDensity(double levelDb, double readSdDb, int node) {
    return level.density(levelDb, readSdDb, node);
  }

  double density(Pitch measured, int node) {
    return pitch.density(measured, node);
  }
}

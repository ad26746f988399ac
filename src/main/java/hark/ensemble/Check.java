package hark.ensemble;

import hark.link.NormalCurve;

/**
 * A satellite known to send was listened for. A strong satellite proves pointing and cabling; a
 * level beside the level expected, on the same band and with the same hand, proves sensitivity.
 *
 * @param levelDb over noise, as measured; NaN when it was missed or not written down
 * @param expectedDb over noise; NaN when not written down: then a level says nothing
 * @param sameHand chance that it sends with the hand that ours needs, 0…1
 * @param sameBand chance that it sends in the band of our beacon, 0…1
 * @param beamwidthDeg of the station's antenna
 */
record Check(
    int entry,
    int station,
    boolean heard,
    double levelDb,
    double expectedDb,
    double sameHand,
    double sameBand,
    double beamwidthDeg)
    implements StationClue {
  /** A satellite of which nothing is said is like ours so often. Judged. */
  static final double LIKE_OURS_UNSAID = 0.8;

  /** What is picked for a check when nothing is said, dB over noise. Judged. */
  private static final double STRONG_DB = 20;

  /** Noticed half of the time, dB over noise, and its spread. Common practice. */
  private static final double NOTICED_DB = 3;

  private static final double SPREAD_DB = 3;

  /** A sitting that works and misses a loud satellite: wrong pass, wrong hour. Judged. */
  private static final double SLIP = 0.03;

  /** Of the faults that take away sensitivity, so many show on another band as well. Judged. */
  private static final double SHOWS_ON_OTHER_BAND = 0.5;

  /** Over all faults together, a strong satellite is still heard so often. Judged. */
  private static final double HEARD_THOUGH_FAULTY = 0.4;

  /** Chance that a strong known satellite is heard, by the chance that the station works. */
  static double heardBy(double works) {
    return works * (1 - SLIP) + (1 - works) * HEARD_THOUGH_FAULTY;
  }

  @Override
  public double likelihood(StationMode mode) {
    return met(mode, !Double.isNaN(levelDb) && !Double.isNaN(expectedDb));
  }

  @Override
  public double outcome(StationMode mode) {
    return met(mode, false);
  }

  private double met(StationMode mode, boolean withLevel) {
    double drop =
        sameHand * mode.dropInCheckDb(true, beamwidthDeg)
            + (1 - sameHand) * mode.dropInCheckDb(false, beamwidthDeg);
    double here = met(mode.foundInCheck(true), drop, withLevel);
    double elsewhere =
        SHOWS_ON_OTHER_BAND * met(mode.foundInCheck(false), drop, withLevel)
            + (1 - SHOWS_ON_OTHER_BAND) * met(1, 0, withLevel);
    return sameBand * here + (1 - sameBand) * elsewhere;
  }

  /**
   * Chance, with a level its density, of what was met.
   *
   * @param found share of the satellites this strong that are found at all in that mode
   * @param dropDb weaker than expected
   */
  private double met(double found, double dropDb, boolean withLevel) {
    double level = (Double.isNaN(expectedDb) ? STRONG_DB : expectedDb) - dropDb;
    double noticed = (1 - SLIP) * found * NormalCurve.below((level - NOTICED_DB) / SPREAD_DB);
    if (!heard) {
      return 1 - noticed;
    }
    return withLevel ? noticed * Normal.density(levelDb, level, SPREAD_DB) : noticed;
  }
}

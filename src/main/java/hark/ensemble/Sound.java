package hark.ensemble;

import java.util.Optional;

/**
 * Heard, and taken for ours. Either ours was detected, or something else was taken for it.
 *
 * @param notOurs chance that something else is taken for ours in such a window, by what was heard
 * @param levelDb over noise; NaN when not written down
 * @param sdDb spread of that reading itself
 * @param pitch the frequency, where it was measured
 */
record Sound(
    int entry,
    SkyWindow window,
    Listening listening,
    double notOurs,
    double levelDb,
    double sdDb,
    Optional<Pitch> pitch)
    implements ListeningClue {
  /** Levels of what is not ours may lie anywhere in so many dB. */
  private static final double NOT_OURS_SPREAD_DB = 30;

  @Override
  public double likelihood(Reception reception, int node) {
    double detected = reception.detected(node);
    double strange = notOurs;
    double ours = (1 - notOurs) * detected;
    if (hasLevel()) {
      strange /= NOT_OURS_SPREAD_DB;
      ours *= detected > 0 ? reception.levelDensity(levelDb, sdDb, node) : 1;
    }
    if (pitch.isPresent()) {
      strange /= Pitch.NOT_OURS_SPREAD_HZ;
      ours *= detected > 0 ? reception.density(pitch.get(), node) : 0;
    }
    return strange + ours;
  }

  private boolean hasLevel() {
    return !Double.isNaN(levelDb);
  }

  @Override
  public boolean readsNumber() {
    return hasLevel() || pitch.isPresent();
  }

  @Override
  public double outcome(Reception reception, int node) {
    return notOurs + (1 - notOurs) * reception.detected(node);
  }
}

package hark.ensemble;

/** Depends on the health of one station alone. */
sealed interface StationClue extends Clue permits Check {
  /** Index of the station. */
  int station();

  /** Chance, or density where a level was read, of what was met in a mode of its health. */
  double likelihood(StationMode mode);

  /** Chance of this kind of outcome, whatever level was read. */
  double outcome(StationMode mode);
}

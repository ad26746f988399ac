package hark.ensemble;

/** Depends on the health of one station alone. */
sealed interface StationClue extends Clue permits Check {
  /** Index of the station. */
  int station();

  /** Chance of what was met when the station works. */
  double ifWorks();

  /** The same when it is deaf. */
  double ifDeaf();

  /** The same in any mode of its health; a kind of clue that can tell faults apart says more. */
  default double likelihood(StationMode mode) {
    return mode.works() ? ifWorks() : ifDeaf();
  }
}

package hark.ensemble;

/**
 * Someone listened at one of our stations: depends on the member, the node and the station's
 * health.
 */
sealed interface ListeningClue extends Clue permits Silence, Sound {
  /** When and where, with the sky of every candidate. */
  SkyWindow window();

  /** How. */
  Listening listening();

  /** Chance, or density where a number was read, of what was met, given what could be met. */
  double likelihood(Reception reception, int node);

  /** True when a number was read beside heard or not, so that the likelihood is a density. */
  boolean readsNumber();

  /** Chance of this kind of outcome, heard or not, whatever number was read. */
  double outcome(Reception reception, int node);
}

package hark.ensemble;

/**
 * An entry of the record as the weighing meets it: everything about sky and stations already looked
 * up.
 */
sealed interface Clue {
  /** Index of the entry among the evidence in force. */
  int entry();

  /** Listened and heard nothing. */
  record Silence(int entry, SkyWindow window, Listening listening) implements Clue {}

  /**
   * Heard.
   *
   * @param levelDb over noise; NaN when not written down
   * @param levelSdDb spread of that reading
   */
  record Sound(int entry, SkyWindow window, Listening listening, double levelDb, double levelSdDb)
      implements Clue {}

  /** A telemetered bus voltage; {@code probe} is its place among the simulation's probes. */
  record Volts(int entry, int probe, double seconds, double volts, double sdVolts)
      implements Clue {}

  /** A station check: chance of this outcome when the station works and when it is deaf. */
  record Check(int entry, int station, double ifWorks, double ifDeaf) implements Clue {}
}

package hark.ensemble;

/**
 * An entry of the record as the weighing meets it: everything about sky and stations already looked
 * up. Its nature says what its likelihood depends on, and each kind carries its own likelihood.
 */
sealed interface Clue
    permits ListeningClue, OutsideClue, BodyClue, StationClue, NodeClue, CommandGiven {
  /** Index of the entry among the evidence in force. */
  int entry();
}

package hark.ensemble;

/** Depends on the hearing node alone: which object it is. */
sealed interface NodeClue extends Clue permits Verdict {
  /** Chance of what was told, given the node. */
  double likelihood(HearingNodes nodes, int node);
}

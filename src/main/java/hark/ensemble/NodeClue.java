package hark.ensemble;

/** Depends on the hearing node alone: which object it is, its carrier, its along-track error. */
non-sealed interface NodeClue extends Clue {
  /** Chance of what was told, given the node. */
  double likelihood(HearingNodes nodes, int node);
}

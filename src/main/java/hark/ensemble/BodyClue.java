package hark.ensemble;

/** Depends on what happened on board alone: the same at every node. */
sealed interface BodyClue extends Clue permits Volts {
  /** Density of what was told, given the member and its body. */
  double likelihood(Member member, Body body);
}

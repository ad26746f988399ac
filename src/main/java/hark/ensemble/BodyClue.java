package hark.ensemble;

/** Depends on what happened on board alone: the same at every node. */
sealed interface BodyClue extends Clue permits Volts {
  /** Density of what was told, given the member and its body. */
  double likelihood(Member member, Body body);

  /**
   * How far off what was told a body is, in standard deviations, for drawing more bodies near it;
   * NaN when it says nothing of the kind. Only speed depends on it, never the answer.
   */
  default double residual(Body body) {
    return Double.NaN;
  }
}

package hark.ensemble;

/** Depends on what happened on board alone: the same at every node. */
sealed interface BodyClue extends Clue permits Frame, Motion, Released {
  /** Chance or density of what was told, given the member and its body. */
  double likelihood(Member member, Body body);

  /** Whether {@link #residual} says anything. */
  default boolean hasResidual() {
    return false;
  }

  /**
   * How far off what was told a body is, in standard deviations, for drawing more bodies near it;
   * NaN when it says nothing of the kind. Only speed depends on it, never the answer.
   */
  default double residual(Body body) {
    return Double.NaN;
  }

  /** How many of what was told are numbers on a scale; 0 when it is a choice of words alone. */
  default int numbers() {
    return 0;
  }

  /**
   * Chance that the k-th number would have been lower, given the member and its body; NaN for one
   * that could not have told it.
   */
  default double below(int number, Member member, Body body) {
    return Double.NaN;
  }
}

package hark.ensemble;

/**
 * A command on record, as the weighing meets it: bodies that take it as received count by the
 * chance that it was, the others by the chance that it was not.
 */
record CommandGiven(SentCommand sent, CommandLink link) implements Clue {
  /** An answer is taken for one that was none so often. Judged. */
  private static final double FALSE_ANSWER = 0.01;

  @Override
  public int entry() {
    return sent.entry();
  }

  /**
   * Weight of a body that takes it or not.
   *
   * @param received chance that it was received and works
   */
  double likelihood(boolean taken, double received) {
    boolean answered = sent.acknowledged().orElse(false);
    return taken
        ? received / SentCommand.TAKEN
        : (1 - received) * (answered ? FALSE_ANSWER : 1) / (1 - SentCommand.TAKEN);
  }
}

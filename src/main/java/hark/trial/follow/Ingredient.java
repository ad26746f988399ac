package hark.trial.follow;

/** What the plan can be made to do without, to see what it is worth. */
public enum Ingredient {
  /** Nothing is sent. */
  COMMANDS,
  /** Every station listens as planned. */
  WAYS,
  /** What is heard or not heard after the silence began is not weighed. */
  INFERENCE;

  /** As it is written on the command line. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}

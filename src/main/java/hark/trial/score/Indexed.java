package hark.trial.score;

/** Result of one campaign, known by its number. */
public interface Indexed {
  /** Number of the campaign, from 1. */
  int index();
}

package hark.ensemble;

import java.util.List;

/**
 * Causes whose likelihoods agree after every entry: the evidence so far cannot tell them apart, and
 * their odds are still those of the prior.
 *
 * @param causes indices into the causes, two or more
 * @param harmless true when they share it with <i>nothing wrong</i>: they make no difference to
 *     what is heard
 */
public record SharedLikelihood(List<Integer> causes, boolean harmless) {
  /** Keeps its own copy. */
  public SharedLikelihood {
    causes = List.copyOf(causes);
  }
}

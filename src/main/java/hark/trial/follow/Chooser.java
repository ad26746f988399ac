package hark.trial.follow;

import java.util.Optional;

/** A rule at work in one campaign. */
@FunctionalInterface
interface Chooser {
  /** What to do in a window; empty to stay at home. Asked in the order of time. */
  Optional<Choice> at(int window, Play play);
}

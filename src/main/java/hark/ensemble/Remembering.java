package hark.ensemble;

import java.util.function.Function;
import java.util.function.Supplier;

/** What is remembered of hearings while members are weighed. Several threads may ask at once. */
interface Remembering {
  /**
   * What somebody else's listening says of a member.
   *
   * @param until end of listening, s since separation
   */
  Heard outside(OutsideClue clue, Member member, double until, Supplier<Heard> compute);

  /**
   * What our listening says of a member.
   *
   * @param compute from the bursts of the window
   */
  Heard ours(ListeningClue clue, Member member, Body body, Function<Bursts, Heard> compute);

  /** Forgets a body of which every member has been weighed. */
  void forget(int body);
}

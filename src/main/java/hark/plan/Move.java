package hark.plan;

import java.util.Optional;

/**
 * Something that can be done in a window, in bare numbers; what it hears stands in {@link Rows}.
 *
 * @param kind what sort of thing
 * @param extraHours people's hours beside session and pass, h
 * @param outside true when somebody else's antenna is used
 * @param plainness how far it departs from the station's usual way: the more, the more can go wrong
 * @param mends chance that a station found not to work is mended because of it, 0…1
 * @param settles the question that it settles for later windows, or empty
 */
record Move(
    Kind kind,
    double extraHours,
    boolean outside,
    int plainness,
    double mends,
    Optional<Procedure.Question> settles) {
  /** What sort of thing a move is. */
  enum Kind {
    LISTEN,
    COMMAND,
    DESK,
    STAY
  }

  /** Listening in the usual way at no further cost. */
  static Move listening() {
    return new Move(Kind.LISTEN, 0, false, 0, 0, Optional.empty());
  }

  /** True when something is sent. */
  boolean sends() {
    return kind == Kind.COMMAND;
  }
}

package hark.cli;

import hark.console.Rehearsal;
import hark.mission.Mission;
import java.time.Clock;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;

/**
 * Which clock a console goes by.
 *
 * @param real the clock of the program
 * @param from where a rehearsal begins; the mission's own clock or the real one when not said
 * @param speed seconds of a rehearsal for each real one; 1 when not said
 */
record Pace(Clock real, Optional<Instant> from, Optional<Double> speed) {

  /** Whether anybody asked for a clock other than the usual. */
  boolean isRehearsal() {
    return from.isPresent() || speed.isPresent();
  }

  InstantSource clock(Mission mission) {
    if (!isRehearsal()) {
      return real;
    }
    Instant start = from.or(mission::now).orElseGet(real::instant);
    return new Rehearsal(real, start, speed.orElse(1.0));
  }
}

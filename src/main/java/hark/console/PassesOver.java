package hark.console;

import hark.assessment.Assessment;
import hark.mission.MissionClock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * When an answer under a fast clock is old: a window it spoke of has ended since, or half a day has
 * gone by. Between those nothing that a person would do differently has changed.
 */
final class PassesOver {
  static final Duration LONGEST = Duration.ofHours(12);

  private final ConsoleModel model;

  PassesOver(ConsoleModel model) {
    this.model = model;
  }

  boolean since(Optional<Assessment> shown) {
    if (shown.isEmpty()) {
      return false;
    }
    Assessment assessment = shown.get();
    Instant settled = model.now().minus(MissionClock.SETTLE);
    boolean old = assessment.now().plus(LONGEST).isBefore(settled);
    return old
        || assessment.windows().stream()
            .anyMatch(w -> w.los().isAfter(assessment.now()) && w.los().isBefore(settled));
  }
}

package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.AssessmentFixture;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RehearsalTest {
  private final AtomicReference<Instant> real =
      new AtomicReference<>(Instant.parse("2026-01-01T00:00:00Z"));
  private final Instant start = AssessmentFixture.NOW;
  private final Rehearsal clock = new Rehearsal(real::get, start, 60);

  @Test
  void itRunsItsOwnTimeAtItsOwnSpeed() {
    pass(10);
    assertEquals(start.plusSeconds(600), clock.instant());
    clock.run(1);
    pass(10);
    assertEquals(start.plusSeconds(610), clock.instant());
  }

  @Test
  void heldItStandsAndThenGoesOnFromThere() {
    pass(1);
    clock.hold(true);
    pass(100);
    assertEquals(start.plusSeconds(60), clock.instant());
    assertEquals(0, clock.pace());
    clock.hold(false);
    pass(2);
    assertEquals(start.plusSeconds(180), clock.instant());
  }

  @Test
  void itJumpsForwardsAndNeverBack() {
    clock.goTo(start.plusSeconds(1000));
    pass(1);
    assertEquals(start.plusSeconds(1060), clock.instant());
    assertThrows(BadInput.class, () -> clock.goTo(start));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, 3601})
  void aSpeedNobodyCouldFollowIsRefused(double speed) {
    assertThrows(BadInput.class, () -> clock.run(speed));
    assertThrows(BadInput.class, () -> new Rehearsal(real::get, start, speed));
    assertEquals(60, clock.speed());
  }

  @Test
  void anAnswerIsOldWhenAWindowItSpokeOfHasEndedAndNotEachSecond() {
    FixtureModel model = FixtureModel.rehearsed(clock);
    Optional<Assessment> shown = Optional.of(model.assess().assessment());
    PassesOver over = new PassesOver(model);
    Instant los = shown.get().windows().get(0).los();
    clock.goTo(los.plusSeconds(60));
    assertFalse(over.since(shown), "candidates that run late may still be up");
    clock.goTo(los.plusSeconds(121));
    assertTrue(over.since(shown));
    assertFalse(over.since(Optional.empty()));
  }

  private void pass(long seconds) {
    real.set(real.get().plusSeconds(seconds));
  }
}

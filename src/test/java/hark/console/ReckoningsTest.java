package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.AssessmentFixture;
import hark.problem.BadInput;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ReckoningsTest {
  private static final Assessment ANSWER = AssessmentFixture.sandpiper().build();
  private final Reckonings reckonings = new Reckonings();
  private final CountDownLatch interrupted = new CountDownLatch(1);

  @AfterEach
  void close() {
    reckonings.close();
  }

  private Supplier<Assessment> endless() {
    return () -> {
      try {
        new CountDownLatch(1).await();
      } catch (InterruptedException e) {
        interrupted.countDown();
      }
      throw new IllegalStateException("interrupted");
    };
  }

  private Reckonings.State ended(int number) throws Exception {
    EventReader.await(
        () -> !(reckonings.state(number).orElseThrow() instanceof Reckonings.State.Running));
    return reckonings.state(number).orElseThrow();
  }

  @Test
  void whatIsWorkedOutIsThereToBeAskedFor() throws Exception {
    int number = reckonings.start(() -> ANSWER);
    assertEquals(ANSWER, ((Reckonings.State.Done) ended(number)).assessment());
  }

  @Test
  void oneThatIsStoppedIsInterruptedAndSaysSo() throws Exception {
    int number = reckonings.start(endless());
    assertInstanceOf(Reckonings.State.Running.class, reckonings.state(number).orElseThrow());
    reckonings.stop(number);
    assertInstanceOf(Reckonings.State.Stopped.class, reckonings.state(number).orElseThrow());
    assertTrue(interrupted.await(5, TimeUnit.SECONDS), "the work itself was interrupted");
    assertInstanceOf(Reckonings.State.Stopped.class, reckonings.state(number).orElseThrow());
  }

  @Test
  void aNewOneStopsTheOneBefore() throws Exception {
    int first = reckonings.start(endless());
    int second = reckonings.start(() -> ANSWER);
    assertInstanceOf(Reckonings.State.Stopped.class, reckonings.state(first).orElseThrow());
    assertInstanceOf(Reckonings.State.Done.class, ended(second));
  }

  @Test
  void aFailureIsToldInWords() throws Exception {
    int number =
        reckonings.start(
            () -> {
              throw BadInput.of("no orbit", "mission.yaml:3", "write one");
            });
    var failed = (Reckonings.State.Failed) ended(number);
    assertEquals("no orbit", failed.problems().get(0).what());
  }

  @Test
  void longForgottenOnesAreNotKept() {
    int first = reckonings.start(() -> ANSWER);
    for (int i = 0; i < Reckonings.KEPT; i++) {
      reckonings.start(() -> ANSWER);
    }
    assertTrue(reckonings.state(first).isEmpty());
  }
}

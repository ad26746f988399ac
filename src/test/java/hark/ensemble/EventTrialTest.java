package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A few bodies tell whether an event set silences. */
class EventTrialTest {
  private static final EventTrial.Span LATER = new EventTrial.Span(3, 5);
  private static final List<Integer> NOTHING = List.of();
  private static final List<Integer> MUTE = List.of(0);
  private static final List<Integer> WEAK = List.of(2);
  private static final List<Integer> DEAF = List.of(3);
  private static final List<Integer> CHARGE_PATH = List.of(4);

  private static double[] audible(SmallCase of, List<List<Integer>> sets) {
    EventTrial trial = EventTrial.afterSeparation(of.input(), LATER);
    return of.with(workers -> trial.audible(sets, workers));
  }

  @Test
  void aWellBodyAndADeafOneAreHeardAndAMuteOneIsNot() {
    double[] shares = audible(new SmallCase(), List.of(NOTHING, DEAF, MUTE, CHARGE_PATH));
    assertArrayEquals(new double[] {1, 1, 0, 0}, shares);
  }

  @Test
  void aDegradationSilencesAWeakLinkAndNotAStrongOne() {
    SmallCase strong = new SmallCase();
    SmallCase faint = new SmallCase();
    faint.requiredSnrDb = strong.requiredSnrDb + 13;
    assertEquals(1, audible(strong, List.of(WEAK))[0]);
    assertTrue(audible(faint, List.of(WEAK))[0] < audible(faint, List.of(NOTHING))[0]);
  }

  @Test
  void withoutShadowAnOpenChargePathStillEndsInSilence() {
    SmallCase small = new SmallCase();
    EventTrial sunny = EventTrial.inFullSun(small.input(), new EventTrial.Span(8, 10));
    double[] shares = small.with(workers -> sunny.audible(List.of(NOTHING, CHARGE_PATH), workers));
    assertArrayEquals(new double[] {1, 0}, shares);
  }

  @Test
  void theAnswerDoesNotDependOnWhichSetsAreAskedTogether() {
    SmallCase small = new SmallCase();
    double alone = audible(small, List.of(WEAK))[0];
    assertEquals(alone, audible(small, List.of(MUTE, DEAF, WEAK))[2]);
  }
}

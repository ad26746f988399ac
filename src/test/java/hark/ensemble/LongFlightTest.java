package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Bodies that fly on beyond the horizon tell when they send again. */
class LongFlightTest {
  private static final int MUTE = 0;
  private static final int WEAK = 2;
  private static final int CHARGE_PATH = 4;
  private static final int HUNG = 5;
  private static final Duration FAR = Duration.ofDays(40);
  private static List<LongFlight.Return> returns;
  private static SmallCase small;

  @BeforeAll
  static void fly() {
    small = new SmallCase();
    BodyList list = small.diagnose().bodyList();
    Instant end = small.now.plus(FAR);
    returns = small.with(workers -> LongFlight.of(list, 0.001, end, workers));
  }

  private static LongFlight.Return of(int cause) {
    return returns.stream().filter(each -> each.cause() == cause).findFirst().orElseThrow();
  }

  @Test
  void aMuteTransmitterNeverSendsAgain() {
    assertEquals(0, of(MUTE).back());
    assertEquals(Optional.empty(), of(MUTE).p10());
  }

  @Test
  void aWeakOneSendsAllTheWhile() {
    assertEquals(1, of(WEAK).sending());
    assertTrue(
        small.input().instant(of(WEAK).p50().orElseThrow()).isBefore(small.now.plusSeconds(120)));
  }

  @Test
  void whatNoPathChargesStaysOffOnceItIsFlat() {
    assertTrue(of(CHARGE_PATH).back() <= of(CHARGE_PATH).sending() + 1e-9);
  }

  @Test
  void aHungComputerThatDrainsItsBatteryComesBackAndOneThatDoesNotStays() {
    SmallCase hungry = new SmallCase();
    hungry.causes.set(
        HUNG,
        SmallCase.cause(
            "hung", 0.05, Cause.Onset.UNIFORM, new Effect.ComputerHung(Uncertain.of(4))));
    BodyList list = hungry.diagnose().bodyList();
    Instant end = hungry.now.plus(FAR);
    List<LongFlight.Return> others =
        hungry.with(workers -> LongFlight.of(list, 0.001, end, workers));
    double back = others.stream().filter(r -> r.cause() == HUNG).findFirst().orElseThrow().back();
    assertTrue(back > 0.9, "with 4 W more the bus collapses and restarts, not in " + back);
    assertTrue(
        of(HUNG).back() < 0.5, "with a balance that is positive it stays: " + of(HUNG).back());
  }

  @Test
  void fewBodiesAreFlown() {
    int flown = returns.stream().mapToInt(LongFlight.Return::bodies).sum();
    assertTrue(flown <= LongFlight.MOST_BODIES, () -> flown + " bodies");
    assertTrue(returns.stream().allMatch(each -> each.bodies() >= 10));
  }
}

package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.WhyThere.Reason;
import hark.assessment.WhyThere.StateShare;
import hark.ensemble.EnergyFan;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Why it is off here: shares, reasons and members of one time. */
class WhyFinderTest {
  private static final EnergyCase CASE = new EnergyCase();
  private static final WhyFinder FINDER = new WhyFinder(CASE.list, CASE.asIs);
  private static final List<String> STATES = List.of("off", "boot", "safe", "nominal");

  @Test
  void sharesAreThoseOfTheFanAtEveryTime() {
    List<EnergyFan.Point> fan = CASE.small.with(CASE.asIs::fan);
    for (int g = 0; g < fan.size(); g += 17) {
      WhyThere why = FINDER.at(CASE.list.input().instant(fan.get(g).seconds()));
      double sum = 0;
      for (StateShare state : why.states()) {
        assertEquals(fan.get(g).states()[STATES.indexOf(state.state())], state.share(), 1e-9);
        sum += state.share();
      }
      assertEquals(1, sum, 1e-9);
    }
  }

  @Test
  void reasonsSumToTheirStateAndExplanationsToAtMostTheReason() {
    for (StateShare state : FINDER.at(CASE.small.now).states()) {
      assertEquals(state.share(), state.reasons().stream().mapToDouble(Reason::share).sum(), 1e-9);
      for (Reason reason : state.reasons()) {
        double explained =
            reason.explanations().stream().mapToDouble(MemberTrace.Share::share).sum();
        assertTrue(explained > 0 && explained <= reason.share() + 1e-9);
        assertTrue(!reason.typicalSince().isAfter(CASE.small.now));
      }
    }
  }

  @Test
  void theNamedMemberIsInThatStateForThatReason() {
    Instant time = CASE.small.now.plusSeconds(3600);
    for (StateShare state : FINDER.at(time).states()) {
      for (Reason reason : state.reasons()) {
        MemberTrace trace =
            new Tracer(CASE.list, CASE.list.input().body()).trace(reason.member(), 600);
        MemberTrace.Row last =
            trace.rows().stream()
                .filter(row -> !row.time().isAfter(time) && row.change().isPresent())
                .reduce((a, b) -> b)
                .orElseThrow();
        assertEquals(state.state(), last.state());
        assertEquals(reason.words(), last.change().orElseThrow());
      }
    }
  }

  @Test
  void anOpenChargePathIsNamedBehindTheBusesThatWentOff() {
    StateShare off =
        FINDER.at(CASE.small.now).states().stream()
            .filter(state -> state.state().equals("off"))
            .findFirst()
            .orElseThrow();
    Reason first = off.reasons().get(0);
    assertEquals("undervoltage", first.reason());
    assertTrue(first.explanations().get(0).title().contains("charge path"), first.toString());
  }

  @Test
  void timesOutsideTheSimulationAreRefused() {
    assertThrows(BadInput.class, () -> FINDER.at(SEPARATION.minusSeconds(1)));
    assertThrows(BadInput.class, () -> FINDER.at(CASE.list.input().end().plusSeconds(1)));
    assertEquals("boot", FINDER.at(SEPARATION).states().get(0).state());
  }

  private static final Instant SEPARATION = hark.ensemble.SmallCase.SEPARATION;
}

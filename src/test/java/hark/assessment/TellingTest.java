package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment.Separator;
import hark.assessment.Telling.Means;
import hark.ensemble.Cause;
import hark.ensemble.Cause.ClearsOn;
import hark.ensemble.Effect;
import hark.ensemble.Uncertain;
import hark.plan.Procedure;
import hark.power.OnboardCommand;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What would tell causes apart follows from what they do, whatever they are called. */
class TellingTest {
  private static final Cause MUTE = cause("a", new Effect.TransmitterOff());
  private static final Cause GONE = cause("b", new Effect.SpacecraftLost());
  private static final Cause HUNG =
      cause("c", new Effect.ComputerHung(Uncertain.of(0)), ClearsOn.POWER_CYCLE);
  private static final Cause LATCHED =
      cause("d", new Effect.ComputerHung(Uncertain.of(1)), ClearsOn.POWER_REMOVED);
  private static final Cause WEAK = cause("e", new Effect.TransmitterWeak(Uncertain.of(10)));
  private static final Cause ASIDE =
      cause("f", new Effect.OffFrequency(new Uncertain.Uniform(-9000, 9000)));
  private static final Cause DEAF = cause("g", new Effect.ReceiverDeaf());
  private static final Cause COUNTER = cause("h", new Effect.CounterOutOfStep());

  private static Cause cause(String name, Effect effect, ClearsOn... clears) {
    return new Cause(
        name,
        name,
        "radio",
        0.01,
        Cause.Onset.HAZARD,
        List.of(effect),
        Set.of(clears),
        "",
        "sign of " + name,
        List.of());
  }

  private static Telling telling(Procedure... procedures) {
    return new Telling(List.of(procedures));
  }

  private static Procedure reset() {
    return new Procedure(
        "r",
        "our reset",
        Procedure.Kind.COMMAND,
        List.of(),
        new Procedure.Command(OnboardCommand.RESET, 1),
        0,
        List.of(),
        List.of(),
        "");
  }

  private static Optional<Separator> by(List<Separator> found, String start) {
    return found.stream().filter(each -> each.means().startsWith(start)).findFirst();
  }

  @Test
  void aResetTellsAHungComputerFromADeadTransmitter() {
    Separator reset = by(telling().separators(List.of(MUTE, HUNG)), "a reset").orElseThrow();
    assertEquals("c would end", reset.shows());
    assertEquals("a would stay silent", reset.doesNot());
  }

  @Test
  void aResetDoesNotEndWhatOnlyLossOfAllPowerEnds() {
    assertFalse(Telling.shows(Means.RESET, LATCHED));
    assertTrue(Telling.shows(Means.POWER_GONE, LATCHED));
    assertTrue(Telling.shows(Means.RESET, HUNG));
  }

  @Test
  void aLargerDishHearsTheWeakAndNotTheMute() {
    assertTrue(Telling.shows(Means.LARGER, WEAK));
    assertFalse(Telling.shows(Means.LARGER, MUTE));
    assertFalse(Telling.shows(Means.LARGER, ASIDE));
    assertTrue(Telling.shows(Means.WIDER, ASIDE), "its median shift is nought, its spread is not");
  }

  @Test
  void radarTellsWhatIsGoneFromWhatIsMute() {
    List<Separator> found = telling().separators(List.of(MUTE, GONE));
    assertEquals(1, found.size(), found::toString);
    assertEquals("b might be in pieces or off the elements", found.get(0).shows());
  }

  @Test
  void otherCounterValuesTellARefusalFromDeafness() {
    Separator counter =
        by(telling().separators(List.of(DEAF, COUNTER)), "a command with").orElseThrow();
    assertEquals("h would obey one of them", counter.shows());
  }

  @Test
  void whatNothingDividesIsSaidWithItsOwnSigns() {
    Cause alike = cause("z", new Effect.TransmitterOff());
    List<Separator> found = telling().separators(List.of(MUTE, alike));
    assertEquals(1, found.size());
    assertEquals("a by “sign of a” and z by “sign of z”", found.get(0).shows());
  }

  @Test
  void aProcedureThatDoesItIsNamed() {
    List<Separator> with = telling(reset()).separators(List.of(MUTE, HUNG));
    assertTrue(by(with, "a reset that it receives (our reset)").isPresent(), with::toString);
    List<Separator> without = telling().separators(List.of(MUTE, HUNG));
    assertFalse(without.toString().contains("our reset"));
  }

  @Test
  void proceduresOfACauseAreThoseThatAddressIt() {
    CauseWords words = new CauseWords(telling(reset()));
    assertEquals(List.of("our reset"), words.of(HUNG, false).procedures());
    assertEquals(List.of(), words.of(MUTE, false).procedures());
    assertEquals("any sound of ours from after it began", words.of(MUTE, false).refutes());
    assertEquals("a sound as strong as planned", words.of(WEAK, false).refutes());
    assertEquals("one command that is answered", words.of(DEAF, false).refutes());
  }
}

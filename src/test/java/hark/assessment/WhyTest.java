package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Listening;
import hark.link.Way;
import hark.plan.OptionValue;
import hark.plan.Procedure;
import hark.plan.WindowOption;
import hark.power.OnboardCommand;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The sentence why follows the numbers: flip one input and it changes. */
class WhyTest {
  private static final Instant END = Instant.parse("2026-10-20T08:02:00Z");
  private static final Listening USUAL = new Listening(Way.DECODER, 3000, 0, 0, 0, 0);
  private static final Procedure.Listen LISTEN =
      new Procedure.Listen(Optional.empty(), Optional.empty(), 0, false, 0);
  private static final Procedure.Command RESET = new Procedure.Command(OnboardCommand.RESET, 5);

  private static OptionValue value(
      String id,
      Procedure.Change change,
      double heard,
      double byHorizon,
      double hazard,
      double reach) {
    Procedure procedure =
        new Procedure(
            id, id, Procedure.Kind.LISTEN, List.of(), change, 0, List.of(), List.of(), "invented");
    boolean sends = change instanceof Procedure.Command;
    return new OptionValue(
        new WindowOption(procedure, USUAL, true, 1),
        heard,
        0.01,
        byHorizon,
        0.1,
        hazard,
        sends ? Optional.of(reach) : Optional.empty(),
        new OptionValue.Command(0.05, 0.05, 0.01, 0),
        0.1);
  }

  private static String reset(double byHorizon, double hazard, double reach) {
    OptionValue reset = value("reset", RESET, 0.1, byHorizon, hazard, reach);
    return Why.sentence(reset, List.of(value("listen", LISTEN, 0.1, 0.5, 0, 0), reset), END);
  }

  @Test
  void aResetThatDelaysMostOfWhatItReachesSaysSo() {
    String harmful = reset(0.45, 0.3, 0.4);
    assertTrue(
        harmful.contains("4 of 10") && harmful.contains("in most of those it delays"), harmful);
    assertTrue(harmful.contains("lowers"), harmful);
  }

  @Test
  void flippingTheHazardChangesTheSentence() {
    assertNotEquals(reset(0.5, 0.3, 0.4), reset(0.5, 0, 0.4));
    assertTrue(reset(0.5, 0, 0.4).contains("hardly ever delays"), reset(0.5, 0, 0.4));
  }

  @Test
  void flippingTheGainChangesTheSentence() {
    assertTrue(reset(0.6, 0, 0.4).contains("raises"), reset(0.6, 0, 0.4));
    assertTrue(reset(0.4, 0, 0.4).contains("lowers"), reset(0.4, 0, 0.4));
    assertTrue(reset(0.5, 0, 0.4).contains("leaves"), reset(0.5, 0, 0.4));
  }

  @Test
  void aCommandThatReachesNobodySaysSo() {
    assertTrue(reset(0.5, 0, 0).contains("would almost certainly not be received"));
  }

  @Test
  void listeningIsComparedWithTheBestOtherWay() {
    OptionValue here = value("wide", LISTEN, 0.2, 0.5, 0, 0);
    OptionValue other = value("usual", LISTEN, 0.1, 0.5, 0, 0);
    String better = Why.sentence(here, List.of(here, other), END);
    String worse = Why.sentence(other, List.of(here, other), END);
    assertEquals(
        "We hear it in this pass with 20 %; any other way of listening gives at most 10 %.",
        better);
    assertEquals(
        "We hear it in this pass with 10 %; the best way of listening here gives 20 %.", worse);
  }
}

package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.evidence.CommandSent;
import hark.power.OnboardCommand;
import hark.station.Pass;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What a command on record does to the weights: through received or not, and nothing else. */
class CommandGivenTest {
  private static final int DEAF = 3;
  private static final int HUNG = 5;

  /** A pass of the last day. */
  private static final int LATE = 11;

  private static SmallCase silent() {
    return new SmallCase().heard(SmallCase.NEAR, 0).nothing(SmallCase.NEAR, 2);
  }

  private static SmallCase sent(SmallCase mission, int pass, Optional<Boolean> acknowledged) {
    Pass sending = mission.pass(SmallCase.NEAR, pass);
    mission.add(
        new CommandSent(
            SmallCase.NEAR,
            sending.culmination(),
            "reset",
            OptionalDouble.empty(),
            OptionalInt.of(3),
            acknowledged));
    return mission;
  }

  private static double cause(SmallCase mission, int cause) {
    return mission
        .with(workers -> Posterior.of(mission.input(), workers))
        .causes()
        .get(cause)
        .posterior();
  }

  @Test
  void aCommandAloneSaysNothing() {
    double samplingError = 0.03;
    SmallCase with = sent(silent(), 3, Optional.empty());
    for (int cause = 0; cause < with.causes.size(); cause++) {
      assertEquals(cause(silent(), cause), cause(with, cause), samplingError, "cause " + cause);
    }
  }

  @Test
  void soundAfterAResetSpeaksForAHang() {
    double without = cause(silent().heard(SmallCase.NEAR, 4), HUNG);
    double with = cause(sent(silent(), 3, Optional.empty()).heard(SmallCase.NEAR, 4), HUNG);
    assertTrue(with > 2 * without, with + " against " + without);
  }

  @Test
  void silenceAfterAResetSpeaksAgainstAHang() {
    double without = cause(silent().nothing(SmallCase.NEAR, 4), HUNG);
    double with = cause(sent(silent(), 3, Optional.empty()).nothing(SmallCase.NEAR, 4), HUNG);
    assertTrue(with < 0.85 * without, with + " against " + without);
  }

  @Test
  void anAnswerSaysThatTheReceiverWorks() {
    double without = cause(sent(silent(), LATE, Optional.empty()), DEAF);
    double with = cause(sent(silent(), LATE, Optional.of(true)), DEAF);
    assertTrue(with < 0.5 * without, with + " against " + without);
  }

  @Test
  void halfTheBodiesTakeItAndTheWeightsMakeUp() {
    SentCommand sent = SentCommand.of(sent(silent(), 3, Optional.empty()).input()).get(0);
    assertEquals(OnboardCommand.RESET, sent.command());
    assertEquals(3, sent.repeats());
    CommandGiven given = new CommandGiven(sent, null);
    for (double received : new double[] {0, 0.2, 1}) {
      double mean =
          SentCommand.TAKEN * given.likelihood(true, received)
              + (1 - SentCommand.TAKEN) * given.likelihood(false, received);
      assertEquals(1, mean, 1e-12);
    }
  }

  @Test
  void wordsThatAreNoCommandOnBoardDoNothing() {
    SmallCase mission = silent();
    mission.add(
        new CommandSent(
            SmallCase.NEAR,
            mission.pass(SmallCase.NEAR, 3).culmination(),
            "asked it to sing",
            OptionalDouble.empty(),
            OptionalInt.empty(),
            Optional.empty()));
    assertTrue(SentCommand.of(mission.input()).isEmpty());
    assertEquals(cause(silent(), HUNG), cause(mission, HUNG), 1e-12);
  }
}

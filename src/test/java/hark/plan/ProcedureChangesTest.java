package hark.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Cause;
import hark.ensemble.Diagnosis;
import hark.ensemble.Effect;
import hark.ensemble.SmallCase;
import hark.link.Way;
import hark.power.OnboardCommand;
import hark.station.Station;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What each change of a procedure is offered for, and what it is valued by. */
class ProcedureChangesTest {
  private static final PlanSettings TWENTY_HOURS = new PlanSettings(20, 0.2);
  private static final Procedure USUAL = procedure("usual", listen(Procedure.Setting.USUAL));

  private static Procedure.Listen listen(Procedure.Setting setting) {
    return new Procedure.Listen(Optional.empty(), Optional.empty(), 0, false, 0, setting);
  }

  private static Procedure.Listen early() {
    return new Procedure.Listen(Optional.empty(), Optional.empty(), -20, false, 0);
  }

  private static Procedure procedure(String id, Procedure.Change change) {
    return new Procedure(
        id, id, Procedure.Kind.LISTEN, List.of(), change, 0, List.of(), List.of(), "invented");
  }

  private static SmallCase silent() {
    return new SmallCase().heard(SmallCase.NEAR, 0).nothing(SmallCase.NEAR, 2);
  }

  private static PlanOutcome plan(SmallCase mission, Procedure... procedures) {
    return mission.with(
        workers ->
            Planner.plan(
                Diagnosis.of(mission.input(), workers),
                List.of(procedures),
                TWENTY_HOURS,
                workers));
  }

  private static List<OptionValue> all(PlanOutcome plan, String id) {
    return plan.options().stream()
        .flatMap(List::stream)
        .filter(value -> value.option().procedure().id().equals(id))
        .toList();
  }

  @Test
  void aWaitForASeasonIsNoChoiceOfOneWindow() {
    PlanOutcome plan =
        plan(
            silent(),
            USUAL,
            procedure("wait", new Procedure.Wait()),
            procedure("sun", new Procedure.Wait(Procedure.Until.FULL_SUN)));
    assertEquals(plan.options().size(), all(plan, "wait").size());
    assertEquals(List.of(), all(plan, "sun"));
  }

  @Test
  void nobodyListensWhereAStationDoesNotRecordByItself() {
    Procedure alone =
        procedure(
            "alone",
            listen(new Procedure.Setting(Procedure.Who.NOBODY, false, OptionalDouble.empty())));
    assertEquals(List.of(), all(plan(silent(), USUAL, alone), "alone"));
  }

  @Test
  void peopleElsewhereWantADaysNotice() {
    SmallCase mission = silent();
    mission.horizonDays = 2;
    Procedure ears =
        procedure(
            "ears",
            listen(new Procedure.Setting(Procedure.Who.OUTSIDE, false, OptionalDouble.empty())));
    PlanOutcome plan = plan(mission, USUAL, ears);
    int offered = all(plan, "ears").size();
    assertTrue(offered > 0 && offered < plan.options().size(), "offered " + offered);
    assertTrue(
        plan.options().get(0).stream().noneMatch(v -> v.option().procedure().id().equals("ears")));
  }

  /** A linear beacon is heard by either hand alike: the swap is no choice. */
  @Test
  void theOtherHandIsNoChoiceForALinearBeacon() {
    Procedure hand =
        procedure(
            "hand",
            listen(new Procedure.Setting(Procedure.Who.CREW, true, OptionalDouble.empty())));
    assertEquals(List.of(), all(plan(silent(), USUAL, hand), "hand"));
  }

  /** Between opposite hands of circular polarisation lie some 20 dB. Common practice. */
  @Test
  void theOtherHandHearsACircularBeaconOfOurHandWorse() {
    SmallCase mission = silent();
    mission.polarisation = Station.Polarisation.RHCP;
    Procedure hand =
        procedure(
            "hand",
            listen(new Procedure.Setting(Procedure.Who.CREW, true, OptionalDouble.empty())));
    PlanOutcome plan = plan(mission, USUAL, hand);
    double own = all(plan, "usual").stream().mapToDouble(OptionValue::heardThisPass).sum();
    double other = all(plan, "hand").stream().mapToDouble(OptionValue::heardThisPass).sum();
    assertTrue(own > 0.1 && other < 0.5 * own, own + " and " + other);
    mission.polarisation = Station.Polarisation.LHCP;
    plan = plan(mission, USUAL, hand);
    own = all(plan, "usual").stream().mapToDouble(OptionValue::heardThisPass).sum();
    other = all(plan, "hand").stream().mapToDouble(OptionValue::heardThisPass).sum();
    assertTrue(other > 1.2 * own, own + " and " + other);
  }

  @Test
  void theWatchAfterSunriseIsForPassesThatHaveOne() {
    SmallCase mission = silent();
    PlanOutcome none = plan(mission, USUAL, sunrise(0));
    PlanOutcome some = plan(mission, USUAL, sunrise(100));
    assertTrue(all(none, "sunrise").size() < all(some, "sunrise").size());
    // a revolution takes 95 minutes: some shadow always ended within a hundred
    assertEquals(some.options().size(), all(some, "sunrise").size());
  }

  private static Procedure sunrise(double minutes) {
    return procedure(
        "sunrise",
        new Procedure.Listen(
            Optional.of(Way.RECORDING),
            Optional.of(8000.0),
            0,
            false,
            0,
            new Procedure.Setting(Procedure.Who.CREW, false, OptionalDouble.of(minutes))));
  }

  @Test
  void tryingEveryCounterReachesWhoeverIsOutOfStep() {
    SmallCase mission = silent();
    mission.causes.add(
        SmallCase.cause("counter", 0.3, Cause.Onset.SEPARATION, new Effect.CounterOutOfStep()));
    PlanOutcome plan =
        plan(
            mission,
            USUAL,
            procedure("next", new Procedure.Command(OnboardCommand.RESET, 3)),
            procedure("any", new Procedure.Command(OnboardCommand.RESET, 3, true)));
    double next = all(plan, "next").get(0).reach().orElseThrow();
    double any = all(plan, "any").get(0).reach().orElseThrow();
    assertTrue(any > 1.2 * next, next + " with the next counter, " + any + " with any");
  }

  @Test
  void theObjectIsSettledAtADeskWhileACurveAndTwoCandidatesAreThere() {
    Procedure desk = procedure("desk", new Procedure.Settle(Procedure.Question.OBJECT));
    PlanOutcome plan = plan(silent(), USUAL, desk);
    assertEquals(plan.options().size(), all(plan, "desk").size());
    assertTrue(
        all(plan, "desk").get(0).option().listens(), "the station listens as ever meanwhile");
    assertEquals(List.of(), all(plan(new SmallCase(), USUAL, desk), "desk"), "nothing was heard");
  }

  /** With one way of pointing only, there is nothing that knowing could change. */
  @Test
  void settlingIsWorthNothingWhereNothingElseCouldBeDone() {
    Procedure desk = procedure("desk", new Procedure.Settle(Procedure.Question.TRACK));
    PlanOutcome alone = plan(silent(), USUAL, desk);
    assertEquals(
        all(alone, "usual").get(0).heardByHorizon(), all(alone, "desk").get(0).heardByHorizon());
    PlanOutcome both = plan(silent(), USUAL, procedure("early", early()), desk);
    assertTrue(
        all(both, "desk").get(0).heardByHorizon() > all(both, "usual").get(0).heardByHorizon());
  }
}

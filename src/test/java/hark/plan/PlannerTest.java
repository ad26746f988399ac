package hark.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Diagnosis;
import hark.ensemble.Effect;
import hark.ensemble.SmallCase;
import hark.ensemble.Uncertain;
import hark.link.Way;
import hark.power.OnboardCommand;
import hark.power.PowerModel;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Options and plans on the invented small mission. */
class PlannerTest {
  private static final PlanSettings TWENTY_HOURS = new PlanSettings(20, 0.2);

  private static final Procedure USUAL =
      procedure("usual", new Procedure.Listen(Optional.empty(), Optional.empty(), 0, false, 0));
  private static final Procedure WIDE =
      procedure(
          "wide",
          new Procedure.Listen(Optional.of(Way.RECORDING), Optional.of(10_000.0), 0, false, 0));
  private static final Procedure RESET =
      procedure("reset", new Procedure.Command(OnboardCommand.RESET, 5));
  private static final Procedure WAIT = procedure("wait", new Procedure.Wait());

  private static Procedure procedure(String id, Procedure.Change change) {
    return new Procedure(
        id, id, Procedure.Kind.LISTEN, List.of(), change, 0, List.of(), List.of(), "invented");
  }

  private static SmallCase silent() {
    return new SmallCase()
        .heard(SmallCase.NEAR, 0)
        .nothing(SmallCase.NEAR, 2)
        .nothing(SmallCase.FAR, 3)
        .nothing(SmallCase.NEAR, 4);
  }

  private static PlanOutcome plan(
      SmallCase mission, PlanSettings settings, Procedure... procedures) {
    return mission.with(
        workers ->
            Planner.plan(
                Diagnosis.of(mission.input(), workers), List.of(procedures), settings, workers));
  }

  private static List<OptionValue> all(PlanOutcome plan, String id) {
    return plan.options().stream()
        .flatMap(List::stream)
        .filter(value -> value.option().procedure().id().equals(id))
        .toList();
  }

  @Test
  void everyWindowOffersStayingAtHomeAndItCostsNothing() {
    PlanOutcome plan = plan(silent(), TWENTY_HOURS, USUAL, WAIT);
    assertEquals(plan.options().size(), all(plan, "wait").size());
    for (OptionValue wait : all(plan, "wait")) {
      assertEquals(0, wait.option().costHours());
      assertEquals(0, wait.heardThisPass());
      assertEquals(0, wait.hazard());
    }
  }

  @Test
  void onlyALicensedStationMayOfferACommand() {
    SmallCase mission = silent();
    PlanOutcome plan = plan(mission, TWENTY_HOURS, USUAL, RESET);
    int near =
        mission.with(
            workers ->
                (int)
                    Diagnosis.of(mission.input(), workers).windows().stream()
                        .filter(window -> window.station() == 0)
                        .count());
    assertTrue(near > 0);
    assertEquals(near, all(plan, "reset").size());
  }

  @Test
  void hazardIsNothingWhenNoPossibilityCanReceive() {
    SmallCase mission = silent();
    // a receiver that is powered in no state the bus is ever in
    mission.bodies.receiver = new PowerModel.Receiver(Set.of(), 1);
    for (OptionValue reset : all(plan(mission, TWENTY_HOURS, USUAL, RESET), "reset")) {
      assertEquals(0, reset.reach().orElseThrow());
      assertEquals(0, reset.hazard());
    }
  }

  @Test
  void aResetReachesAHungComputerAndAddsToTheChance() {
    SmallCase mission = silent();
    List<OptionValue> resets = all(plan(mission, TWENTY_HOURS, USUAL, WIDE, RESET), "reset");
    OptionValue first = resets.get(0);
    assertTrue(first.reach().orElseThrow() > 0.3, "reach " + first.reach());
    PlanOutcome plan = plan(mission, TWENTY_HOURS, USUAL, WIDE, RESET);
    double listening = all(plan, "usual").get(0).heardByHorizon();
    assertTrue(
        first.heardByHorizon() > listening + 0.03, listening + " to " + first.heardByHorizon());
  }

  @Test
  void aResetAddsNothingWhereNothingHangs() {
    SmallCase mission = silent();
    mission.causes.removeIf(cause -> cause.effects().get(0) instanceof Effect.ComputerHung);
    PlanOutcome plan = plan(mission, TWENTY_HOURS, USUAL, RESET);
    OptionValue reset = all(plan, "reset").get(0);
    double listening = all(plan, "usual").get(0).heardByHorizon();
    assertEquals(listening, reset.heardByHorizon(), 0.03);
  }

  @Test
  void wideListeningHearsATransmitterThatIsOffFrequency() {
    SmallCase mission = silent();
    mission.causes.clear();
    mission.causes.add(
        SmallCase.cause(
            "off",
            0.9,
            hark.ensemble.Cause.Onset.SEPARATION,
            new Effect.OffFrequency(Uncertain.of(6000))));
    mission.evidence.clear();
    PlanOutcome plan = plan(mission, TWENTY_HOURS, USUAL, WIDE);
    double usual = sum(all(plan, "usual"), OptionValue::heardThisPass);
    double wide = sum(all(plan, "wide"), OptionValue::heardThisPass);
    assertTrue(wide > 2 * usual, usual + " against " + wide);
  }

  private static double sum(List<OptionValue> values, Function<OptionValue, Double> number) {
    return values.stream().mapToDouble(number::apply).sum();
  }

  @Test
  void aPlanKeepsToItsHoursAndMoreHoursHearMore() {
    SmallCase mission = silent();
    PlanOutcome few = plan(mission, new PlanSettings(1.5, 0.2), USUAL, WIDE);
    PlanOutcome many = plan(mission, TWENTY_HOURS, USUAL, WIDE);
    for (PlanOutcome plan : List.of(few, many)) {
      for (PlanBook.WeekHours week : plan.book().weeks(plan.book().proposed())) {
        assertTrue(week.planned() <= week.granted() + 1e-9, week.toString());
      }
    }
    assertTrue(few.choices().size() < many.choices().size());
    assertTrue(many.heardByHorizon() > few.heardByHorizon());
    assertTrue(many.meanDaysToHear() < few.meanDaysToHear());
    assertTrue(few.heardByHorizon() <= few.upperBound() + 0.02);
  }

  @Test
  void theCaseForGoingOnRises() {
    List<double[]> points = plan(silent(), TWENTY_HOURS, USUAL, WIDE).goingOn();
    assertTrue(points.size() > 2);
    for (int k = 1; k < points.size(); k++) {
      assertTrue(points.get(k)[0] >= points.get(k - 1)[0]);
      assertTrue(points.get(k)[1] >= points.get(k - 1)[1] - 1e-9);
    }
  }

  @Test
  void ofTwoWaysThatHearTheSameThePlainerIsPlanned() {
    Procedure fancy =
        procedure(
            "fancy",
            new Procedure.Listen(
                Optional.of(Way.RECORDING), Optional.of(10_000.0), 0.001, false, 0));
    PlanOutcome plan = plan(silent(), TWENTY_HOURS, fancy, WIDE);
    assertTrue(plan.choices().values().stream().anyMatch(WIDE::equals));
    assertTrue(plan.choices().values().stream().noneMatch(fancy::equals));
  }

  @Test
  void passesAreNotIndependentOfEachOther() {
    PlanOutcome plan = plan(silent(), TWENTY_HOURS, WIDE);
    double missedAll = 1;
    for (OptionValue wide : all(plan, "wide")) {
      missedAll *= 1 - wide.heardThisPass();
    }
    // a silent satellite is silent on every pass for one and the same reason
    assertTrue(
        plan.upperBound() < 1 - missedAll - 0.05,
        plan.upperBound() + " against " + (1 - missedAll));
  }

  @Test
  void informationOfTheStatedExampleIsExact() {
    // prior (.4,.3,.2,.1), P(+|h) (.9,.1,.5,.05): gain .442991 bit. Source: arithmetic in checks,
    // expected information.
    double[] prior = {0.4, 0.3, 0.2, 0.1};
    double[] positive = {0.9, 0.1, 0.5, 0.05};
    double mean = 0;
    double within = 0;
    for (int h = 0; h < prior.length; h++) {
      mean += prior[h] * positive[h];
      within += prior[h] * Information.entropy(positive[h]);
    }
    assertEquals(0.442991, Information.entropy(mean) - within, 5e-7);
  }
}

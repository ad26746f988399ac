package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.assessment.Examination;
import hark.assessment.ReviewCase;
import hark.assessment.ReviewCase.Dated;
import hark.assessment.ReviewCase.Shift;
import hark.assessment.ReviewCase.Step;
import hark.document.CaseJson;
import hark.orbit.EarthModel;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The case for going on, on the demo, two days ahead: its numbers are the assessment's. */
class DemoCaseTest {
  private static final DemoMission DEMO = DemoMission.load();
  private static Examination examined;
  private static Assessment answer;
  private static ReviewCase made;

  @BeforeAll
  static void examine() {
    Instant now = DEMO.mission().now().orElseThrow();
    examined =
        Assessor.examine(
            DEMO.mission(),
            DEMO.entries(),
            new AssessmentRequest(now, 2, 60, 1, 2),
            EarthModel.bundled());
    answer = examined.assessment();
    made = examined.goingOn().made();
  }

  @Test
  void headlineAndCurveAreThoseOfThePlan() {
    assertEquals(answer.plan().heardByHorizon(), made.found());
    assertEquals(answer.plan().costHours(), made.hours());
    assertEquals(answer.goingOn(), made.curve());
    double added = made.steps().stream().mapToDouble(Step::adds).sum();
    double most = answer.goingOn().get(answer.goingOn().size() - 1).heard();
    assertTrue(added > 0 && added <= most + 1e-9, added + " of " + most);
  }

  /** Listening worked out again on a sample of its own, without the plan's sums. */
  @Test
  void listeningFindsWhatThePlanSaysButForItsCommandAndSampling() {
    double fourErrors = 4 * Math.max(0.01, made.foundError());
    boolean sends =
        answer.plan().choices().stream().anyMatch(c -> c.procedure().startsWith("blind"));
    assertTrue(made.byListening() <= made.found() + fourErrors, "listening " + made.byListening());
    if (!sends) {
      assertEquals(made.found(), made.byListening(), fourErrors);
    }
  }

  @Test
  void everyPossibilityIsInOneGroup() {
    double sum = made.unheard().stream().mapToDouble(ReviewCase.Unheard::weight).sum();
    assertEquals(1, sum + made.notWorkedOut(), 1e-6);
    assertEquals(answer.remainder(), made.notWorkedOut());
    double reachable = weight("sends") + weight("comes-back");
    // the plan listens less well than the widest ears everywhere, but for sampling
    assertTrue(reachable >= made.byListening() - 0.03, reachable + " " + made.byListening());
  }

  private static double weight(String id) {
    return made.unheard().stream()
        .filter(group -> group.id().equals(id))
        .mapToDouble(ReviewCase.Unheard::weight)
        .sum();
  }

  /** A transmitter that is dead is heard by nobody: all of that explanation is out of hope. */
  @Test
  void aDeadTransmitterIsSilent() {
    double dead =
        answer.explanations().stream()
            .filter(e -> e.events().contains("transmitter_dead"))
            .mapToDouble(Assessment.Explanation::posterior)
            .sum();
    assertTrue(dead > 0.01 && weight("silent") >= dead - 1e-6, dead + " " + weight("silent"));
  }

  @Test
  void aPriorMovesTheChanceTheWayItsCauseIsHeard() {
    Shift shortfall = shift("prior of array shortfall");
    Shift dead = shift("prior of transmitter dead");
    assertTrue(shortfall.low() < made.found() && made.found() < shortfall.high(), "" + shortfall);
    assertTrue(dead.low() > made.found() && made.found() > dead.high(), "" + dead);
  }

  @Test
  void fewerHoursAndADeafStationFindNoMore() {
    assertTrue(shift("people's hours").low() <= made.found() + 1e-9);
    assertTrue(shift("people's hours").high() >= made.found() - 1e-9);
    for (String station : List.of("Saltmere", "Cinderholm")) {
      assertTrue(shift(station).low() <= made.found() + 1e-9, "" + shift(station));
      assertTrue(shift(station).high() >= made.found() - 1e-9, "" + shift(station));
    }
  }

  private static Shift shift(String assumption) {
    return made.shifts().stream()
        .filter(shift -> shift.assumption().equals(assumption))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void datesLieAheadInOrderAndTheOrbitOutlastsThem() {
    Instant before = made.now();
    for (Dated date : made.dates()) {
      assertFalse(date.from().isBefore(before), date.what());
      assertTrue(Double.isNaN(date.weight()) || date.weight() <= 1, date.what());
      before = date.from();
    }
    ReviewCase.LastDate orbit = made.orbit().orElseThrow();
    assertTrue(orbit.early().isBefore(orbit.middle().orElseThrow()));
    assertTrue(orbit.middle().orElseThrow().isBefore(orbit.late().orElseThrow()));
    // the demo flies at 508 km with 0.0104 m² for each kg
    assertEquals(508, orbit.heightKm(), 3);
    assertEquals(0.028 / 2.7, orbit.areaPerMass(), 1e-9);
  }

  @Test
  void theCheapestWatchIsTheStationThatRecordsByItself() {
    ReviewCase.Watch watch = made.watch().orElseThrow();
    assertEquals("Cinderholm", watch.station());
    assertTrue(watch.unattended());
    long windows = answer.windows().stream().filter(w -> w.station().equals("Cinderholm")).count();
    assertEquals(windows, watch.windows());
    assertTrue(watch.found() > 0 && watch.found() <= 1);
    assertTrue(watch.hoursPerWeek() < answer.crewHoursPerWeek());
  }

  @Test
  void theSameQuestionHasTheSameBytesAndAnotherGainOnlyMovesItsMark() {
    assertEquals(CaseJson.text(made), CaseJson.text(examined.goingOn().made()));
    ReviewCase lavish = examined.goingOn().made(0.5);
    assertEquals(made.dates().size(), lavish.dates().size());
    assertEquals(made.found(), lavish.found());
    double early = lavish.effort().fromHours().orElse(1e9);
    assertTrue(early <= made.effort().fromHours().orElse(1e9));
    assertThrows(BadInput.class, () -> examined.goingOn().made(0));
    assertThrows(BadInput.class, () -> examined.goingOn().made(Double.NaN));
  }
}

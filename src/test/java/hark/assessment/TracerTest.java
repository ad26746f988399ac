package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.MemberTrace.Row;
import hark.power.BodyHistory;
import hark.power.BodyHistory.Transition;
import hark.problem.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A trace shows the body that was simulated, change by change. */
class TracerTest {
  private static final EnergyCase CASE = new EnergyCase();

  /** A step that the fan's grid, which begins 94 minutes past a day, falls on. */
  private static final int STEP_SECONDS = 120;

  private static MemberTrace trace(int member) {
    return new Tracer(CASE.list, CASE.list.input().body()).trace(member, STEP_SECONDS);
  }

  @Test
  void everyChangeOfTheHistoryIsInTheTraceAndNoOther() {
    int changes = 0;
    for (int k = 0; k < CASE.asIs.sample().count(); k += 7) {
      List<Transition> expected = CASE.asIs.history(k).transitions();
      List<Row> found =
          trace(CASE.asIs.sample().body()[k] + 1).rows().stream()
              .filter(row -> row.change().isPresent())
              .toList();
      assertEquals(expected.size(), found.size());
      for (int i = 0; i < found.size(); i++) {
        assertEquals(CASE.list.input().instant(expected.get(i).seconds()), found.get(i).time());
        assertEquals(Course.word(expected.get(i).to()), found.get(i).state());
        assertEquals(Course.words(expected.get(i).reason()), found.get(i).change().orElseThrow());
      }
      changes += found.size();
    }
    assertTrue(changes > 50, "the bodies do change state: " + changes);
  }

  @Test
  void theChargeOfTheTraceIsThatOfTheHistory() {
    int body = CASE.asIs.sample().body()[0];
    BodyHistory history = CASE.asIs.history(0);
    List<Row> rows = trace(body + 1).rows();
    for (int g = 0; g < history.soc().length; g++) {
      var time = CASE.list.input().instant(history.gridStart() + g * history.gridStep());
      Row row = rows.stream().filter(r -> r.time().equals(time)).findFirst().orElseThrow();
      assertEquals(history.soc()[g], row.soc(), 1e-6);
    }
  }

  @Test
  void powerFlowsIntoTheBatteryOnlyInSunlight() {
    for (Row row : trace(1).rows()) {
      assertTrue(row.sunlit() > 0 || row.batteryAmps() <= 0, row.toString());
      assertTrue(row.sunlit() > 0 || row.arrayWatts() == 0, row.toString());
    }
  }

  @Test
  void drawnNumbersAndWeightsAreThoseOfTheEnsemble() {
    double sum = 0;
    for (int member = 1; member <= CASE.list.count(); member++) {
      sum += CASE.list.weight(member - 1);
    }
    assertEquals(1, sum, 1e-9);
    MemberTrace trace = trace(5);
    assertEquals(List.of("soc", "area"), List.copyOf(trace.body().keySet()));
    double soc = trace.body().get("soc");
    assertTrue(soc >= 0.55 && soc <= 0.95);
    assertEquals(soc, trace.rows().get(0).soc(), 1e-3);
  }

  @Test
  void aMemberThatIsNotThereIsRefusedWithTheNumbersThatAre() {
    for (int member : new int[] {0, -1, CASE.list.count() + 1}) {
      BadInput bad = assertThrows(BadInput.class, () -> trace(member));
      assertTrue(bad.problems().get(0).mend().contains("1 to " + CASE.list.count()));
    }
    Tracer tracer = new Tracer(CASE.list, CASE.list.input().body());
    assertThrows(BadInput.class, () -> tracer.trace(1, 0));
    assertThrows(BadInput.class, () -> tracer.trace(1, 1));
  }
}

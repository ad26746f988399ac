package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.document.AssessmentJson;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.link.Way;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The whole road on the demo, one day ahead: the truths that hold for every mission. */
class DemoAnswerTest {
  private static final DemoMission DEMO = DemoMission.load();
  private static Assessment answer;

  @BeforeAll
  static void assess() {
    answer = assess(DEMO.entries(), 2);
  }

  private static Assessment assess(List<Entry> entries, int threads) {
    Instant now = DEMO.mission().now().orElseThrow();
    return Assessor.assess(DEMO.mission(), entries, new AssessmentRequest(now, 1, 60, 1, threads));
  }

  private static Entry silence(int number, Instant from) {
    Evidence what =
        new Evidence.NothingHeard(
            "Saltmere",
            from,
            from.plusSeconds(500),
            Optional.of(Way.DECODER),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            0,
            Optional.empty(),
            0);
    Map<String, String> keys =
        Map.of(
            "station",
            "Saltmere",
            "from",
            from.toString(),
            "to",
            from.plusSeconds(500).toString(),
            "way",
            "decoder");
    return new Entry(number, from.plusSeconds(600), "", "", keys, what);
  }

  @Test
  void explanationsAndRemainderSumToOne() {
    double sum =
        answer.explanations().stream().mapToDouble(Assessment.Explanation::posterior).sum();
    assertEquals(1, sum + answer.remainder(), 1e-9);
    double prior = answer.explanations().stream().mapToDouble(Assessment.Explanation::prior).sum();
    assertTrue(prior < 1 && prior > 0.98, "sets of three and more are left out: " + prior);
  }

  @Test
  void theSameFolderGivesTheSameBytesInAnyOrderAndWithAnyThreads() {
    List<Entry> turned = new ArrayList<>(DEMO.entries());
    Collections.reverse(turned);
    assertEquals(AssessmentJson.text(answer), AssessmentJson.text(assess(turned, 1)));
  }

  @Test
  void anEntryAndItsWithdrawalLeaveNothingBehind() {
    Instant pass = Instant.parse("2026-10-12T22:34:00Z");
    int next = DEMO.entries().size() + 1;
    List<Entry> more = new ArrayList<>(DEMO.entries());
    more.add(silence(next, pass));
    assertNotEquals(answer.explanations(), assess(more, 2).explanations());
    Instant later = pass.plusSeconds(3600);
    Map<String, String> keys = Map.of("of", String.valueOf(next), "withdrawn", "yes");
    more.add(
        new Entry(next + 1, later, "", "", keys, new Evidence.Correction(later, next, Map.of())));
    assertEquals(AssessmentJson.text(answer), AssessmentJson.text(assess(more, 2)));
  }

  @Test
  void everyWindowHasTheNumbersOfTheContract() {
    assertTrue(answer.windows().size() >= 6);
    for (Assessment.Window window : answer.windows()) {
      assertTrue(window.beaconOn() >= 0 && window.beaconOn() <= 1);
      assertTrue(window.socP25() <= window.socP50() && window.socP50() <= window.socP75());
      for (Assessment.Option option : window.options()) {
        assertTrue(option.heardThisPass() <= option.heardByHorizon() + 0.05, option.procedure());
        assertTrue(option.hazard() <= option.reach().orElse(0.0) + 0.05, option.procedure());
        assertTrue(!option.why().isBlank());
      }
      boolean waits =
          window.options().stream().anyMatch(option -> option.procedure().equals("send-nothing"));
      assertTrue(waits, "send nothing and let it charge is always there");
    }
  }
}

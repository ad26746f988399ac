package hark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.Assessment.EvidenceView;
import hark.assessment.AssessmentFixture;
import hark.assessment.TreeDisagreement;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What speaks against the numbers is said in words. */
class DoubtsTest {
  private static EvidenceView entry(int number, double tail) {
    return new EvidenceView(
        number,
        Instant.parse("2026-11-06T15:24:00Z"),
        "telemetry",
        "battery at 7.05 V",
        Map.of(),
        OptionalDouble.of(tail));
  }

  @Test
  void chancesAreSaidAsOneInSoMany() {
    assertEquals("chance 1 in 300", Doubts.chance(1 / 301.0));
    assertEquals("chance 1 in 20", Doubts.chance(0.05));
    assertEquals("chance 1 in 3", Doubts.chance(0.31));
    assertEquals("chance under 1 in 100 000", Doubts.chance(0));
    assertEquals("chance under 1 in 100 000", Doubts.chance(1e-7));
  }

  @Test
  void anEntryThatNothingExplainsIsNamedWithItsTime() {
    Assessment odd =
        AssessmentFixture.sandpiper()
            .evidence(List.of(entry(14, 1 / 300.0), entry(2, 0.2)))
            .build();
    List<String> doubts = Doubts.of(odd);
    assertEquals(1, doubts.size(), doubts::toString);
    assertTrue(doubts.get(0).startsWith("No possibility explains entry 14 well (chance 1 in 300)"));
    assertTrue(doubts.get(0).contains("“battery at 7.05 V” of 6 Nov 15:24Z"), doubts.get(0));
    String brief = Brief.of(odd, false).replaceAll("\\s+", " ");
    assertTrue(brief.contains("Beware: No possibility explains entry 14 well"), brief);
  }

  @Test
  void theOddestComeFirstAndTheRestAreCounted() {
    Assessment odd =
        AssessmentFixture.sandpiper()
            .evidence(List.of(entry(1, 0.009), entry(2, 0.001), entry(3, 0.002), entry(4, 0.003)))
            .build();
    List<String> doubts = Doubts.of(odd);
    assertTrue(doubts.get(0).contains("entry 2 "), doubts::toString);
    assertEquals("So it is with 1 entry more.", doubts.get(3));
  }

  @Test
  void whatTreeAndSimulationSayOtherwiseIsToldWithAll() {
    TreeDisagreement one = new TreeDisagreement(List.of("x"), "weak battery", true, 6 / 7.0, 7);
    Assessment a = AssessmentFixture.sandpiper().treeDisagreements(List.of(one)).build();
    String all = Brief.of(a, true).replaceAll("\\s+", " ");
    assertTrue(all.contains("weak battery (heard in 6 of 7 bodies)"), all);
    assertEquals("", Doubts.tree(AssessmentFixture.sandpiper().build()));
  }

  @Test
  void explanationsAndTheRemainderMakeAWhole() {
    Assessment a = AssessmentFixture.sandpiper().build();
    double now = a.explanations().stream().mapToDouble(Assessment.Explanation::posterior).sum();
    assertEquals(1, now + a.remainder(), 1e-9);
    String all = Brief.of(a, true).replaceAll("\\s+", " ");
    assertTrue(all.contains("1 % at separation, 1 % now if they fit as pairs do on average"), all);
  }
}

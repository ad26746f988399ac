package hark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.AssessmentFixture;
import hark.evidence.Entry;
import hark.evidence.EvidenceContext;
import hark.evidence.EvidenceText;
import java.util.List;
import java.util.Map;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The fields are those crews write down (common practice); only people's own are left to them. */
class RunbookEntryTest {
  private static final Assessment ASSESSMENT = AssessmentFixture.sandpiper().build();

  private static Entry entry(int number, String kind, Map<String, String> keys, String note) {
    EvidenceContext context = EvidenceContext.alreadyChecked(AssessmentFixture.NOW);
    return new Entry(
        number,
        AssessmentFixture.NOW,
        "scribe",
        note,
        keys,
        EvidenceText.parse(kind, keys, context));
  }

  private static List<Entry> entries() {
    Map<String, String> silent =
        Map.of("station", "Fen Hill", "from", "2026-11-07T10:00:00Z", "to", "2026-11-07T10:09:00Z");
    Map<String, String> heard =
        Map.of("station", "Quay", "from", "2026-11-06T15:22:40Z", "to", "2026-11-06T15:27:00Z");
    return List.of(entry(2, "heard", heard, ""), entry(4, "nothing-heard", silent, "wind | rain"));
  }

  private static String text() {
    return RunbookEntry.of(ASSESSMENT, FactsFixture.facts(), entries());
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "Entry",
        "Version",
        "Author",
        "Approver",
        "Found at",
        "Last nominal",
        "State of the vehicle",
        "Symptom, facts only",
        "Severity",
        "Ground or space",
        "Owner",
        "Authority",
        "Closure",
        "Lessons",
        "Trigger",
        "Purpose",
        "Preconditions",
        "Roles",
        "Time-critical",
        "Exit test",
        "Rollback",
        "References",
        "Tested on",
        "Pass",
        "AOS, culmination, LOS",
        "Sunlight",
        "Battery, middle half",
        "Beacon on",
        "Listen to",
        "Transmit",
        "Stop",
        "Station check",
        "Recording file",
        "Who",
        "Present hypotheses",
        "Last action",
        "Pending timers",
        "Next passes",
        "Open anomalies",
        "Equipment",
        "Standing orders"
      })
  void everyFieldOfPracticeIsThereAndHasAValue(String field) {
    List<String> rows = text().lines().filter(l -> l.startsWith("| " + field + " | ")).toList();
    assertFalse(rows.isEmpty(), field);
    rows.forEach(r -> assertFalse(r.endsWith("|  |"), r));
  }

  @Test
  void onlyWhatPeopleMustDecideIsLeftToThem() {
    List<String> open =
        text()
            .lines()
            .filter(l -> l.startsWith("|") && l.contains(RunbookEntry.TO_FILL))
            .map(l -> l.substring(2, l.indexOf(" |", 2)))
            .distinct()
            .toList();
    assertEquals(List.of("Author", "Approver", "Owner", "Who"), open);
  }

  @Test
  void theNumbersAreThoseOfTheAssessment() {
    String text = text();
    assertTrue(
        text.contains("**On 14 Nov at 10:42:20Z, listen wide at Fen Hill for nine minutes. Do"));
    assertTrue(
        text.contains("| undervoltage loop | 8 % | 30 ± 2 % | short bursts late in sunlight |"));
    assertTrue(text.contains("7 Nov 2026 10:00Z, the first pass without a sound"), text);
    assertTrue(text.contains("Fen Hill works, 98 %; Quay works, 92 %"));
  }

  @Test
  void thePassPlanNamesElementsTheirAgeAndWhatTheyLeaveUncertain() {
    String text = text();
    double twoDays = 2;
    double sigma = Math.sqrt(3 * 3 + 2 * twoDays * 2 * twoDays);
    assertEquals(5, sigma, 1e-12);
    assertTrue(text.contains("elements of 12 Nov 2026 10:42Z, 2 days old, so ± 5 s (1 σ)"), text);
    assertTrue(text.contains("main at 437.2 MHz, frames, linear"), text);
  }

  @Test
  void aPlannedCommandShowsLicencePowerAndHarm() {
    String text = text();
    assertTrue(text.contains("blind low-power mode at 437.2 MHz, 50 W; licence of the club"), text);
    assertTrue(text.contains("to be authorised by lead or deputy"), text);
    assertTrue(text.contains("in 1 % it delays the first sound"), text);
  }

  @Test
  void wordsThatPeopleTypedCannotBreakTheTableOrInjectMarkup() {
    assertTrue(text().contains("wind \\| rain"));
    assertEquals("a &lt;b&gt; \\*c\\*", Markdown.plain("a\n<b> *c*"));
  }

  @Test
  void itIsMarkdownThatRenders() {
    String html = HtmlRenderer.builder().build().render(Parser.builder().build().parse(text()));
    assertTrue(html.contains("<h1>Contact lost: Sandpiper</h1>"));
    assertTrue(html.contains("<h2>Pass plan</h2>"));
    assertTrue(html.contains("<ol>"));
  }

  @Test
  void itsNameIsFitForAFile() {
    assertEquals("sandpiper-20261114T093000Z", RunbookEntry.id(ASSESSMENT));
  }

  @Test
  void withoutWindowsItStillReads() {
    Assessment empty = AssessmentFixture.sandpiper().windows(List.of()).build();
    String text = RunbookEntry.of(empty, FactsFixture.facts(), List.of());
    assertTrue(text.contains("Nothing is planned in the next 3 days."), text);
    assertTrue(text.contains("Nothing is logged."), text);
  }
}

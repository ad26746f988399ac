package hark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.assessment.ReviewCase;
import hark.assessment.ReviewCaseFixture;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class CasePageTest {
  private static final ReviewCase MADE = ReviewCaseFixture.sandpiper();

  /** Prose is broken at any blank; whatever it is broken at, the words stand in this order. */
  private static void says(String text, String words) {
    assertTrue(text.replaceAll("\\s+", " ").contains(words), "lacks “" + words + "” in\n" + text);
  }

  @Test
  void theAnswerStandsFirst() {
    String[] lines = CasePage.text(MADE).split("\n");
    assertTrue(lines[0].startsWith("The case for going on: Sandpiper"), lines[0]);
    says(
        String.join(" ", List.of(lines).subList(2, 6)),
        "8.5 h of people's time hear it with 34 ± 2 %, by listening alone with 29 %.");
  }

  @Test
  void everyNumberOfTheCaseIsOnThePage() {
    for (String page : List.of(CasePage.text(MADE), CasePage.markdown(MADE))) {
      says(page, "The next 10 h of people's time find 34 %; the 10 h after that add 9 %.");
      says(page, "could add at most 21 %");
      says(page, "not known");
      says(page, "between August 2027");
      says(page, "more than a century");
      says(page, "array shortfall 22 %");
      says(page, "spacecraft lost 22 %");
      says(page, "1.4 h of people's time a week, and 25 %");
      says(page, "halved: 28 %");
      says(page, "people decide");
      says(page, "Nothing in these numbers.");
    }
  }

  /** Side by side on a terminal, a long cell goes on below itself: asked of the Markdown. */
  @Test
  void datesStandWithTheirSpreadAndTheirEnd() {
    says(CasePage.markdown(MADE), "22 Nov 2026 to 29 Nov 2026");
    says(CasePage.markdown(MADE), "2 Feb 2027 ± 3 d to 20 Feb 2027");
  }

  @Test
  void noLineIsWiderThanThePage() {
    CasePage.text(MADE).lines().forEach(l -> assertTrue(l.length() <= Page.WIDTH, l));
  }

  @Test
  void aNameCannotMarkUpTheMarkdown() {
    String page = CasePage.markdown(MADE);
    assertTrue(page.startsWith("# The case for going on: Sandpiper \\| one\n"), page);
    for (String line : page.split("\n")) {
      if (line.startsWith("| ") && !line.contains("---")) {
        assertFalse(line.replace("\\|", "").chars().filter(c -> c == '|').count() > 5, line);
      }
    }
  }

  @Test
  void itSaysWhenStoppingIsDefensibleAndNeverThatItIsRight() {
    for (String word : List.of("should", "must stop", "recommend", "verdict")) {
      assertFalse(CasePage.text(MADE).contains(word), word);
    }
  }

  @Test
  void theJsonHasTheShapeItsDescriptionPromises() throws IOException {
    JsonNode top = new ObjectMapper().readTree(CaseJson.text(MADE));
    assertEquals(0.34, top.get("found").asDouble());
    assertTrue(top.get("effort").get("fromHours").isNull());
    assertTrue(top.get("dates").get(1).get("weight").isNull());
    assertTrue(top.get("orbit").get("late").isNull());
    assertEquals("2027-08-01T00:00:00.000Z", top.get("orbit").get("early").asText());
    double sum = top.get("notWorkedOut").asDouble();
    for (JsonNode group : top.get("unheard")) {
      sum += group.get("weight").asDouble();
    }
    assertEquals(1, sum, 1e-9);
    assertEquals("Quay", top.get("watch").get("station").asText());
    assertEquals(0.41, top.get("shifts").get(0).get("high").asDouble());
  }
}

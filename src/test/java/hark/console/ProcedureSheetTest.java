package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.mission.Procedures;
import hark.plan.Procedure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProcedureSheetTest {
  private static JsonNode sheet(Procedure procedure) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    new ProcedureSheet().into(node, procedure);
    return node;
  }

  private static Procedure procedure(String markdown) {
    return new Procedure(
        "own",
        "own",
        Procedure.Kind.DESK,
        List.of("receiver"),
        new Procedure.SelfCheck(),
        0.5,
        List.of("Only *then*."),
        List.of(),
        markdown);
  }

  private static JsonNode steps(JsonNode sheet) {
    return sheet.get("parts").valueStream().filter(p -> p.has("steps")).findFirst().orElseThrow();
  }

  static List<Procedure> stock() {
    return Procedures.stock();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("stock")
  void everyStockStepSaysWhatIfNot(Procedure procedure) {
    for (JsonNode part : sheet(procedure).get("parts")) {
      for (JsonNode step : part.path("steps")) {
        assertFalse(step.path("text").asText().isBlank(), step.toString());
        assertFalse(step.path("ifNot").asText().isBlank(), step.toString());
        assertFalse(step.get("ifNot").asText().toLowerCase().startsWith("if not"), step.toString());
      }
    }
  }

  @Test
  void aStepIsTakenApart() {
    JsonNode step =
        steps(
                sheet(
                    procedure(
                        "# Own\n\nWhy.\n\n## Steps\n\n1. Press *it*.\n   - Expect a `click`. Time-out: one"
                            + " minute.\n   - **If not** (no click): go home.\n   - Keep the key.\n")))
            .at("/steps/0");
    assertEquals("Press <em>it</em>.", step.get("text").asText());
    assertEquals("a <code>click</code>.", step.get("expect").asText());
    assertEquals("one minute.", step.get("timeOut").asText());
    assertEquals("(no click): go home.", step.get("ifNot").asText());
    assertTrue(step.get("more").asText().contains("Keep the key."), step.toString());
  }

  @Test
  void whatStandsOnOneLineOfAStepStaysTogether() {
    JsonNode step =
        steps(sheet(procedure("## Steps\n\n1. Look. Expected: light. If not: wait.\n")))
            .at("/steps/0");
    assertEquals("Look. Expected: light. If not: wait.", step.get("text").asText());
  }

  @Test
  void partsKeepTheirOrderAndNothingIsLost() {
    JsonNode parts =
        sheet(
                procedure(
                    "First.\n\n## Steps\n\nBefore.\n\n1. One.\n\nAfter.\n\n## Exit test\n\nDone.\n"))
            .get("parts");
    List<String> titles = parts.valueStream().map(p -> p.get("title").asText()).toList();
    assertEquals(List.of("", "Steps", "", "", "Exit test"), titles);
    String all = parts.toString();
    for (String words : List.of("First.", "Before.", "One.", "After.", "Done.")) {
      assertTrue(all.contains(words), words);
    }
  }

  @Test
  void rawHtmlIsShownAsText() {
    String all =
        sheet(procedure("<script>x</script>\n\n1. <img src=x>\n   - Expect <b>it</b>.\n"))
            .toString();
    assertFalse(all.contains("<script") || all.contains("<img") || all.contains("<b>"), all);
  }
}

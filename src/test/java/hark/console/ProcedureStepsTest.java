package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hark.assessment.Assessment.ProcedureView;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.plan.Procedure;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProcedureStepsTest {
  private static JsonNode of(String markdown) {
    return new ProcedureSteps()
        .of(
            new ProcedureView(
                "p", "a *title*", "listen", List.of("Mind the *mast*."), List.of(), markdown));
  }

  @Test
  void numberedItemsAreStepsWithWhatToExpectBesideThem() {
    JsonNode steps =
        of(
            "# Title\n\nPurpose.\n\n## Steps\n\n1. Listen.\n   - Expect a tone.\n2. Write it down.\n\n## Stop\n\n- Wind.\n");
    assertEquals("Mind the <em>mast</em>.", steps.get("cautions").get(0).asText());
    JsonNode sections = steps.get("sections");
    assertEquals(3, sections.size());
    assertEquals("<p>Purpose.</p>\n", sections.get(0).get("html").asText());
    JsonNode first = sections.get(1).get("steps").get(0);
    assertEquals("Steps", sections.get(1).get("title").asText());
    assertEquals("Listen.", first.get("html").asText());
    assertTrue(first.get("detail").asText().contains("Expect a tone."));
    assertEquals(2, sections.get(1).get("steps").size());
    assertEquals(0, sections.get(2).get("steps").size());
  }

  @Test
  void rawHtmlAndScriptsAreOnlyText() {
    String said =
        of("## Steps\n\n1. <img src=x onerror=alert(1)> [go](javascript:alert(1))\n").toString();
    assertFalse(said.contains("<img"), said);
    assertFalse(said.contains("javascript:"), said);
  }

  @Test
  void everyProcedureOfTheProgramHasSteps() {
    List<Procedure> all = Missions.read(ResourceFolder.of("hark/demo")).procedures();
    assertTrue(all.size() > 8);
    for (Procedure each : all) {
      ProcedureView view =
          new ProcedureView(
              each.id(),
              each.title(),
              "listen",
              each.cautions(),
              each.forbiddenIf(),
              each.markdown());
      int steps = 0;
      for (JsonNode section : new ProcedureSteps().of(view).get("sections")) {
        steps += section.get("steps").size();
      }
      assertTrue(steps >= 2, each.id() + " has " + steps);
    }
  }
}

package hark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.Assessment.ProcedureView;
import hark.assessment.Assessment.Window;
import hark.assessment.AssessmentFixture;
import hark.problem.BadInput;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Fields are those of a pass plan and a pass log (common practice). */
class PassSheetTest {
  private static final Assessment ASSESSMENT = AssessmentFixture.sandpiper().build();

  private static String sheet(Optional<String> id) {
    return PassSheet.of(ASSESSMENT, FactsFixture.facts(), id);
  }

  @Test
  void itIsTheNextPlannedPassWithItsCautionsFirst() {
    Window next = Options.planned(ASSESSMENT).get(0);
    String text = sheet(Optional.empty());
    assertTrue(text.startsWith("# Sandpiper, " + next.station() + ", "), text.substring(0, 80));
    ProcedureView procedure =
        Options.procedure(ASSESSMENT, next.planned().orElseThrow()).orElseThrow();
    for (String caution : procedure.cautions()) {
      int said = text.indexOf("- " + Markdown.plain(caution));
      assertTrue(said > 0 && said < text.indexOf("## The pass"), caution);
    }
  }

  @Test
  void planProcedureAndRoomForTheLogAreOnIt() {
    String text = sheet(Optional.empty());
    for (String field :
        new String[] {
          "| AOS, culmination, LOS |",
          "| Sunlight |",
          "| Battery, middle half |",
          "| Listen to |",
          "| Transmit |",
          "## Log",
          "| Noise floor, dB |",
          "| Recording file |"
        }) {
      assertTrue(text.contains(field), "lacks " + field);
    }
  }

  @Test
  void anyOtherPassCanBeAskedForAndSaysWhenItIsNotPlanned() {
    Window open =
        ASSESSMENT.windows().stream().filter(w -> w.planned().isEmpty()).findFirst().orElseThrow();
    String text = sheet(Optional.of(open.id()));
    assertTrue(text.contains("Not planned."), text);
    assertTrue(text.contains(open.station()));
  }

  @Test
  void anUnknownPassIsRefusedWithSomeThatAreKnown() {
    BadInput bad = assertThrows(BadInput.class, () -> sheet(Optional.of("Nowhere")));
    assertEquals(1, bad.problems().size());
    String known = Options.ahead(ASSESSMENT).get(0).id();
    assertTrue(bad.problems().get(0).mend().contains(known), bad.problems().get(0).mend());
  }
}

package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.BadInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CausesEditTest {
  private static final double ROUNDING = 1e-12;

  private static double prior(String yaml, String id) {
    return CausesFile.read("causes.yaml", yaml).causes().stream()
        .filter(cause -> cause.id().equals(id))
        .findFirst()
        .orElseThrow()
        .probability();
  }

  @Test
  void aStockCauseGetsItsOwnPriorInAnEmptyFile() {
    String edited = CausesEdit.prior(CausesEdit.nothingOwn(), "latch_up", "0.07");
    assertEquals("hark: 1\nevents:\n  latch_up:\n    probability: 0.07\n", edited);
    assertEquals(0.07, prior(edited, "latch_up"));
  }

  @Test
  void anOwnPriorIsReplacedWhereItStands() {
    String own = "hark: 1\nevents:\n  latch_up: { probability: 0.2 } # measured\n";
    String edited = CausesEdit.prior(own, "latch_up", "0.07");
    assertEquals("hark: 1\nevents:\n  latch_up: { probability: 0.07 } # measured\n", edited);
  }

  @Test
  void aHazardStaysOneAndComesToTheSame() {
    String own = "hark: 1\nevents:\n  latch_up: { hazard_per_day: 0.01 }\n";
    String edited = CausesEdit.prior(own, "latch_up", "0.07");
    assertTrue(edited.contains("hazard_per_day"), edited);
    assertEquals(0.07, prior(edited, "latch_up"), ROUNDING);
  }

  @ParameterizedTest
  @ValueSource(strings = {"much", "1", "-0.1"})
  void whatIsNoPriorOfAHazardIsRefused(String value) {
    String own = "hark: 1\nevents:\n  latch_up: { hazard_per_day: 0.01 }\n";
    assertThrows(BadInput.class, () -> CausesEdit.prior(own, "latch_up", value));
  }
}

package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hark.assessment.Assessment.States;
import hark.assessment.WhatIf.Change;
import hark.assessment.WhatIf.Side;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A what-if is said in one plain sentence. */
class WhatIfWordsTest {
  private static Side side(double median, double off) {
    return new Side(median, 0.1, new States(off, 0, 0, 1 - off), 0.5);
  }

  @Test
  void bothSidesOfTheDifferenceAreSaid() {
    String said =
        WhatIfWords.sentence(
            Map.of("spacecraft.battery.cell.capacity_Ah", "2.0"),
            new Change(side(0.41, 0.07), side(0.30, 0.12)));
    assertEquals(
        "With capacity 2.0 Ah the median charge at the horizon falls from 41 % to 30 %, and it is"
            + " off 12 % of the time instead of 7 %.",
        said);
  }

  @ParameterizedTest
  @CsvSource({
    "spacecraft.bus.loads_W.nominal, 1.2, loads nominal 1.2 W",
    "spacecraft.solar.faces[0].cell_area_cm2, 60, cell area 60 cm²",
    "spacecraft.bus.hold_off_minutes, 5, hold off 5 minutes",
    "spacecraft.battery.heater.W, 2, heater 2 W",
    "spacecraft.attitude.mode, nadir, mode nadir"
  })
  void keysAreReadAsNameAndUnit(String key, String value, String words) {
    assertEquals(words, WhatIfWords.said(key, value));
  }
}

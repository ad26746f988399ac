package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.PowerModel;
import hark.problem.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

class EnergyBalanceTest {
  private final TextFolder good = TextFolder.kittiwake();

  @Test
  void theMeanIsThatOfTheFormula() {
    // Cauchy: a tumbling convex body shows a quarter of its surface. Six faces of 60.4 cm² cells:
    // 1361 · 6 · 60.4e-4 / 4 · 0.29 · (1 − 0.08) · 0.80 · 0.62 W, computed apart from the program.
    PowerModel model = Missions.read(good).body().typical();
    EnergyBalance balance = EnergyBalance.of(model, 0.62);
    assertEquals(1.6317508, balance.arrayWatts(), 1e-6);
    // 0.8 W for 1.5 s in 30 s is 0.04 W.
    assertEquals(0.7 + 0.04, balance.safeWatts(), 1e-12);
  }

  @Test
  void loadsAboveTheArraysAreAWarningThatNamesBoth() {
    List<Problem> found =
        Missions.check(good.replacing("nominal: { median: 1.1, factor: 1.12 }", "nominal: 3"))
            .warnings();
    assertEquals(1, found.size(), found::toString);
    assertEquals("mission.yaml:64 spacecraft.bus.loads_W", found.get(0).where());
    assertTrue(found.get(0).what().contains("nominal mode takes 3.04"), found::toString);
  }

  @Test
  void anArrayThatCannotFeedSafeModeIsSaidInOtherWords() {
    TextFolder weak = good.replacing("cell_efficiency: 0.29", "cell_efficiency: 0.11");
    List<Problem> found = Missions.check(weak).warnings();
    assertTrue(found.get(0).what().contains("safe mode takes 0.74"), found::toString);
  }
}

package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.PowerModel;
import hark.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spacecraft that could never start again, told as warnings. */
class RestartSenseTest {
  private static final String BUS = "spacecraft.bus.";
  private static final String BATTERY = "spacecraft.battery.protection.";
  private static final String SOLAR = "spacecraft.solar.";
  private final TextFolder good = TextFolder.kittiwake();

  private List<Problem> warnings(Map<String, String> overrides) {
    MissionCheck check = Missions.check(good, new TreeMap<>(overrides));
    assertEquals(List.of(), check.problems());
    return check.warnings();
  }

  @Test
  void theMostOfATumblingBodyIsItsMeanAndOfASlowOneItsBestSide() {
    // Six faces of 60.4 cm², Cauchy: a quarter of them; the best side of a cube looks along its
    // diagonal: √3 faces. Times 1361 · 0.29 · 0.92 · 0.80 W/m², by hand.
    PowerModel fast = Missions.read(good).body().typical();
    double wattsPerSquareMeter = 1361 * 0.29 * 0.92 * 0.80;
    assertEquals(wattsPerSquareMeter * 6 * 60.4e-4 / 4, RestartSense.bestWatts(fast), 1e-9);
    PowerModel slow =
        Missions.read(good, Map.of("spacecraft.attitude.rate_deg_s", "0.1")).body().typical();
    assertEquals(wattsPerSquareMeter * Math.sqrt(3) * 60.4e-4, RestartSense.bestWatts(slow), 1e-6);
  }

  /** Each line: overrides, where the only warning points, a word of it; no word for no warning. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "",
      value = {
        "dead_start.needs_W: 2.6||",
        "dead_start.needs_W: 2.7|spacecraft.bus.dead_start.needs_W|at most 2.632 W",
        "dead_start.needs_W: 2.7; dead_start.from_arrays_alone: false||",
        "closes_on: never||",
        "closes_on: never; dead_start.from_arrays_alone: false|closes_on|not start from the arrays",
        "closes_on: load_removal; dead_start.from_arrays_alone: false||",
        "close_V_per_cell: 4.19||",
        "close_V_per_cell: 4.21|close_V_per_cell|closes at 8.42 V, and charging reaches 8.4 V",
        "close_V_per_cell: 4.1; charging.charge_V: 8.1|close_V_per_cell|charging reaches 8.1 V",
        "thresholds_V.recovery: 8.05; charging.charge_V: 8.1||",
        "thresholds_V.recovery: 8.2; charging.charge_V: 8.1|thresholds_V.recovery|starts at 8.2 V",
      })
  void aBusThatStaysDeadIsAWarning(String changes, String where, String word) {
    Map<String, String> overrides = new TreeMap<>();
    for (String change : changes.split("; ", -1)) {
      String[] pair = change.split(": ", 2);
      boolean ofBattery = pair[0].startsWith("close");
      boolean ofSolar = pair[0].startsWith("charging");
      overrides.put((ofBattery ? BATTERY : ofSolar ? SOLAR : BUS) + pair[0], pair[1]);
    }
    List<Problem> found = warnings(overrides);
    assertEquals(word == null ? 0 : 1, found.size(), found::toString);
    if (word != null) {
      assertTrue(found.get(0).where().contains(where), found::toString);
      assertTrue(found.get(0).what().contains(word), found::toString);
    }
  }

  @Test
  void arraysThatDoNotFeedEvenABusThatIsOffCannotCloseAProtection() {
    List<Problem> found = warnings(Map.of("spacecraft.bus.loads_W.off", "3"));
    assertEquals(1, found.size(), found::toString);
    assertTrue(found.get(0).what().contains("off takes 3"), found::toString);
  }
}

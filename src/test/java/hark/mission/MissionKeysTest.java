package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class MissionKeysTest {
  private static final String YAML =
      """
      hark: 1
      spacecraft:
        mass_kg: 2.6
        losses: { mean: 0.8, sd: 0.06 }
      stations:
        - name: Quay
          horizon: [[0, 5], [90, 12]]
          cost_hours: { pass: 0.4, night_factor: 1.5 }
      orbit: { along_track_s: { per_day: 2 } }
      """;

  @Test
  void everyKeyIsListedWithUnitAndLine() {
    List<MissionKey> keys = MissionKeys.list(YAML, List.of(new DefaultUsed("crew.hours", "20")));
    assertEquals(
        List.of(
            new MissionKey("hark", "1", "", 1),
            new MissionKey("spacecraft.mass_kg", "2.6", "kg", 3),
            new MissionKey("spacecraft.losses", "{ mean: 0.8, sd: 0.06 }", "", 4),
            new MissionKey("stations[Quay].name", "Quay", "", 6),
            new MissionKey("stations[Quay].horizon", "[[0, 5], [90, 12]]", "", 7),
            new MissionKey("stations[Quay].cost_hours.pass", "0.4", "h", 8),
            new MissionKey("stations[Quay].cost_hours.night_factor", "1.5", "", 8),
            new MissionKey("orbit.along_track_s.per_day", "2", "s per day", 9),
            new MissionKey("crew.hours", "20", "h", 0)),
        keys);
    assertTrue(keys.get(0).isWritten());
  }

  @Test
  void aKeyWrittenAsNothingIsNoDefaultBesides() {
    List<MissionKey> keys =
        MissionKeys.list("a: null\n", List.of(new DefaultUsed("a", "null (none)")));
    assertEquals(List.of(new MissionKey("a", "null", "", 1)), keys);
  }

  @Test
  void aTextThatCannotBeReadHasNone() {
    assertEquals(List.of(), MissionKeys.list("a: [1", List.of()));
  }
}

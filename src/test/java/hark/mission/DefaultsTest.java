package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A mission of required keys alone, and the page that lists what is taken for the others. */
class DefaultsTest {
  private static final Path PAGE = Path.of("src/docs/mission-folder.md");
  private final String sparse =
      ResourceFolder.of("missions/sparse").text("mission.yaml").orElseThrow();
  private final TextFolder folder = TextFolder.kittiwake().with("mission.yaml", sparse);

  @Test
  void requiredKeysAreEnough() {
    MissionCheck check = Missions.check(folder);
    assertEquals(List.of(), check.problems());
    assertEquals(List.of(), check.warnings());
  }

  @Test
  void thePageListsEveryDefaultWithItsValue() throws IOException {
    TreeSet<String> told = new TreeSet<>();
    String page = Files.readString(PAGE);
    rows(page)
        .forEach(
            (key, value) -> {
              if (value.matches("derived|`[^`]*`") && !key.equals("stations[].available")) {
                told.add("`" + key + "` " + value);
              }
            });
    TreeSet<String> used = new TreeSet<>();
    for (DefaultUsed d : Missions.check(folder).defaults()) {
      boolean derived =
          d.key().matches(".*(heat_capacity_J_K|structure\\.area_m2|end_A|resume_V)$");
      String value = derived ? "derived" : "`" + d.value() + "`";
      used.add("`" + d.key().replaceAll("\\[0\\]", "[]") + "` " + value);
    }
    assertEquals(String.join("\n", used), String.join("\n", told));
  }

  /** Default by key, of each row of the page's tables of keys. */
  private static Map<String, String> rows(String page) {
    Map<String, String> rows = new TreeMap<>();
    String tables = page.substring(page.indexOf("## Every key"), page.indexOf("Derived:"));
    for (String line : tables.lines().filter(l -> l.startsWith("| `")).toList()) {
      String[] cells = line.split("\\|", -1);
      assertEquals(6, cells.length, line);
      rows.put(cells[1].strip().replace("`", ""), cells[2].strip());
    }
    return rows;
  }

  @Test
  void thePageListsEveryKeyThatIsReadAndNoOther() throws IOException {
    Map<String, String> kittiwake =
        TextFolder.kittiwake()
            .replacing(
                "        deployed: false",
                "        deployed: true\n        shaded_by: [ { panel: +Y, share: 0.1 } ]")
            .replacing(
                "interval_s: 30",
                "interval_s: { usual: 30, below_V: { volts: 7, interval_s: 60 }, after_days: { days:"
                    + " 3, interval_s: 60 } }")
            .replacing("boot_seconds: 45", "inrush: { W: 1, seconds: 1 }")
            .replacing(
                "available: always",
                "available: { weekly: [Mon 18:00-23:00], rules: ['DTSTART:20261005T180000Z"
                    + " RRULE:FREQ=DAILY DURATION:PT5H'], not_between: [] }")
            .files();
    Reading reading = Reading.first();
    YamlTree tree = YamlTree.parse("m", kittiwake.get("mission.yaml"), reading.problems);
    MissionFile.read(tree, new TextFolder(kittiwake), reading);
    assertEquals(List.of(), reading.problems.list());
    Set<String> known = new TreeSet<>();
    reading.known.forEach(key -> known.add(key.replaceAll("\\[\\d+\\]", "[]")));
    Set<String> told = rows(Files.readString(PAGE)).keySet();
    Set<String> strange = new TreeSet<>(told);
    strange.removeAll(known);
    assertEquals(Set.of(), strange, "keys that nobody reads");
    known.removeIf(key -> isPart(key, reading.known) || told.contains(key));
    assertEquals(Set.of(), known, "keys that the page leaves out");
  }

  private static boolean isPart(String key, Set<String> known) {
    return known.stream()
        .map(other -> other.replaceAll("\\[\\d+\\]", "[]"))
        .anyMatch(other -> other.startsWith(key + ".") || other.startsWith(key + "[]."));
  }

  @Test
  void thermalDefaultsFollowFromMassAreaAndCells() {
    // 800 J/(kg·K) · 1.3 kg; 4 · 0.015 m² (Cauchy); 45 J/K for each of two cells.
    var thermal = Missions.read(folder).body().typical().thermal();
    assertEquals(1040, thermal.structureJoulePerKelvin(), 1e-9);
    assertEquals(0.06, thermal.areaSquareMeters(), 1e-12);
    assertEquals(90, thermal.batteryJoulePerKelvin(), 1e-9);
  }

  @Test
  void withoutASenderNobodyMaySend() {
    assertTrue(Missions.read(folder).stations().get(0).transmit().isEmpty());
  }

  /** Property: without any one of its lines the sparse mission is refused at the right part. */
  @Test
  void everyRequiredLineIsMissed() {
    List<String> lines = Arrays.asList(sparse.split("\n"));
    int tried = 0;
    for (int i = 1; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (!line.contains(": ")
          || line.startsWith("-")
          || line.matches("(command_loss|rotator).*")) {
        continue;
      }
      String key = line.substring(0, line.indexOf(':'));
      List<String> fewer = new ArrayList<>(lines);
      fewer.remove(i);
      List<Problem> problems =
          Missions.check(folder.with("mission.yaml", String.join("\n", fewer))).problems();
      assertFalse(problems.isEmpty(), "nobody misses " + key);
      assertEquals(1, problems.size(), () -> key + ": " + problems);
      assertTrue(
          problems.get(0).where().endsWith(key) && problems.get(0).what().contains("missing"),
          problems::toString);
      tried++;
    }
    assertTrue(tried >= 14, "only " + tried + " lines were tried");
  }
}

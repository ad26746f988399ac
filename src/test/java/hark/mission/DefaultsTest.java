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
    String table = page.substring(page.indexOf("## What is taken"), page.indexOf("Derived:"));
    for (String line : table.lines().filter(l -> l.startsWith("| `")).toList()) {
      String[] cells = line.split("\\|");
      told.add(cells[1].strip() + " " + cells[2].strip());
    }
    TreeSet<String> used = new TreeSet<>();
    for (DefaultUsed d : Missions.check(folder).defaults()) {
      boolean derived =
          d.key().matches(".*(heat_capacity_J_K|structure\\.area_m2|end_A|resume_V)$");
      String value = derived ? "derived" : "`" + d.value() + "`";
      used.add("`" + d.key().replaceAll("\\[0\\]", "[]") + "` " + value);
    }
    assertEquals(String.join("\n", used), String.join("\n", told));
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

package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hark.mission.FolderSource;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.EarthModel;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the page of orbits is told, on the demo. */
class MissionOrbitTest {
  private final FolderSource demo = ResourceFolder.of("hark/demo");
  private final Mission mission = Missions.read(demo);
  private final Instant now = mission.now().orElseThrow();

  private JsonNode view(FolderSource folder) {
    return new MissionOrbit(mission, EarthModel.bundled(), folder).view(now);
  }

  @Test
  void theCurveOfTheFirstContactIsShownOnceWithItsPointsAndLines() {
    JsonNode node = view(demo);
    assertEquals(1, node.get("curves").size(), "two forms of one curve");
    JsonNode curve = node.get("curves").get(0);
    assertEquals("found", curve.get("verdict").asText());
    assertEquals("97312", curve.get("likeliest").asText());
    JsonNode pass = curve.get("passes").get(0);
    assertEquals("Saltmere", pass.get("station").asText());
    assertEquals(5, pass.get("points").size());
    assertEquals(4, pass.get("lines").size());
    // on time the true one misses by its 0.75 s of lateness and clock, the favoured by 12 s more
    assertTrue(worst(pass, "97312") < 200, pass.toString());
    assertTrue(worst(pass, "97311") > 600, pass.toString());
    for (JsonNode line : pass.get("lines")) {
      // a drawn line ends where its candidate misses the last point by what is told
      double last = line.get("hz").get(line.get("hz").size() - 1).asDouble();
      double point = pass.get("points").get(4).get("hz").asDouble();
      assertEquals(line.get("missesHz").get(4).asDouble(), last - point, 1.0);
      double first = line.get("hz").get(0).asDouble();
      double begin = pass.get("points").get(0).get("hz").asDouble();
      assertEquals(line.get("missesHz").get(0).asDouble(), first - begin, 1.0);
    }
  }

  private static double worst(JsonNode pass, String object) {
    double worst = 0;
    for (JsonNode line : pass.get("lines")) {
      for (JsonNode miss : line.get("missesHz")) {
        boolean own = line.get("object").asText().equals(object);
        worst = own ? Math.max(worst, Math.abs(miss.asDouble())) : worst;
      }
    }
    return worst;
  }

  @Test
  void everyObjectIsThereWithItsSpread() {
    JsonNode objects = view(demo).get("objects");
    assertEquals(6, objects.size());
    assertEquals("97311", objects.get(0).get("object").asText());
    assertEquals(0.45, objects.get(0).get("weight").asDouble(), 1e-9);
    assertTrue(objects.get(0).get("alongTrackSdS").asDouble() > 1.5);
    assertTrue(objects.get(5).get("weight") == null, "no candidate");
  }

  @Test
  void aFileThatCannotBeReadIsToldAndTheOthersStay() {
    FolderSource folder =
        new FolderSource() {
          @Override
          public String label(String path) {
            return demo.label(path);
          }

          @Override
          public Optional<String> text(String path) {
            return path.endsWith("bad.csv") ? Optional.of("time,herz\n") : demo.text(path);
          }

          @Override
          public List<String> list(String directory) {
            return List.of("bad.csv", "first-contact.csv", "notes.txt");
          }
        };
    JsonNode node = view(folder);
    assertEquals(1, node.get("curves").size());
    assertTrue(node.get("problems").size() >= 1);
    assertTrue(node.get("problems").get(0).get("where").asText().startsWith("recordings/bad.csv"));
  }
}

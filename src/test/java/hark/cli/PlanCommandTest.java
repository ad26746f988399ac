package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's plan as it is printed. */
class PlanCommandTest {
  @TempDir Path folder;

  private String hark(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err), args);
    assertEquals(ExitCode.DONE, code, err.toString());
    return out.toString();
  }

  @Test
  void aStationIsPlannedInItsHoursOnlyAndEveryWindowSaysWhy() throws Exception {
    Path demo = folder.resolve("demo");
    hark("demo", demo.toString());
    Path file = demo.resolve("mission.yaml");
    String yaml = Files.readString(file);
    Files.writeString(
        file,
        yaml.replaceFirst("available: always", "available: { weekly: ['Mon-Sun 06:00-18:00'] }"));
    String[] plan = {"plan", demo.toString(), "--hours-per-week", "5", "--members", "60"};
    String json = hark(with(plan, "--format", "json"));
    JsonNode read = new ObjectMapper().readTree(json).path("plan");
    int night = 0;
    for (JsonNode window : read.path("windows")) {
      int hour = Integer.parseInt(window.path("aos").asText().substring(11, 13));
      boolean dark = hour < 6 || hour >= 18;
      if (dark && window.path("station").asText().equals("Saltmere")) {
        night++;
        assertTrue(window.path("taken").isNull(), window.toString());
        assertTrue(window.path("why").asText().contains("outside of its hours"));
      }
      assertTrue(!window.path("why").asText().isBlank(), window.toString());
    }
    assertTrue(night > 5, night + " windows by night");
    for (JsonNode week : read.path("weeks")) {
      assertTrue(week.path("planned").asDouble() <= week.path("granted").asDouble() + 1e-6);
    }
    double found = read.path("figures").path("found").asDouble();
    assertEquals(found, read.path("heardByHorizon").asDouble(), 1e-6);
    assertTrue(found <= read.path("upperBound").asDouble());
  }

  private static String[] with(String[] args, String... more) {
    return java.util.stream.Stream.concat(List.of(args).stream(), List.of(more).stream())
        .toArray(String[]::new);
  }
}

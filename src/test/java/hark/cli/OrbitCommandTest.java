package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code hark orbit} on the demo and on copies of it whose sets were altered. */
class OrbitCommandTest {
  @TempDir private Path temp;
  private Path demo;

  @BeforeEach
  void writeDemo() {
    demo = temp.resolve("demo");
    DemoMission.writeTo(demo);
  }

  private String run(String... more) {
    List<String> args = new ArrayList<>(List.of("orbit", demo.toString()));
    args.addAll(List.of(more));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.run(
            Clock.systemUTC(),
            new PrintWriter(out),
            new PrintWriter(err),
            args.toArray(String[]::new));
    assertEquals(ExitCode.DONE, code, err.toString());
    return out.toString();
  }

  private JsonNode rows(String... more) throws IOException {
    List<String> args = new ArrayList<>(List.of("--format", "json"));
    args.addAll(List.of(more));
    return new ObjectMapper().readTree(run(args.toArray(String[]::new))).elements().next();
  }

  private JsonNode row(String object) throws IOException {
    for (JsonNode row : rows()) {
      if (row.get("object").asText().equals(object)) {
        return row;
      }
    }
    throw new IllegalStateException(object);
  }

  private String sets() throws IOException {
    return Files.readString(demo.resolve("orbit/launch-731.tle"));
  }

  private void sets(String text) throws IOException {
    Files.writeString(demo.resolve("orbit/launch-731.tle"), text);
  }

  @Test
  void wordsComeFirstAndSayAgeSpreadAndDisagreement() {
    String text = run().replaceAll("\\s+", " ");
    assertTrue(
        text.startsWith("97311 45 % before any evidence: 3 sets, the last 13 h 12 m old"), text);
    assertTrue(text.contains("Successive sets disagree by"), text);
    assertTrue(text.contains("In the files, no candidates: 97310 (3 sets), 97317 (3 sets)."), text);
  }

  @Test
  void theNumbersOfEveryObjectAreInTheTable() throws IOException {
    JsonNode row = row("97311");
    assertEquals(3, row.get("sets").asInt());
    // last epoch 2026-10-12T18:50:00Z, the demo's clock 13 Oct 08:02
    assertEquals(13.2, row.get("ageHours").asDouble(), 0.01);
    double d = 13.2 / 24;
    double sd = Math.sqrt(1.5 * 1.5 + 4 * d * d + 0.25 * d * d * d * d);
    assertEquals(sd, row.get("alongTrackSdS").asDouble(), 0.01);
    assertEquals(0, row.get("jumps").asInt());
    assertEquals(508, row.get("heightKm").asDouble(), 5);
    assertTrue(row("97310").get("weight").isNull());
  }

  @Test
  void aSetThatTookAnothersPlaceIsNamed() throws IOException {
    List<String> lines = new ArrayList<>(sets().lines().toList());
    // the third sets of 97314 and 97315, some 80 s apart, exchange their numbers
    int first = third(lines, "97314");
    int second = third(lines, "97315");
    for (int k = 0; k < 2; k++) {
      String a = lines.get(first + k);
      String b = lines.get(second + k);
      lines.set(first + k, numbered(b, "97314"));
      lines.set(second + k, numbered(a, "97315"));
    }
    sets(String.join("\n", lines) + "\n");
    assertEquals(1, row("97314").get("jumps").asInt());
    assertEquals("97315", row("97314").get("looksLike").asText());
    assertEquals("97314", row("97315").get("looksLike").asText());
    assertEquals(0, row("97311").get("jumps").asInt());
    assertTrue(
        run()
            .replaceAll("\\s+", " ")
            .contains("It lies where 97315 was foretold: the catalogue may have changed the two."));
  }

  private static int third(List<String> lines, String object) {
    int count = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith("1 " + object) && ++count == 3) {
        return i;
      }
    }
    throw new IllegalStateException(object);
  }

  private static String numbered(String line, String object) {
    String body = line.substring(0, 2) + object + line.substring(7, 68);
    int sum = 0;
    for (char c : body.toCharArray()) {
      sum += Character.isDigit(c) ? c - '0' : c == '-' ? 1 : 0;
    }
    return body + sum % 10;
  }

  @Test
  void anObjectWithoutNewSetsAndANewcomerAreNamed() throws IOException {
    List<String> kept = new ArrayList<>();
    List<String> lines = sets().lines().toList();
    for (int i = 0; i < lines.size(); i += 3) {
      String one = lines.get(i + 1);
      boolean old = one.startsWith("1 97315") && !one.contains("26280");
      boolean young = one.startsWith("1 97312") && one.contains("26280");
      if (!old && !young) {
        kept.addAll(lines.subList(i, i + 3));
      }
    }
    sets(String.join("\n", kept) + "\n");
    String text = run().replaceAll("\\s+", " ");
    assertTrue(text.contains("No set since 7 Oct, while others go on"), text);
    assertTrue(text.contains("New: its first set is of 9 Oct."), text);
  }

  @Test
  void setsFromAfterTheClockAreNotKnownYet() throws IOException {
    assertEquals(1, rows("--now", "2026-10-08T00:00:00Z").get(0).get("sets").asInt());
  }

  @Test
  void eachStepCanBeListed() throws IOException {
    JsonNode steps = rows("--steps");
    assertEquals(12, steps.size());
    for (JsonNode step : steps) {
      assertTrue(step.get("days").asDouble() > 2 && step.get("days").asDouble() < 3.2);
      assertEquals("false", step.get("jump").asText());
    }
  }
}

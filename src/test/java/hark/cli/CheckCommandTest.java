package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  private static final Path GOOD = Path.of("src/test/resources/missions/kittiwake");

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void copy() throws IOException {
    Files.createDirectories(folder.resolve("orbit"));
    for (String file : new String[] {"mission.yaml", "orbit/shared.tle"}) {
      Files.copy(GOOD.resolve(file), folder.resolve(file));
    }
  }

  private int check(String... options) {
    String[] args = new String[options.length + 2];
    args[0] = "check";
    args[1] = folder.toString();
    System.arraycopy(options, 0, args, 2, options.length);
    return Main.run(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err), args);
  }

  private void replace(String before, String after) throws IOException {
    Path file = folder.resolve("mission.yaml");
    Files.writeString(file, Files.readString(file).replace(before, after));
  }

  @Test
  void aValidFolderIsOneLineANoteOnWhatCannotHappenToItAndAWarningOfItsTree() {
    assertEquals(ExitCode.DONE, check(), err::toString);
    assertTrue(out.toString().startsWith("Kittiwake · 2 stations · 2 candidate objects"));
    List<String> lines = out.toString().lines().toList();
    assertTrue(lines.get(1).startsWith("Note: 'arrays stowed' is left out"), out::toString);
    assertEquals("Warnings", lines.get(3), out::toString);
    assertEquals(5, lines.size(), out::toString);
  }

  @Test
  void whereTreeAndSimulationDisagreeTheTreesEventsAreNamed() {
    assertEquals(ExitCode.DONE, check(), err::toString);
    String last = out.toString().lines().reduce((a, b) -> b).orElseThrow();
    assertTrue(last.contains("counts as silent what the simulation mostly hears"), last);
    assertTrue(last.contains("capacity faded"), last);
    assertFalse(last.contains("transmitter dead"), "both say silent: " + last);
    assertFalse(last.contains("receiver deaf"), "both say audible: " + last);
  }

  @Test
  void defaultsAreListedWhenAsked() {
    assertEquals(ExitCode.DONE, check("--show-defaults"));
    assertTrue(out.toString().contains("stations[1].receive.tuning_Hz: 5000"), out::toString);
    assertTrue(out.toString().contains("spacecraft.attitude.spin_axis"), out::toString);
  }

  @Test
  void everyProblemGoesToStderrWithFileLineAndKey() throws IOException {
    replace("mass_kg: 1.3", "mass_kg: 2600");
    replace("hours_per_week", "hour_per_week");
    assertEquals(ExitCode.BAD_INPUT, check());
    String first = folder.resolve("mission.yaml") + ":9 spacecraft.mass_kg: found 2600";
    assertTrue(err.toString().startsWith(first), err::toString);
    assertEquals(2, err.toString().lines().count(), err::toString);
    assertEquals("", out.toString());
  }

  @Test
  void jsonIsOneDocumentWithProblemsToo() throws IOException {
    replace("mass_kg: 1.3", "mass_kg: 2600");
    replace("[[435, 438]]", "[[144, 146]]");
    assertEquals(ExitCode.BAD_INPUT, check("--format", "json"));
    JsonNode findings = new ObjectMapper().readTree(out.toString()).get("findings");
    assertEquals("problem", findings.get(0).get("kind").asText());
    assertTrue(findings.get(0).get("mend").asText().contains("grams"));
    assertEquals("", err.toString());
  }

  @Test
  void aWarningLeavesTheExitCodeAtZero() throws IOException {
    replace("[[435, 438]]", "[[144, 146]]");
    assertEquals(ExitCode.DONE, check());
    assertTrue(out.toString().contains("no licensed band of Headland"), out::toString);
  }

  @Test
  void tenMegabytesOfNoiseAreRefusedFast() throws IOException {
    byte[] noise = new byte[10_000_000];
    new SplittableRandom(7).nextBytes(noise);
    Files.write(folder.resolve("mission.yaml"), noise);
    assertTimeout(Duration.ofSeconds(2), () -> assertEquals(ExitCode.BAD_INPUT, check()));
    assertEquals(1, err.toString().lines().count(), err::toString);
    assertFalse(err.toString().contains("Exception"), err::toString);
  }

  @Test
  void noiseInAnElementFileIsRefusedToo() throws IOException {
    byte[] noise = new byte[10_000_000];
    new SplittableRandom(7).nextBytes(noise);
    Files.write(folder.resolve("orbit/shared.tle"), noise);
    assertTimeout(Duration.ofSeconds(5), () -> assertEquals(ExitCode.BAD_INPUT, check()));
    assertTrue(err.toString().contains("shared.tle"), err::toString);
  }

  @Test
  void noFolderAndNoMissionFileAreNamed() throws IOException {
    Files.delete(folder.resolve("mission.yaml"));
    assertEquals(ExitCode.BAD_INPUT, check());
    assertTrue(err.toString().contains("there is no mission.yaml"), err::toString);
    StringWriter again = new StringWriter();
    int code =
        Main.run(
            Clock.systemUTC(),
            new PrintWriter(out),
            new PrintWriter(again),
            "check",
            folder + "/no");
    assertEquals(ExitCode.BAD_INPUT, code);
    assertTrue(again.toString().contains("there is no such folder"), again::toString);
  }
}

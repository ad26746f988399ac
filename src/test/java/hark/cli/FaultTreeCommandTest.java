package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultTreeCommandTest {
  /** Pressure tank, NUREG-0492. */
  private static final String TANK =
      """
      hark: 1
      events:
        T: { title: tank bursts, probability: 5.0e-6 }
        K2: { probability: 3e-5 }
        S: { probability: 1e-4 }
        S1: { probability: 3e-5 }
        R: { probability: 1e-4 }
        K1: { probability: 5e-6 }
      gates:
        E1: { title: tank ruptures, or: [T, E2] }
        E2: { or: [E3, K2] }
        E3: { and: [S, E4] }
        E4: { or: [S1, E5] }
        E5: { or: [K1, R] }
      top: E1
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String yaml, String... options) throws IOException {
    return runFile("tree.yaml", yaml, options);
  }

  private int runFile(String name, String yaml, String... options) throws IOException {
    Path file = Files.writeString(folder.resolve(name), yaml);
    String[] args = new String[options.length + 2];
    args[0] = "faulttree";
    args[1] = file.toString();
    System.arraycopy(options, 0, args, 2, options.length);
    Clock clock = Clock.fixed(Instant.parse("2026-01-01T00:00:00Z"), ZoneOffset.UTC);
    return Main.run(clock, new PrintWriter(out, true), new PrintWriter(err, true), args);
  }

  @Test
  void jsonIsThatOfTheContract() throws IOException {
    assertEquals(0, run(TANK, "--format", "json"), err::toString);
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals("E1", json.get("top").asText());
    assertEquals(3.501334916e-5, json.get("probability").asDouble(), 1e-14);
    JsonNode sets = json.get("minimalCutSets");
    assertEquals(5, sets.get("count").asLong());
    assertEquals("{\"1\":2,\"2\":3}", sets.get("byOrder").toString());
    assertEquals("[\"K2\"]", sets.get("sets").get(0).get("events").toString());
    assertEquals(3e-5, sets.get("sets").get(0).get("probability").asDouble());
    JsonNode first = json.get("importance").get(0);
    assertEquals("K2", first.get("event").asText());
    assertEquals(.856812, first.get("fussellVesely").asDouble(), 5e-7);
    for (String key :
        new String[] {
          "probability", "birnbaum", "criticality", "riskAchievementWorth", "riskReductionWorth"
        }) {
      assertTrue(first.get(key).isNumber(), key);
    }
  }

  @Test
  void tableAndCsvTellTheSame() throws IOException {
    assertEquals(0, run(TANK));
    assertTrue(out.toString().contains("tank ruptures (E1)"), out::toString);
    assertTrue(out.toString().contains("probability 3.50133e-05, exact"), out::toString);
    assertTrue(out.toString().contains("5 minimal cut sets (2 of order 1, 3 of order 2)"));
    out.getBuffer().setLength(0);
    assertEquals(0, run(TANK, "--format", "csv", "--max-order", "1"));
    assertEquals(
        "order,probability,events\n1,3.0E-5,K2\n1,5.0E-6,T\n", out.toString().replace("\r", ""));
  }

  @Test
  void missionHoursTurnAHazardIntoAProbability() throws IOException {
    String yaml = "hark: 1\nevents: { a: { hazard_per_day: 0.24 } }\ntop: a\n";
    assertEquals(0, run(yaml, "--mission-hours", "100", "--format", "json"), err::toString);
    double p = new ObjectMapper().readTree(out.toString()).get("probability").asDouble();
    assertEquals(1 - Math.exp(-1), p, 1e-12);
  }

  @Test
  void onlyAThousandSetsAreListedUnlessAllAreAskedFor() throws IOException {
    StringBuilder yaml = new StringBuilder("hark: 1\nevents:\n");
    for (int i = 0; i < 80; i++) {
      yaml.append("  e").append(i).append(": { probability: 0.01 }\n");
    }
    yaml.append("gates:\n  l: { or: [");
    for (int i = 0; i < 40; i++) {
      yaml.append(i == 0 ? "e" : ", e").append(i);
    }
    yaml.append("] }\n  r: { or: [");
    for (int i = 40; i < 80; i++) {
      yaml.append(i == 40 ? "e" : ", e").append(i);
    }
    yaml.append("] }\n  t: { and: [l, r] }\ntop: t\n");
    assertEquals(0, run(yaml.toString(), "--format", "csv"), err::toString);
    assertEquals(1001, out.toString().lines().count());
    out.getBuffer().setLength(0);
    assertEquals(0, run(yaml.toString(), "--format", "csv", "--all-sets"));
    assertEquals(1601, out.toString().lines().count());
  }

  @Test
  void aWorthWithoutBoundIsNullInJson() throws IOException {
    assertEquals(
        0, run("hark: 1\nevents: { a: { probability: 0.1 } }\ntop: a\n", "--format", "json"));
    JsonNode only = new ObjectMapper().readTree(out.toString()).get("importance").get(0);
    assertTrue(only.get("riskReductionWorth").isNull());
    assertEquals(10, only.get("riskAchievementWorth").asDouble(), 1e-12);
  }

  @Test
  void xmlIsRefusedByName() throws IOException {
    assertEquals(2, runFile("tree.xml", "<?xml version=\"1.0\"?><opsa-mef/>"));
    assertTrue(err.toString().contains("Open-PSA form comes with a later version"));
  }

  @Test
  void aCircleIsRefusedWithItsLine() throws IOException {
    String yaml =
        "hark: 1\nevents: { a: { probability: 0.1 } }\ngates:\n  g: { or: [a, h] }\n  h: { or: [g]"
            + " }\ntop: g\n";
    assertEquals(2, run(yaml));
    assertTrue(err.toString().contains("tree.yaml:4 gates.g: gate feeds itself: g → h → g"));
    assertEquals("", out.toString());
  }

  @Test
  void badInputIsRefusedInWordsAndWithoutATrace() throws IOException {
    for (String yaml : new String[] {"", "\u0000\u0001", "hark: 1", "x".repeat(5_000_000), "- a"}) {
      assertEquals(2, run(yaml));
    }
    assertEquals(2, run(TANK, "--max-order", "0"));
    assertEquals(2, run(TANK, "--mission-hours", "NaN"));
    assertFalse(err.toString().contains("Exception"), err::toString);
    assertFalse(err.toString().contains("\tat "), err::toString);
  }
}

package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code hark energy} on the demo, one day ahead. */
class EnergyCommandTest {
  @TempDir static Path directory;
  private static Path demo;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeAll
  static void write() {
    demo = directory.resolve("demo");
    DemoMission.writeTo(demo);
  }

  private int run(String... more) {
    List<String> args =
        new ArrayList<>(List.of("energy", demo.toString(), "--days", "1", "--members", "60"));
    args.addAll(List.of(more));
    return Main.run(
        Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err), args.toArray(String[]::new));
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out.toString());
  }

  @Test
  void jsonReadAgainHasTheContractsNumbersAndTheyHold() throws IOException {
    assertEquals(0, run("--what-if", "spacecraft.solar.losses=0.5", "--format", "json"));
    JsonNode top = json();
    assertEquals(289, top.get("energy").size(), "two days in steps of ten minutes");
    assertEquals(289, top.get("whatIf").size());
    for (JsonNode point : top.get("whatIf")) {
      assertTrue(point.get("socP05").asDouble() <= point.get("socP95").asDouble());
      JsonNode states = point.get("states");
      double sum = 0;
      for (String state : List.of("off", "boot", "safe", "nominal")) {
        sum += states.get(state).asDouble();
      }
      assertEquals(1, sum, 1e-5);
    }
    for (int g = 0; g < 289; g += 16) {
      double all = top.get("energy").get(g).get("socP50").asDouble();
      double again = top.get("whatIfBefore").get(g).get("socP50").asDouble();
      // two thousand drawn by weight place a median within 1.1 % of rank, here 0.005 of charge
      double threeSpreads = 0.015;
      assertEquals(all, again, threeSpreads, "drawn by weight from the assessment's");
    }
    double sixDigits = 1e-3;
    for (JsonNode orbit : top.get("balance")) {
      Instant.parse(orbit.get("orbitStart").asText());
      double spent = 0;
      for (String part : List.of("loadsWh", "lossesWh", "storedWh", "removedWh")) {
        spent += orbit.get(part).asDouble();
      }
      assertEquals(orbit.get("arrayWh").asDouble(), spent, sixDigits * spent);
      double needed = orbit.get("loadsWh").asDouble() + orbit.get("lossesWh").asDouble();
      double offered = orbit.get("offeredWh").asDouble();
      assertTrue(offered > orbit.get("arrayWh").asDouble(), "some battery is full: " + orbit);
      assertEquals(offered - needed, orbit.get("marginWh").asDouble(), sixDigits * offered);
    }
    assertTrue(top.get("year").size() >= 12);
    JsonNode change = top.get("whatIfChange");
    double offBefore = change.get("before").get("states").get("off").asDouble();
    double offAfter = change.get("after").get("states").get("off").asDouble();
    assertTrue(offAfter > offBefore + 0.05, "half of the array lost: " + change);
    assertTrue(change.get("sentence").asText().startsWith("With losses 0.5 "));
  }

  @Test
  void peopleReadTablesOfEverythingAsked() {
    assertEquals(0, run());
    String page = out.toString();
    for (String part :
        List.of(
            "Charge at sunrise", "Energy of one orbit", "The Sun over a year", "Members worth")) {
      assertTrue(page.contains(part), page);
    }
    assertTrue(page.lines().allMatch(line -> line.length() <= 100), page);
    assertFalse(page.contains("NaN"), page);
  }

  @Test
  void aMembersTraceIsATableOfItsOwn() {
    assertEquals(0, run("--member", "1", "--format", "csv"));
    List<String> lines = out.toString().lines().toList();
    assertEquals(
        "time,sunlit,arrayW,loadW,batteryA,volts,soc,batteryC,structureC,state,change",
        lines.get(0));
    assertTrue(lines.get(1).startsWith("2026-10-06T04:26:00.000Z,"));
    assertTrue(lines.get(1).endsWith("it came on when it was released"), lines.get(1));
  }

  @Test
  void anUnknownKeyIsRefusedWithTheNearestOneBeforeAnythingIsComputed() {
    assertEquals(2, run("--what-if", "spacecraft.battery.cell.capacity_ah=2.0"));
    assertEquals("", out.toString());
    assertTrue(
        err.toString().contains("--what-if spacecraft.battery.cell.capacity_ah"), err.toString());
    assertTrue(err.toString().contains("capacity_Ah"), err.toString());
  }

  @Test
  void separationAndOrbitStayAsTheyAre() {
    assertEquals(2, run("--what-if", "spacecraft.separation=2026-10-06T05:00:00Z"));
    assertTrue(err.toString().contains("keeps separation and orbit"), err.toString());
  }

  @Test
  void whyStandsAlone() {
    assertEquals(2, run("--why", "2026-10-13T09:00:00Z", "--member", "1"));
    assertEquals(2, run("--why", "2026-10-13T09:00:00Z", "--format", "csv"));
    assertEquals(2, run("--why", "2026-10-13T09:00:00"));
  }
}

package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.station.Pass;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** passes, track and eclipses asked of a mission folder, on a copy of the demo. */
class SkyOfMissionTest {
  /** What the demo's own clock shows. */
  private static final Instant NOW = Instant.parse("2026-10-13T08:02:00Z");

  private static final Instant SYSTEM = Instant.parse("2026-12-01T00:00:00Z");

  @TempDir private Path folder;
  private Path mission;

  private record Ran(int code, String out, String err) {}

  @BeforeEach
  void copyTheDemo() {
    mission = folder.resolve("demo");
    assertEquals(ExitCode.DONE, run("demo", mission.toString()).code());
  }

  private static Ran run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Clock clock = Clock.fixed(SYSTEM, ZoneOffset.UTC);
    int code = Main.run(clock, new PrintWriter(out), new PrintWriter(err), args);
    return new Ran(code, out.toString(), err.toString());
  }

  private JsonNode rows(String command, String... more) throws IOException {
    List<String> args = new ArrayList<>(List.of(command, mission.toString(), "--format", "json"));
    args.addAll(List.of(more));
    Ran ran = run(args.toArray(String[]::new));
    assertEquals(ExitCode.DONE, ran.code(), ran.err());
    return new ObjectMapper().readTree(ran.out()).elements().next();
  }

  private static Set<String> values(JsonNode rows, String key) {
    Set<String> values = new TreeSet<>();
    rows.forEach(row -> values.add(row.get(key).textValue()));
    return values;
  }

  private static Instant time(JsonNode row, String key) {
    return Instant.parse(row.get(key).textValue());
  }

  @Test
  void passesOfEveryCandidateOverEveryStationForAWeekOfTheMissionsClock() throws IOException {
    JsonNode passes = rows("passes");
    assertEquals(Set.of("97311", "97312", "97314", "97315"), values(passes, "object"));
    assertEquals(Set.of("Saltmere", "Cinderholm"), values(passes, "site"));
    Instant last = NOW;
    for (JsonNode pass : passes) {
      assertTrue(time(pass, "los").isAfter(NOW));
      assertTrue(time(pass, "aos").isBefore(NOW.plus(Duration.ofDays(7))));
      last = time(pass, "aos");
    }
    assertTrue(last.isAfter(NOW.plus(Duration.ofDays(6))), "a week by default");
  }

  @Test
  void stationsKeepTheirSkylines() throws IOException {
    JsonNode first = rows("track", "--station", "Cinderholm", "--object", "97311", "--step", "1");
    assertEquals(Set.of("Cinderholm"), values(first, "site"));
    double lowest = 90;
    for (JsonNode row : first) {
      double azimuth = row.get("azimuthDeg").doubleValue();
      double elevation = row.get("elevationDeg").doubleValue();
      lowest = Math.min(lowest, elevation);
      if (azimuth > 229 && azimuth < 231) {
        assertTrue(elevation > 13.7, "the skyline is 14 degrees high there");
      }
    }
    // one second of motion at most above the floor of 8 degrees
    assertEquals(8, lowest, 0.1);
  }

  @Test
  void theTablesAgreeWithTheWindowsOfAnAssessment() throws IOException {
    String now = "2026-10-06T08:00:00Z";
    Ran assessed =
        run("assess", mission.toString(), "--now", now, "--days", "0.5", "--members", "60");
    assertEquals(ExitCode.DONE, assessed.code(), assessed.err());
    Set<String> windows = new TreeSet<>();
    for (JsonNode window : new ObjectMapper().readTree(assessed.out()).get("windows")) {
      windows.addAll(values(window.get("geometry"), "aos"));
    }
    assertTrue(windows.size() >= 4, windows.toString());
    assertEquals(windows, values(rows("passes", "--from", now, "--days", "0.5"), "aos"));
  }

  @Test
  void aSpanOverSeveralElementSetsListsEveryPassOnce() throws IOException {
    JsonNode passes = rows("passes", "--from", "2026-10-06T04:26:00Z", "--days", "7");
    Map<String, Instant> setBefore = new HashMap<>();
    for (JsonNode pass : passes) {
      String who = pass.get("object").textValue() + " " + pass.get("site").textValue();
      Instant before = setBefore.put(who, time(pass, "los"));
      assertTrue(before == null || before.isBefore(time(pass, "aos")), pass.toString());
    }
    JsonNode eclipses =
        rows("eclipses", "--from", "2026-10-06T04:26:00Z", "--days", "7", "--object", "97311");
    // 15.2 revolutions a day, each with one passage through the shadow
    assertEquals(7 * 15.2, eclipses.size(), 2);
  }

  @Test
  void aPassThatTwoLegsFoundStaysOnceAsTheNewerSetHasIt() {
    Instant aos = NOW;
    List<Pass> found =
        List.of(
            pass("a", "hill", aos), pass("b", "hill", aos), pass("a", "hill", aos.plusSeconds(2)));
    List<Pass> listed = FoundPasses.inOrder(found, pass -> pass);
    assertEquals(List.of(pass("b", "hill", aos), pass("a", "hill", aos.plusSeconds(2))), listed);
    List<Pass> elsewhere = List.of(pass("a", "hill", aos), pass("a", "vale", aos.plusSeconds(2)));
    assertEquals(elsewhere, FoundPasses.inOrder(elsewhere, pass -> pass));
  }

  private static Pass pass(String object, String site, Instant aos) {
    return new Pass(
        object, site, aos, aos.plusSeconds(200), aos.plusSeconds(400), 40, 0, 90, 180, 800, true);
  }

  @Test
  void eachLegFliesByTheNewestSetKnownByThen() throws IOException {
    List<ElementSet> sets =
        ElementSets.parse("demo", Files.readString(mission.resolve("orbit/launch-731.tle")))
            .stream()
            .filter(set -> set.objectId().equals("97311"))
            .toList();
    Instant separation = Instant.parse("2026-10-06T04:26:00Z");
    List<Leg> legs = Leg.of(sets, separation, NOW, NOW);
    assertEquals(3, sets.size());
    assertEquals(sets, legs.stream().map(Leg::set).toList());
    assertEquals(separation, legs.get(0).from(), "the first serves before its epoch");
    assertEquals(sets.get(1).epoch(), legs.get(1).from());
    assertEquals(legs.get(1).to(), legs.get(2).from());
    assertEquals(NOW, legs.get(2).to());
    assertEquals(2, Leg.of(sets, separation, NOW, sets.get(1).epoch()).size());
    assertEquals(
        List.of(new Leg(sets.get(0), separation, NOW)), Leg.of(sets, separation, NOW, separation));
  }

  @Test
  void aMissionWithoutAClockOfItsOwnBeginsNow() throws IOException {
    Path file = mission.resolve("mission.yaml");
    String text = Files.readString(file).replaceFirst("(?m)^  now:.*$", "");
    Files.writeString(file, text);
    JsonNode passes = rows("passes", "--days", "1");
    assertTrue(passes.size() > 4);
    assertFalse(time(passes.get(0), "los").isBefore(SYSTEM));
  }

  @Test
  void mixingAMissionWithAFileOrASiteIsRefused() {
    String folder = mission.toString();
    refused("leave out --elements", "passes", folder, "--elements", "x.tle");
    refused("leave out --elements", "eclipses", folder, "--elements", "x.tle");
    refused("leave out --site", "track", folder, "--site", "48.9,8.4,115");
    refused("leave out --site", "passes", folder, "--min-elevation", "0");
    refused("leave out --site", "passes", folder, "--name", "hill");
    refused("later version", "passes", folder, "--refraction");
    refused("name its folder", "passes", "--elements", "x", "--site", "1,2,3", "--station", "hill");
    refused("'Saltmere'", "passes", folder, "--station", "Saltmeer");
    refused("'97311'", "eclipses", folder, "--object", "9731");
    refused("MISSION", "passes");
    refused("MISSION", "eclipses");
    refused("there is no such folder", "track", folder + "-none");
  }

  private static void refused(String words, String... args) {
    Ran ran = run(args);
    assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.err());
    assertTrue(ran.err().contains(words), ran.err());
    assertEquals("", ran.out());
  }
}

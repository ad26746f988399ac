package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.journal.Journal;
import hark.mission.Mission;
import hark.mission.MissionFolder;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.Trajectory;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Station;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoMissionTest {
  private static final String HEAVIEST = "97311";

  private final DemoMission demo = DemoMission.load();

  @Test
  void theDemoCarriesItsOwnClockAndReadsWithoutAProblem() {
    Mission mission = demo.mission();
    assertEquals(Instant.parse("2026-10-13T08:02:00Z"), mission.now().orElseThrow());
    assertEquals(2, mission.stations().size());
    assertEquals(
        Map.of("97311", 0.45, "97312", 0.25, "97314", 0.15, "97315", 0.10),
        mission.sources().get(0).candidates());
    assertTrue(
        mission.sources().get(0).sets().stream().map(ElementSet::objectId).distinct().count() > 4);
  }

  @Test
  void itsCrewHeardItTwiceOnTheFirstDayAndThenNotInElevenWindows() {
    List<Entry> heard = of(Evidence.Heard.class);
    List<Entry> silent = of(Evidence.NothingHeard.class);
    assertEquals(2, heard.size());
    assertEquals(11, silent.size());
    assertEquals(1, of(Evidence.Telemetry.class).size());
    assertEquals(1, of(Evidence.StationCheck.class).size());
    assertEquals(1, of(Evidence.NotListened.class).size());
    Instant firstDay = demo.mission().separation().plus(Duration.ofDays(1));
    heard.forEach(entry -> assertTrue(entry.evidence().at().isBefore(firstDay)));
    Instant last = heard.get(1).evidence().at();
    silent.forEach(entry -> assertTrue(entry.evidence().at().isAfter(last)));
    assertEquals(2, silent.stream().map(entry -> entry.keys().get("station")).distinct().count());
  }

  @Test
  void everyWindowInTheLogLiesInsideAPassOfTheHeaviestCandidate() {
    for (Entry entry : demo.entries()) {
      String station = entry.keys().get("station");
      if (station == null || !entry.keys().containsKey("from")) {
        continue;
      }
      Instant from = Instant.parse(entry.keys().get("from"));
      Instant to = Instant.parse(entry.keys().get("to"));
      boolean inside =
          passes(station, from.minusSeconds(60), to.plusSeconds(60)).stream()
              .anyMatch(pass -> !pass.aos().isAfter(from) && !pass.los().isBefore(to));
      assertTrue(inside, "entry " + entry.number() + " lies outside of every pass");
    }
  }

  @Test
  void theNextPassOverTheAttendedStationIsOneToTwoHoursAwayAndHigh() {
    Instant now = demo.mission().now().orElseThrow();
    Pass next = passes("Saltmere", now, now.plus(Duration.ofHours(3))).get(0);
    Duration wait = Duration.between(now, next.aos());
    assertTrue(wait.toMinutes() >= 60 && wait.toMinutes() <= 120, "in " + wait);
    assertTrue(next.maxElevationDeg() > 30 && next.sunlitAtCulmination(), next.toString());
  }

  @Test
  void theNeighboursFollowEachOtherWithinTensOfSeconds() {
    Instant now = demo.mission().now().orElseThrow();
    Station station = demo.mission().stations().get(0);
    List<Instant> culminations =
        demo.mission().sources().get(0).sets().stream()
            .map(ElementSet::objectId)
            .distinct()
            .map(id -> passesOf(id, station, now, now.plus(Duration.ofHours(2))).get(0))
            .map(Pass::culmination)
            .sorted()
            .toList();
    assertTrue(culminations.size() > 4);
    Duration spread =
        Duration.between(culminations.get(0), culminations.get(culminations.size() - 1));
    assertTrue(spread.toSeconds() > 20 && spread.toSeconds() < 120, "spread " + spread);
  }

  @Test
  void onTheFirstDayTheCandidatesLieTenToTwentyFiveSecondsApart() {
    Instant contact = Instant.parse("2026-10-06T09:40:10Z");
    Station station = demo.mission().stations().get(0);
    List<Instant> culminations =
        demo.mission().sources().get(0).candidates().keySet().stream()
            .map(id -> passesOf(id, station, contact, contact.plusSeconds(60)).get(0))
            .map(Pass::culmination)
            .sorted()
            .toList();
    for (int i = 1; i < culminations.size(); i++) {
      double apart =
          Duration.between(culminations.get(i - 1), culminations.get(i)).toMillis() / 1e3;
      assertTrue(apart >= 10 && apart <= 25, culminations.toString());
    }
  }

  @Test
  void theSampleBesideTheVerificationSetsIsTheSameFile() throws IOException {
    Path used = Path.of("src/main/resources/hark/demo/orbit/launch-731.tle");
    assertEquals(-1, Files.mismatch(used, Path.of("tle-samples/demo-launch-731.tle")));
  }

  @Test
  void theDemoOnDiskSaysTheSameAsTheDemoInTheProgram(@TempDir Path parent) {
    Path directory = parent.resolve("copy");
    assertEquals(ExitCode.DONE, run("demo", directory.toString()).code());
    Mission mission = MissionFolder.read(directory);
    assertEquals(demo.mission().name(), mission.name());
    assertEquals(demo.mission().now(), mission.now());
    assertEquals(demo.entries(), Journal.read(directory.resolve("journal.db")));
  }

  @Test
  void nothingIsOverwritten(@TempDir Path parent) throws IOException {
    Path mine = Files.writeString(parent.resolve("mission.yaml"), "mine");
    Outcome outcome = run("demo", parent.toString());
    assertEquals(ExitCode.BAD_INPUT, outcome.code());
    assertTrue(outcome.err().contains("nothing is overwritten"), outcome.err());
    assertEquals("mine", Files.readString(mine));
    assertFalse(Files.exists(parent.resolve("journal.db")));
    assertEquals(ExitCode.BAD_INPUT, run("demo", mine.toString()).code());
  }

  private record Outcome(int code, String err) {}

  private Outcome run(String... args) {
    StringWriter err = new StringWriter();
    Clock clock = Clock.fixed(demo.mission().now().orElseThrow(), ZoneOffset.UTC);
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return new Outcome(Main.run(clock, nowhere, new PrintWriter(err), args), err.toString());
  }

  private List<Entry> of(Class<? extends Evidence> kind) {
    return demo.entries().stream().filter(entry -> kind.isInstance(entry.evidence())).toList();
  }

  private List<Pass> passes(String name, Instant from, Instant to) {
    Station station =
        demo.mission().stations().stream()
            .filter(s -> s.name().equals(name))
            .findFirst()
            .orElseThrow();
    return passesOf(HEAVIEST, station, from, to);
  }

  private List<Pass> passesOf(String objectId, Station station, Instant from, Instant to) {
    ElementSet set =
        demo.mission().sources().get(0).sets().stream()
            .filter(s -> s.objectId().equals(objectId))
            .min(Comparator.comparing(s -> Duration.between(s.epoch(), from).abs()))
            .orElseThrow();
    Trajectory trajectory = Trajectory.of(set, EarthModel.bundled());
    return Passes.find(trajectory, station.site(), station.mask(), from, to);
  }
}

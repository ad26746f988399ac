package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.AssessmentFixture;
import hark.journal.Journal;
import hark.mission.Mission;
import hark.mission.MissionClock;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.problem.BadInput;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MissionModelTest {
  private final Mission mission = Missions.read(ResourceFolder.of("hark/demo"));
  private final Instant clock = mission.now().orElseThrow();
  private final AtomicInteger assessed = new AtomicInteger();
  private Journal journal;
  private MissionModel model;

  @BeforeEach
  void open(@TempDir Path folder) {
    journal = Journal.open(folder.resolve("journal.db"));
    model = new MissionModel(mission, journal, () -> Instant.EPOCH, this::assess, "");
  }

  @AfterEach
  void close() {
    journal.close();
  }

  @Test
  void aMissionsOwnClockStandsStill() {
    assertTrue(model.ownClock());
    assertEquals(clock, model.now());
  }

  @Test
  void anOutcomeToComeMovesAMissionsOwnClockPastItsEnd() {
    Instant to = clock.plus(Duration.ofHours(2));
    int number = model.append(nothing(clock.plus(Duration.ofMinutes(110)), to));
    assertEquals(1, number);
    assertEquals(to.plus(MissionClock.SETTLE), model.now());
    assertEquals(List.of(1), model.entries().stream().map(e -> e.number()).toList());
  }

  @Test
  void withdrawingThatOutcomeTakesTheClockBack() {
    model.append(nothing(clock.plusSeconds(600), clock.plusSeconds(1200)));
    model.append(new NewEntry("correction", Map.of("of", "1", "withdrawn", "yes")));
    assertEquals(clock, model.now());
  }

  @Test
  void anOutcomeMonthsAheadIsRefused() {
    Instant far = clock.plus(MissionModel.AHEAD).plusSeconds(60);
    assertThrows(BadInput.class, () -> model.append(nothing(far, far.plusSeconds(60))));
    assertTrue(model.entries().isEmpty());
  }

  @Test
  void anEntryBeforeSeparationIsRefusedAndNothingIsRecorded() {
    Instant early = mission.separation().minusSeconds(3600);
    BadInput bad =
        assertThrows(BadInput.class, () -> model.append(nothing(early, early.plusSeconds(60))));
    assertFalse(bad.problems().get(0).what().isEmpty());
    assertTrue(model.entries().isEmpty());
  }

  @Test
  void whoAndNoteStandBesideTheKeys() {
    Map<String, String> keys = Map.of("text", "rain", "who", "Ada", "note", "heavy");
    model.append(new NewEntry("note", keys));
    assertEquals("Ada", model.entries().get(0).who());
    assertEquals("heavy", model.entries().get(0).note());
  }

  @Test
  void nothingIsWorkedOutTwiceForTheSameRecordAndTime() {
    ConsoleModel.Answer first = model.assess();
    assertSame(first, model.assess());
    assertEquals(1, assessed.get());
    model.append(new NewEntry("note", Map.of("text", "rain")));
    model.assess();
    assertEquals(2, assessed.get());
  }

  @Test
  void pastWindowsAreOverAndLatestFirst() {
    List<ConsoleModel.PastWindow> past = model.pastWindows();
    assertTrue(past.size() > 5, "a week of passes");
    for (int i = 0; i < past.size(); i++) {
      assertFalse(past.get(i).to().isAfter(clock));
      assertTrue(i == 0 || !past.get(i).from().isAfter(past.get(i - 1).from()));
    }
  }

  @Test
  void aWindowCanBeNamedByATimeInsideIt() {
    ConsoleModel.PastWindow window = model.pastWindows().get(0);
    String middle = window.from().plusSeconds(60).toString();
    model.append(
        new NewEntry("nothing-heard", Map.of("station", window.station(), "pass", middle)));
    assertEquals(window.from(), model.entries().get(0).evidence().at());
  }

  private MissionModel.Worked assess(Mission of, List<hark.evidence.Entry> entries, Instant now) {
    assessed.incrementAndGet();
    return new MissionModel.Worked(
        AssessmentFixture.sandpiper().now(now).build(), Optional.empty());
  }

  private NewEntry nothing(Instant from, Instant to) {
    String station = mission.stations().get(0).name();
    return new NewEntry(
        "nothing-heard", Map.of("station", station, "from", from.toString(), "to", to.toString()));
  }
}

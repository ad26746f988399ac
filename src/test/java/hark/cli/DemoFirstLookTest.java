package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.assessment.Examination;
import hark.evidence.CommandSent;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** One more entry on the demo: what is said at once is near what is said after all the work. */
class DemoFirstLookTest {
  /** Both stand on bodies of their own, and the first look simplifies. */
  private static final double NEAR = 0.015;

  private static final double FOUR_ERRORS = 4;

  private static DemoMission demo;
  private static Mission mission;
  private static Instant now;
  private static Examination examined;

  @BeforeAll
  static void examine() {
    demo = DemoMission.load();
    mission = demo.mission();
    now = mission.now().orElseThrow();
    examined = examine(demo.entries(), now);
  }

  private static Examination examine(List<Entry> record, Instant at) {
    return Assessor.examine(mission, record, AssessmentRequest.at(at), EarthModel.bundled());
  }

  private static List<Entry> with(Evidence evidence) {
    List<Entry> record = new ArrayList<>(demo.entries());
    record.add(new Entry(record.size() + 1, evidence.end(), "", "", Map.of(), evidence));
    return record;
  }

  private static Evidence silence() {
    Assessment.Window window = examined.assessment().windows().get(0);
    return new Evidence.NothingHeard(
        window.station(),
        window.aos(),
        window.los(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        0,
        Optional.empty(),
        0);
  }

  private static Evidence heard() {
    Assessment.Window window = examined.assessment().windows().get(0);
    return new Evidence.Heard(
        window.station(),
        window.aos(),
        window.los(),
        OptionalDouble.of(9),
        OptionalDouble.of(2),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.of("frames"),
        Optional.empty(),
        Optional.empty());
  }

  private static void assertNear(Evidence added) {
    Instant later = added.end().plusSeconds(120);
    Assessment quick = examined.firstLook().after(with(added), later).orElseThrow();
    Assessment whole = examine(with(added), later).assessment();
    for (Assessment.CauseView cause : whole.causes()) {
      Assessment.CauseView first =
          quick.causes().stream().filter(c -> c.id().equals(cause.id())).findFirst().orElseThrow();
      double allowed = FOUR_ERRORS * Math.hypot(cause.error(), first.error()) + NEAR;
      assertEquals(cause.posterior(), first.posterior(), allowed, cause.id());
    }
    assertEquals(whole.silence(), quick.silence());
    assertEquals(whole.evidence().size(), quick.evidence().size());
    for (int s = 0; s < whole.stations().size(); s++) {
      assertEquals(whole.stations().get(s).works(), quick.stations().get(s).works(), 0.02);
    }
    assertTrue(quick.windows().stream().allMatch(window -> window.los().isAfter(later)));
  }

  @Test
  void oneMoreSilence() {
    assertNear(silence());
  }

  @Test
  void aSoundAfterAll() {
    assertNear(heard());
  }

  @Test
  void aCommandOrACorrectionWaitsForTheWhole() {
    Evidence sent =
        new CommandSent(
            "Saltmere",
            now.plusSeconds(60),
            "reset",
            OptionalDouble.empty(),
            OptionalInt.of(1),
            Optional.empty());
    Instant later = now.plusSeconds(3600);
    assertTrue(examined.firstLook().after(with(sent), later).isEmpty());
    List<Entry> shorter = demo.entries().subList(0, demo.entries().size() - 1);
    assertTrue(examined.firstLook().after(shorter, later).isEmpty());
  }
}

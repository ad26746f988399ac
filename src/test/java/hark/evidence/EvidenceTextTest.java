package hark.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.evidence.EvidenceContext.Span;
import hark.link.Way;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The keys are those of the contract; what is refused is refused by name and all at once. */
class EvidenceTextTest {
  private static final Instant SEPARATION = Instant.parse("2026-11-05T04:10:00Z");
  private static final Instant NOW = Instant.parse("2026-11-14T09:30:00Z");
  private static final Instant AOS = Instant.parse("2026-11-13T21:10:05Z");
  private static final Instant LOS = Instant.parse("2026-11-13T21:18:36Z");

  static final EvidenceContext CONTEXT =
      new EvidenceContext(
          NOW,
          SEPARATION,
          NOW,
          List.of("Fen Hill", "Quay"),
          List.of("98101", "98102"),
          (station, time) ->
              station.equals("Fen Hill") && time.equals(AOS)
                  ? Optional.of(new Span(AOS, LOS))
                  : Optional.empty());

  private static Evidence parse(String kind, String... keys) {
    return EvidenceText.parse(kind, map(keys), CONTEXT);
  }

  static Map<String, String> map(String... keys) {
    Map<String, String> map = new TreeMap<>();
    for (String key : keys) {
      int equals = key.indexOf('=');
      map.put(key.substring(0, equals), key.substring(equals + 1));
    }
    return map;
  }

  private static String refused(String kind, String... keys) {
    return assertThrows(BadInput.class, () -> parse(kind, keys)).getMessage();
  }

  @Test
  void everyKeyOfNothingHeardIsRead() {
    Evidence evidence =
        parse(
            "nothing-heard",
            "station=Fen Hill",
            "from=2026-11-13T21:10:05.123456789Z",
            "to=2026-11-13T21:18:36Z",
            "frequency_hz=437200000",
            "window_hz=1e4",
            "object=98102",
            "offset_s=-12.5",
            "way=waterfall",
            "noise_db=3");
    assertEquals(
        new Evidence.NothingHeard(
            "Fen Hill",
            Instant.parse("2026-11-13T21:10:05.123456789Z"),
            LOS,
            Optional.of(Way.WATERFALL),
            OptionalDouble.of(437.2e6),
            OptionalDouble.of(1e4),
            -12.5,
            Optional.of("98102"),
            3),
        evidence);
  }

  @Test
  void whatIsLeftOutIsNotInvented() {
    Evidence.Heard heard =
        (Evidence.Heard)
            parse("heard", "station=Quay", "from=2026-11-06T15:22:40Z", "to=2026-11-06T15:27:00Z");
    assertTrue(heard.levelDb().isEmpty());
    assertTrue(heard.levelSdDb().isEmpty());
    assertTrue(heard.frequencyHz().isEmpty());
    assertTrue(heard.form().isEmpty());
    assertTrue(heard.object().isEmpty());
  }

  @Test
  void aPassStandsForItsPredictedTimesAndIsSettledIntoThem() {
    Map<String, String> keys = map("station=Fen Hill", "pass=2026-11-13T21:10:05Z");
    Evidence evidence = EvidenceText.parse("nothing-heard", keys, CONTEXT);
    assertEquals(AOS, evidence.at());
    assertEquals(LOS, evidence.end());
    Map<String, String> settled = EvidenceText.settled(keys, evidence);
    assertFalse(settled.containsKey("pass"));
    EvidenceContext withoutPasses = EvidenceContext.alreadyChecked(NOW);
    assertEquals(evidence, EvidenceText.parse("nothing-heard", settled, withoutPasses));
  }

  @Test
  void aPassThatIsNotPredictedIsRefused() {
    String told = refused("nothing-heard", "station=Quay", "pass=2026-11-13T21:10:05Z");
    assertTrue(told.contains("no pass over Quay is predicted"), told);
  }

  @Test
  void anEntryWithoutATimeHappenedWhenTheContextSays() {
    Evidence evidence = parse("telemetry", "volts=7.05");
    assertEquals(NOW, evidence.at());
    assertEquals(NOW.toString(), EvidenceText.settled(map("volts=7.05"), evidence).get("at"));
  }

  @Test
  void allProblemsOfAnEntryAreToldAtOnce() {
    BadInput bad =
        assertThrows(
            BadInput.class,
            () ->
                parse(
                    "nothing-heard",
                    "station=Fen Hil",
                    "from=2026-11-13",
                    "to=2026-11-13T21:18:36Z",
                    "windw_hz=5000",
                    "noise_db=NaN",
                    "way=nose"));
    assertEquals(5, bad.problems().size(), bad.getMessage());
    assertTrue(bad.getMessage().contains("did you mean 'Fen Hill'?"), bad.getMessage());
    assertTrue(bad.getMessage().contains("did you mean 'window_hz'?"), bad.getMessage());
    assertTrue(bad.getMessage().contains("'2026-11-13' is not a UTC time"), bad.getMessage());
  }

  @ParameterizedTest(name = "volts={0}")
  @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "7.05V", "", "1e999"})
  void whatIsNotAFiniteNumberIsRefused(String volts) {
    assertTrue(refused("telemetry", "volts=" + volts).contains("volts"));
  }

  @Test
  void megahertzInAKeyOfHertzAreRefused() {
    String told =
        refused("nothing-heard", "station=Quay", "pass=2026-11-13T21:10:05Z", "frequency_hz=437.2");
    assertTrue(told.contains("the unit is Hz"), told);
  }

  @Test
  void aStretchThatEndsBeforeItBeginsIsRefused() {
    String told =
        refused(
            "not-listened", "station=Quay", "from=2026-11-10T00:00:00Z", "to=2026-11-09T00:00:00Z");
    assertTrue(told.contains("to is not after from"), told);
  }

  @Test
  void aListeningOfMoreThanADayIsTakenForASlipOfTheDate() {
    String told =
        refused(
            "nothing-heard",
            "station=Quay",
            "from=2026-11-06T00:00:00Z",
            "to=2026-11-09T00:00:00Z");
    assertTrue(told.contains("24 h apart"), told);
  }

  @Test
  void nothingHappensBeforeSeparationOrAfterNow() {
    assertTrue(
        refused("telemetry", "volts=7", "at=2026-11-05T04:09:59Z")
            .contains("before the separation"));
    assertTrue(refused("telemetry", "volts=7", "at=2062-11-14T00:00:00Z").contains("future"));
    assertEquals(SEPARATION, parse("telemetry", "volts=7", "at=2026-11-05T04:10:00Z").at());
  }

  @ParameterizedTest(name = "{0} needs {1}")
  @CsvSource({
    "nothing-heard, station",
    "nothing-heard, from",
    "telemetry, volts",
    "station-check, result",
    "outside-report, place",
    "outside-report, heard",
    "object, object",
    "object, verdict",
    "command-sent, command",
    "motion, tumble_s",
    "separation, state",
    "doppler, object",
    "search-result, file",
    "search-result, detected",
    "note, text",
    "correction, of"
  })
  void whatIsMissingIsNamed(String kind, String key) {
    assertTrue(refused(kind).contains("key " + key + ": "), refused(kind));
  }

  @Test
  void anUnknownKindIsRefusedWithTheNearestKnownOne() {
    assertTrue(refused("nothing-herd").contains("did you mean 'nothing-heard'?"));
  }

  @Test
  void wordsBesideAnEntryAreNotAmongItsKeys() {
    BadInput bad =
        assertThrows(
            BadInput.class,
            () -> EvidenceText.parse("note", Map.of("text", "a", "note", "b"), CONTEXT));
    assertTrue(bad.getMessage().contains("stands beside an entry"), bad.getMessage());
    assertFalse(bad.getMessage().contains("did you mean"), bad.getMessage());
  }
}

package hark.document;

import static hark.assessment.FixtureWindows.option;
import static hark.assessment.FixtureWindows.window;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Window;
import hark.assessment.AssessmentFixture;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The sentence follows the numbers: change one and it changes. */
class HeadlineTest {
  private static final String AOS = "2026-11-14T10:42:20Z";

  private static Window fenHill(String planned, List<Option> options) {
    Window w = window("Fen Hill", AOS, 548, 63, 0.41, 0.17, Optional.of(planned));
    return with(w, Optional.of(planned), w.beaconOn(), w.minutesSinceSunrise(), options);
  }

  private static Window with(
      Window w, Optional<String> planned, double beaconOn, double sunrise, List<Option> options) {
    return new Window(
        w.id(),
        w.station(),
        w.aos(),
        w.culmination(),
        w.los(),
        w.maxElevationDeg(),
        w.geometry(),
        beaconOn,
        w.beaconOnError(),
        w.socP25(),
        w.socP50(),
        w.socP75(),
        sunrise,
        w.unattended(),
        planned,
        options,
        w.notAvailable());
  }

  private static Option listen(double heard) {
    return option("listen-wide", "listen wide", heard, 0.7, 0, Optional.empty(), 1, "It is loud.");
  }

  private static Option reset(double heard, double hazard, double reach) {
    return option("reset", "blind reset", heard, 0.9, hazard, Optional.of(reach), 2, "It is bold.");
  }

  private static Headline of(Window... windows) {
    return Headline.of(AssessmentFixture.sandpiper().windows(List.of(windows)).build());
  }

  @Test
  void itSaysWhenWhatWhereAndHowLong() {
    Headline headline = Headline.of(AssessmentFixture.sandpiper().build());
    assertEquals(
        "In 1 h 12 m, listen wide at Fen Hill for nine minutes. Do not transmit.",
        headline.sentence());
  }

  @Test
  void aWindowUnderWayIsSaidToBeNow() {
    Instant during = Instant.parse(AOS).plusSeconds(300);
    Assessment assessment = AssessmentFixture.sandpiper().now(during).build();
    assertEquals(
        "Now, listen wide at Fen Hill for four minutes more.", Headline.of(assessment).action());
  }

  @Test
  void aWindowThatIsOverIsNotSpokenOf() {
    Instant after = Instant.parse(AOS).plusSeconds(600);
    Assessment assessment = AssessmentFixture.sandpiper().now(after).build();
    assertEquals("Quay", Headline.of(assessment).window().orElseThrow().station());
  }

  @Test
  void transmittingIsForbiddenWhenEveryCommandSpoilsMoreThanItAdds() {
    Headline headline = of(fenHill("listen-wide", List.of(listen(0.2), reset(0.25, 0.22, 0.4))));
    assertEquals("Do not transmit.", headline.caution());
    String why = headline.why();
    assertTrue(why.contains("A blind reset could take effect in four in ten"), why);
    assertTrue(why.contains("in about half of those it delays the first sound"), why);
  }

  @Test
  void transmittingIsForbiddenWhenNoCommandAddsAnything() {
    Headline headline = of(fenHill("listen-wide", List.of(listen(0.2), reset(0.2, 0, 0.3))));
    assertEquals("Do not transmit.", headline.caution());
    assertTrue(headline.why().contains("adds nothing to what listening finds"), headline.why());
  }

  @Test
  void oneCommandThatAddsMoreThanItSpoilsLiftsTheBan() {
    Headline headline =
        of(
            fenHill(
                "listen-wide", List.of(listen(0.2), reset(0.3, 0.2, 0.4), beaconOn(0.5, 0.001))));
    assertEquals("", headline.caution());
    assertTrue(headline.why().contains("A blind beacon-on might do better"), headline.why());
    assertTrue(headline.why().contains("from 37 % to 47 %"), headline.why());
  }

  @Test
  void aCommandThatThePlanSendsLaterIsWaitedFor() {
    Window next = fenHill("listen-wide", List.of(listen(0.2), beaconOn(0.5, 0.001)));
    Window w = window("Fen Hill", "2026-11-14T22:12:20Z", 548, 63, 0.4, 0.2, Optional.empty());
    Window later =
        with(w, Optional.of("reset"), 0.4, 38, List.of(reset(0.5, 0.01, 0.4), listen(0.2)));
    Assessment assessment = AssessmentFixture.sandpiper().windows(List.of(next, later)).build();
    Headline headline = Headline.of(assessment, Map.of("Fen Hill", List.of("lead")));
    assertEquals("Do not transmit yet.", headline.caution());
    assertTrue(
        headline
            .why()
            .contains(
                "The plan sends a blind reset from Fen Hill on 14 Nov 22:12Z, if lead authorises it:"
                    + " it is bold."),
        headline.why());
    Window without = with(w, Optional.empty(), 0.4, 38, later.options());
    assertEquals("", of(next, without).caution());
  }

  @Test
  void whatIsDoneAfterThePassStandsAfterItsTime() {
    Option record =
        option(
            "rec", "Record wide and search afterwards", 0.3, 0.7, 0, Optional.empty(), 1, "Loud.");
    assertEquals(
        "In 1 h 12 m, record wide at Fen Hill for nine minutes and search afterwards.",
        of(fenHill("rec", List.of(record))).action());
  }

  @Test
  void whatIsReadLaterCarriesTheTimeItself() {
    assertEquals(
        "On 14 Nov at 10:42:20Z, listen wide at Fen Hill for nine minutes. Do not transmit.",
        Headline.of(AssessmentFixture.sandpiper().build()).dated());
  }

  private static Option beaconOn(double heard, double hazard) {
    return option(
        "beacon", "blind beacon-on", heard, 0.9, hazard, Optional.of(0.2), 3, "It asks for sound.");
  }

  @Test
  void aPlannedCommandNamesWhoMustAuthoriseIt() {
    Window window = fenHill("reset", List.of(reset(0.4, 0.02, 0.4), listen(0.2)));
    Assessment assessment = AssessmentFixture.sandpiper().windows(List.of(window)).build();
    Headline plain = Headline.of(assessment);
    assertEquals(
        "In 1 h 12 m, send a blind reset from Fen Hill and listen for nine minutes.",
        plain.action());
    assertTrue(plain.caution().contains("licence"), plain.caution());
    assertFalse(plain.sentence().contains("Do not transmit"));
    assertTrue(plain.why().startsWith("It is bold."), plain.why());
    Headline named = Headline.of(assessment, Map.of("Fen Hill", List.of("lead", "deputy")));
    assertTrue(named.caution().contains("once lead or deputy has authorised it"), named.caution());
  }

  @Test
  void aStationThatRecordsByItselfNeedsNobody() {
    Headline headline = of(window("Quay", AOS, 402, 22, 0.4, 0.06, Optional.of("listen")));
    assertEquals(
        "In 1 h 12 m, let Quay record for seven minutes (listen as planned).", headline.action());
  }

  @Test
  void whereNoStationCanSendItSaysSo() {
    Headline headline = of(fenHill("listen-wide", List.of(listen(0.2))));
    assertEquals("Do not transmit.", headline.caution());
    assertTrue(headline.why().contains("No station here can send"), headline.why());
  }

  @Test
  void whereOnlyThisStationCannotSendNothingIsForbidden() {
    Headline headline =
        of(
            window("Quay", AOS, 402, 22, 0.4, 0.06, Optional.of("listen")),
            window("Fen Hill", "2026-11-14T12:00:00Z", 402, 22, 0.4, 0.06, Optional.empty()));
    assertEquals("", headline.caution());
  }

  @Test
  void aTaskThatOthersDoIsOnlyTimedByOurPass() {
    Option ask =
        option("ask", "Ask a larger station", 0.3, 0.7, 0, Optional.empty(), 1, "It hears more.");
    assertEquals(
        "In 1 h 12 m, for the pass over Fen Hill (nine minutes), ask a larger station.",
        of(fenHill("ask", List.of(ask))).action());
  }

  @Test
  void withoutAWindowItLooksFurther() {
    assertEquals("No station sees the satellite in the next 3 days.", of().sentence());
  }

  @Test
  void withoutAPlanItSaysToWaitAndWhatTheBestWindowWouldGive() {
    Headline headline = of(window("Fen Hill", AOS, 300, 12, 0.4, 0.02, Optional.empty()));
    assertEquals(
        "Wait: nothing is planned for one window in the next 3 days.", headline.sentence());
    assertTrue(headline.why().contains("would hear it with 2 % for 0.7 h"), headline.why());
  }

  @Test
  void aPlanToWaitIsNotWork() {
    Window window = fenHill("wait", List.of(listen(0.01), waiting()));
    assertTrue(of(window).action().startsWith("Wait"), of(window).action());
  }

  private static Option waiting() {
    return option("wait", "send nothing", 0, 0, 0, Optional.empty(), 1, "It costs nothing.");
  }

  @Test
  void lightOnBoardIsSaidAsItIs() {
    Window day = fenHill("listen-wide", List.of(listen(0.2)));
    assertTrue(of(day).why().contains("38 minutes after sunrise on board"), of(day).why());
    Window night = with(day, day.planned(), 0.4, -4, day.options());
    assertTrue(of(night).why().contains("in shadow"), of(night).why());
    Window always = with(day, day.planned(), 0.4, 900, day.options());
    assertTrue(of(always).why().contains("without a break"), of(always).why());
    Window unknown = with(day, day.planned(), 0.4, Double.NaN, day.options());
    assertFalse(of(unknown).why().contains("This pass comes"), of(unknown).why());
  }

  @Test
  void theLikeliestBeaconOfTheDayIsNamedOnlyWhenItStandsClear() {
    Window first = fenHill("listen-wide", List.of(listen(0.2)));
    Window other = window("Fen Hill", "2026-11-14T12:18:05Z", 402, 22, 0.3, 0.1, Optional.empty());
    assertTrue(of(first, other).why().contains("likelier to be on than in any other window"));
    Window close = with(other, other.planned(), 0.39, 38, other.options());
    assertFalse(of(first, close).why().contains("any other window"));
  }
}

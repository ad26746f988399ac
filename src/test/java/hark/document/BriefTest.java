package hark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment;
import hark.assessment.Assessment.CauseView;
import hark.assessment.Assessment.GoingOn;
import hark.assessment.Assessment.Option;
import hark.assessment.Assessment.Silence;
import hark.assessment.Assessment.Window;
import hark.assessment.AssessmentFixture;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The brief answers first, fits a terminal, and leaves nothing out with --all. */
class BriefTest {
  private static final int HUNDRED_COLUMNS = 100;

  private static String brief() {
    return Brief.of(AssessmentFixture.sandpiper().build(), false);
  }

  private static String all() {
    return Brief.of(AssessmentFixture.sandpiper().build(), true);
  }

  @Test
  void theFirstLineSaysHowLongItHasBeenSilent() {
    assertEquals(
        "Sandpiper · 14 Nov 2026 09:30Z · silent for 7 d 18 h · 11 passes without a sound",
        brief().lines().findFirst().orElseThrow());
  }

  @Test
  void aSatelliteNeverHeardIsSaidToBeNeverHeard() {
    Silence never = new Silence(Optional.empty(), 1);
    String brief = Brief.of(AssessmentFixture.sandpiper().silence(never).build(), false);
    assertTrue(brief.contains("never heard in 9 d 5 h since separation · 1 pass without"), brief);
  }

  @Test
  void beforeSeparationNothingIsSilent() {
    Assessment rehearsal =
        AssessmentFixture.sandpiper()
            .now(AssessmentFixture.SEPARATION.minus(Duration.ofHours(3)))
            .build();
    assertTrue(Brief.of(rehearsal, false).contains("separation in 3 h"));
  }

  @Test
  void theNextWindowCarriesItsNumbersAndTheHeadline() {
    String brief = brief();
    assertTrue(brief.contains("  Next   10:42:20Z  Fen Hill  63°  in 1 h 12 m"), brief);
    assertTrue(brief.contains("beacon on 41 ± 2 %   we hear it 17 ± 1 %   battery 12–55 %"), brief);
    assertTrue(brief.contains("Listen wide at Fen Hill for nine minutes. Do not transmit."), brief);
  }

  @Test
  void laterWindowsSayTheirDayWhenItIsNotToday() {
    String brief = brief();
    assertTrue(brief.contains("  Then          12:18:05Z  Quay      22°        6 %"), brief);
    assertTrue(brief.contains("15 Nov 08:41:44Z  Quay      84°       21 %"), brief);
  }

  @ParameterizedTest(name = "all {0}")
  @ValueSource(booleans = {false, true})
  void noLineIsWiderThanATerminal(boolean all) {
    String text = Brief.of(longWinded(), all);
    for (String line : text.split("\n", -1)) {
      assertTrue(line.length() <= HUNDRED_COLUMNS, line.length() + ": " + line);
    }
  }

  /** Every text as long as a mission could make it. */
  private static Assessment longWinded() {
    String words =
        "a rather long-winded name of something that nobody shortened ".repeat(3).strip();
    List<CauseView> causes =
        AssessmentFixture.sandpiper().build().causes().stream()
            .map(
                c ->
                    new CauseView(
                        c.id(),
                        c.title() + " " + words,
                        words,
                        c.prior(),
                        c.posterior(),
                        c.later(),
                        c.error(),
                        c.ifPriorHalved(),
                        c.ifPriorDoubled(),
                        c.inseparableGroup(),
                        c.selfRecovery(),
                        words,
                        words,
                        c.detail()))
            .toList();
    List<Window> windows =
        AssessmentFixture.sandpiper().build().windows().stream()
            .map(w -> renamed(w, words))
            .toList();
    return AssessmentFixture.sandpiper()
        .causes(causes)
        .windows(windows)
        .warnings(List.of("x".repeat(300)))
        .build();
  }

  private static Window renamed(Window w, String words) {
    List<Option> options =
        w.options().stream()
            .map(
                o ->
                    new Option(
                        o.procedure(),
                        words,
                        o.heardThisPass(),
                        o.heardThisPassError(),
                        o.heardByHorizon(),
                        o.informationBits(),
                        o.costHours(),
                        o.hazard(),
                        o.reach(),
                        o.rank(),
                        words))
            .toList();
    return new Window(
        w.id(),
        "Station " + words,
        w.aos(),
        w.culmination(),
        w.los(),
        w.maxElevationDeg(),
        w.geometry(),
        w.beaconOn(),
        w.beaconOnError(),
        w.socP25(),
        w.socP50(),
        w.socP75(),
        w.minutesSinceSunrise(),
        w.unattended(),
        w.planned(),
        options,
        w.notAvailable());
  }

  @Test
  void whatListeningCannotSeparateIsOneRow() {
    String brief = brief();
    assertTrue(brief.contains("silent for good (3 causes)"), brief);
    assertFalse(brief.contains("spacecraft lost "), brief);
    assertTrue(all().contains("transmitter dead, computer dead and spacecraft lost"));
    String whole = all().replaceAll("\\s+", " ");
    assertTrue(whole.contains("What would: - radar or telescope, which need no signal:"), whole);
    assertTrue(brief.replaceAll("\\s+", " ").contains("first apart by radar or telescope"), brief);
  }

  @Test
  void nothingWrongIsShownEvenWhenItIsUnlikely() {
    assertTrue(brief().contains("nothing wrong, missed         70 %       1 %     any reception"));
  }

  @Test
  void withAllEveryCauseStationObjectAndEntryIsThere() {
    String all = all();
    Assessment assessment = AssessmentFixture.sandpiper().build();
    assessment.causes().forEach(c -> assertTrue(all.contains(c.title()), c.title()));
    assessment.stations().forEach(s -> assertTrue(all.contains(s.station() + " works")));
    assessment.objects().forEach(o -> assertTrue(all.contains(o.object())));
    assessment.evidence().forEach(e -> assertTrue(all.contains(e.title()), e.title()));
    assessment
        .windows()
        .forEach(w -> w.options().forEach(o -> assertTrue(all.contains(o.title()), o.title())));
    String row = all.lines().filter(l -> l.contains("battery 7.05 V")).findFirst().orElseThrow();
    assertTrue(row.matches(".* 7.05 V +\\+1.6 +· +· +· +\\+0.3 +·"), row);
    assertTrue(all.contains("A undervoltage loop; B computer hung;"), all);
    assertTrue(all.contains("Caution: Transmit only under a licence"), all);
  }

  @Test
  void goingOnSaysWhatTheFirstAndTheLastHoursAdd() {
    assertTrue(
        brief().contains("the next 10 h of people's time hear it with 34 %; the 10 h after that"));
    List<GoingOn> nothing = List.of(new GoingOn(0, 0));
    Assessment idle = AssessmentFixture.sandpiper().goingOn(nothing).build();
    assertTrue(Brief.of(idle, false).contains("no hours are planned in the next 3 days"));
  }

  @Test
  void aSmallTailProbabilityIsAWarning() {
    assertFalse(brief().contains("Beware"));
    String misfit = Brief.of(AssessmentFixture.sandpiper().misfit(0.012).build(), false);
    assertTrue(misfit.contains("(chance 1 in 83 to look"), misfit);
  }

  @Test
  void aRemainderThatMattersIsToldAndNotHidden() {
    String heavy = Brief.of(AssessmentFixture.sandpiper().remainder(0.04).build(), false);
    assertTrue(heavy.replaceAll("\\s+", " ").contains("1 % at start, 4 % now if they fit"), heavy);
  }

  @Test
  void linesAreNotBrokenBetweenANumberAndItsUnit() {
    List<String> lines = Page.wrap("aaaa 41 ± 2 % bbb 16 Nov 10:00Z", 9);
    assertEquals(List.of("aaaa", "41 ± 2 %", "bbb", "16 Nov 10", ":00Z"), lines);
  }
}

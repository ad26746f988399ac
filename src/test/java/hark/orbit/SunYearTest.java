package hark.orbit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.problem.BadInput;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Seasons, their spread, and what ends a year early. */
class SunYearTest {
  private static final EarthModel EARTH = YearOrbits.EARTH;
  private static final ElementSet INCLINED = YearOrbits.inclined("10000-3");

  private static SunYear year(ElementSet set) {
    return SunYear.of(set, EARTH, set.epoch(), 365);
  }

  private static SunYear year(SunDoubt doubt) {
    return SunYear.of(INCLINED, EARTH, new SunYear.Span(INCLINED.epoch(), 365), doubt);
  }

  @Test
  void seasonsFillTheYearWithoutGaps() {
    for (ElementSet set : List.of(INCLINED, YearOrbits.dawnDusk("14000-3"))) {
      SunYear year = year(set);
      List<SunSeason> all = new ArrayList<>(year.withoutUmbra());
      all.addAll(year.eclipseSeasons());
      all.sort(Comparator.comparing(season -> season.from().time()));
      assertEquals(set.epoch(), all.get(0).from().time());
      for (int i = 1; i < all.size(); i++) {
        assertEquals(all.get(i - 1).to().time(), all.get(i).from().time());
      }
      Instant end = set.epoch().plus(Duration.ofDays(365));
      assertEquals(end, all.get(all.size() - 1).to().time());
    }
  }

  @Test
  void daysInAFullSunSeasonHaveNoUmbraAndOthersHave() {
    SunYear year = year(INCLINED);
    assertEquals(365, year.days().size());
    for (SunDay day : year.days()) {
      boolean free = year.withoutUmbra().stream().anyMatch(season -> season.contains(day.time()));
      assertEquals(free, day.umbraFraction() == 0, "on " + day.time());
    }
    assertEquals(3, year.withoutUmbra().size());
  }

  @Test
  void datesFartherAwayAreLessSure() {
    List<SunSeason> seasons = year(INCLINED).withoutUmbra();
    double first = seasons.get(0).from().spreadDays();
    double last = seasons.get(seasons.size() - 1).to().spreadDays();
    assertTrue(first > 0 && last > 10 * first, first + " … " + last);
  }

  @Test
  void withoutDoubtThereIsNoSpread() {
    for (SunSeason season : year(new SunDoubt(0, 0, 0)).withoutUmbra()) {
      assertEquals(0, season.from().spreadDays());
      assertTrue(season.sure());
    }
  }

  /** A height off by 2 km turns the node of such an orbit by 0.105 % of 1822° less in a year. */
  @Test
  void aDoubtedHeightMovesTheDateAsTheNodeSays() {
    SunYear year = year(new SunDoubt(2000, 0, 0));
    SunSeason season = year.withoutUmbra().get(2);
    double days = Duration.between(INCLINED.epoch(), season.to().time()).toHours() / 24.0;
    double nodeDegADay =
        -9.964 * Math.pow(6378.137 / 6795.4, 3.5) * Math.cos(Math.toRadians(51.64));
    double nodeDeg = Math.abs(3.5 * 2 / 6795.4 * nodeDegADay * days);
    double againstTheSunDegADay = 0.9856 - nodeDegADay;
    double expected = nodeDeg / againstTheSunDegADay;
    assertEquals(expected, season.to().spreadDays(), 0.35 * expected);
  }

  @Test
  void anOrbitTooLowEndsTheYearAndSaysWhen() {
    double[] low = {51.64, 100, 0.001, 16.0};
    ElementSet set = YearOrbits.set("26080.50000000", low, "50000-3");
    SunYear year = year(set);
    Instant decay = year.decay().orElseThrow();
    assertTrue(year.days().size() < 100, "days " + year.days().size());
    assertTrue(year.days().get(year.days().size() - 1).time().isBefore(decay));
    assertEquals(decay, year.eclipseSeasons().get(0).to().time());
    SunYear after = SunYear.of(set, EARTH, decay.plusSeconds(1), 10);
    assertTrue(after.days().isEmpty() && after.longestEclipse().isEmpty());
  }

  @Test
  void theLongestEclipseComesWithTheSunInThePlane() {
    SunDay day = year(INCLINED).longestEclipse().orElseThrow();
    assertTrue(Math.abs(day.betaDeg()) < 5, "beta " + day.betaDeg());
  }

  @Test
  void eccentricOrbitsAreRefusedWithACure() {
    double[] transfer = {7, 100, 0.7, 2.3};
    ElementSet set = YearOrbits.set("26080.50000000", transfer, YearOrbits.NO_DRAG);
    BadInput refused = assertThrows(BadInput.class, () -> year(set));
    assertTrue(refused.getMessage().contains("0.7"), refused.getMessage());
  }

  @Test
  void senselessSpansAndDoubtsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new SunYear.Span(INCLINED.epoch(), 0));
    assertThrows(IllegalArgumentException.class, () -> new SunDoubt(Double.NaN, 0, 0));
  }
}

package hark.assessment;

import hark.assessment.EnergyReport.FullSun;
import hark.assessment.EnergyReport.SunMonth;
import hark.ensemble.Candidate;
import hark.ensemble.DiagnosisInput;
import hark.orbit.ElementSet;
import hark.orbit.SunDay;
import hark.orbit.SunSeason;
import hark.orbit.SunYear;
import hark.problem.BadInput;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A year of sunlight from now on, of the likeliest object, by calendar months.
 *
 * @param seasons in words
 */
record YearView(List<SunMonth> months, List<FullSun> fullSun, String seasons) {
  private static final int DAYS = 366;
  private static final double SECONDS_PER_MINUTE = 60;

  static YearView of(DiagnosisInput input) {
    try {
      SunYear year = year(input);
      List<FullSun> fullSun = year.withoutPenumbra().stream().map(YearView::season).toList();
      return new YearView(months(year), fullSun, SeasonWords.of(year, fullSun));
    } catch (BadInput tooEccentric) {
      String what = tooEccentric.problems().get(0).what();
      return new YearView(List.of(), List.of(), "No year of sunlight: " + what + ".");
    }
  }

  /**
   * The year itself.
   *
   * @throws BadInput when the orbit is too eccentric for it
   */
  static SunYear year(DiagnosisInput input) {
    return SunYear.of(elements(input), input.earth(), input.now(), DAYS);
  }

  /** The newest set known by now, or the oldest there is. */
  static ElementSet elements(DiagnosisInput input) {
    Candidate likeliest = input.candidates().get(input.likeliestCandidate());
    Comparator<ElementSet> byEpoch = Comparator.comparing(ElementSet::epoch);
    return likeliest.sets().stream()
        .filter(set -> !set.epoch().isAfter(input.now()))
        .max(byEpoch)
        .orElseGet(() -> likeliest.sets().stream().min(byEpoch).orElseThrow());
  }

  private static List<SunMonth> months(SunYear year) {
    Map<YearMonth, List<SunDay>> byMonth =
        year.days().stream()
            .collect(
                Collectors.groupingBy(
                    day -> YearMonth.from(day.time().atOffset(ZoneOffset.UTC)),
                    TreeMap::new,
                    Collectors.toList()));
    return byMonth.values().stream().map(YearView::month).toList();
  }

  private static SunMonth month(List<SunDay> days) {
    Instant from = days.get(0).time();
    return new SunMonth(
        from,
        days.stream().mapToDouble(SunDay::betaDeg).min().orElseThrow(),
        days.stream().mapToDouble(SunDay::betaDeg).max().orElseThrow(),
        days.stream().mapToDouble(SunDay::eclipseFraction).average().orElseThrow(),
        days.stream()
            .mapToDouble(day -> day.shadowFraction() * day.periodSeconds() / SECONDS_PER_MINUTE)
            .max()
            .orElseThrow());
  }

  private static FullSun season(SunSeason season) {
    return new FullSun(
        season.from().time(),
        season.to().time(),
        season.from().spreadDays(),
        season.to().spreadDays(),
        season.sure());
  }
}

package hark.assessment;

import hark.assessment.EnergyReport.FullSun;
import hark.orbit.SunDay;
import hark.orbit.SunYear;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What the seasons of sunlight mean for a satellite that may come back by itself. */
final class SeasonWords {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH).withZone(ZoneOffset.UTC);

  private SeasonWords() {}

  static String of(SunYear year, List<FullSun> fullSun) {
    if (year.days().isEmpty()) {
      return "The orbit decays before any of this.";
    }
    String decay =
        year.decay()
            .map(time -> " The orbit is followed until " + date(time) + ", when it decays.")
            .orElse("");
    return (fullSun.isEmpty() ? without(year) : with(fullSun)) + decay;
  }

  private static String with(List<FullSun> fullSun) {
    String dates = fullSun.stream().map(SeasonWords::dates).collect(Collectors.joining("; "));
    return "Full sun "
        + dates
        + ". What stopped for want of power has its best chance to start again by itself then; what"
        + " only loss of array power clears cannot clear before that season ends.";
  }

  private static String dates(FullSun season) {
    String sure = season.sure() ? "" : ", if the orbit stays as high as thought";
    return "from "
        + date(season.from())
        + spread(season.fromSpreadDays())
        + " to "
        + date(season.to())
        + spread(season.toSpreadDays())
        + sure;
  }

  private static String spread(double days) {
    return days < 0.5 ? "" : " (± " + Math.round(days) + " d)";
  }

  private static String without(SunYear year) {
    SunDay best =
        year.days().stream().min(Comparator.comparingDouble(SunDay::eclipseFraction)).orElseThrow();
    return "No season of full sun in this year: every orbit has a shadow, the shortest around "
        + date(best.time())
        + " with "
        + Words.percent(best.eclipseFraction())
        + " of the time. No date promises a return by itself.";
  }

  private static String date(Instant time) {
    return DATE.format(time);
  }
}

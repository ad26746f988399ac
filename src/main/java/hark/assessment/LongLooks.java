package hark.assessment;

import hark.ensemble.BodyList;
import hark.ensemble.Cause;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.LongFlight;
import hark.ensemble.Workers;
import hark.orbit.SunSeason;
import hark.orbit.SunYear;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Dates of return beyond the horizon, with the season each falls into. */
final class LongLooks {
  /** Causes lighter than this are not followed. */
  private static final double LEAST = 0.01;

  private static final double MOST_SEND = 0.5;

  private LongLooks() {}

  static LongLook of(BodyList list, int days, Workers workers) {
    DiagnosisInput input = list.input();
    Optional<SunYear> year = year(input);
    Instant end = LongFlight.end(input, days, year.flatMap(SunYear::decay));
    List<LongReturn> returns = new ArrayList<>();
    if (end.isAfter(input.now())) {
      for (LongFlight.Return each : LongFlight.of(list, LEAST, end, workers)) {
        returns.add(view(each, input, year, end));
      }
    }
    return new LongLook(end, returns);
  }

  private static Optional<SunYear> year(DiagnosisInput input) {
    try {
      return Optional.of(YearView.year(input));
    } catch (BadInput tooEccentric) {
      return Optional.empty();
    }
  }

  private static LongReturn view(
      LongFlight.Return each, DiagnosisInput input, Optional<SunYear> year, Instant end) {
    Cause cause = input.causes().get(each.cause());
    return new LongReturn(
        cause.id(),
        cause.title(),
        each.bodies(),
        each.sending(),
        each.back(),
        each.p10().map(input::instant),
        each.p50().map(input::instant),
        each.p90().map(input::instant),
        note(each, input, year, end));
  }

  private static String note(
      LongFlight.Return each, DiagnosisInput input, Optional<SunYear> year, Instant end) {
    if (each.sending() >= MOST_SEND) {
      return "it sends already, at least at times; what counts is when and how it is heard";
    }
    if (each.back() == 0) {
      return "none sends again before " + Words.dateAndYear(end) + " without help";
    }
    return each.p50()
        .map(input::instant)
        .flatMap(time -> year.flatMap(y -> season(y, time)))
        .orElse("");
  }

  private static Optional<String> season(SunYear year, Instant time) {
    Optional<SunSeason> full =
        year.withoutPenumbra().stream().filter(season -> season.contains(time)).findFirst();
    if (full.isPresent()) {
      return full.map(
          season ->
              "in the full-sun season of "
                  + Words.date(season.from().time())
                  + " to "
                  + Words.dateAndYear(season.to().time()));
    }
    return year.eclipseSeasons().stream()
        .filter(season -> season.contains(time) && !season.from().cut())
        .findFirst()
        .map(
            season ->
                "in the eclipse season that begins " + Words.dateAndYear(season.from().time()));
  }
}

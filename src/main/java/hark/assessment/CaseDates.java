package hark.assessment;

import hark.assessment.ReviewCase.Dated;
import hark.assessment.ReviewCase.LastDate;
import hark.ensemble.DiagnosisInput;
import hark.evidence.Entry;
import hark.evidence.MotionSeen;
import hark.mission.Mission;
import hark.orbit.OrbitLifetime;
import hark.orbit.OrbitLifetime.Activity;
import hark.orbit.SunDay;
import hark.orbit.SunSeason;
import hark.orbit.SunYear;
import hark.plan.Procedure;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Dates at which more becomes reachable, and the last one. */
final class CaseDates {
  /** A return of less weight than this is no date for a board, 0…1. Judged. */
  private static final double LEAST = 0.005;

  /** A body that sends within a day of now sends already. */
  private static final Duration AT_ONCE = Duration.ofDays(1);

  /** Dates in the table at most, the nearest. */
  private static final int MOST = 12;

  /**
   * Drag of a tumbling body is known so well, as a factor either way: mean area, coefficient.
   * Judged.
   */
  private static final double DRAG_FACTOR = 1.3;

  /** Slow enough that a frame lasts through half a turn, s a turn. Judged. */
  private static final double SLOW_TURN_SECONDS = 60;

  /**
   * Spin decays by e in about so many days, fast and slow. Judged; SwissCube took about a year from
   * a fast spin to a slow one.
   */
  private static final double[] SPIN_DAYS = {30, 180};

  private final Mission mission;
  private final DiagnosisInput input;
  private final Assessment assessment;
  private final Optional<SunYear> year;

  CaseDates(Mission mission, DiagnosisInput input, Assessment assessment, Optional<SunYear> year) {
    this.mission = mission;
    this.input = input;
    this.assessment = assessment;
    this.year = year;
  }

  List<Dated> all() {
    List<Dated> dates = new ArrayList<>();
    returns().forEach(each -> dates.add(dated(each)));
    year.ifPresent(y -> seasons(y, dates));
    spin().ifPresent(dates::add);
    dates.sort(Comparator.comparing(Dated::from));
    return List.copyOf(dates.subList(0, Math.min(MOST, dates.size())));
  }

  /** Causes that come back by themselves, and are not sending already. */
  private List<LongReturn> returns() {
    return assessment.longLook().map(LongLook::returns).orElse(List.of()).stream()
        .filter(each -> when(each).isPresent() && weight(each) >= LEAST)
        .toList();
  }

  /** The middle of the returns that are still to come. */
  private Optional<Instant> when(LongReturn each) {
    Instant later = input.now().plus(AT_ONCE);
    return each.p50().filter(later::isBefore).or(() -> each.p90().filter(later::isBefore));
  }

  private double weight(LongReturn each) {
    double posterior =
        assessment.causes().stream()
            .filter(cause -> cause.id().equals(each.cause()))
            .mapToDouble(Assessment.CauseView::posterior)
            .findFirst()
            .orElse(0);
    return posterior * Math.max(0, each.probability() - each.sending());
  }

  /** Weight that comes back by itself before a time, beyond what sends already. */
  double returningBefore(Instant end) {
    return returns().stream()
        .filter(each -> when(each).orElseThrow().isBefore(end))
        .mapToDouble(this::weight)
        .sum();
  }

  private Dated dated(LongReturn each) {
    return new Dated(
        when(each).orElseThrow(),
        each.p90(),
        0,
        each.title() + " ends by itself" + (each.note().isEmpty() ? "" : ", " + each.note()),
        weight(each),
        each.bodies() + " simulated cases, no command",
        procedure(Procedure.Until.DECIDED));
  }

  private void seasons(SunYear y, List<Dated> dates) {
    List<SunSeason> sunny =
        y.withoutPenumbra().stream().filter(s -> s.from().time().isAfter(input.now())).toList();
    for (SunSeason season : sunny) {
      dates.add(
          new Dated(
              season.from().time(),
              Optional.of(season.to().time()),
              season.from().spreadDays(),
              "full sun: no shadow on any orbit" + (season.sure() ? "" : ", if it comes at all"),
              within(season),
              "orbit and Sun",
              procedure(Procedure.Until.FULL_SUN)));
    }
    y.eclipseSeasons().stream()
        .filter(s -> s.from().time().isAfter(input.now()) && !s.from().cut())
        .forEach(s -> dates.add(darker(s)));
    y.eclipseSeasons().stream()
        .filter(s -> s.contains(input.now()) && !s.to().cut() && sunny.isEmpty())
        .forEach(s -> dates.add(lighter(s)));
    if (sunny.isEmpty()) {
      shortest(y).ifPresent(dates::add);
    }
  }

  private Dated darker(SunSeason season) {
    return new Dated(
        season.from().time(),
        Optional.of(season.to().time()).filter(end -> !season.to().cut()),
        season.from().spreadDays(),
        "eclipse season begins: what only a loss of power ends can end",
        within(season),
        "orbit and Sun",
        procedure(Procedure.Until.ECLIPSES));
  }

  private Dated lighter(SunSeason season) {
    return new Dated(
        season.to().time(),
        Optional.empty(),
        season.to().spreadDays(),
        "eclipse season ends",
        Double.NaN,
        "orbit and Sun",
        procedure(Procedure.Until.FULL_SUN));
  }

  private Optional<Dated> shortest(SunYear y) {
    return y.days().stream()
        .min(Comparator.comparingDouble(SunDay::eclipseFraction))
        .filter(day -> day.time().isAfter(input.now().plus(AT_ONCE)))
        .map(
            day ->
                new Dated(
                    day.time(),
                    Optional.empty(),
                    0,
                    "shadows are shortest of the year, "
                        + Words.percent(day.eclipseFraction())
                        + " of an orbit; no season of full sun comes",
                    Double.NaN,
                    "orbit and Sun",
                    procedure(Procedure.Until.DECIDED)));
  }

  private double within(SunSeason season) {
    return returns().stream()
        .filter(each -> season.contains(when(each).orElseThrow()))
        .mapToDouble(this::weight)
        .sum();
  }

  private Optional<String> procedure(Procedure.Until until) {
    return mission.procedures().stream()
        .filter(p -> p.change() instanceof Procedure.Wait wait && wait.until() == until)
        .map(Procedure::id)
        .findFirst()
        .or(() -> until == Procedure.Until.DECIDED ? Optional.empty() : waiting());
  }

  private Optional<String> waiting() {
    return procedure(Procedure.Until.DECIDED);
  }

  /** From what was seen of the tumble; its decay from two sightings, else judged. */
  private Optional<Dated> spin() {
    List<MotionSeen> seen =
        input.evidence().stream()
            .map(Entry::evidence)
            .filter(MotionSeen.class::isInstance)
            .map(MotionSeen.class::cast)
            .filter(motion -> motion.tumbleSeconds().isPresent())
            .sorted(Comparator.comparing(MotionSeen::at))
            .toList();
    return seen.isEmpty() ? Optional.empty() : spin(seen);
  }

  private Optional<Dated> spin(List<MotionSeen> seen) {
    MotionSeen first = seen.get(0);
    MotionSeen last = seen.get(seen.size() - 1);
    double turn = last.tumbleSeconds().getAsDouble();
    double between = Assessor.days(first.at(), last.at());
    double slowed = Math.log(turn / first.tumbleSeconds().getAsDouble());
    boolean measured = between > 1 && slowed > 0;
    double[] eFold = measured ? new double[] {between / slowed, between / slowed} : SPIN_DAYS;
    double folds = Math.log(SLOW_TURN_SECONDS / turn);
    Instant early = after(last.at(), folds * eFold[0]);
    Instant late = after(last.at(), folds * eFold[1]);
    return folds > 0 && late.isAfter(input.now())
        ? Optional.of(
            new Dated(
                early,
                Optional.of(late).filter(l -> !measured),
                0,
                "its tumble has slowed to a turn a minute: fades no longer cut frames",
                Double.NaN,
                measured
                    ? "two sightings of the tumble, slowing evenly"
                    : "one sighting of the tumble; slowing by e in 30 to 180 days is judged",
                Optional.empty()))
        : Optional.empty();
  }

  private static Instant after(Instant time, double days) {
    return time.plusMillis(Math.round(days * 86_400_000));
  }

  /** When the orbit ends. */
  LastDate last() {
    double area = mission.areaSquareMeters() / mission.massKg();
    double drag = OrbitLifetime.DRAG_COEFFICIENT * area;
    OrbitLifetime life = OrbitLifetime.of(YearView.elements(input), drag);
    double early = new OrbitLifetime(life.heightMeters(), drag * DRAG_FACTOR).days(Activity.HIGH);
    double late = new OrbitLifetime(life.heightMeters(), drag / DRAG_FACTOR).days(Activity.LOW);
    return new LastDate(
        life.heightMeters() / 1e3,
        area,
        after(input.now(), early),
        within(life.days(Activity.MEAN)),
        within(late));
  }

  private Optional<Instant> within(double days) {
    return days < OrbitLifetime.MOST_DAYS
        ? Optional.of(after(input.now(), days))
        : Optional.empty();
  }
}

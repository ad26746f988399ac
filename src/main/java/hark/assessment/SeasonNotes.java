package hark.assessment;

import hark.ensemble.Cause;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.EventTrial;
import hark.ensemble.Workers;
import hark.orbit.SunDay;
import hark.orbit.SunSeason;
import hark.orbit.SunYear;
import hark.plan.PlanOutcome.Recovery;
import hark.power.OnboardChange.Clearing;
import hark.problem.BadInput;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * When a cause could end by itself at the earliest: from what clears it, from the seasons of
 * sunlight on the orbit, and from a trial of a few bodies in sunlight without shadow. Says "not
 * before" and "never", not when: that is the simulation's to say.
 */
final class SeasonNotes {
  /** Days of full sun after which a battery has shown whether it fills. Judged. */
  private static final EventTrial.Span SUNNY = new EventTrial.Span(8, 11);

  private static final String NEVER = "never by itself";

  private final DiagnosisInput input;
  private final Optional<SunYear> year;
  private final boolean[] tried;
  private final double[] inFullSun;

  private SeasonNotes(
      DiagnosisInput input, Optional<SunYear> year, boolean[] tried, double[] inFullSun) {
    this.input = input;
    this.year = year;
    this.tried = tried;
    this.inFullSun = inFullSun;
  }

  /**
   * Reads the year, and tries in full sun those causes of which the sunlight decides.
   *
   * @param recoveries by cause
   */
  static SeasonNotes of(DiagnosisInput input, List<Recovery> recoveries, Workers workers) {
    List<Integer> open =
        IntStream.range(0, recoveries.size())
            .filter(c -> isOpen(recoveries.get(c)) && sunDecides(Traits.of(input.causes().get(c))))
            .boxed()
            .toList();
    boolean[] tried = new boolean[recoveries.size()];
    double[] sunny = new double[recoveries.size()];
    if (!open.isEmpty()) {
      List<List<Integer>> alone = open.stream().map(List::of).toList();
      double[] shares = EventTrial.inFullSun(input, SUNNY).audible(alone, workers);
      for (int k = 0; k < shares.length; k++) {
        tried[open.get(k)] = true;
        sunny[open.get(k)] = shares[k];
      }
    }
    return new SeasonNotes(input, year(input), tried, sunny);
  }

  private static boolean isOpen(Recovery recovery) {
    return recovery.weight() > 0 && recovery.p50().isEmpty();
  }

  private static boolean sunDecides(Traits traits) {
    return traits.power() && !traits.standing();
  }

  private static Optional<SunYear> year(DiagnosisInput input) {
    try {
      return Optional.of(YearView.year(input)).filter(found -> !found.days().isEmpty());
    } catch (BadInput tooEccentric) {
      return Optional.empty();
    }
  }

  /** A note for people; empty when the dates of the simulation say enough. */
  String of(int cause, Recovery recovery) {
    if (recovery.weight() == 0) {
      return "no possibility that still counts has it";
    }
    if (!isOpen(recovery)) {
      return "";
    }
    Cause reading = input.causes().get(cause);
    Traits traits = Traits.of(reading);
    if (recovery.probability() == 0 && isHopeless(cause)) {
      return NEVER + ": not even without any shadow does such a satellite send for long";
    }
    if (recovery.probability() == 0 && !traits.standing() && !traits.power()) {
      return NEVER
          + (traits.radio().mute() ? "" : ", and as weak or as far off as long as it lasts");
    }
    if (recovery.probability() == 0 && traits.standing() && waitsForCommand(traits)) {
      return NEVER + ", only by a command that it receives";
    }
    String end = recovery.probability() == 0 ? "not" : "mostly not";
    return end
        + " before "
        + Words.date(input.end())
        + ", where this look ahead ends"
        + beyond(traits);
  }

  /** Sunlight without any shadow was tried and did not help. */
  boolean isHopeless(int cause) {
    return tried[cause] && inFullSun[cause] < 0.5;
  }

  private static boolean waitsForCommand(Traits traits) {
    return !traits.cleared().contains(Clearing.POWER_CYCLE)
        && !traits.cleared().contains(Clearing.POWER_REMOVED)
        && !traits.cleared().contains(Clearing.WATCHDOG);
  }

  private String beyond(Traits traits) {
    if (traits.standing()) {
      return waitsForCommand(traits) ? "" : "; " + standing(traits);
    }
    return traits.power() ? "; " + fullSun() : "";
  }

  private String standing(Traits traits) {
    boolean removed = traits.cleared().contains(Clearing.POWER_REMOVED);
    if (traits.cleared().contains(Clearing.POWER_CYCLE)) {
      return "it ends when the bus loses power: " + darkest();
    }
    if (removed) {
      return "it ends when the battery runs flat in the dark: " + darkest();
    }
    return "a watchdog alone ends it";
  }

  /** When shadows come, or are longest. */
  private String darkest() {
    Optional<SunSeason> sunny = year.flatMap(y -> now(y.withoutUmbra()));
    if (sunny.isPresent()) {
      SunSeason.Edge end = sunny.get().to();
      return end.cut()
          ? "no eclipse season begins within a year"
          : "not before eclipse season begins on " + date(end);
    }
    return year.flatMap(SunYear::longestEclipse)
        .map(day -> "the longest shadows come around " + Words.dateAndYear(day.time()))
        .orElse("shadows come with every orbit now");
  }

  private String fullSun() {
    if (year.isEmpty()) {
      return "a run of more sunlight may start it again";
    }
    List<SunSeason> seasons = year.get().withoutPenumbra();
    Optional<SunSeason> present = now(seasons);
    if (present.isPresent()) {
      return "it is full sun until " + date(present.get().to()) + ", the best time there is";
    }
    return seasons.stream()
        .filter(season -> season.from().time().isAfter(input.now()))
        .findFirst()
        .map(
            season ->
                "perhaps not before the full-sun season of "
                    + date(season.from())
                    + " to "
                    + date(season.to())
                    + (season.sure() ? "" : ", if that comes at all"))
        .orElseGet(this::shortest);
  }

  private String shortest() {
    SunDay best =
        year.orElseThrow().days().stream()
            .min(Comparator.comparingDouble(SunDay::eclipseFraction))
            .orElseThrow();
    return "no season of full sun comes within a year; shadows are shortest around "
        + Words.dateAndYear(best.time())
        + ", "
        + Words.percent(best.eclipseFraction())
        + " of an orbit";
  }

  private Optional<SunSeason> now(List<SunSeason> seasons) {
    Instant now = input.now();
    return seasons.stream().filter(season -> season.contains(now)).findFirst();
  }

  private static String date(SunSeason.Edge edge) {
    long days = Math.round(edge.spreadDays());
    return Words.dateAndYear(edge.time()) + (days < 1 ? "" : " ± " + days + " d");
  }
}

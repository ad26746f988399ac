package hark.cli;

import hark.mission.Mission;
import hark.mission.MissionFolder;
import hark.orbit.ElementSet;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Whether a command about the sky is asked of a file of element sets or of a mission, and through
 * which span; use as a mixin beside {@link SkyOptions}.
 */
final class SubjectOptions {
  private static final SkyOptions.Limit MOST_DAYS = new SkyOptions.Limit("--days", 400);
  private static final double FILE_DAYS = 1;
  private static final double MISSION_DAYS = 7;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Parameters(
      arity = "0..1",
      paramLabel = "MISSION",
      description = {
        "A mission folder instead of a file and a site: its candidates, its stations with their"
            + " skylines, and its clock, from which a span without --from begins.",
        "Each candidate flies by the set in force at the time: the newest known by then."
      })
  private Path folder;

  @Option(
      names = "--days",
      paramLabel = "D",
      description = "Length of the span, days up to 400 (default: 1; for a MISSION 7).")
  private Double days;

  /** The question as the options put it, for a command where it matters who looks. */
  SkyQuestion question(SkyOptions sky, SiteOptions place) {
    if (folder == null) {
      place.refuseStations();
      return ofFile(sky, List.of(new SkyQuestion.Place(place.site(), place.mask())));
    }
    place.refuseSite();
    Mission mission = read(sky);
    return ofMission(sky, mission, place.places(mission.stations()));
  }

  /** The question as the options put it, for a command where it does not matter who looks. */
  SkyQuestion question(SkyOptions sky) {
    return folder == null ? ofFile(sky, List.of()) : ofMission(sky, read(sky), List.of());
  }

  /** The mission folder, for what only a mission can answer. */
  Path requireMission() {
    if (folder == null) {
      throw new ParameterException(command.commandLine(), "Which mission? Name its folder.");
    }
    return folder;
  }

  private Mission read(SkyOptions sky) {
    sky.refuseElements();
    return MissionFolder.read(folder);
  }

  private SkyQuestion ofFile(SkyOptions sky, List<SkyQuestion.Place> places) {
    Clock clock = Main.of(command).clock();
    Instant from = sky.from(clock);
    Instant to = to(sky, clock, FILE_DAYS);
    List<Leg> legs = sky.elementSets(clock).stream().map(set -> new Leg(set, from, to)).toList();
    return new SkyQuestion(from, to, legs, places, sky.earth(), false);
  }

  private SkyQuestion ofMission(SkyOptions sky, Mission mission, List<SkyQuestion.Place> places) {
    Clock system = Main.of(command).clock();
    Clock clock = mission.now().map(now -> Clock.fixed(now, ZoneOffset.UTC)).orElse(system);
    Instant from = sky.from(clock);
    Instant to = to(sky, clock, MISSION_DAYS);
    List<ElementSet> sets = sky.only(candidates(mission));
    List<Leg> legs = SkyQuestion.legs(sets, from, to, clock.instant());
    return new SkyQuestion(from, to, legs, places, sky.earth(), true);
  }

  private Instant to(SkyOptions sky, Clock clock, double usualDays) {
    return sky.to(clock, days == null ? usualDays : days, Duration.ofDays(1), MOST_DAYS);
  }

  private static List<ElementSet> candidates(Mission mission) {
    return mission.sources().stream()
        .flatMap(
            source ->
                source.sets().stream()
                    .filter(set -> source.candidates().containsKey(set.objectId())))
        .toList();
  }
}

package hark.cli;

import hark.evidence.EvidenceContext.Span;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.Trajectory;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the pass that somebody means by its AOS. */
record PredictedPasses(Mission mission, EarthModel earth) {
  /**
   * How far the AOS named may be from the predicted one: element sets change between predictions.
   */
  private static final Duration SLACK = Duration.ofMinutes(2);

  /**
   * The pass of the likeliest candidate that is under way at a time, or rises within two minutes of
   * it; of the next likeliest when the first has none.
   */
  Optional<Span> find(String station, Instant time) {
    return mission.stations().stream()
        .filter(s -> s.name().equals(station))
        .findFirst()
        .flatMap(s -> find(s, time));
  }

  private Optional<Span> find(Station station, Instant time) {
    return candidates(time).stream()
        .flatMap(set -> near(set, station, time).stream())
        .findFirst()
        .map(pass -> new Span(millis(pass.aos()), millis(pass.los())));
  }

  /** Predictions are good to a millisecond at the very best, and people read what is stored. */
  private static Instant millis(Instant time) {
    return time.truncatedTo(ChronoUnit.MILLIS);
  }

  private Optional<Pass> near(ElementSet set, Station station, Instant time) {
    Trajectory trajectory = Trajectory.of(set, earth);
    Instant from = time.minus(SLACK);
    Instant to = time.plus(SLACK);
    return Passes.find(trajectory, station.site(), station.mask(), from, to).stream()
        .filter(pass -> !pass.aos().isAfter(to) && pass.los().isAfter(time))
        .min(Comparator.comparing(pass -> Duration.between(pass.aos(), time).abs()));
  }

  /** Sets in force, likeliest object first. */
  private List<ElementSet> candidates(Instant time) {
    return mission.sources().stream()
        .flatMap(
            source ->
                ElementSets.inForce(source.sets(), time).stream()
                    .filter(set -> source.candidates().containsKey(set.objectId()))
                    .map(set -> Map.entry(set, source.candidates().get(set.objectId()))))
        .sorted(Map.Entry.<ElementSet, Double>comparingByValue().reversed())
        .map(Map.Entry::getKey)
        .toList();
  }
}

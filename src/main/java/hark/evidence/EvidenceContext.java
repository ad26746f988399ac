package hark.evidence;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What reading an entry must know of the mission, handed in so that this room stays pure.
 *
 * @param at when it happened, for kinds that leave it out; and the date of a correction
 * @param earliest nothing can have happened before: the separation
 * @param latest nothing can have happened after: the clock; {@link Instant#MAX} when the mission
 *     carries a clock of its own
 * @param stations names of the stations; empty: not checked
 * @param objects ids of the candidates; empty: not checked
 * @param passes finds the predicted pass for {@code pass=}
 */
public record EvidenceContext(
    Instant at,
    Instant earliest,
    Instant latest,
    List<String> stations,
    List<String> objects,
    PassFinder passes) {

  /** Keeps its own copies. */
  public EvidenceContext {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(earliest, "earliest");
    Objects.requireNonNull(latest, "latest");
    Objects.requireNonNull(passes, "passes");
    stations = List.copyOf(stations);
    objects = List.copyOf(objects);
  }

  /** Checks nothing of the mission: for entries that were checked when they were written. */
  public static EvidenceContext alreadyChecked(Instant at) {
    return new EvidenceContext(
        at, Instant.MIN, Instant.MAX, List.of(), List.of(), (s, t) -> Optional.empty());
  }

  /** Finds a predicted pass. */
  @FunctionalInterface
  public interface PassFinder {
    /** The pass at a station that is under way at a time or begins close to it; else empty. */
    Optional<Span> find(String station, Instant time);
  }

  /** From a time to a later one. */
  public record Span(Instant from, Instant to) {}
}

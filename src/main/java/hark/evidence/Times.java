package hark.evidence;

import hark.evidence.EvidenceContext.Span;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Reads where and when of an entry: the keys station, at, from, to and pass. */
final class Times {
  /** Longest stretch that one sitting can have lasted. */
  static final Duration LONGEST_LISTENING = Duration.ofHours(24);

  /** Longest stretch in which nobody listened, in one entry. */
  static final Duration LONGEST_ABSENCE = Duration.ofDays(366);

  private Times() {}

  /** One of the mission's stations. */
  static String station(KeyReader reader, EvidenceContext context) {
    if (!reader.has("station")) {
      reader.problem("station", "station is missing", "add station=NAME");
    }
    return reader.name("station", context.stations()).orElse("");
  }

  /** When it happened; the context's time when it is left out. */
  static Instant at(KeyReader reader, EvidenceContext context) {
    Instant at = reader.instant("at").orElse(context.at());
    inside(reader, "at", at, context);
    return at;
  }

  /** The span of a sitting that must be said. */
  static Span span(KeyReader reader, EvidenceContext context, String station, Duration longest) {
    if (reader.has("pass")) {
      return predicted(reader, context, station);
    }
    for (String key : List.of("from", "to")) {
      if (!reader.has(key)) {
        reader.problem(key, key + " is missing", "add from=… and to=…, or pass=AOS");
      }
    }
    Optional<Instant> from = reader.instant("from");
    Optional<Instant> to = reader.instant("to");
    from.ifPresent(t -> inside(reader, "from", t, context));
    to.ifPresent(t -> inside(reader, "to", t, context));
    Span span = new Span(from.orElse(context.at()), to.orElse(context.at()));
    if (from.isPresent() && to.isPresent()) {
      refuseOddLength(reader, span, longest);
    }
    return span;
  }

  private static void refuseOddLength(KeyReader reader, Span span, Duration longest) {
    if (!span.to().isAfter(span.from())) {
      reader.problem("to", "to is not after from", "exchange them, or look at the date");
    } else if (Duration.between(span.from(), span.to()).compareTo(longest) > 0) {
      reader.problem(
          "to",
          "from and to are more than " + longest.toHours() + " h apart",
          "look at the dates, or write one entry for each pass");
    }
  }

  private static Span predicted(KeyReader reader, EvidenceContext context, String station) {
    if (reader.has("from") || reader.has("to")) {
      reader.problem("pass", "pass stands beside from or to", "give either pass or from and to");
    }
    Span none = new Span(context.at(), context.at());
    Optional<Instant> aos = reader.instant("pass");
    if (aos.isEmpty() || station.isEmpty()) {
      return none;
    }
    inside(reader, "pass", aos.get(), context);
    Optional<Span> found = context.passes().find(station, aos.get());
    if (found.isEmpty()) {
      reader.problem(
          "pass",
          "no pass over " + station + " is predicted at " + aos.get(),
          "take the AOS that `hark passes` prints, or give from and to");
    }
    return found.orElse(none);
  }

  private static void inside(KeyReader reader, String key, Instant time, EvidenceContext context) {
    if (time.isBefore(context.earliest())) {
      reader.problem(
          key,
          key + " " + time + " lies before the separation at " + context.earliest(),
          "look at the date, or at spacecraft.separation in mission.yaml");
    }
    if (time.isAfter(context.latest())) {
      reader.problem(
          key,
          key + " " + time + " lies in the future; it is now " + context.latest(),
          "write it down when it has happened");
    }
  }
}

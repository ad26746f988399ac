package hark.evidence;

import hark.evidence.EvidenceContext.Span;
import hark.link.Way;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Turns the words of one entry, kind and {@code key=value}, into evidence. Pure; every problem of
 * an entry is told at once, as {@link hark.problem.BadInput}.
 */
public final class EvidenceText {
  /** Longest stretch that one sitting can have lasted. */
  static final Duration LONGEST_LISTENING = Duration.ofHours(24);

  /** Longest stretch in which nobody listened, in one entry. */
  static final Duration LONGEST_ABSENCE = Duration.ofDays(366);

  /** No amateur, scientific or commercial small-satellite beacon lies outside, Hz. */
  private static final double LEAST_HZ = 1e6;

  private static final double MOST_HZ = 1e11;
  private static final double MOST_WINDOW_HZ = 1e7;
  private static final double DAY_SECONDS = 86_400;
  private static final double MOST_DB = 200;
  private static final double LEAST_SD = 1e-6;

  /** Above any small satellite's bus, V: larger numbers are millivolts. */
  private static final double MOST_VOLTS = 200;

  private static final List<String> WAYS = ways();
  private static final List<String> FORMS = List.of("carrier", "morse", "frames", "fragment");

  private EvidenceText() {}

  /**
   * Reads one entry.
   *
   * @param kind as in {@link EvidenceKinds#list()}
   * @param keys as written; times are UTC with Z, frequencies Hz, levels dB
   * @throws hark.problem.BadInput with all problems of the entry
   */
  public static Evidence parse(String kind, Map<String, String> keys, EvidenceContext context) {
    EvidenceKinds.requireKnown(kind);
    if (kind.equals("correction")) {
      return CorrectionText.parse(keys, context);
    }
    KeyReader reader = new KeyReader(kind, keys);
    Evidence evidence =
        switch (kind) {
          case "nothing-heard" -> nothingHeard(reader, context);
          case "heard" -> heard(reader, context);
          case "telemetry" -> telemetry(reader, context);
          case "station-check" -> stationCheck(reader, context);
          case "not-listened" -> notListened(reader, context);
          case "note" -> new Evidence.Note(at(reader, context), reader.requiredText("text"));
          default -> throw new IllegalStateException("kind without a reader: " + kind);
        };
    reader.finish();
    return evidence;
  }

  /**
   * The same keys with {@code pass} replaced by the times it stands for and {@code at} filled in,
   * so that the entry reads the same for ever, whatever element sets come later. Call it after
   * {@link #parse} with its result.
   */
  public static Map<String, String> settled(Map<String, String> keys, Evidence evidence) {
    Map<String, String> settled = new TreeMap<>(keys);
    if (settled.remove("pass") != null) {
      settled.put("from", evidence.at().toString());
      settled.put("to", evidence.end().toString());
    }
    boolean dated = EvidenceKinds.keysOf(evidence.kind()).contains("at");
    if (dated) {
      settled.putIfAbsent("at", evidence.at().toString());
    }
    return settled;
  }

  private static Evidence nothingHeard(KeyReader reader, EvidenceContext context) {
    String station = station(reader, context);
    Span span = span(reader, context, station, LONGEST_LISTENING);
    return new Evidence.NothingHeard(
        station,
        span.from(),
        span.to(),
        reader.choice("way", WAYS).map(w -> Way.valueOf(w.toUpperCase(Locale.ROOT))),
        reader.number("frequency_hz", LEAST_HZ, MOST_HZ, "Hz"),
        reader.number("window_hz", 1, MOST_WINDOW_HZ, "Hz (half-width)"),
        reader.number("offset_s", -DAY_SECONDS, DAY_SECONDS, "s").orElse(0),
        reader.name("object", context.objects()),
        reader.number("noise_db", -MOST_DB, MOST_DB, "dB").orElse(0));
  }

  private static Evidence heard(KeyReader reader, EvidenceContext context) {
    String station = station(reader, context);
    Span span = span(reader, context, station, LONGEST_LISTENING);
    return new Evidence.Heard(
        station,
        span.from(),
        span.to(),
        reader.number("level_db", -MOST_DB, MOST_DB, "dB"),
        reader.number("level_sd_db", LEAST_SD, MOST_DB, "dB"),
        reader.number("frequency_hz", LEAST_HZ, MOST_HZ, "Hz"),
        reader.choice("form", FORMS),
        reader.text("call_sign"),
        reader.name("object", context.objects()));
  }

  private static Evidence telemetry(KeyReader reader, EvidenceContext context) {
    return new Evidence.Telemetry(
        at(reader, context),
        reader.requiredNumber("volts", 0, MOST_VOLTS, "V"),
        reader.number("volts_sd", LEAST_SD, MOST_VOLTS, "V"));
  }

  private static Evidence stationCheck(KeyReader reader, EvidenceContext context) {
    if (!reader.has("result")) {
      reader.problem("result", "station-check needs result", "add result=heard or result=missed");
    }
    return new Evidence.StationCheck(
        station(reader, context),
        at(reader, context),
        reader.choice("result", List.of("heard", "missed")).filter("heard"::equals).isPresent(),
        reader.number("level_db", -MOST_DB, MOST_DB, "dB"),
        reader.number("expected_db", -MOST_DB, MOST_DB, "dB"),
        reader.yesOrNo("same_hand"),
        reader.yesOrNo("same_band"));
  }

  private static Evidence notListened(KeyReader reader, EvidenceContext context) {
    String station = station(reader, context);
    Span span = span(reader, context, station, LONGEST_ABSENCE);
    return new Evidence.NotListened(station, span.from(), span.to(), reader.text("why").orElse(""));
  }

  private static String station(KeyReader reader, EvidenceContext context) {
    if (!reader.has("station")) {
      reader.problem("station", "station is missing", "add station=NAME");
    }
    return reader.name("station", context.stations()).orElse("");
  }

  private static Instant at(KeyReader reader, EvidenceContext context) {
    Instant at = reader.instant("at").orElse(context.at());
    inside(reader, "at", at, context);
    return at;
  }

  private static Span span(
      KeyReader reader, EvidenceContext context, String station, Duration longest) {
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

  private static List<String> ways() {
    List<String> ways = new ArrayList<>();
    for (Way way : Way.values()) {
      ways.add(way.name().toLowerCase(Locale.ROOT));
    }
    return List.copyOf(ways);
  }
}

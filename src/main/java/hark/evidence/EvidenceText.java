package hark.evidence;

import hark.evidence.EvidenceContext.Span;
import hark.link.Way;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * Turns the words of one entry, kind and {@code key=value}, into evidence. Pure; every problem of
 * an entry is told at once, as {@link hark.problem.BadInput}. Records are made only when no problem
 * is left, because they refuse bad values themselves.
 */
public final class EvidenceText {
  /** No amateur, scientific or commercial small-satellite beacon lies outside, Hz. */
  private static final double LEAST_HZ = 1e6;

  private static final double MOST_HZ = 1e11;
  private static final double MOST_WINDOW_HZ = 1e7;
  static final double DAY_SECONDS = 86_400;
  static final double MOST_DB = 200;
  static final double LEAST_SD = 1e-6;

  private static final List<String> WAYS = words(Way.values());
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
    Supplier<Evidence> evidence =
        switch (kind) {
          case "nothing-heard" -> nothingHeard(reader, context);
          case "heard" -> heard(reader, context);
          case "telemetry" -> telemetry(reader, context);
          case "station-check" -> stationCheck(reader, context);
          case "outside-report" -> ReportText.outsideReport(reader, context);
          case "search-result" -> ReportText.searchResult(reader, context);
          case "object" -> KnowledgeText.object(reader, context);
          case "doppler" -> KnowledgeText.doppler(reader, context);
          case "motion" -> KnowledgeText.motion(reader, context);
          case "separation" -> KnowledgeText.separation(reader, context);
          case "command-sent" -> KnowledgeText.commandSent(reader, context);
          case "not-listened" -> notListened(reader, context);
          case "note" -> note(reader, context);
          default -> throw new IllegalStateException("kind without a reader: " + kind);
        };
    reader.finish();
    return evidence.get();
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
    if (dated && !settled.containsKey("from")) {
      settled.putIfAbsent("at", evidence.at().toString());
    }
    return settled;
  }

  private static Supplier<Evidence> nothingHeard(KeyReader reader, EvidenceContext context) {
    String station = Times.station(reader, context);
    Span span = Times.span(reader, context, station, Times.LONGEST_LISTENING);
    Optional<Way> way =
        reader.choice("way", WAYS).map(w -> Way.valueOf(w.toUpperCase(Locale.ROOT)));
    OptionalDouble frequency = reader.number("frequency_hz", LEAST_HZ, MOST_HZ, "Hz");
    OptionalDouble window = reader.number("window_hz", 1, MOST_WINDOW_HZ, "Hz (half-width)");
    double offset = reader.number("offset_s", -DAY_SECONDS, DAY_SECONDS, "s").orElse(0);
    Optional<String> object = reader.name("object", context.objects());
    double noise = reader.number("noise_db", -MOST_DB, MOST_DB, "dB").orElse(0);
    return () ->
        new Evidence.NothingHeard(
            station, span.from(), span.to(), way, frequency, window, offset, object, noise);
  }

  private static Supplier<Evidence> heard(KeyReader reader, EvidenceContext context) {
    String station = Times.station(reader, context);
    Span span = Times.span(reader, context, station, Times.LONGEST_LISTENING);
    OptionalDouble level = reader.number("level_db", -MOST_DB, MOST_DB, "dB");
    OptionalDouble levelSd = reader.number("level_sd_db", LEAST_SD, MOST_DB, "dB");
    OptionalDouble frequency = reader.number("frequency_hz", LEAST_HZ, MOST_HZ, "Hz");
    OptionalDouble frequencySd = reader.number("frequency_sd_hz", LEAST_SD, MOST_WINDOW_HZ, "Hz");
    Optional<String> form = reader.choice("form", FORMS);
    Optional<String> callSign = reader.text("call_sign");
    Optional<String> object = reader.name("object", context.objects());
    return () ->
        new Evidence.Heard(
            station,
            span.from(),
            span.to(),
            level,
            levelSd,
            frequency,
            frequencySd,
            form,
            callSign,
            object);
  }

  private static Supplier<Evidence> telemetry(KeyReader reader, EvidenceContext context) {
    Instant at = Times.at(reader, context);
    Map<Channel, Evidence.Reading> readings = new EnumMap<>(Channel.class);
    boolean written = false;
    for (Channel channel : Channel.values()) {
      written |= reader.has(channel.key());
      OptionalDouble sd = sd(reader, channel);
      reader
          .number(channel.key(), channel.least(), channel.most(), channel.unit())
          .ifPresent(value -> readings.put(channel, new Evidence.Reading(value, sd)));
    }
    Optional<Evidence.Mode> mode = reader.choice("mode", Evidence.Mode.class);
    if (!written && !reader.has("mode")) {
      reader.problem(
          "volts",
          "telemetry needs a reading",
          "add one of volts, amps, battery_c, resets, uptime_s, beacon_counter, mode");
    }
    return () -> new Evidence.Telemetry(at, readings, mode);
  }

  private static OptionalDouble sd(KeyReader reader, Channel channel) {
    String key = channel.key() + "_sd";
    if (reader.has(key) && !reader.has(channel.key())) {
      reader.problem(
          key,
          key + " stands without " + channel.key(),
          "add " + channel.key() + "=… or take " + key + " out");
    }
    return reader.number(key, LEAST_SD, channel.most(), channel.unit());
  }

  private static Supplier<Evidence> stationCheck(KeyReader reader, EvidenceContext context) {
    if (!reader.has("result")) {
      reader.problem("result", "station-check needs result", "add result=heard or result=missed");
    }
    String station = Times.station(reader, context);
    Instant at = Times.at(reader, context);
    boolean heard =
        reader.choice("result", List.of("heard", "missed")).filter("heard"::equals).isPresent();
    OptionalDouble level = reader.number("level_db", -MOST_DB, MOST_DB, "dB");
    OptionalDouble expected = reader.number("expected_db", -MOST_DB, MOST_DB, "dB");
    Optional<Boolean> sameHand = reader.yesOrNo("same_hand");
    Optional<Boolean> sameBand = reader.yesOrNo("same_band");
    return () -> new Evidence.StationCheck(station, at, heard, level, expected, sameHand, sameBand);
  }

  private static Supplier<Evidence> notListened(KeyReader reader, EvidenceContext context) {
    String station = Times.station(reader, context);
    Span span = Times.span(reader, context, station, Times.LONGEST_ABSENCE);
    String why = reader.text("why").orElse("");
    return () -> new Evidence.NotListened(station, span.from(), span.to(), why);
  }

  private static Supplier<Evidence> note(KeyReader reader, EvidenceContext context) {
    Instant at = Times.at(reader, context);
    String text = reader.requiredText("text");
    return () -> new Evidence.Note(at, text);
  }

  /** The names of a choice as the record writes them. */
  static <E extends Enum<E>> List<String> words(E[] choices) {
    List<String> words = new ArrayList<>();
    for (E choice : choices) {
      words.add(choice.name().toLowerCase(Locale.ROOT));
    }
    return List.copyOf(words);
  }
}

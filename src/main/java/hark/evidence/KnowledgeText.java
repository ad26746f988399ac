package hark.evidence;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Reads what is known of the object, its release and its motion, and what was sent to it. */
final class KnowledgeText {
  private static final double LEAST_TURN_SECONDS = 0.05;
  private static final double MOST_TURN_SECONDS = 1e6;
  private static final double LEAST_WATTS = 1e-3;
  private static final double MOST_WATTS = 1e5;
  private static final double MOST_REPEATS = 100_000;

  private KnowledgeText() {}

  static Supplier<Evidence> object(KeyReader reader, EvidenceContext context) {
    Instant at = Times.at(reader, context);
    String object = candidate(reader, context);
    String verdict = required(reader, "verdict", List.of("confirmed", "excluded"));
    Optional<String> source = reader.text("source");
    return () -> new ObjectVerdict(at, object, verdict.equals("confirmed"), source);
  }

  static Supplier<Evidence> doppler(KeyReader reader, EvidenceContext context) {
    Instant at = Times.at(reader, context);
    String object = candidate(reader, context);
    Optional<String> station = reader.name("station", context.stations());
    Optional<String> file = reader.text("file");
    return () -> new DopplerFit(at, object, station, file);
  }

  private static String candidate(KeyReader reader, EvidenceContext context) {
    String object = reader.requiredText("object");
    if (!object.isEmpty()) {
      reader.name("object", context.objects());
    }
    return object;
  }

  static Supplier<Evidence> motion(KeyReader reader, EvidenceContext context) {
    Instant at = Times.at(reader, context);
    OptionalDouble turn = reader.number("tumble_s", LEAST_TURN_SECONDS, MOST_TURN_SECONDS, "s");
    OptionalDouble sd = reader.number("tumble_sd_s", EvidenceText.LEAST_SD, MOST_TURN_SECONDS, "s");
    Optional<MotionSeen.Decay> decay = reader.choice("decay", MotionSeen.Decay.class);
    Optional<String> source = reader.text("source");
    if (!reader.has("tumble_s") && !reader.has("decay")) {
      reader.problem(
          "tumble_s",
          "motion needs tumble_s or decay",
          "add tumble_s=… or decay=faster, slower or same");
    }
    return () -> new MotionSeen(at, turn, sd, decay, source);
  }

  static Supplier<Evidence> separation(KeyReader reader, EvidenceContext context) {
    Instant at = Times.at(reader, context);
    String state = required(reader, "state", List.of("confirmed", "unknown"));
    Optional<String> file = reader.text("file");
    return () -> new Separation(at, state.equals("confirmed"), file);
  }

  static Supplier<Evidence> commandSent(KeyReader reader, EvidenceContext context) {
    String station = Times.station(reader, context);
    Instant at = Times.at(reader, context);
    String command = reader.requiredText("command");
    OptionalDouble power = reader.number("power_w", LEAST_WATTS, MOST_WATTS, "W");
    OptionalDouble repeats = reader.number("repeats", 1, MOST_REPEATS, "times");
    if (repeats.isPresent() && repeats.getAsDouble() != Math.rint(repeats.getAsDouble())) {
      reader.problem("repeats", "repeats is not a whole number", "write how often it was sent");
    }
    OptionalInt times =
        repeats.isPresent() ? OptionalInt.of((int) repeats.getAsDouble()) : OptionalInt.empty();
    Optional<Boolean> acknowledged = reader.yesOrNo("acknowledged");
    return () -> new CommandSent(station, at, command, power, times, acknowledged);
  }

  private static String required(KeyReader reader, String key, List<String> words) {
    if (!reader.has(key)) {
      reader.problem(key, key + " is missing", "add " + key + "=" + String.join(" or ", words));
    }
    return reader.choice(key, words).orElse(words.get(0));
  }
}

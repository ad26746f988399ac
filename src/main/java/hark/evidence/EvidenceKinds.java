package hark.evidence;

import hark.problem.BadInput;
import hark.problem.NearestWord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Names of the kinds and their keys: what can be written down. */
public final class EvidenceKinds {
  /** Keys of every kind, in the order people meet them. */
  private static final Map<String, List<String>> KEYS = keys();

  private EvidenceKinds() {}

  /** Kinds that can be written down. */
  public static List<String> list() {
    return List.copyOf(KEYS.keySet());
  }

  /** Keys of a kind; a correction takes those of the entry it corrects as well. */
  public static List<String> keysOf(String kind) {
    requireKnown(kind);
    return KEYS.get(kind);
  }

  /** Throws {@link BadInput} for a kind that is unknown. */
  static void requireKnown(String kind) {
    if (!KEYS.containsKey(kind)) {
      throw BadInput.of(
          "'" + kind + "' is not a kind of entry", "kind", NearestWord.advice(kind, list()));
    }
  }

  private static Map<String, List<String>> keys() {
    Map<String, List<String>> keys = new LinkedHashMap<>();
    keys.put(
        "nothing-heard",
        List.of(
            "station",
            "from",
            "to",
            "pass",
            "frequency_hz",
            "window_hz",
            "object",
            "offset_s",
            "way",
            "noise_db"));
    keys.put(
        "heard",
        List.of(
            "station",
            "from",
            "to",
            "pass",
            "level_db",
            "level_sd_db",
            "frequency_hz",
            "frequency_sd_hz",
            "form",
            "call_sign",
            "object"));
    keys.put("telemetry", telemetry());
    keys.put(
        "station-check",
        List.of("station", "at", "result", "level_db", "expected_db", "same_hand", "same_band"));
    keys.put(
        "outside-report",
        List.of(
            "place",
            "station",
            "from",
            "to",
            "pass",
            "heard",
            "sensitivity_db",
            "clock_sd_s",
            "trust"));
    keys.put("object", List.of("at", "object", "verdict", "source"));
    keys.put(
        "command-sent", List.of("station", "at", "command", "power_w", "repeats", "acknowledged"));
    keys.put("motion", List.of("at", "tumble_s", "tumble_sd_s", "decay", "source"));
    keys.put("separation", List.of("at", "state", "file"));
    keys.put("doppler", List.of("at", "file", "station", "object"));
    keys.put(
        "search-result",
        List.of(
            "at",
            "file",
            "station",
            "from",
            "to",
            "pass",
            "detected",
            "level_db_hz",
            "upper_limit_db_hz",
            "object",
            "offset_s"));
    keys.put("not-listened", List.of("station", "from", "to", "pass", "why"));
    keys.put("note", List.of("at", "text"));
    keys.put("correction", List.of("of", "withdrawn"));
    return keys;
  }

  private static List<String> telemetry() {
    List<String> keys = new ArrayList<>(List.of("at"));
    for (Channel channel : Channel.values()) {
      keys.add(channel.key());
      keys.add(channel.key() + "_sd");
    }
    keys.add("mode");
    return List.copyOf(keys);
  }
}

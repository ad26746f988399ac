package hark.evidence;

import hark.problem.BadInput;
import hark.problem.NearestWord;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names of the kinds and their keys: those this edition reads, and those that come later. */
public final class EvidenceKinds {
  /** Keys of every kind that this edition reads, in the order people meet them. */
  private static final Map<String, List<String>> KEYS = keys();

  /** Kinds of the contract that come in a later edition; refused by name. */
  private static final Set<String> LATER =
      Set.of(
          "outside-report",
          "object",
          "command-sent",
          "motion",
          "separation",
          "doppler",
          "search-result");

  /** Keys of the contract that come in a later edition, by kind. */
  private static final Map<String, Set<String>> LATER_KEYS =
      Map.of(
          "telemetry",
          Set.of(
              "amps",
              "amps_sd",
              "battery_c",
              "battery_c_sd",
              "resets",
              "resets_sd",
              "uptime_s",
              "uptime_s_sd",
              "beacon_counter",
              "beacon_counter_sd",
              "mode",
              "mode_sd"));

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

  /** True for a key that the contract has and this edition does not read. */
  static boolean comesLater(String kind, String key) {
    return LATER_KEYS.getOrDefault(kind, Set.of()).contains(key);
  }

  /** Throws {@link BadInput} for a kind that is unknown or comes later. */
  static void requireKnown(String kind) {
    if (LATER.contains(kind)) {
      throw BadInput.of(
          "entries of kind '" + kind + "' come in a later edition",
          "kind",
          "write it down as a note for now, so that nothing is lost");
    }
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
            "form",
            "call_sign",
            "object"));
    keys.put("telemetry", List.of("at", "volts", "volts_sd"));
    keys.put(
        "station-check",
        List.of("station", "at", "result", "level_db", "expected_db", "same_hand", "same_band"));
    keys.put("not-listened", List.of("station", "from", "to", "pass", "why"));
    keys.put("note", List.of("at", "text"));
    keys.put("correction", List.of("of", "withdrawn"));
    return keys;
  }
}

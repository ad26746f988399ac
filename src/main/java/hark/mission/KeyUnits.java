package hark.mission;

import java.util.LinkedHashMap;
import java.util.Map;

/** The unit that a key's name ends with, or that of the map it stands in. */
final class KeyUnits {
  /** Longest endings first. */
  private static final Map<String, String> ENDINGS = endings();

  private KeyUnits() {}

  private static Map<String, String> endings() {
    Map<String, String> units = new LinkedHashMap<>();
    units.put("V_per_cell", "V");
    units.put("per_month", "per month");
    units.put("per_year", "per year");
    units.put("per_day2", "per day²");
    units.put("per_day", "per day");
    units.put("per_K", "1/K");
    units.put("deg_s", "°/s");
    units.put("J_K", "J/K");
    units.put("W_K", "W/K");
    for (String[] unit :
        new String[][] {
          {"kg", "kg"},
          {"cm2", "cm²"},
          {"m2", "m²"},
          {"m", "m"},
          {"K", "K"},
          {"deg", "°"},
          {"Ah", "Ah"},
          {"A", "A"},
          {"V", "V"},
          {"volts", "V"},
          {"W", "W"},
          {"ohm", "Ω"},
          {"C", "°C"},
          {"dBm", "dBm"},
          {"dBi", "dBi"},
          {"dB", "dB"},
          {"MHz", "MHz"},
          {"Hz", "Hz"},
          {"s", "s"},
          {"seconds", "s"},
          {"minutes", "min"},
          {"hours", "h"},
          {"days", "d"}
        }) {
      units.put(unit[0], unit[1]);
    }
    return units;
  }

  /** The unit for people; empty for a plain number. */
  static String of(String path) {
    String[] keys = path.replaceAll("\\[[^\\]]*\\]", "").split("\\.", -1);
    String own = ending(keys[keys.length - 1]);
    // thresholds_V.cutoff, loads_W.safe, interval_s.usual
    boolean inherits = keys.length > 1 && keys[keys.length - 2].contains("_");
    if (!inherits || keys[keys.length - 1].endsWith("factor")) {
      return own;
    }
    String above = ending(keys[keys.length - 2]);
    // along_track_s.per_day: so many seconds a day
    return own.startsWith("per ") && !above.isEmpty()
        ? above + " " + own
        : own.isEmpty() ? above : own;
  }

  private static String ending(String key) {
    return ENDINGS.entrySet().stream()
        .filter(e -> key.equals(e.getKey()) || key.endsWith("_" + e.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }
}

package hark.assessment;

import hark.assessment.WhatIf.Change;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** A what-if in one sentence. */
final class WhatIfWords {
  /** Ends of key names that are units, and how they are written. */
  private static final Map<String, String> UNITS =
      Map.ofEntries(
          Map.entry("Ah", "Ah"),
          Map.entry("W", "W"),
          Map.entry("V", "V"),
          Map.entry("A", "A"),
          Map.entry("C", "°C"),
          Map.entry("ohm", "Ω"),
          Map.entry("cm2", "cm²"),
          Map.entry("m2", "m²"),
          Map.entry("kg", "kg"),
          Map.entry("s", "s"),
          Map.entry("minutes", "minutes"),
          Map.entry("hours", "hours"),
          Map.entry("days", "days"),
          Map.entry("deg", "°"));

  private WhatIfWords() {}

  static String sentence(Map<String, String> overrides, Change change) {
    List<String> said =
        overrides.entrySet().stream().map(e -> said(e.getKey(), e.getValue())).toList();
    String with = "With " + String.join(" and ", said) + " ";
    if (change.before().equals(change.after())) {
      return with + "nothing changes: no part of the electrical system depends on it.";
    }
    return with + median(change) + ", and " + off(change) + ".";
  }

  private static String median(Change change) {
    String from = Words.percent(change.before().socP50AtHorizon());
    String to = Words.percent(change.after().socP50AtHorizon());
    if (from.equals(to)) {
      return "the median charge at the horizon stays at " + to;
    }
    boolean falls = change.after().socP50AtHorizon() < change.before().socP50AtHorizon();
    String verb = falls ? "falls" : "rises";
    return "the median charge at the horizon " + verb + " from " + from + " to " + to;
  }

  private static String off(Change change) {
    String before = Words.percent(change.before().states().off());
    String after = Words.percent(change.after().states().off());
    return before.equals(after)
        ? "it is off " + after + " of the time as before"
        : "it is off " + after + " of the time instead of " + before;
  }

  /** {@code capacity 2.0 Ah} for {@code spacecraft.battery.cell.capacity_Ah} = 2.0. */
  static String said(String key, String value) {
    String[] parts = key.split("\\.", -1);
    String last = parts[parts.length - 1];
    String parent = parts.length > 1 ? parts[parts.length - 2] : "";
    if (UNITS.containsKey(last)) { // heater.W: the whole name is a unit
      return name(parent) + " " + value + " " + UNITS.get(last);
    }
    if (!unit(last).isEmpty()) {
      return name(last) + " " + value + " " + unit(last);
    }
    if (!unit(parent).isEmpty()) {
      return name(parent) + " " + name(last) + " " + value + " " + unit(parent);
    }
    return name(last) + " " + value;
  }

  private static String unit(String part) {
    int bar = part.lastIndexOf('_');
    return bar < 0 ? "" : UNITS.getOrDefault(part.substring(bar + 1), "");
  }

  private static String name(String part) {
    int bar = part.lastIndexOf('_');
    String bare = unit(part).isEmpty() || bar < 0 ? part : part.substring(0, bar);
    return String.join(" ", Arrays.asList(bare.split("_", -1)));
  }
}

package hark.console;

import java.util.Map;
import java.util.TreeMap;

/**
 * An entry as a form gives it, before it is understood.
 *
 * @param kind as in the journal, such as {@code nothing-heard}
 * @param keys as in the journal; {@code who} and {@code note} may be among them
 */
public record NewEntry(String kind, Map<String, String> keys) {
  /** Keeps its own copy, in order of key. */
  public NewEntry {
    keys = java.util.Collections.unmodifiableMap(new TreeMap<>(keys));
  }
}

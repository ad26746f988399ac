package hark.mission;

/**
 * A key of a mission file with its value, for people.
 *
 * @param key path, items of lists by name where they have one
 * @param value as it is or could be written there, on one line
 * @param unit from the key's name; empty where there is none
 * @param line in the file, from 1; 0 for a default
 */
public record MissionKey(String key, String value, String unit, int line) {
  /** True when the file says it; else it is taken by default. */
  public boolean isWritten() {
    return line > 0;
  }
}

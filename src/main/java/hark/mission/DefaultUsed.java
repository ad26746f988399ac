package hark.mission;

/**
 * A key that was not written, and what is taken for it.
 *
 * @param key path in the mission file
 * @param value as it could be written there
 */
public record DefaultUsed(String key, String value) {}

package hark.mission;

/**
 * A number of the spacecraft that can be asked about with another value.
 *
 * @param key path in the mission file, items of lists by name, as overrides take it
 * @param value as it is or could be written there
 * @param mean its mean
 * @param unit from the key's name; empty for a plain number
 * @param least plausible value
 * @param greatest plausible value
 * @param whole whether only whole numbers have a meaning
 */
public record MissionNumber(
    String key,
    String value,
    double mean,
    String unit,
    double least,
    double greatest,
    boolean whole) {}

package hark.power;

/** A command that reaches the spacecraft, as the electrical system sees it. A closed set. */
public enum OnboardCommand {
  /**
   * Power-cycles the computer: bus off for a moment, then boot. Timers that do not survive a reset
   * begin again.
   */
  RESET,
  /** Starts the beacon in every state that can power it. */
  BEACON_ON,
  /**
   * Forces the safe state, least load, until voltage has been above the nominal threshold for a
   * day.
   */
  LOW_POWER,
  /** Tries the release again: draws the release current once and opens panels that were stuck. */
  RELEASE
}

package hark.ensemble;

import hark.evidence.Channel;

/**
 * One number of a frame.
 *
 * @param sd spread of the reading itself, in the channel's unit
 */
record Told(Channel channel, double value, double sd) {
  /**
   * Spread of a reading when none is written: about one step of an 8-bit channel (volts, amps,
   * degrees), a second's doubt of an uptime, none of a counter. Common practice.
   */
  static double usualSd(Channel channel) {
    return switch (channel) {
      case VOLTS, AMPS -> 0.05;
      case BATTERY_C, UPTIME_S, BEACON_COUNTER -> 1;
      case RESETS -> 0.1;
    };
  }

  /**
   * Density of a number that means something else altogether, another scale or garbled. Spread
   * evenly over the usual range; counters and times evenly over their magnitudes.
   */
  double ifWrong() {
    return switch (channel) {
      case VOLTS, AMPS -> 1 / 5.0;
      case BATTERY_C -> 1 / 100.0;
      case RESETS, UPTIME_S, BEACON_COUNTER -> 1 / (16 * (1 + value));
    };
  }
}

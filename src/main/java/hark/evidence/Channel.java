package hark.evidence;

/** What a frame of telemetry may tell, each with its key and limits in the record. */
public enum Channel {
  /** Voltage of the bus at the loaded terminals, V. The largest is above any small bus. */
  VOLTS("volts", "V", 0, 200),
  /** Current into the battery, A: positive while it is charged, negative while it gives. */
  AMPS("amps", "A, positive into the battery", -100, 100),
  /** Temperature of the battery, °C. */
  BATTERY_C("battery_c", "°C", -100, 150),
  /** Restarts counted by the spacecraft; see {@code counters} of the mission file. */
  RESETS("resets", "restarts", 0, 1e9),
  /** Time since the last restart, s. */
  UPTIME_S("uptime_s", "s", 0, 1e10),
  /** Bursts or frames sent so far, counted by the spacecraft. */
  BEACON_COUNTER("beacon_counter", "bursts", 0, 1e10);

  private final String key;
  private final String unit;
  private final double least;
  private final double most;

  Channel(String key, String unit, double least, double most) {
    this.key = key;
    this.unit = unit;
    this.least = least;
    this.most = most;
  }

  /** The key of the journal and the command line. */
  public String key() {
    return key;
  }

  String unit() {
    return unit;
  }

  double least() {
    return least;
  }

  double most() {
    return most;
  }
}

package hark.trial;

/**
 * Constants of {@code src/docs/power-model.md}, written down a second time so that a slip of the
 * pen in the other place shows. Origins stand beside them; those of judgement are the page's.
 */
final class Physics {
  static final double DAY = 86_400;

  /** Julian year, s. */
  static final double YEAR = 31_557_600;

  /** Self-discharge is stated for a month of thirty days, s. */
  static final double MONTH = 30 * DAY;

  /** Temperature of both nodes at separation, °C. Assumed. */
  static final double FIRST_CELSIUS = 20;

  /** Ice melts here, K. Exact by definition of the Celsius scale. */
  static final double ZERO_CELSIUS_KELVIN = 273.15;

  /** Stefan–Boltzmann constant, W/m²/K⁴. CODATA 2018. */
  static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  /** Molar gas constant, J/mol/K. CODATA 2018. */
  static final double GAS_CONSTANT = 8.314462618;

  /** Infrared of the Earth, W/m². Common practice. */
  static final double EARTH_INFRARED = 237;

  /** Share of sunlight that the Earth throws back. Common practice. */
  static final double ALBEDO = 0.3;

  /** View factor of the Earth from 500 km. Closed form for a sphere. */
  static final double EARTH_VIEW = 0.31;

  /** Height of the Sun above the ground beneath, when nobody knows it: mean. Assumed. */
  static final double UNKNOWN_HEIGHT = 0.5;

  /** Array cells have their stated efficiency here, °C. Data sheets. */
  static final double ARRAY_CELSIUS = 28;

  /** A tumble at this rate or faster counts by its mean, °/s. Judged. */
  static final double FAST_TUMBLE = 0.6;

  /** Battery cells have their stated resistance from here on, °C. Common practice. */
  static final double RESISTANCE_CELSIUS = 25;

  /** Activation energy of the resistance, J/mol. Common practice. */
  static final double RESISTANCE_ACTIVATION = 20_000;

  /** Below this charge gets out of reach, °C. Common practice. */
  static final double LOCK_CELSIUS = 15;

  /** Share of charge out of reach at most. Assumed. */
  static final double MOST_LOCKED = 0.5;

  /** Self-discharge is stated here, °C, and doubles with each 10 K. Common practice. */
  static final double SELF_DISCHARGE_CELSIUS = 20;

  /** Cells do not get colder than this by a shift, °C. */
  static final double COLDEST_CELSIUS = -150;

  /** Charging resumes this far inside its temperatures, K. */
  static final double INSIDE_KELVIN = 1;

  /** A pack with less of its capacity is open. */
  static final double LEAST_CAPACITY = 1e-3;

  /** Less room than this below the charge voltage is rounding, V. */
  static final double LEAST_ROOM_VOLTS = 1e-9;

  /** Off for so long at least after the voltage fell, s. Assumed. */
  static final double LEAST_OFF = 10;

  /** Off time of a power cycle, s. Assumed. */
  static final double POWER_CYCLE = 2;

  /** Between two looks of the computer at the voltage, s. Common practice. */
  static final double LOOK = 60;

  /** Off and dark for so long takes all power away, s. */
  static final double UNPOWERED = 60;

  /** Low power ends when the voltage was high for so long, s. */
  static final double LOW_POWER = DAY;

  /** A separation switch toggles at most so often, s. */
  static final double LEAST_TOGGLE = 60;

  /** Drawn by a release, W. Common practice for burn wires. */
  static final double RELEASE_WATTS = 5;

  /** Time of a release, s. Common practice. */
  static final double RELEASE_SECONDS = 20;

  private Physics() {}
}

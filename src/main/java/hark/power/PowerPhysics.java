package hark.power;

/** Constants of the electrical and thermal model, each with its origin. */
final class PowerPhysics {
  /**
   * The simulation's longest step, s; shorter where something happens in between. Chosen on the
   * error-cost curve that the bench prints.
   */
  static final double STEP_SECONDS = 300;

  /** Thresholds that the voltage crosses are located within this time, s. */
  static final double EDGE_SECONDS = 1;

  /** Temperatures at which thermostat or charge inhibit switch are located within this time, s. */
  static final double SWITCH_SECONDS = 10;

  /** Nearer than this to a threshold the end of a step is looked at exactly, V. */
  static final double NEAR_VOLTS = 0.02;

  static final double DAY_SECONDS = 86_400;

  /** Julian year, s. */
  static final double YEAR_SECONDS = 365.25 * DAY_SECONDS;

  /** Temperature at which the cells of the arrays have their stated efficiency, °C. Data sheets. */
  static final double ARRAY_CELSIUS = 28;

  /** Below this temperature a battery's charge gets out of reach, °C. Common practice. */
  static final double LOCK_CELSIUS = 15;

  /** No more than this share of the charge is out of reach. Assumed. */
  static final double MOST_LOCKED = 0.5;

  /**
   * Self-discharge is stated at this temperature, °C, and doubles with each 10 K. Common practice.
   */
  static final double SELF_DISCHARGE_CELSIUS = 20;

  /** A beacon whose pace hangs on voltage looks at it once a minute, s. Common practice. */
  static final double PACE_SECONDS = 60;

  /** Temperatures of both nodes when released, °C: a deployer near room temperature. Assumed. */
  static final double CELSIUS_AT_SEPARATION = 20;

  /** Stefan–Boltzmann constant, W/m²/K⁴. CODATA 2018. */
  static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  /** Outgoing infrared of the Earth, W/m². Common practice: 237 ± 21 in space mission texts. */
  static final double EARTH_INFRARED = 237;

  /** Share of sunlight that the Earth throws back. Common practice. */
  static final double ALBEDO = 0.3;

  /**
   * View factor from a sphere to the Earth at 500 km, (1 − √(1 − (Re/(Re+h))²))/2. A constant here:
   * between 400 and 600 km it stays within ±0.02.
   */
  static final double EARTH_VIEW = 0.31;

  /** Mean of the Earth's phase as seen over the sunlit arc. Assumed constant. */
  static final double ALBEDO_PHASE = 0.5;

  /** A shift cannot cool a cell further than this, °C. */
  static final double COLDEST_CELSIUS = -150;

  static final double KELVIN_AT_ZERO_CELSIUS = 273.15;

  /** At and above this temperature the cell has its stated resistance, °C. */
  static final double RESISTANCE_CELSIUS = 25;

  /**
   * Activation energy of the cell's resistance over the gas constant, K: 20 kJ/mol, which gives
   * twice the resistance at 0 °C and four times at −20 °C. Common practice for lithium-ion cells.
   */
  static final double RESISTANCE_ACTIVATION_KELVIN = 20_000 / 8.314462618;

  private static final double RESISTANCE_INVERSE_KELVIN =
      1 / (RESISTANCE_CELSIUS + KELVIN_AT_ZERO_CELSIUS);

  private static final double LN_2 = Math.log(2);

  /** Charging resumes this far inside the temperature window, K. */
  static final double CHARGE_HYSTERESIS_KELVIN = 1;

  /** A pack with less of its capacity than this counts as open. */
  static final double LEAST_CAPACITY_FACTOR = 1e-3;

  /** A bus that went down stays down this long at least, s: supplies decay and rise. Assumed. */
  static final double LEAST_OFF_SECONDS = 10;

  /** Off time of a commanded power cycle, s. Assumed. */
  static final double POWER_CYCLE_SECONDS = 2;

  /** The computer looks for the way back to nominal once a minute, s. Common practice. */
  static final double SAFE_DWELL_SECONDS = 60;

  /** Off and dark for so long removes all power, s. */
  static final double UNPOWERED_SECONDS = 60;

  /** Commanded low power ends after the voltage was high enough for so long, s. */
  static final double LOW_POWER_SECONDS = 86_400;

  /** A separation switch that bounces faster keeps the timers at their start all the same, s. */
  static final double LEAST_TOGGLE_SECONDS = 60;

  /** Drawn by a release attempt, W. Common practice for burn wires: 2 to 10 W. */
  static final double RELEASE_WATTS = 5;

  /** Time of a release attempt, s. Common practice. */
  static final double RELEASE_SECONDS = 20;

  /** Changes of bus state kept; later ones happen but are not listed. */
  static final int TRANSITIONS_KEPT = 10_000;

  private PowerPhysics() {}

  /** The next place of a grid of steps that lies after a time, rounding allowed for, s. */
  static double nextPlace(double stepSeconds, double seconds) {
    return stepSeconds * (Math.floor(seconds / stepSeconds + 1e-9) + 1);
  }

  /**
   * The exponential without a branch, so that loops over bodies stay narrow: the 64th power of its
   * cubic at a 64th. Relative error below 1e-5 for exponents from −2.7 to 2.7 and below 3e-3 from
   * −12 to 12; almost nothing from there down to −64, and not meant for less.
   */
  static double exp(double exponent) {
    double y = exponent / 64;
    double p = 1 + y * (1 + y * (0.5 + y / 6));
    p *= p;
    p *= p;
    p *= p;
    p *= p;
    p *= p;
    return p * p;
  }

  /** How many times its value at 25 °C a cell's resistance is; never less than once. */
  static double resistanceFactor(double celsius) {
    double inverse = 1 / (celsius + KELVIN_AT_ZERO_CELSIUS) - RESISTANCE_INVERSE_KELVIN;
    return exp(RESISTANCE_ACTIVATION_KELVIN / 2 * (inverse + Math.abs(inverse)));
  }

  /** How many times its value at 20 °C the self-discharge is. */
  static double selfDischargeFactor(double celsius) {
    return exp(LN_2 / 10 * (celsius - SELF_DISCHARGE_CELSIUS));
  }
}

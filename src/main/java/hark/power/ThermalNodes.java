package hark.power;

/**
 * Structure against Sun, Earth and space; battery against structure. The step is linearly implicit,
 * so no heat capacity is too small for it.
 */
final class ThermalNodes {
  private final PowerModel.Thermal thermal;
  private final Illumination light;

  /** Watts for each W/m² of direct sunlight, and of sunlight on the ground beneath. */
  private final double sunHeatArea;

  private final double thrownBackArea;
  private final double earthHeatWatts;

  /** Radiated watts over the fourth power of kelvins. */
  private final double radiation;

  private double triedBatteryC;
  private double triedStructureC;

  ThermalNodes(PowerModel.Thermal thermal, Illumination light) {
    this.thermal = thermal;
    this.light = light;
    double area = thermal.areaSquareMeters();
    double meanProjection = 0.25; // Cauchy
    sunHeatArea = thermal.absorptivity() * area * meanProjection;
    thrownBackArea = thermal.absorptivity() * area * PowerPhysics.ALBEDO * PowerPhysics.EARTH_VIEW;
    earthHeatWatts =
        thermal.emissivity() * area * PowerPhysics.EARTH_INFRARED * PowerPhysics.EARTH_VIEW;
    radiation = thermal.emissivity() * PowerPhysics.STEFAN_BOLTZMANN * area;
  }

  /**
   * Tries a step.
   *
   * @param sunlit share of sunlight, 0…1
   * @param structureWatts loads less what the arrays give: electricity taken from the cells is not
   *     heat there and becomes heat where it is used; radiated signal power is neglected
   * @param batteryWatts heat in the battery
   */
  void attempt(
      BodyState s, double step, double sunlit, double structureWatts, double batteryWatts) {
    double coupling = thermal.couplingWattsPerKelvin();
    double kelvin = s.structureC + PowerPhysics.KELVIN_AT_ZERO_CELSIUS;
    double cubed = radiation * kelvin * kelvin * kelvin;
    double across = coupling * (s.batteryC - s.structureC);
    double middle = s.seconds + step / 2;
    double heatArea = sunHeatArea * sunlit + thrownBackArea * light.thrownBackAt(middle, sunlit);
    double sunWatts = light.irradianceAt(middle) * heatArea;
    double into = sunWatts + earthHeatWatts + structureWatts + across - cubed * kelvin;
    double outer = stiffness(thermal.structureJoulePerKelvin(), step * (4 * cubed + coupling));
    double inner = stiffness(thermal.batteryJoulePerKelvin(), step * coupling);
    double follows = 1 - thermal.batteryJoulePerKelvin() / inner;
    double gain = step * (batteryWatts - across) / inner;
    double shared = step * coupling / 2; // the structure sees the battery half way
    double rise = (step * into + shared * gain) / (outer - shared * follows);
    triedStructureC = s.structureC + rise;
    triedBatteryC = s.batteryC + gain + follows * rise;
  }

  /** Fills in the numbers of a body that glides. */
  void fill(Lanes to, int i) {
    to.sunHeat[i] = sunHeatArea;
    to.backHeat[i] = thrownBackArea;
    to.earthHeat[i] = earthHeatWatts;
    to.radiation[i] = radiation;
    to.coupling[i] = thermal.couplingWattsPerKelvin();
    to.structureCapacity[i] = thermal.structureJoulePerKelvin();
    to.batteryCapacity[i] = thermal.batteryJoulePerKelvin();
  }

  /**
   * Heat for each kelvin that a node moves in a step: its exponential to the second order, x / (1 −
   * exp −x) = 1 + x/2 + x²/12; a fast node goes to its equilibrium and not past it.
   */
  private static double stiffness(double capacity, double conductanceTimesStep) {
    double x = conductanceTimesStep / capacity;
    return capacity * (1 + x * (0.5 + x / 12));
  }

  /** Battery temperature at the end of the tried step, °C, before any shift. */
  double triedBatteryCelsius() {
    return triedBatteryC;
  }

  /** Keeps the tried step. */
  void keep(BodyState s, double step) {
    s.batteryRate = (triedBatteryC - s.batteryC) / step;
    s.structureRate = (triedStructureC - s.structureC) / step;
    s.batteryC = triedBatteryC;
    s.structureC = triedStructureC;
  }
}

package hark.trial;

import hark.power.PowerModel;

/** Structure and battery as two lumps of heat. */
final class Heat {
  private final PowerModel.Thermal thermal;
  double structureCelsius = Physics.FIRST_CELSIUS;
  double batteryCelsius = Physics.FIRST_CELSIUS;
  double shiftKelvin;

  Heat(PowerModel.Thermal thermal) {
    this.thermal = thermal;
  }

  /** Temperature that battery cells have, °C. */
  double cellCelsius() {
    return Math.max(Physics.COLDEST_CELSIUS, batteryCelsius + shiftKelvin);
  }

  /**
   * One step.
   *
   * @param electricWatts served loads without the heater less what the arrays gave
   * @param batteryWatts heat made in the battery
   */
  void step(Sky sky, double seconds, double electricWatts, double batteryWatts) {
    double area = thermal.areaSquareMeters();
    double kelvin = structureCelsius + Physics.ZERO_CELSIUS_KELVIN;
    double sun = thermal.absorptivity() * sky.irradiance * (sky.sunlit / 4 + sky.thrownBack);
    double earth = thermal.emissivity() * Physics.EARTH_INFRARED * Physics.EARTH_VIEW;
    double space = thermal.emissivity() * Physics.STEFAN_BOLTZMANN * Math.pow(kelvin, 4);
    double across = thermal.couplingWattsPerKelvin() * (batteryCelsius - structureCelsius);
    double into = area * (sun + earth - space) + across + electricWatts;
    structureCelsius += seconds * into / thermal.structureJoulePerKelvin();
    batteryCelsius += seconds * (batteryWatts - across) / thermal.batteryJoulePerKelvin();
  }
}

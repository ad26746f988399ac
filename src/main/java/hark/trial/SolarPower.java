package hark.trial;

import hark.power.Orientation;
import hark.power.PowerModel;
import hark.power.PowerModel.AttitudeMode;

/** Power of the arrays in front of the charger. */
final class SolarPower {
  /** The Sun moves by less than a hundredth of a degree in this time, s. */
  private static final double SUN_STANDS = 600;

  private final PowerModel model;
  private final Sky sky;
  private final Panels panels;
  private double factor = 1;
  private boolean cutOff;
  private int knownChanges = -1;
  private double steadyArea;
  private double openArea;
  private double turnFrom = Double.NaN;
  private double turnArea;

  SolarPower(PowerModel model, Sky sky, Panels panels) {
    this.model = model;
    this.sky = sky;
    this.panels = panels;
  }

  void weaken(double by) {
    factor *= by;
  }

  void cutOff() {
    cutOff = true;
  }

  /** Whether nothing can come: in umbra, or never again. */
  boolean dark() {
    return cutOff || factor == 0 || sky.sunlit == 0;
  }

  /** Power now, W. */
  double watts(double seconds, double structureCelsius) {
    if (cutOff) {
      return 0;
    }
    refresh();
    double area = sky.sunlit > 0 ? sky.sunlit * area(seconds) : 0;
    PowerModel.CellNature nature = model.arrays().nature();
    if (nature.albedo()) {
      area += sky.thrownBack * openArea;
    }
    double heat = 1 + nature.perKelvin() * (structureCelsius - Physics.ARRAY_CELSIUS);
    double age = Math.pow(1 - nature.lossPerYear(), seconds / Physics.YEAR);
    double kept = (1 - model.arrays().losses()) * age * factor;
    return sky.irradiance * area * model.arrays().cellEfficiency() * kept * Math.max(0, heat);
  }

  private void refresh() {
    if (panels.changes() == knownChanges) {
      return;
    }
    knownChanges = panels.changes();
    openArea = panels.openArea();
    turnFrom = Double.NaN;
    boolean best = model.attitude().mode() == AttitudeMode.SUN_POINTING;
    steadyArea = best ? panels.bestArea() : panels.meanArea();
  }

  private double area(double seconds) {
    return switch (model.attitude().mode()) {
      case SUN_POINTING -> steadyArea;
      case TUMBLING -> tumbling(seconds);
      case SPINNING -> sky.hasPath() ? spinning(seconds) : steadyArea;
      case NADIR -> sky.hasPath() ? panels.seenFrom(sky.fromNadirBody(seconds)) : steadyArea;
    };
  }

  private double tumbling(double seconds) {
    double rate = model.attitude().rateDegPerSecond();
    if (rate >= Physics.FAST_TUMBLE) {
      return steadyArea;
    }
    Orientation start = model.attitude().orientation();
    double rounds = rate * seconds / 360;
    double wave = (rounds + start.turn()) % 1;
    double cosine = wave < 0.5 ? -1 + 4 * wave : 3 - 4 * wave;
    double first = Math.atan2(start.skyAxis()[1], start.skyAxis()[0]);
    double azimuth = first + Math.sqrt(2) * 2 * Math.PI * rounds;
    double sine = Math.sqrt(Math.max(0, 1 - cosine * cosine));
    return panels.seenFrom(
        new double[] {sine * Math.cos(azimuth), sine * Math.sin(azimuth), cosine});
  }

  private double spinning(double seconds) {
    if (!(seconds - turnFrom < SUN_STANDS)) {
      Orientation axes = model.attitude().orientation();
      turnFrom = seconds;
      turnArea = panels.turnMean(axes.bodyAxis(), sky.angleTo(axes.skyAxis(), seconds));
    }
    return turnArea;
  }
}

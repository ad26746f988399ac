package hark.power;

/** Array power at the bus of one body against time. */
final class ArraySource {
  private final PowerModel model;
  private final Illumination light;
  private final SunView view;
  private final boolean albedo;
  private final double perKelvin;

  /** Watts at the bus for each W/m² and m² at the stated temperature, as things are now. */
  private double gain;

  private double agedYears;
  private double aged = 1;

  ArraySource(PowerModel model, Illumination light) {
    this.model = model;
    this.light = light;
    view = new SunView(model, light);
    albedo = model.arrays().nature().albedo();
    perKelvin = model.arrays().nature().perKelvin();
  }

  double longestStepSeconds() {
    return view.longestStepSeconds();
  }

  /** Longest step that meets each dip, s. */
  double dipSeconds() {
    return view.dipSeconds();
  }

  /** Whether the power changes with time in steady sunlight. */
  boolean swings() {
    return view.follows();
  }

  /** Whether it changes within a step. */
  boolean dips() {
    return view.dips();
  }

  /** Takes on what has changed on board. */
  void configure(BodyState s) {
    view.configure(s.facesLost, s.unfolded);
    PowerModel.Arrays arrays = model.arrays();
    if (s.years != agedYears) {
      agedYears = s.years;
      aged = Math.pow(1 - arrays.nature().lossPerYear(), s.years);
    }
    gain =
        arrays.cellEfficiency()
            * (1 - arrays.losses())
            * model.charging().efficiency()
            * s.arrayFactor
            * aged;
  }

  /** Power at the bus in full sunlight now, a little more than that when the cells are cold, W. */
  double fullSunWatts(BodyState s) {
    return gain * light.irradianceAt(s.seconds) * view.areaAt(s.seconds);
  }

  /** Fills in what a body that glides gets from its arrays. */
  void fill(Lanes to, int i, BodyState s) {
    double on = s.arraysCutOff ? 0 : gain;
    double back = albedo ? PowerPhysics.ALBEDO * PowerPhysics.EARTH_VIEW * view.totalArea() : 0;
    to.sunGain[i] = on * view.areaAt(s.seconds);
    to.backGain[i] = on * back;
    to.perKelvin[i] = perKelvin;
  }

  /** Fills in what a turning body gets from its arrays over a stretch of time. */
  void sweep(Lanes to, int i, BodyState s, double from, double until) {
    double on = s.arraysCutOff ? 0 : gain;
    view.sweep(from, until);
    to.sunGain[i] = on * view.meanArea();
    to.swingGain[i] = on * view.swingArea();
  }

  /** Power at the bus if it is wanted, W. */
  double watts(BodyState s, double seconds, double sunlit) {
    if (s.arraysCutOff) {
      return 0;
    }
    double area = sunlit > 0 ? sunlit * view.areaAt(seconds) : 0;
    if (albedo) {
      double back = PowerPhysics.ALBEDO * PowerPhysics.EARTH_VIEW;
      area += back * light.thrownBackAt(seconds, sunlit) * view.totalArea();
    }
    if (area == 0) {
      return 0;
    }
    double ahead = seconds - s.seconds;
    double celsius = s.structureC + s.structureRate * ahead;
    double heat = 1 + perKelvin * (celsius - PowerPhysics.ARRAY_CELSIUS);
    return gain * light.irradianceAt(seconds) * area * Math.max(0, heat);
  }
}

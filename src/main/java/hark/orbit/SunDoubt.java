package hark.orbit;

/**
 * How well the orbit of the coming year is known, one standard deviation each. The Sun's place and
 * the turning of the node need none: they are off by some hundredths of a degree.
 *
 * @param heightMeters of the mean height at the epoch
 * @param lossPart of the loss of height to drag, as a part of the larger of two losses: that of the
 *     elements' B*, and that of a small satellite (drag area times coefficient over mass of 0.02
 *     m²/kg) in an atmosphere of middling activity
 * @param inclinationDegPerYear drift of the inclination, that the Sun and the Moon cause and that
 *     is not computed
 */
public record SunDoubt(double heightMeters, double lossPart, double inclinationDegPerYear) {
  /**
   * Judgement: early element sets have the mean height to a few hundred metres; densities a year
   * ahead hang on the Sun's activity; the Sun turns the inclination of sun-synchronous orbits by up
   * to 0.05° a year, depending on local time (from memory).
   */
  public static final SunDoubt ASSUMED = new SunDoubt(300, 0.5, 0.03);

  /** Density at 500 km, kg/m³, and scale height, m: middling activity, from memory. */
  private static final double DENSITY_AT_500_KM = 7e-13;

  private static final double SCALE_HEIGHT_METERS = 60e3;
  private static final double DRAG_SQUARE_METERS_PER_KG = 0.02;

  /** Refuses negative doubts. */
  public SunDoubt {
    if (!(heightMeters >= 0 && lossPart >= 0 && inclinationDegPerYear >= 0)) {
      throw new IllegalArgumentException("a doubt below nothing, or none that is a number");
    }
  }

  /** Each doubt once up and once down. */
  MeanOrbit.Shift[][] shifts(MeanOrbit orbit) {
    double loss = lossPart * Math.max(orbit.lossMetersPerSecond(), usualLoss(orbit.heightMeters()));
    double tilt = Math.toRadians(inclinationDegPerYear) / (365.25 * 86400);
    return new MeanOrbit.Shift[][] {
      {new MeanOrbit.Shift(heightMeters, 0, 0), new MeanOrbit.Shift(-heightMeters, 0, 0)},
      {new MeanOrbit.Shift(0, loss, 0), new MeanOrbit.Shift(0, -loss, 0)},
      {new MeanOrbit.Shift(0, 0, tilt), new MeanOrbit.Shift(0, 0, -tilt)}
    };
  }

  /** da/dt = √(μa)·ρ·(C·A/m) for a circular orbit, m/s. */
  private static double usualLoss(double height) {
    double density = DENSITY_AT_500_KM * Math.exp((500e3 - height) / SCALE_HEIGHT_METERS);
    double axis = EarthModel.EQUATORIAL_RADIUS_METERS + height;
    return Math.sqrt(OrbitShape.MU * axis) * density * DRAG_SQUARE_METERS_PER_KG;
  }
}

package hark.orbit;

/**
 * How long a near-circular orbit lasts under drag: a stated, simple estimate, good to about a half
 * when the Sun's activity is known, and to a factor of several when it is not.
 *
 * <p>Density after <em>Satellite Orbital Decay Calculations</em>, Australian Space Weather Agency
 * (IPS Radio and Space Services), 1999: {@code ρ = 6e-10·exp(−(h − 175)/H)} kg/m³ with {@code H =
 * T/m}, {@code T = 900 + 2.5(F − 70) + 1.5Ap} K, {@code m = 27 − 0.012(h − 200)}, h in km, F the
 * solar flux at 10.7 cm, Ap the geomagnetic index; made for 180 to 500 km. Height is lost at {@code
 * da/dt = −ρ·Cd·A/m·√(μa)}. Not modelled: the eleven-year swing within a life, attitude, eccentric
 * orbits, winds.
 *
 * @param heightMeters mean height over the equatorial radius, m
 * @param dragAreaPerMass drag coefficient times mean area over mass, m²/kg
 */
public record OrbitLifetime(double heightMeters, double dragAreaPerMass) {
  /** Drag coefficient of compact bodies in free molecular flow. Common practice. */
  public static final double DRAG_COEFFICIENT = 2.2;

  /** Lower than this the rest is a matter of hours, m. Source as above. */
  public static final double LAST_HEIGHT_METERS = 180e3;

  /** Nobody asks further, days. */
  public static final double MOST_DAYS = 100 * 365.25;

  /** WGS-84, m³/s². */
  private static final double MU = 3.986004418e14;

  private static final double DAY = 86400;
  private static final double STEP_METERS = 250;

  /** Activity of Sun and Earth's field, sustained. */
  public record Activity(double flux, double ap) {
    /** Near a minimum of the solar cycle. Common practice. */
    public static final Activity LOW = new Activity(70, 5);

    /** The mean of several cycles; ECSS-E-ST-10-04C takes 140 and 15. */
    public static final Activity MEAN = new Activity(140, 15);

    /** Near a strong maximum, sustained; single days go higher. Common practice. */
    public static final Activity HIGH = new Activity(220, 20);
  }

  /** Refuses heights without an orbit and bodies without drag. */
  public OrbitLifetime {
    if (!(heightMeters > 0 && heightMeters < 36e6)) {
      throw new IllegalArgumentException("height " + heightMeters + " m");
    }
    if (!(dragAreaPerMass > 0)) {
      throw new IllegalArgumentException("drag area over mass " + dragAreaPerMass + " m²/kg");
    }
  }

  /** Of an element set's orbit. */
  public static OrbitLifetime of(ElementSet set, double dragAreaPerMass) {
    double axis = Math.cbrt(MU * Math.pow(set.periodSeconds() / (2 * Math.PI), 2));
    return new OrbitLifetime(axis - MeanOrbit.EARTH_RADIUS_METERS, dragAreaPerMass);
  }

  /** Density of the air, kg/m³. */
  public static double density(double heightMeters, Activity activity) {
    double kilometers = heightMeters / 1e3;
    double temperature = 900 + 2.5 * (activity.flux() - 70) + 1.5 * activity.ap();
    // above the heights it was made for the mass would fall to nothing and below
    double mass = Math.max(4, 27 - 0.012 * (kilometers - 200));
    return 6e-10 * Math.exp(-(kilometers - 175) * mass / temperature);
  }

  /**
   * Days until {@value #LAST_HEIGHT_METERS} m are reached; {@link #MOST_DAYS} when it is longer.
   */
  public double days(Activity activity) {
    double height = heightMeters;
    double days = 0;
    while (height > LAST_HEIGHT_METERS && days < MOST_DAYS) {
      double axis = MeanOrbit.EARTH_RADIUS_METERS + height;
      double loss = density(height, activity) * dragAreaPerMass * Math.sqrt(MU * axis);
      days += STEP_METERS / loss / DAY;
      height -= STEP_METERS;
    }
    return Math.min(days, MOST_DAYS);
  }
}

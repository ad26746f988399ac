package hark.orbit;

import java.time.Instant;

/**
 * Where the Sun stands, within 0.01° between 1950 and 2050.
 *
 * <p>Source: Meeus, <i>Astronomical Algorithms</i>, 2nd ed., chapter 25 (low accuracy), apparent
 * place: nutation by its largest term and aberration included. Turned to TEME by the equation of
 * the equinoxes.
 */
public final class Sun {
  /** Radius of the photosphere, m. IAU 2015 Resolution B3. */
  public static final double RADIUS_METERS = 695_700_000.0;

  /** Astronomical unit, m. IAU 2012 Resolution B2. */
  public static final double ASTRONOMICAL_UNIT_METERS = 149_597_870_700.0;

  /** TT − UTC, s, as since 2017; a minute of it would move the Sun by 0.0007°. */
  private static final double TT_MINUS_UTC = 69.184;

  private static final double CENTURY = 36525.0 * 86400.0;

  private Sun() {}

  /**
   * Position of the Sun's centre from the Earth's, TEME of date.
   *
   * @param x unit vector
   * @param y unit vector
   * @param z unit vector
   */
  public record Place(double x, double y, double z, double distanceMeters) {}

  /** Where the Sun stands at a time. */
  public static Place at(Instant time) {
    double[] meters = new double[3];
    position(Trajectory.between(Instant.EPOCH, time), meters);
    double r = Math.sqrt(meters[0] * meters[0] + meters[1] * meters[1] + meters[2] * meters[2]);
    return new Place(meters[0] / r, meters[1] / r, meters[2] / r, r);
  }

  /**
   * Position in metres, TEME of date, for loops.
   *
   * @param unixSeconds UTC since 1970, s
   * @param into three numbers, overwritten
   */
  public static void position(double unixSeconds, double[] into) {
    double t = (unixSeconds - EarthRotation.J2000_UNIX_SECONDS + TT_MINUS_UTC) / CENTURY;
    double meanLongitude = 280.46646 + (36000.76983 + 0.0003032 * t) * t;
    double anomaly = Math.toRadians(357.52911 + (35999.05029 - 0.0001537 * t) * t);
    double e = 0.016708634 - (0.000042037 + 0.0000001267 * t) * t;
    double sin = Math.sin(anomaly);
    double cos = Math.cos(anomaly);
    double sin2 = 2 * sin * cos;
    double sin3 = sin * (3 - 4 * sin * sin);
    double centre =
        (1.914602 - (0.004817 + 0.000014 * t) * t) * sin
            + (0.019993 - 0.000101 * t) * sin2
            + 0.000289 * sin3;
    double node = Math.toRadians(125.04 - 1934.136 * t);
    double nutation = -0.00478 * Math.sin(node);
    double longitude = Math.toRadians(meanLongitude + centre - 0.00569 + nutation);
    double obliquity = Math.toRadians(23.4392911 - 0.0130042 * t + 0.00256 * Math.cos(node));
    double distance =
        ASTRONOMICAL_UNIT_METERS
            * 1.000001018
            * (1 - e * e)
            / (1 + e * Math.cos(anomaly + Math.toRadians(centre)));
    double cosObliquity = Math.cos(obliquity);
    double x = Math.cos(longitude);
    double y = Math.sin(longitude) * cosObliquity;
    double equinoxes = Math.toRadians(nutation) * cosObliquity; // small: sine is the angle
    into[0] = distance * (x + equinoxes * y);
    into[1] = distance * (y - equinoxes * x);
    into[2] = distance * Math.sin(longitude) * Math.sin(obliquity);
  }
}

package hark.mission;

import hark.orbit.ElementSet;
import hark.orbit.Sun;
import java.time.Duration;
import java.time.Instant;

/**
 * Least and greatest share of sunlight over the year after an element set's epoch, for a balance: a
 * circular orbit whose plane the Earth's bulge turns, and a cylinder of shadow.
 *
 * @param least share of an orbit in sunlight in the season with most shadow, 0…1
 * @param greatest that in the season with least shadow; 1 where the orbit has a full-sun season
 */
record SunlitYear(double least, double greatest) {
  /** Gravity of the Earth, m³/s², its equatorial radius, m, and its bulge. WGS 84, EGM96. */
  private static final double MU = 3.986004418e14;

  private static final double EARTH_RADIUS = 6_378_137;
  private static final double J2 = 1.08262668e-3;
  private static final double SECONDS_PER_DAY = 86_400;
  private static final int DAYS = 365;

  static SunlitYear after(ElementSet set) {
    double motion = 2 * Math.PI * set.meanMotionRevPerDay() / SECONDS_PER_DAY;
    double radius = Math.cbrt(MU / (motion * motion));
    double inclination = Math.toRadians(set.inclinationDeg());
    double flat = 1 - set.eccentricity() * set.eccentricity();
    double ratio = EARTH_RADIUS / (radius * flat);
    double nodeRate = -1.5 * J2 * ratio * ratio * motion * Math.cos(inclination);
    double least = 1;
    double greatest = 0;
    for (int day = 0; day <= DAYS; day++) {
      double node = Math.toRadians(set.raanDeg()) + nodeRate * SECONDS_PER_DAY * day;
      double share =
          share(radius, sineOfBeta(node, inclination, set.epoch().plus(Duration.ofDays(day))));
      least = Math.min(least, share);
      greatest = Math.max(greatest, share);
    }
    return new SunlitYear(least, greatest);
  }

  private static double sineOfBeta(double node, double inclination, Instant time) {
    Sun.Place sun = Sun.at(time);
    double flat = Math.sin(inclination);
    return Math.sin(node) * flat * sun.x()
        - Math.cos(node) * flat * sun.y()
        + Math.cos(inclination) * sun.z();
  }

  /** Sunlit share of a circle around a sphere with a cylinder of shadow. */
  static double share(double radius, double sineOfBeta) {
    double cosineOfBeta = Math.sqrt(1 - Math.min(1, sineOfBeta * sineOfBeta));
    double limb = Math.sqrt(Math.max(0, 1 - Math.pow(EARTH_RADIUS / radius, 2)));
    return limb >= cosineOfBeta ? 1 : 1 - Math.acos(limb / cosineOfBeta) / Math.PI;
  }
}

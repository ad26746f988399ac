package hark.orbit;

import java.util.Locale;

/** Invented element sets for the tests of the year's sunlight. */
final class YearOrbits {
  static final EarthModel EARTH = EarthModel.bundled();
  static final String NO_DRAG = "00000-0";

  private YearOrbits() {}

  /** On the boundary of day and night, about 500 km. */
  static ElementSet dawnDusk(String bstar) {
    return set("26080.50000000", new double[] {97.41, 90, 0.00113, 15.19}, bstar);
  }

  /** At 51.6°, about 415 km; its plane drifts by 5° a day against the Sun. */
  static ElementSet inclined(String bstar) {
    return set("26080.50000000", new double[] {51.64, 100, 0.00113, 15.5}, bstar);
  }

  /**
   * Two lines with their checksums.
   *
   * @param epoch as in the first line
   * @param four inclination and node, degrees, eccentricity, revolutions a day
   * @param bstar as in the first line
   */
  static ElementSet set(String epoch, double[] four, String bstar) {
    String one = "1 97311U 26731B   " + epoch + "  .00000000  00000-0  " + bstar + " 0    3";
    String two =
        String.format(
            Locale.ROOT,
            "2 97311 %8.4f %8.4f %07d  74.2000 305.0000 %11.8f   21",
            four[0],
            four[1],
            Math.round(four[2] * 1e7),
            four[3]);
    return ElementSets.parse("year.tle", checked(one) + "\n" + checked(two) + "\n").get(0);
  }

  private static String checked(String line) {
    int sum = 0;
    for (char c : line.toCharArray()) {
      sum += Character.isDigit(c) ? c - '0' : c == '-' ? 1 : 0;
    }
    return line + sum % 10;
  }
}

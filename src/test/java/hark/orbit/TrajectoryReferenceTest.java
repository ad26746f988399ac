package hark.orbit;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** States against the verification set of AIAA 2006-6753. */
class TrajectoryReferenceTest {
  private static final double ONE_CENTIMETER = 0.01;
  private static final double DEEP_SPACE_FROM_MINUTES = 225;

  private static final double AGED_MINUTES = 1e6;
  private static final Set<String> ERROR_CASES = Set.of("33333", "33334");

  private static final EarthModel EARTH = EarthModel.bundled();

  @Test
  void nearEarthStatesAgreeWithinOneCentimeter() {
    Map<String, Double> worst = worstMeters(true);
    System.out.println("sgp4 near Earth, m: " + worst);
    worst.forEach((object, meters) -> assertEquals(0, meters, ONE_CENTIMETER, object));
    assertTrue(worst.size() >= 6, "objects compared: " + worst.keySet());
  }

  /**
   * Deep-space objects reach the same centimetre (2 mm for the geostationary 26900 after 6.5 days).
   * Not compared: 33333 and 33334, made to break the theory (their orbits pass through the Earth);
   * and 20413 three and a half years after its epoch, see below.
   */
  @Test
  void deepSpaceStatesAgreeWithinOneCentimeter() {
    Map<String, Double> worst = worstMeters(false);
    System.out.println("sgp4 deep space, m: " + worst);
    worst.forEach((object, meters) -> assertEquals(0, meters, ONE_CENTIMETER, object));
    assertTrue(worst.size() >= 12, "objects compared: " + worst.keySet());
  }

  /**
   * Where the secular inclination has passed through zero, the published code turns the node by
   * half a revolution and Orekit does not: the object is then on the wrong side by up to 28 000 km.
   * Only elements that are years old on orbits near the equator get there.
   */
  @Test
  void anInclinationThatPassedThroughZeroIsNotFollowed() {
    double[] state = new double[6];
    Trajectory trajectory = Trajectory.of(sets().get("20413"), EARTH);
    double worst = 0;
    for (Map<String, String> row : ReferenceTable.read("sgp4/states.csv").rows()) {
      if (row.get("satnum").equals("20413") && number(row, "t_min") > AGED_MINUTES) {
        trajectory.teme(number(row, "t_min") * 60, state);
        worst = Math.max(worst, metersFrom(row, state));
      }
    }
    assertTrue(worst > 1e6 && worst < 3e7, "known difference " + worst + " m");
  }

  /** Largest distance of each object's states from the table, m. */
  private static Map<String, Double> worstMeters(boolean nearEarth) {
    Map<String, ElementSet> sets = sets();
    Map<String, Double> worst = new TreeMap<>();
    double[] state = new double[6];
    for (Map<String, String> row : ReferenceTable.read("sgp4/states.csv").rows()) {
      ElementSet set = sets.get(String.format("%05d", Integer.parseInt(row.get("satnum"))));
      boolean near = set.periodSeconds() / 60 < DEEP_SPACE_FROM_MINUTES;
      boolean aged = number(row, "t_min") > AGED_MINUTES;
      if (near == nearEarth && !aged && !ERROR_CASES.contains(set.objectId())) {
        Trajectory.of(set, EARTH).teme(number(row, "t_min") * 60, state);
        worst.merge(set.objectId(), metersFrom(row, state), Math::max);
      }
    }
    return worst;
  }

  private static double metersFrom(Map<String, String> row, double[] state) {
    double x = state[0] - 1000 * number(row, "x_km");
    double y = state[1] - 1000 * number(row, "y_km");
    double z = state[2] - 1000 * number(row, "z_km");
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** The set holds error cases with wrong checksums: those lines get the right one here. */
  private static Map<String, ElementSet> sets() {
    Map<String, ElementSet> sets = new HashMap<>();
    List<String> lines =
        ReferenceTable.text("sgp4/verification.tle")
            .lines()
            .filter(line -> !line.startsWith("#"))
            .toList();
    for (int i = 0; i < lines.size(); i += 2) {
      ElementSet set = ElementSets.ofLines(checked(lines.get(i)), checked(lines.get(i + 1)));
      sets.putIfAbsent(set.objectId(), set);
    }
    return sets;
  }

  static String checked(String line) {
    int sum = 0;
    for (char c : line.substring(0, 68).toCharArray()) {
      sum += Character.isDigit(c) ? c - '0' : c == '-' ? 1 : 0;
    }
    return line.substring(0, 68) + sum % 10;
  }
}

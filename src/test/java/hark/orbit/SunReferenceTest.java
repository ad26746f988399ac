package hark.orbit;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The Sun against the table of two independent libraries. */
class SunReferenceTest {
  private static final double HUNDREDTH_DEG = 0.01;

  /** The series has the distance to a few parts in a hundred thousand. */
  private static final double DISTANCE_PART = 1e-4;

  @Test
  void theSunStandsWithinAHundredthOfADegree() {
    double worst = 0;
    for (Map<String, String> row : ReferenceTable.read("sun/sun_beta.csv").rows()) {
      Sun.Place sun = Sun.at(Instant.parse(row.get("utc") + "Z"));
      double dx = sun.x() - number(row, "teme_x");
      double dy = sun.y() - number(row, "teme_y");
      double dz = sun.z() - number(row, "teme_z");
      double deg = Math.toDegrees(Math.sqrt(dx * dx + dy * dy + dz * dz));
      worst = Math.max(worst, deg);
      assertTrue(deg < HUNDREDTH_DEG, row.get("utc") + " off by " + deg + " deg");
      double part = sun.distanceMeters() / 1000 / number(row, "dist_km") - 1;
      assertTrue(Math.abs(part) < DISTANCE_PART, row.get("utc") + " distance off by " + part);
    }
    System.out.println("sun within " + worst + " deg");
  }
}

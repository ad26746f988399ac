package hark.orbit;

import static hark.orbit.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The closed forms of a year against the table of the Sun by two libraries, and against SGP4 with
 * the search for single eclipses, which both are held to outside tables by their own tests and
 * share nothing with these but the Sun's place.
 */
class SunYearReferenceTest {
  private static final EarthModel EARTH = YearOrbits.EARTH;
  private static final double HUNDREDTH_DEG = 0.01;

  /** Edges are known to within one revolution; another for terms left out. */
  private static final double TWO_REVOLUTIONS_DAYS = 0.13;

  @Test
  void betaAgreesWithTheTable() {
    double worst = 0;
    for (Map<String, String> row : ReferenceTable.read("sun/sun_beta.csv").rows()) {
      Instant time = Instant.parse(row.get("utc") + "Z");
      double[] orbit = {number(row, "incl_deg"), number(row, "raan_deg"), 0.001, 15};
      ElementSet set = YearOrbits.set(epoch(time), orbit, YearOrbits.NO_DRAG);
      double beta = SunYear.of(set, EARTH, time, 1).days().get(0).betaDeg();
      assertEquals(number(row, "beta_deg"), beta, HUNDREDTH_DEG, row.get("utc"));
      worst = Math.max(worst, Math.abs(beta - number(row, "beta_deg")));
    }
    System.out.println("beta within " + worst + " deg");
  }

  private static String epoch(Instant time) {
    LocalDateTime utc = LocalDateTime.ofInstant(time, ZoneOffset.UTC);
    double day = utc.getDayOfYear() + utc.toLocalTime().toSecondOfDay() / 86400.0;
    return String.format(Locale.ROOT, "%02d%012.8f", utc.getYear() % 100, day);
  }

  @Test
  void seasonsOfASunSynchronousOrbitBeginAndEndWithItsEclipses() {
    assertEquals(4, compared(YearOrbits.dawnDusk(YearOrbits.NO_DRAG)));
    assertEquals(4, compared(YearOrbits.dawnDusk("14000-3")));
  }

  @Test
  void seasonsOfAnInclinedOrbitBeginAndEndWithItsEclipses() {
    assertEquals(12, compared(YearOrbits.inclined(YearOrbits.NO_DRAG)));
    assertEquals(12, compared(YearOrbits.inclined("10000-3")));
  }

  private static int compared(ElementSet set) {
    SunYear year = SunYear.of(set, EARTH, set.epoch(), 365);
    return compared(set, year.withoutUmbra(), true) + compared(set, year.withoutPenumbra(), false);
  }

  private static int compared(ElementSet set, List<SunSeason> seasons, boolean umbra) {
    int edges = 0;
    for (SunSeason season : seasons) {
      Instant from = season.from().time();
      Instant to = season.to().time();
      Instant middle = from.plus(Duration.between(from, to).dividedBy(2));
      if (!season.from().cut()) {
        List<Instant> before = shadows(set, from.minus(Duration.ofDays(1)), middle, umbra);
        near(from, before.get(before.size() - 1));
        edges++;
      }
      if (!season.to().cut()) {
        near(to, shadows(set, middle, to.plus(Duration.ofDays(1)), umbra).get(0));
        edges++;
      }
    }
    return edges;
  }

  private static List<Instant> shadows(ElementSet set, Instant from, Instant to, boolean umbra) {
    return Eclipses.find(Trajectory.of(set, EARTH), from, to).stream()
        .filter(eclipse -> !umbra || eclipse.umbraEntry().isPresent())
        .map(Eclipse::penumbraEntry)
        .toList();
  }

  private static void near(Instant expected, Instant eclipse) {
    double days = Duration.between(expected, eclipse).toSeconds() / 86400.0;
    assertEquals(0, days, TWO_REVOLUTIONS_DAYS, "eclipse at " + eclipse);
  }

  @Test
  void fractionsAreThoseOfTheEclipsesOfADay() {
    double threeThousandths = 0.003;
    for (ElementSet set : List.of(YearOrbits.inclined("10000-3"), YearOrbits.dawnDusk("14000-3"))) {
      SunYear year = SunYear.of(set, EARTH, set.epoch(), 120);
      for (int day : new int[] {0, 30, 90}) {
        SunDay sun = year.days().get(day);
        Trajectory trajectory = Trajectory.of(set, EARTH);
        Instant to = sun.time().plusSeconds((long) (2 * sun.periodSeconds()));
        List<Eclipse> found = Eclipses.find(trajectory, sun.time(), to);
        double umbra = found.isEmpty() ? 0 : umbraSeconds(found.get(0)) / sun.periodSeconds();
        assertEquals(umbra, sun.umbraFraction(), threeThousandths, set + " day " + day);
      }
    }
  }

  private static double umbraSeconds(Eclipse eclipse) {
    return Duration.between(eclipse.umbraEntry().orElseThrow(), eclipse.umbraExit().orElseThrow())
            .toMillis()
        / 1000.0;
  }

  /** Over weeks the node stays with SGP4's, averaged over a revolution. */
  @Test
  void theNodeTurnsAsInSgp4() {
    double twoHundredthsDeg = 0.02;
    for (ElementSet set : List.of(YearOrbits.inclined("10000-3"), YearOrbits.dawnDusk("14000-3"))) {
      MeanOrbit orbit = MeanOrbit.of(set, EARTH);
      for (int days : new int[] {0, 20, 40, 60}) {
        double t = days * 86400.0;
        double off = Math.IEEEremainder(orbit.nodeRad(t) - nodeRad(set, t), 2 * Math.PI);
        assertEquals(0, Math.toDegrees(off), twoHundredthsDeg, set + " after " + days + " days");
      }
    }
  }

  /** Heights over the night side decide when a grazing shadow begins. */
  @Test
  void theDistanceFromTheEarthIsThatOfSgp4AllTheWayRound() {
    double fourHundredMeters = 400;
    for (ElementSet set : List.of(YearOrbits.inclined("10000-3"), YearOrbits.dawnDusk("14000-3"))) {
      MeanOrbit orbit = MeanOrbit.of(set, EARTH);
      Trajectory trajectory = Trajectory.of(set, EARTH);
      double[] s = new double[6];
      for (int k = 0; k < 40; k++) {
        double t = k * set.periodSeconds() / 40;
        assertTrue(trajectory.teme(t, s));
        double[][] axes = orbit.axes(t);
        double r = Trajectory.radius(s);
        double cosU = (s[0] * axes[0][0] + s[1] * axes[0][1] + s[2] * axes[0][2]) / r;
        double sinU = (s[0] * axes[1][0] + s[1] * axes[1][1] + s[2] * axes[1][2]) / r;
        assertEquals(r, orbit.radiusMeters(t, cosU, sinU), fourHundredMeters, set + " at " + t);
      }
    }
  }

  private static double nodeRad(ElementSet set, double around) {
    Trajectory trajectory = Trajectory.of(set, EARTH);
    double[] s = new double[6];
    double x = 0;
    double y = 0;
    int points = 64;
    for (int i = 0; i < points; i++) {
      double part = (i + 0.5) / points - 0.5;
      assertTrue(trajectory.teme(around + part * set.periodSeconds(), s));
      x += s[1] * s[5] - s[2] * s[4];
      y += s[2] * s[3] - s[0] * s[5];
    }
    return Math.atan2(x, -y);
  }
}

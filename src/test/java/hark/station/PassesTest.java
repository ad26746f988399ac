package hark.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.Trajectory;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PassesTest {
  private static final EarthModel EARTH = EarthModel.bundled();
  private static final Site SITE = new Site("hill", 48.9, 8.4, 115);
  private static final double MILLISECOND = 1e-3;

  /** Sets made up for these tests, by OMM. */
  private static Trajectory orbit(double revPerDay, double eccentricity, double[] angles) {
    String omm =
        String.format(
            java.util.Locale.ROOT,
            "{\"NORAD_CAT_ID\":90001,\"EPOCH\":\"2026-03-01T00:00:00\",\"MEAN_MOTION\":%.8f,"
                + "\"ECCENTRICITY\":%.7f,\"INCLINATION\":%.4f,\"RA_OF_ASC_NODE\":%.4f,"
                + "\"ARG_OF_PERICENTER\":%.4f,\"MEAN_ANOMALY\":%.4f,\"BSTAR\":0}",
            revPerDay,
            eccentricity,
            angles[0],
            angles[1],
            angles[2],
            angles[3]);
    ElementSet set = ElementSets.parse("test", omm).get(0);
    return Trajectory.of(set, EARTH);
  }

  private static Trajectory low() {
    return orbit(15.2, 0.001, new double[] {97.5, 120, 0, 0});
  }

  private static List<Pass> passes(
      Trajectory trajectory, HorizonMask mask, double from, double to) {
    return Passes.find(
        trajectory, SITE, mask, trajectory.instantAt(from), trajectory.instantAt(to));
  }

  private static double length(Trajectory trajectory, Pass pass) {
    return trajectory.secondsAt(pass.los()) - trajectory.secondsAt(pass.aos());
  }

  /** Against the plainest search there is: a look every second. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void aLookEverySecondFindsTheSamePasses(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double eccentricity =
        seed % 2 == 0 ? random.nextDouble(0.0005, 0.02) : random.nextDouble(0.1, 0.7);
    double perigeeKm = random.nextDouble(6800, 7600);
    double a = perigeeKm / (1 - eccentricity);
    double revPerDay = 86400 / (2 * Math.PI) * Math.sqrt(398600.4418 / (a * a * a));
    double[] angles = {
      random.nextDouble(30, 120),
      random.nextDouble(360),
      random.nextDouble(360),
      random.nextDouble(360)
    };
    Trajectory trajectory = orbit(revPerDay, eccentricity, angles);
    Site site = new Site("any", random.nextDouble(-80, 80), random.nextDouble(-180, 180), 100);
    double least = random.nextDouble(-1, 20);
    int span = 86400;
    Look[] looks = Looks.sample(trajectory, site, trajectory.instantAt(0), 1, span);
    List<Integer> rises = new ArrayList<>();
    for (int i = 1; i < span; i++) {
      if (looks[i - 1].elevationDeg() <= least && looks[i].elevationDeg() > least) {
        rises.add(i);
      }
    }
    List<Pass> found =
        Passes.find(
            trajectory,
            site,
            HorizonMask.flat(least),
            trajectory.instantAt(0),
            trajectory.instantAt(span - 1));
    List<Pass> risen = found.stream().filter(pass -> trajectory.secondsAt(pass.aos()) > 0).toList();
    // the finer search may find a stay between two seconds that the plain one missed
    List<Pass> seen = risen.stream().filter(pass -> touchesASecond(trajectory, pass)).toList();
    assertEquals(rises.size(), seen.size(), found.toString());
    for (int i = 0; i < rises.size(); i++) {
      double aos = trajectory.secondsAt(seen.get(i).aos());
      assertTrue(aos > rises.get(i) - 1.001 && aos <= rises.get(i) + 0.001, "AOS " + aos);
    }
  }

  private static boolean touchesASecond(Trajectory trajectory, Pass pass) {
    return Math.ceil(trajectory.secondsAt(pass.aos())) < trajectory.secondsAt(pass.los());
  }

  /** The threshold is laid just below each pass's top, so that only six seconds remain. */
  @Test
  void passesOfSixSecondsAreFound() {
    Trajectory trajectory = low();
    int tried = 0;
    for (Pass pass : passes(trajectory, HorizonMask.flat(5), 0, 5 * 86400)) {
      Instant threeEarlier = pass.culmination().minusSeconds(3);
      double threshold = Looks.at(trajectory, SITE, threeEarlier).elevationDeg();
      List<Pass> shorter = passes(trajectory, HorizonMask.flat(threshold), 0, 5 * 86400);
      Pass same =
          shorter.stream()
              .filter(each -> Math.abs(each.maxElevationDeg() - pass.maxElevationDeg()) < 1e-6)
              .findFirst()
              .orElseThrow(() -> new AssertionError("lost: " + pass));
      assertEquals(6, length(trajectory, same), 0.6, pass.toString());
      tried++;
    }
    assertTrue(tried > 10, "passes " + tried);
  }

  @Test
  void aPassInProgressKeepsItsTrueEdges() {
    Trajectory trajectory = low();
    HorizonMask mask = HorizonMask.flat(0);
    Pass whole = passes(trajectory, mask, 0, 86400).get(1);
    double aos = trajectory.secondsAt(whole.aos());
    double los = trajectory.secondsAt(whole.los());
    double[][] spans = {{aos + 60, los - 60}, {aos + 60, los + 60}, {aos - 60, los - 60}};
    for (double[] span : spans) {
      List<Pass> cut = passes(trajectory, mask, span[0], span[1]);
      assertEquals(1, cut.size());
      assertEquals(aos, trajectory.secondsAt(cut.get(0).aos()), MILLISECOND);
      assertEquals(los, trajectory.secondsAt(cut.get(0).los()), MILLISECOND);
      assertEquals(whole.maxElevationDeg(), cut.get(0).maxElevationDeg(), 1e-6);
    }
  }

  @Test
  void anObjectThatNeverSetsGivesOnePassAsLongAsTheSpan() {
    Trajectory fixed = orbit(1.00273791, 0.0002, new double[] {0.05, 0, 0, 170});
    List<Pass> found = passes(fixed, HorizonMask.flat(0), 0, 10 * 86400);
    assertEquals(1, found.size());
    assertEquals(fixed.instantAt(0), found.get(0).aos());
    assertEquals(fixed.instantAt(10 * 86400), found.get(0).los());
  }

  @Test
  void anObjectThatNeverRisesGivesNone() {
    Trajectory fixed = orbit(1.00273791, 0.0002, new double[] {0.05, 0, 0, 350});
    assertEquals(List.of(), passes(fixed, HorizonMask.flat(0), 0, 30 * 86400));
    Trajectory equatorial = orbit(15.2, 0.001, new double[] {1, 0, 0, 0});
    assertEquals(List.of(), passes(equatorial, HorizonMask.flat(0), 0, 30 * 86400));
  }

  @Test
  void theHighestOfSeveralMaximaIsTheCulmination() {
    int several = 0;
    for (int node = 0; node < 360; node += 30) {
      Trajectory tall = orbit(2.0056, 0.69, new double[] {64, node, 265, 20});
      for (Pass pass : passes(tall, HorizonMask.flat(0), 0, 3 * 86400)) {
        Look[] looks = Looks.sample(tall, SITE, pass.aos(), 10, (int) (length(tall, pass) / 10));
        double highest = Arrays.stream(looks).mapToDouble(Look::elevationDeg).max().orElseThrow();
        several += maxima(looks) > 1 ? 1 : 0;
        assertEquals(highest, pass.maxElevationDeg(), 0.01, pass.toString());
      }
    }
    assertTrue(several > 0, "no pass had several maxima: choose another orbit");
  }

  private static int maxima(Look[] looks) {
    int maxima = 0;
    for (int i = 1; i + 1 < looks.length; i++) {
      boolean rising = looks[i].elevationDeg() > looks[i - 1].elevationDeg();
      maxima += rising && looks[i].elevationDeg() >= looks[i + 1].elevationDeg() ? 1 : 0;
    }
    return maxima;
  }

  @Test
  void aSkylineCutsByTheAzimuthOfTheObject() {
    Trajectory trajectory = low();
    HorizonMask skyline =
        HorizonMask.of(
            2, List.of(new double[] {0, 3}, new double[] {90, 25}, new double[] {200, 8}));
    List<Pass> found = passes(trajectory, skyline, 0, 3 * 86400);
    for (Pass pass : found) {
      Look aos = Looks.at(trajectory, SITE, pass.aos());
      Look los = Looks.at(trajectory, SITE, pass.los());
      assertEquals(skyline.elevationDegAt(aos.azimuthDeg()), aos.elevationDeg(), 1e-3);
      assertEquals(skyline.elevationDegAt(los.azimuthDeg()), los.elevationDeg(), 1e-3);
    }
    int stays = 0;
    Look[] looks = Looks.sample(trajectory, SITE, trajectory.instantAt(0), 1, 3 * 86400);
    boolean before = false;
    for (Look look : looks) {
      boolean up = look.elevationDeg() > skyline.elevationDegAt(look.azimuthDeg());
      stays += up && !before ? 1 : 0;
      before = up;
    }
    assertEquals(stays, found.size());
  }

  @Test
  void aNarrowGapInAHighSkylineIsFound() {
    Trajectory trajectory = low();
    Pass pass =
        passes(trajectory, HorizonMask.flat(20), 0, 5 * 86400).stream().findFirst().orElseThrow();
    double azimuth = Looks.at(trajectory, SITE, pass.aos().plusSeconds(20)).azimuthDeg();
    HorizonMask gap =
        HorizonMask.of(
            0,
            List.of(
                new double[] {(azimuth + 359.6) % 360, 89},
                new double[] {azimuth, 0},
                new double[] {(azimuth + 0.4) % 360, 89}));
    double from = trajectory.secondsAt(pass.aos()) - 600;
    List<Pass> found = passes(trajectory, gap, from, from + 1800);
    assertEquals(1, found.size(), found.toString());
    assertTrue(length(trajectory, found.get(0)) < 10, found.toString());
  }

  @Test
  void theRangeShrinksBeforeTheCulminationAndGrowsAfterIt() {
    Trajectory trajectory = low();
    for (Pass pass : passes(trajectory, HorizonMask.flat(10), 0, 3 * 86400)) {
      assertTrue(Looks.at(trajectory, SITE, pass.aos()).rangeRateMetersPerSecond() < 0);
      assertTrue(Looks.at(trajectory, SITE, pass.los()).rangeRateMetersPerSecond() > 0);
    }
  }

  @Test
  void theRangeRateIsTheSlopeOfTheRange() {
    Trajectory trajectory = low();
    for (Pass pass : passes(trajectory, HorizonMask.flat(10), 0, 3 * 86400)) {
      Look[] looks = Looks.sample(trajectory, SITE, pass.aos(), 0.5, 3);
      double slope = looks[2].rangeMeters() - looks[0].rangeMeters();
      assertEquals(slope, looks[1].rangeRateMetersPerSecond(), 0.05);
    }
  }
}

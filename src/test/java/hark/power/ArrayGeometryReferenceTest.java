package hark.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.PowerModel.AttitudeMode;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cell area towards the Sun against closed forms and against plain sums over directions. */
class ArrayGeometryReferenceTest {
  private static final double[] UP = {0, 0, 1};

  private static Face face(double x, double y, double z) {
    return new Face("f" + x + y + z, new double[] {x, y, z}, 1, false, "A");
  }

  private static ArrayGeometry of(Face... faces) {
    return new ArrayGeometry(List.of(faces), 0, true);
  }

  /**
   * A plate that spins edge-on to the Sun shows 1/π of itself in the mean: integral of the cosine.
   */
  @Test
  void aPlateSpinningEdgeOnShowsOneOverPi() {
    assertEquals(1 / Math.PI, of(face(1, 0, 0)).spinMean(UP, 0), 1e-12);
  }

  /** The four sides of a prism under a Sun at angle g: 4·sin g/π; the end face: cos g. */
  @ParameterizedTest(name = "{0} degrees from the axis")
  @ValueSource(doubles = {0, 10, 37, 60, 90, 120, 180})
  void aSpinningPrismShowsItsSidesBySineAndItsEndByCosine(double degrees) {
    double g = Math.toRadians(degrees);
    ArrayGeometry sides = of(face(1, 0, 0), face(-1, 0, 0), face(0, 1, 0), face(0, -1, 0));
    assertEquals(4 * Math.sin(g) / Math.PI, sides.spinMean(UP, Math.cos(g)), 1e-9);
    assertEquals(Math.max(0, Math.cos(g)), of(face(0, 0, 1)).spinMean(UP, Math.cos(g)), 1e-12);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void theSpinMeanIsTheSumOverTheTurn(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double a = random.nextDouble(Math.PI);
    double g = random.nextDouble(Math.PI);
    Face face = face(Math.sin(a), 0, Math.cos(a));
    double sum = 0;
    int angles = 100_000;
    for (int k = 0; k < angles; k++) {
      double phi = 2 * Math.PI * k / angles;
      sum += Math.max(0, Math.cos(a) * Math.cos(g) + Math.sin(a) * Math.sin(g) * Math.cos(phi));
    }
    assertEquals(sum / angles, of(face).spinMean(UP, Math.cos(g)), 1e-8);
  }

  /** Mean over all directions is a quarter of the surface (Cauchy), whatever way it is summed. */
  @Test
  void aSlowTumbleSeesEveryDirectionEquallyLong() {
    Bodies body = new Bodies();
    body.rateDegPerSecond = 0.5;
    body.faces = List.of(face(0.3, -0.5, 0.7));
    SunView view = new SunView(body.model(), Bodies.fullSun());
    view.configure(0, true);
    double sum = 0;
    double squares = 0;
    int count = 200_000;
    for (int k = 0; k < count; k++) {
      double area = view.areaAt(k * 7.3);
      sum += area / count;
      squares += area * area / count;
    }
    assertEquals(0.25, sum, 0.002);
    // cosine of a direction evenly spread over the sphere, its negative half cut: mean square 1/6
    assertEquals(1.0 / 6, squares, 0.002);
  }

  /** The slower the tumble, the more the energy of a single sunlit arc strays from the mean. */
  @Test
  void aSlowTumbleSpreadsTheEnergyOfAnArcAndAFastOneDoesNot() {
    double slow = spread(0.02);
    double medium = spread(0.3);
    double fast = spread(3);
    assertTrue(slow > 3 * medium, slow + " against " + medium);
    assertTrue(medium > 0.001 && medium < 0.2, "spread " + medium);
    assertEquals(0, fast, 1e-6);
  }

  /** Relative spread of the mean area over sunlit arcs of an hour, one bare face. */
  private static double spread(double rate) {
    Bodies body = new Bodies();
    body.rateDegPerSecond = rate;
    body.faces = List.of(face(0.3, -0.5, 0.7));
    SunView view = new SunView(body.model(), Bodies.fullSun());
    view.configure(0, true);
    double sum = 0;
    double squares = 0;
    int arcs = 300;
    for (int arc = 0; arc < arcs; arc++) {
      double mean = 0;
      for (int k = 0; k < 360; k++) {
        mean += view.areaAt(arc * Bodies.ORBIT_SECONDS + k * 10) / 360;
      }
      sum += mean / arcs;
      squares += mean * mean / arcs;
    }
    return Math.sqrt(Math.max(0, squares - sum * sum)) / sum;
  }

  /** Beta 0: over an orbit the zenith face sees 1/π, sides across the flight nothing. */
  @ParameterizedTest(name = "face {0} {1} {2}: {3}")
  @CsvSource({
    "0, 0, -1, 0.3183099",
    "0, 0, 1, 0.3183099",
    "1, 0, 0, 0.3183099",
    "0, 1, 0, 0",
    "0, -1, 0, 0"
  })
  void aNadirPointerInThePlaneOfTheSunTurnsUnderIt(double x, double y, double z, double mean) {
    assertEquals(mean, overAnOrbit(face(x, y, z), 0), 2e-4);
  }

  /** Beta 90°: the face against the orbit normal sees nothing, the one along it everything. */
  @Test
  void aNadirPointerUnderASunAcrossTheOrbitShowsOneSideForGood() {
    assertEquals(1, overAnOrbit(face(0, -1, 0), 1), 1e-9);
    assertEquals(0, overAnOrbit(face(0, 1, 0), 1), 1e-9);
    assertEquals(0, overAnOrbit(face(0, 0, -1), 1), 1e-9);
  }

  private static double overAnOrbit(Face face, double sinBeta) {
    Bodies body = new Bodies();
    body.attitude = AttitudeMode.NADIR;
    body.faces = List.of(face);
    SunView view = new SunView(body.model(), Bodies.fullSunWithPath(2, sinBeta));
    view.configure(0, true);
    double sum = 0;
    for (int k = 0; k < 5700; k++) {
      sum += view.areaAt(k) / 5700;
    }
    return sum;
  }

  /** The Sun straight above a nadir pointer at its noon: only the zenith face is lit. */
  @Test
  void atTheSunsNoonTheZenithFaceFacesTheSun() {
    Bodies body = new Bodies();
    body.attitude = AttitudeMode.NADIR;
    body.faces = List.of(face(0, 0, -1));
    SunView view = new SunView(body.model(), Bodies.fullSunWithPath(1, 0));
    view.configure(0, true);
    double noon = Bodies.ORBIT_SECONDS / 2 - Bodies.SHADOW_SECONDS / 2;
    assertEquals(1, view.areaAt(noon), 1e-6);
    body.faces = List.of(face(1, 0, 0));
    SunView forward = new SunView(body.model(), Bodies.fullSunWithPath(1, 0));
    forward.configure(0, true);
    double quarterBefore = noon - Bodies.ORBIT_SECONDS / 4;
    assertEquals(1, forward.areaAt(quarterBefore), 1e-6, "before noon the Sun stands ahead");
  }

  @Test
  void aPanelsBackShadesByItsShareAndItsFrontDoesNot() {
    Face panel = face(0, 0, 1);
    Face side =
        new Face(
            "side",
            new double[] {0, 0, -1},
            1,
            false,
            "A",
            Optional.empty(),
            List.of(new Face.Shade(panel.name(), 0.4)));
    ArrayGeometry geometry = of(panel, side);
    assertEquals(0.6, geometry.seenFrom(0, 0, -1), 1e-12, "the panel stands square behind");
    double slant = Math.sqrt(0.5);
    assertEquals(slant * (1 - 0.4 * slant), geometry.seenFrom(slant, 0, -slant), 1e-12);
    assertEquals(1, geometry.seenFrom(0, 0, 1), 1e-12, "only the panel is lit");
    // over all directions: (1 − share·2/3)/4 for the shaded face, mean of cos·(1 − share·cos)
    assertEquals(0.25 + 0.25 * (1 - 0.4 * 2 / 3), geometry.meanArea(), 1e-3);
  }

  @Test
  void aFoldedPanelIsCoveredOrLooksWhereItIsFoldedTo() {
    Face covered = new Face("p", UP, 1, true, "A");
    double[] outward = {1, 0, 0};
    Face folded = new Face("p", UP, 1, true, "A", Optional.of(outward), List.of());
    assertEquals(0, new ArrayGeometry(List.of(covered), 0, false).total());
    ArrayGeometry stowed = new ArrayGeometry(List.of(folded), 0, false);
    assertEquals(1, stowed.seenFrom(1, 0, 0), 1e-12);
    assertEquals(0, stowed.seenFrom(0, 0, 1), 1e-12);
    assertEquals(1, new ArrayGeometry(List.of(folded), 0, true).seenFrom(0, 0, 1), 1e-12);
    assertEquals(0, new ArrayGeometry(List.of(folded), 1, true).total(), "lost");
  }
}

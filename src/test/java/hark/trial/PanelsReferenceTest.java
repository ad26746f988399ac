package hark.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hark.power.Face;
import hark.power.Illumination;
import hark.power.SunPath;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cell area towards the Sun against closed forms. */
class PanelsReferenceTest {
  private static final double AREA = 0.02;

  private static Face face(String name, double x, double y, double z, double area) {
    return new Face(name, new double[] {x, y, z}, area, false, name);
  }

  private static Panels cube() {
    return new Panels(
        List.of(
            face("+x", 1, 0, 0, AREA),
            face("-x", -1, 0, 0, AREA),
            face("+y", 0, 1, 0, AREA),
            face("-y", 0, -1, 0, AREA),
            face("+z", 0, 0, 1, AREA),
            face("-z", 0, 0, -1, AREA)));
  }

  /** Cauchy's formula: a convex body's mean shadow is a quarter of its surface. */
  @Test
  void theMeanOverAllDirectionsIsAQuarter() {
    assertEquals(6 * AREA / 4, cube().meanArea(), 1e-4 * AREA);
    Panels one = new Panels(List.of(face("one", 1, 2, -3, AREA)));
    assertEquals(AREA / 4, one.meanArea(), 1e-4 * AREA);
  }

  /** The best view of a cube is along its diagonal: √3 faces. */
  @Test
  void theBestAttitudeOfACubeIsItsDiagonal() {
    assertEquals(Math.sqrt(3) * AREA, cube().bestArea(), 1e-9);
    Panels unequal =
        new Panels(List.of(face("a", 1, 0, 0, 3 * AREA), face("b", 0, 0, 1, 4 * AREA)));
    assertEquals(5 * AREA, unequal.bestArea(), 1e-9, "the sum of the area vectors");
  }

  /** Mean over a turn of max(0, cos a cos g + sin a sin g cos φ), integrated by hand. */
  @ParameterizedTest(name = "Sun at {0} degrees from the axis")
  @ValueSource(doubles = {0, 15, 40, 80, 90, 110, 150, 180})
  void theMeanOverATurnIsTheClosedForm(double degrees) {
    double[] axis = {0, 0.6, 0.8};
    double[][] normals = {{0, 0.6, 0.8}, {1, 0, 0}, {0, 0, 1}, {0, 0, -1}, {-0.6, 0, -0.8}};
    double g = Math.toRadians(degrees);
    for (double[] n : normals) {
      double a = Math.acos(Math.min(1, n[0] * axis[0] + n[1] * axis[1] + n[2] * axis[2]));
      double steady = Math.cos(a) * Math.cos(g);
      double swing = Math.sin(a) * Math.sin(g);
      double mean = Math.max(0, steady);
      if (Math.abs(steady) < swing) {
        double edge = Math.acos(-steady / swing);
        mean = (steady * edge + swing * Math.sin(edge)) / Math.PI;
      }
      Panels panels = new Panels(List.of(face("one", n[0], n[1], n[2], AREA)));
      assertEquals(mean * AREA, panels.turnMean(axis, g), 1e-5 * AREA, "face at " + a);
    }
  }

  /** A square panel behind which half of a face lies: half of the sine is lost, by hand. */
  @Test
  void aPanelWithItsBackToTheSunShadesAndAFoldedOneDoesNot() {
    Face panel =
        new Face("panel", new double[] {0, 0, 1}, 0, true, "p", Optional.empty(), List.of());
    Face side =
        new Face(
            "side",
            new double[] {1, 0, 0},
            AREA,
            false,
            "s",
            Optional.empty(),
            List.of(new Face.Shade("panel", 0.5)));
    Panels panels = new Panels(List.of(panel, side));
    double[] below = {0.8, 0, -0.6};
    double[] above = {0.8, 0, 0.6};
    assertEquals(0.8 * AREA, panels.seenFrom(below), 1e-12, "still folded");
    panels.unfold();
    assertEquals(0.8 * AREA * (1 - 0.5 * 0.6), panels.seenFrom(below), 1e-12);
    assertEquals(0.8 * AREA, panels.seenFrom(above), 1e-12);
  }

  @Test
  void aFoldedPanelLooksWhereItIsFoldedOrIsCovered() {
    Optional<double[]> folded = Optional.of(new double[] {1, 0, 0});
    double[] up = {0, 0, 1};
    double[] aside = {1, 0, 0};
    Panels open = new Panels(List.of(new Face("p", up, AREA, true, "p", folded, List.of())));
    assertEquals(AREA, open.seenFrom(aside), 1e-12);
    assertEquals(0, open.seenFrom(up), 1e-12);
    Panels covered =
        new Panels(List.of(new Face("p", up, AREA, true, "p", Optional.empty(), List.of())));
    assertEquals(0, covered.openArea());
    covered.unfold();
    assertEquals(AREA, covered.seenFrom(up), 1e-12);
    covered.loseFace("p");
    assertEquals(0, covered.seenFrom(up));
  }

  /** At noon in the plane the Sun is overhead: behind a body that looks down with +Z. */
  @Test
  void aNadirBodyHasTheSunBehindItAtNoonAndAheadBeforeSunrise() {
    double quarter = Math.PI / 2;
    double[][] direction = {{1, 1, 1}, {0, 0, 0}, {0, 0, 0}};
    SunPath path =
        new SunPath(
            100,
            new double[] {1361, 1361, 1361},
            direction,
            new double[] {-quarter, 0, quarter},
            new double[] {0, 0, 0.5});
    Sky sky = new Sky(new Illumination(new double[4][0], path));
    assertDirection(new double[] {0, 0, -1}, sky.fromNadirBody(100), "noon");
    assertDirection(new double[] {1, 0, 0}, sky.fromNadirBody(0), "it flies towards the Sun");
    double[] evening = {-Math.sqrt(0.75), -0.5, 0};
    assertDirection(evening, sky.fromNadirBody(200), "behind, and on the side of the normal");
  }

  private static void assertDirection(double[] expected, double[] actual, String when) {
    for (int axis = 0; axis < 3; axis++) {
      assertEquals(expected[axis], actual[axis], 1e-12, when);
    }
  }
}

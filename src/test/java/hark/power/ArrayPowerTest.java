package hark.power;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hark.power.PowerModel.Attitude;
import hark.power.PowerModel.AttitudeMode;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ArrayPowerTest {
  private static final Attitude TUMBLING = new Attitude(AttitudeMode.TUMBLING, 2);
  private static final Attitude POINTING = new Attitude(AttitudeMode.SUN_POINTING, 0);

  private static Face face(double x, double y, double z, double area) {
    return new Face("face", new double[] {x, y, z}, area, false, "A");
  }

  /** Three-unit body, 100 × 100 × 340.5 mm: surface .1562 m², a quarter of it .03905 (Cauchy). */
  @Test
  void aTumblingBodyShowsAQuarterOfItsSurface() {
    double side = 0.1 * 0.3405;
    List<Face> faces =
        List.of(
            face(1, 0, 0, side),
            face(-1, 0, 0, side),
            face(0, 1, 0, side),
            face(0, -1, 0, side),
            face(0, 0, 1, 0.01),
            face(0, 0, -1, 0.01));
    assertEquals(0.03905, ArrayPower.areaTowardsSun(TUMBLING, faces), 5e-6);
  }

  /** 26 cells of 30.18 cm² on every side, efficiency .28, 1361 W/m²: 7.48 W by the formula. */
  @Test
  void theTumbleMeanOfTwentySixCellsIsTheValueOfTheFormula() {
    double cells = 26 * 30.18e-4;
    Bodies body = new Bodies();
    body.cellAreaSquareMeters = cells / 6;
    double losses = 0.92;
    double efficiency = 0.28 / 0.29;
    double watts = ArrayPower.fullSunWatts(body.model(), 1361) / losses * efficiency;
    assertEquals(7.48, watts, 0.005);
  }

  @Test
  void theBestAttitudeOfTwoEqualFacesIsBetweenThem() {
    assertEquals(0.02, ArrayPower.areaTowardsSun(POINTING, List.of(face(0, 0, 3, 0.02))), 1e-12);
    assertEquals(
        0.02 * Math.sqrt(2),
        ArrayPower.areaTowardsSun(POINTING, List.of(face(1, 0, 0, 0.02), face(0, 5, 0, 0.02))),
        1e-12);
    assertEquals(
        0.03,
        ArrayPower.areaTowardsSun(POINTING, List.of(face(1, 0, 0, 0.02), face(-1, 0, 0, 0.03))),
        1e-12,
        "opposite faces cannot both see the Sun");
  }

  @Test
  void noDirectionBeatsTheBestAttitude() {
    SplittableRandom random = new SplittableRandom(4);
    List<Face> faces =
        random
            .doubles(7)
            .mapToObj(
                area ->
                    face(
                        random.nextDouble(-1, 1),
                        random.nextDouble(-1, 1),
                        random.nextDouble(-1, 1),
                        area))
            .toList();
    double best = ArrayPower.areaTowardsSun(POINTING, faces);
    double found = 0;
    for (int i = 0; i < 200_000; i++) {
      double[] s = {random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1)};
      double sum = 0;
      for (Face face : faces) {
        sum += Math.max(0, cosine(face.normal(), s)) * face.cellAreaSquareMeters();
      }
      found = Math.max(found, sum);
    }
    assertEquals(best, Math.max(best, found), 0, "a random direction is better");
    assertEquals(best, found, 0.002 * best);
  }

  private static double cosine(double[] a, double[] b) {
    double dot = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    return dot
        / Math.sqrt(
            (a[0] * a[0] + a[1] * a[1] + a[2] * a[2]) * (b[0] * b[0] + b[1] * b[1] + b[2] * b[2]));
  }

  @Test
  void noCellsGiveNoPower() {
    assertEquals(0, ArrayPower.areaTowardsSun(POINTING, List.of()));
    assertEquals(0, ArrayPower.areaTowardsSun(TUMBLING, List.of()));
  }
}

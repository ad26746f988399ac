package hark.power;

import hark.power.PowerModel.Attitude;
import java.util.List;

/**
 * Power of the solar cells in full sunlight. Nothing here shadows anything: the faces of a convex
 * body cannot, and a panel that stands off the body is taken as if it did not.
 */
public final class ArrayPower {
  /** Directions tried as starting points for the best attitude. */
  private static final int STARTS = 200;

  /** Each start climbs to its top within a few rounds; this bounds it. */
  private static final int CLIMBS = 50;

  private ArrayPower() {}

  /**
   * Cell area seen from the Sun, m². Tumbling: the mean over all attitudes, a quarter of the cell
   * area for each face (Cauchy's formula; for a panel with cells on one side too). Sun-pointing:
   * the best attitude there is.
   */
  public static double areaTowardsSun(Attitude attitude, List<Face> faces) {
    return switch (attitude.mode()) {
      case TUMBLING, SPINNING, NADIR ->
          faces.stream().mapToDouble(Face::cellAreaSquareMeters).sum() / 4;
      case SUN_POINTING -> bestArea(faces);
    };
  }

  /**
   * Electrical power of the arrays in full sunlight, after losses in wiring and diodes, before the
   * charger, W.
   *
   * @param irradiance W/m²
   */
  public static double fullSunWatts(PowerModel model, double irradiance) {
    PowerModel.Arrays arrays = model.arrays();
    return irradiance
        * areaTowardsSun(model.attitude(), arrays.faces())
        * arrays.cellEfficiency()
        * (1 - arrays.losses());
  }

  /**
   * For the faces that one direction lights, the best direction is that of their summed area
   * vectors. Going there can only raise the sum, so climbing from many starts finds the top.
   */
  private static double bestArea(List<Face> faces) {
    double best = 0;
    for (int i = 0; i < STARTS; i++) {
      double z = 1 - (2 * i + 1.0) / STARTS;
      double around = i * Math.PI * (3 - Math.sqrt(5)); // golden angle: evenly spread starts
      double flat = Math.sqrt(1 - z * z);
      best = Math.max(best, climb(faces, flat * Math.cos(around), flat * Math.sin(around), z));
    }
    return best;
  }

  private static double climb(List<Face> faces, double startX, double startY, double startZ) {
    double x = startX;
    double y = startY;
    double z = startZ;
    double length = 0;
    for (int round = 0; round < CLIMBS; round++) {
      double sumX = 0;
      double sumY = 0;
      double sumZ = 0;
      for (Face face : faces) {
        double[] n = face.normal();
        double scale = face.cellAreaSquareMeters() / Math.hypot(Math.hypot(n[0], n[1]), n[2]);
        if (n[0] * x + n[1] * y + n[2] * z > 0) {
          sumX += scale * n[0];
          sumY += scale * n[1];
          sumZ += scale * n[2];
        }
      }
      double now = Math.hypot(Math.hypot(sumX, sumY), sumZ);
      if (now <= length || now == 0) {
        break;
      }
      length = now;
      x = sumX / now;
      y = sumY / now;
      z = sumZ / now;
    }
    return length;
  }
}

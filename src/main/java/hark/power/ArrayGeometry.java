package hark.power;

import java.util.List;

/**
 * Cell area that sunlight from a direction meets, for the faces that give power in one
 * configuration: which of them are lost, and whether panels have unfolded.
 */
final class ArrayGeometry {
  /** Directions over the sphere for means with shade and for the best attitude. */
  private static final int DIRECTIONS = 1000;

  /** Angles over a turn for a spin mean with shade. */
  private static final int TURN_ANGLES = 72;

  /** Each start climbs to its top within a few rounds; this bounds it. */
  private static final int CLIMBS = 50;

  private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

  private final double[][] normals;
  private final double[] areas;

  /** For each face the normals of the panels that shade it, and with what share. */
  private final double[][][] shadeNormals;

  private final double[][] shadeShares;
  private final boolean shaded;

  /**
   * @param lost bit {@code i} set: face {@code i} gives nothing
   * @param unfolded whether deployable panels have opened
   */
  ArrayGeometry(List<Face> faces, long lost, boolean unfolded) {
    int n = faces.size();
    normals = new double[n][];
    areas = new double[n];
    shadeNormals = new double[n][][];
    shadeShares = new double[n][];
    boolean any = false;
    for (int i = 0; i < n; i++) {
      Face face = faces.get(i);
      normals[i] = normal(face, unfolded);
      boolean covered = face.deployed() && !unfolded && face.stowedNormal().isEmpty();
      areas[i] = covered || (lost >> i & 1) == 1 ? 0 : face.cellAreaSquareMeters();
      int shades = face.shades().size();
      shadeNormals[i] = new double[shades][];
      shadeShares[i] = new double[shades];
      for (int k = 0; k < shades; k++) {
        Face.Shade shade = face.shades().get(k);
        Face panel =
            faces.stream().filter(f -> f.name().equals(shade.panel())).findFirst().orElseThrow();
        shadeNormals[i][k] = normal(panel, unfolded);
        shadeShares[i][k] = panel.deployed() && !unfolded ? 0 : shade.share();
        any |= shadeShares[i][k] > 0;
      }
    }
    shaded = any;
  }

  private static double[] normal(Face face, boolean unfolded) {
    return face.deployed() && !unfolded ? face.stowedNormal().orElse(face.normal()) : face.normal();
  }

  /** All cell area that gives power, m². */
  double total() {
    double sum = 0;
    for (double area : areas) {
      sum += area;
    }
    return sum;
  }

  /** Cell area seen from a direction in body axes, less what lies in shade, m². */
  double seenFrom(double x, double y, double z) {
    double sum = 0;
    for (int i = 0; i < areas.length; i++) {
      double[] n = normals[i];
      double cosine = n[0] * x + n[1] * y + n[2] * z;
      if (cosine > 0) {
        sum += shaded ? areas[i] * cosine * lit(i, x, y, z) : areas[i] * cosine;
      }
    }
    return sum;
  }

  private double lit(int face, double x, double y, double z) {
    double lit = 1;
    for (int k = 0; k < shadeShares[face].length; k++) {
      double[] n = shadeNormals[face][k];
      double behind = -(n[0] * x + n[1] * y + n[2] * z);
      lit *= 1 - shadeShares[face][k] * Math.max(0, behind);
    }
    return lit;
  }

  /**
   * Mean over all directions, m²: a quarter of the cells without shade (Cauchy's formula, for a
   * panel with cells on one side too).
   */
  double meanArea() {
    if (!shaded) {
      return total() / 4;
    }
    double sum = 0;
    double[] s = new double[3];
    for (int i = 0; i < DIRECTIONS; i++) {
      direction(i, s);
      sum += seenFrom(s[0], s[1], s[2]);
    }
    return sum / DIRECTIONS;
  }

  /** Evenly spread directions over the sphere. */
  private static void direction(int i, double[] into) {
    double z = 1 - (2 * i + 1.0) / DIRECTIONS;
    double flat = Math.sqrt(1 - z * z);
    into[0] = flat * Math.cos(i * GOLDEN_ANGLE);
    into[1] = flat * Math.sin(i * GOLDEN_ANGLE);
    into[2] = z;
  }

  /**
   * Mean over a turn about an axis, m².
   *
   * @param axis unit vector in body axes
   * @param cosine of the angle between the axis and the Sun
   */
  double spinMean(double[] axis, double cosine) {
    double c = Math.max(-1, Math.min(1, cosine));
    return shaded ? spinMeanByAngles(axis, c) : spinMeanClosed(axis, c);
  }

  /**
   * A face at angle a from the axis, the Sun at angle g: mean of max(0, cos a cos g + sin a sin g
   * cos φ).
   */
  private double spinMeanClosed(double[] axis, double cosine) {
    double sum = 0;
    double sine = Math.sqrt(1 - cosine * cosine);
    for (int i = 0; i < areas.length; i++) {
      double[] n = normals[i];
      double across = n[0] * axis[0] + n[1] * axis[1] + n[2] * axis[2];
      double steady = across * cosine;
      double swing = Math.sqrt(Math.max(0, 1 - across * across)) * sine;
      sum += areas[i] * positiveMean(steady, swing);
    }
    return sum;
  }

  /** Mean over a turn of max(0, steady + swing·cos φ). */
  static double positiveMean(double steady, double swing) {
    if (steady >= swing) {
      return steady;
    }
    if (steady <= -swing) {
      return 0;
    }
    double edge = Math.acos(-steady / swing);
    return (steady * edge + swing * Math.sin(edge)) / Math.PI;
  }

  private double spinMeanByAngles(double[] axis, double cosine) {
    double sine = Math.sqrt(1 - cosine * cosine);
    double[] u = perpendicular(axis);
    double[] v = {
      axis[1] * u[2] - axis[2] * u[1],
      axis[2] * u[0] - axis[0] * u[2],
      axis[0] * u[1] - axis[1] * u[0]
    };
    double sum = 0;
    for (int k = 0; k < TURN_ANGLES; k++) {
      double angle = 2 * Math.PI * k / TURN_ANGLES;
      double cu = sine * Math.cos(angle);
      double cv = sine * Math.sin(angle);
      sum +=
          seenFrom(
              cosine * axis[0] + cu * u[0] + cv * v[0],
              cosine * axis[1] + cu * u[1] + cv * v[1],
              cosine * axis[2] + cu * u[2] + cv * v[2]);
    }
    return sum / TURN_ANGLES;
  }

  private static double[] perpendicular(double[] axis) {
    boolean nearX = Math.abs(axis[0]) > 0.9;
    double[] other = nearX ? new double[] {0, 1, 0} : new double[] {1, 0, 0};
    double along = axis[0] * other[0] + axis[1] * other[1] + axis[2] * other[2];
    double[] flat = new double[3];
    for (int k = 0; k < 3; k++) {
      flat[k] = other[k] - along * axis[k];
    }
    return Check.direction("direction across the axis", flat);
  }

  /**
   * The best that any attitude gives, m². For the faces that one direction lights, the best
   * direction is that of their summed area vectors, and going there only raises the sum: climbing
   * from many starts finds the top without shade, and with it a good one.
   */
  double bestArea() {
    double best = 0;
    double[] s = new double[3];
    for (int i = 0; i < DIRECTIONS; i += 5) {
      direction(i, s);
      best = Math.max(best, seenFrom(s[0], s[1], s[2]));
      climb(s);
      best = Math.max(best, seenFrom(s[0], s[1], s[2]));
    }
    return best;
  }

  private void climb(double[] s) {
    double length = 0;
    for (int round = 0; round < CLIMBS; round++) {
      double x = 0;
      double y = 0;
      double z = 0;
      for (int i = 0; i < areas.length; i++) {
        double[] n = normals[i];
        if (n[0] * s[0] + n[1] * s[1] + n[2] * s[2] > 0) {
          x += areas[i] * n[0];
          y += areas[i] * n[1];
          z += areas[i] * n[2];
        }
      }
      double now = Math.sqrt(x * x + y * y + z * z);
      if (now <= length || now == 0) {
        return;
      }
      length = now;
      s[0] = x / now;
      s[1] = y / now;
      s[2] = z / now;
    }
  }
}

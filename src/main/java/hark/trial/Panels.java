package hark.trial;

import hark.power.Face;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The faces with cells as they are now: which are lost, whether panels have unfolded. */
final class Panels {
  /** Directions counted for a mean over the sphere, and in the search for the best attitude. */
  private static final int DIRECTIONS = 40_000;

  /** Angles counted for a mean over a turn. */
  private static final int TURN_ANGLES = 720;

  /** The search for the best attitude goes on to steps of this length. */
  private static final double FINEST = 1e-7;

  private final List<Face> faces;
  private final Set<String> lostFaces = new HashSet<>();
  private final Set<String> lostStrings = new HashSet<>();
  private boolean unfolded;
  private int changes;

  Panels(List<Face> faces) {
    this.faces = faces;
  }

  void loseFace(String name) {
    lostFaces.add(name);
    changes++;
  }

  void loseString(String name) {
    lostStrings.add(name);
    changes++;
  }

  void unfold() {
    if (!unfolded) {
      unfolded = true;
      changes++;
    }
  }

  /** Rises whenever the panels have changed. */
  int changes() {
    return changes;
  }

  /** Cells that can see light at all, m². */
  double openArea() {
    double sum = 0;
    for (Face face : faces) {
      sum += gives(face) ? face.cellAreaSquareMeters() : 0;
    }
    return sum;
  }

  private boolean folded(Face face) {
    return face.deployed() && !unfolded;
  }

  private boolean gives(Face face) {
    boolean covered = folded(face) && face.stowedNormal().isEmpty();
    return !covered && !lostFaces.contains(face.name()) && !lostStrings.contains(face.string());
  }

  private double[] normal(Face face) {
    return folded(face) ? face.stowedNormal().orElse(face.normal()) : face.normal();
  }

  /** Cell area seen from a direction in the body's axes, shade taken off, m². */
  double seenFrom(double[] sun) {
    double sum = 0;
    for (Face face : faces) {
      double cosine = dot(normal(face), sun);
      if (cosine > 0 && gives(face)) {
        sum += face.cellAreaSquareMeters() * cosine * lit(face, sun);
      }
    }
    return sum;
  }

  private double lit(Face face, double[] sun) {
    double lit = 1;
    for (Face.Shade shade : face.shades()) {
      Face panel =
          faces.stream().filter(f -> f.name().equals(shade.panel())).findFirst().orElseThrow();
      double square = dot(normal(panel), sun);
      if (square < 0 && !folded(panel)) {
        lit *= 1 + shade.share() * square;
      }
    }
    return lit;
  }

  /** Mean over all directions, m². */
  double meanArea() {
    double sum = 0;
    for (int i = 0; i < DIRECTIONS; i++) {
      sum += seenFrom(direction(i));
    }
    return sum / DIRECTIONS;
  }

  /** The area of the best attitude, m²: the best of many directions, then uphill from there. */
  double bestArea() {
    double[] best = direction(0);
    for (int i = 1; i < DIRECTIONS; i++) {
      double[] other = direction(i);
      best = seenFrom(other) > seenFrom(best) ? other : best;
    }
    for (double step = 0.02; step > FINEST; step /= 2) {
      best = uphill(best, step);
    }
    return seenFrom(best);
  }

  private double[] uphill(double[] from, double step) {
    double[] best = from;
    for (int axis = 0; axis < 3; axis++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        double[] other = best.clone();
        other[axis] += sign * step;
        double[] unit = scaled(other, 1 / Math.sqrt(dot(other, other)));
        best = seenFrom(unit) > seenFrom(best) ? unit : best;
      }
    }
    return best;
  }

  /** Mean over a turn about an axis in the body, the Sun at an angle from it, m². */
  double turnMean(double[] axis, double angle) {
    double[] helper = Math.abs(axis[2]) < 0.7 ? new double[] {0, 0, 1} : new double[] {1, 0, 0};
    double[] across = cross(axis, helper);
    double[] u = scaled(across, 1 / Math.sqrt(dot(across, across)));
    double[] v = cross(axis, u);
    double sum = 0;
    double[] sun = new double[3];
    for (int i = 0; i < TURN_ANGLES; i++) {
      double phase = 2 * Math.PI * i / TURN_ANGLES;
      for (int k = 0; k < 3; k++) {
        double aside = Math.cos(phase) * u[k] + Math.sin(phase) * v[k];
        sun[k] = Math.cos(angle) * axis[k] + Math.sin(angle) * aside;
      }
      sum += seenFrom(sun);
    }
    return sum / TURN_ANGLES;
  }

  /** Directions that lie evenly: equal slices of height, each turned by the golden angle. */
  private static double[] direction(int i) {
    double height = -1 + (2.0 * i + 1) / DIRECTIONS;
    double around = i * Math.PI * (Math.sqrt(5) - 1);
    double flat = Math.sqrt(1 - height * height);
    return new double[] {flat * Math.sin(around), flat * Math.cos(around), height};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double[] scaled(double[] a, double factor) {
    return new double[] {a[0] * factor, a[1] * factor, a[2] * factor};
  }
}

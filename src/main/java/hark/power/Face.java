package hark.power;

import java.util.List;
import java.util.Optional;

/**
 * One face with cells.
 *
 * @param normal outward direction in body axes once everything is deployed, any length but zero
 * @param cellAreaSquareMeters area of cells, m²
 * @param deployed whether it is a panel that unfolds at deployment
 * @param string of cells it belongs to
 * @param stowedNormal of a panel, where its cells look while it is still folded; empty when they
 *     are covered then
 * @param shades what stands in its light
 */
public record Face(
    String name,
    double[] normal,
    double cellAreaSquareMeters,
    boolean deployed,
    String string,
    Optional<double[]> stowedNormal,
    List<Shade> shades) {

  /**
   * A panel in this face's light. While the Sun sees the panel's back, a part of this face's cells
   * lies in its shadow: {@code share} of them when the Sun stands square behind the panel, less by
   * the cosine elsewhere. An approximation: the true edge of the shadow needs the drawing of the
   * spacecraft.
   *
   * @param panel name of the face that throws the shadow
   * @param share of cells in shadow at most, 0…1
   */
  public record Shade(String panel, double share) {
    /** Refuses a share outside 0…1. */
    public Shade {
      Check.share("share in the shadow of " + panel, share);
    }
  }

  /** A face in nobody's shadow. */
  public Face(
      String name, double[] normal, double cellAreaSquareMeters, boolean deployed, String string) {
    this(name, normal, cellAreaSquareMeters, deployed, string, Optional.empty(), List.of());
  }

  /** Refuses a negative area and a normal without direction. */
  public Face {
    Check.notNegative("cell area of face " + name, cellAreaSquareMeters);
    normal = Check.direction("normal of face " + name, normal);
    stowedNormal = stowedNormal.map(n -> Check.direction("stowed normal of face " + name, n));
    shades = List.copyOf(shades);
  }

  /** Refuses a shade by a face that is not in the list. */
  static void requireShadersAmong(List<Face> faces) {
    for (Face face : faces) {
      for (Shade shade : face.shades) {
        if (faces.stream().noneMatch(other -> other.name.equals(shade.panel))) {
          throw new IllegalArgumentException(
              "face " + face.name + " is shaded by " + shade.panel + ", which is no face");
        }
      }
    }
  }
}

package hark.power;

/**
 * Where the Sun stands as a body flies, on one grid from separation on, at least as long as what is
 * simulated; beyond its end the last values go on.
 *
 * @param stepSeconds grid step, s; short against an orbit
 * @param irradiance in full sunlight, W/m²
 * @param direction of the Sun among the stars (TEME), unit vectors, {@code [axis][grid]}
 * @param phase angle travelled since the Sun's noon, rad, rising without wrapping
 * @param sinBeta sine of the angle between the Sun and the orbital plane, positive on the side of
 *     the orbit normal
 */
public record SunPath(
    double stepSeconds,
    double[] irradiance,
    double[][] direction,
    double[] phase,
    double[] sinBeta) {
  /** Refuses grids of different length and irradiance that is not positive. */
  public SunPath {
    Check.positive("step of the Sun's path", stepSeconds);
    int length = irradiance.length;
    boolean same = length > 0 && phase.length == length && sinBeta.length == length;
    for (double[] axis : direction) {
      same &= axis.length == length;
    }
    if (!same || direction.length != 3) {
      throw new IllegalArgumentException("the Sun's path has grids of different length");
    }
    for (double watts : irradiance) {
      Check.positive("irradiance", watts);
    }
  }
}

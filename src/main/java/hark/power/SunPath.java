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

  private double between(double[] values, double seconds) {
    double at = Math.max(0, Math.min(values.length - 1, seconds / stepSeconds));
    int k = Math.min((int) at, values.length - 2);
    return k < 0 ? values[0] : values[k] + (at - k) * (values[k + 1] - values[k]);
  }

  /** Part of the Sun's direction towards the zenith: the cosine of its distance from there. */
  double zenith(double seconds) {
    return inPlane(seconds) * Math.cos(between(phase, seconds));
  }

  /** Part of the Sun's direction along the flight. */
  double along(double seconds) {
    return -inPlane(seconds) * Math.sin(between(phase, seconds));
  }

  /** Part of the Sun's direction along the orbit normal. */
  double across(double seconds) {
    return between(sinBeta, seconds);
  }

  private double inPlane(double seconds) {
    double across = between(sinBeta, seconds);
    return Math.sqrt(Math.max(0, 1 - across * across));
  }

  /** Cosine of the angle between the Sun and a direction among the stars. */
  double cosineTo(double[] skyDirection, double seconds) {
    double sum = 0;
    double squares = 0;
    for (int axis = 0; axis < 3; axis++) {
      double part = between(direction[axis], seconds);
      sum += part * skyDirection[axis];
      squares += part * part;
    }
    return sum / Math.sqrt(squares);
  }
}

package hark.orbit;

/**
 * Size of the osculating ellipse of a TEME state.
 *
 * @param perigeeMeters least distance from the Earth's centre
 * @param apogeeMeters greatest distance; infinite for an escape
 * @param perigeeRate angular rate about the Earth's centre at perigee, rad/s
 * @param eccentricity of the ellipse
 */
public record OrbitShape(
    double perigeeMeters, double apogeeMeters, double perigeeRate, double eccentricity) {
  /** Earth's gravity, m³/s². WGS-84. */
  static final double MU = 3.986004418e14;

  /** From a TEME position m and velocity m/s. */
  public static OrbitShape of(double[] state) {
    double r = Trajectory.radius(state);
    double v2 = state[3] * state[3] + state[4] * state[4] + state[5] * state[5];
    double hx = state[1] * state[5] - state[2] * state[4];
    double hy = state[2] * state[3] - state[0] * state[5];
    double hz = state[0] * state[4] - state[1] * state[3];
    double h2 = hx * hx + hy * hy + hz * hz;
    double inverseA = 2 / r - v2 / MU;
    double e = Math.sqrt(Math.max(0, 1 - h2 / MU * inverseA));
    double perigee = h2 / MU / (1 + e);
    double apogee = e < 1 ? h2 / MU / (1 - e) : Double.POSITIVE_INFINITY;
    return new OrbitShape(perigee, apogee, Math.sqrt(h2) / (perigee * perigee), e);
  }
}

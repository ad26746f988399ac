package hark.trial;

import hark.power.Illumination;
import hark.power.SunPath;

/** Sunlight at a time: how much, from where, and how much comes back from the Earth. */
final class Sky {
  private final Illumination light;
  private final SunPath path;

  /** Share of the Sun that is not hidden, 0…1. */
  double sunlit;

  /** Full sunlight, W/m². */
  double irradiance;

  /** Sunlight thrown back by the Earth, as a share of full sunlight on a sphere's whole surface. */
  double thrownBack;

  Sky(Illumination light) {
    this.light = light;
    path = light.path().orElse(null);
  }

  /** Whether the place of the Sun is known. */
  boolean hasPath() {
    return path != null;
  }

  void lookAt(double seconds) {
    sunlit = light.fractionAt(seconds);
    irradiance = path == null ? light.solarConstantWatts() : at(path.irradiance(), seconds);
    double height = path == null ? Physics.UNKNOWN_HEIGHT * sunlit : Math.max(0, zenith(seconds));
    thrownBack = Physics.ALBEDO * Physics.EARTH_VIEW * height;
  }

  private double zenith(double seconds) {
    return cosBeta(seconds) * Math.cos(at(path.phase(), seconds));
  }

  private double cosBeta(double seconds) {
    double sine = at(path.sinBeta(), seconds);
    return Math.sqrt(Math.max(0, 1 - sine * sine));
  }

  /** The Sun in the axes of a body that points +Z to the Earth and flies along +X. */
  double[] fromNadirBody(double seconds) {
    double zenith = zenith(seconds);
    double flight = -cosBeta(seconds) * Math.sin(at(path.phase(), seconds));
    double normal = at(path.sinBeta(), seconds);
    // +Y completes the hand: down × flight = −(up × flight), against the orbit normal
    return new double[] {flight, -normal, -zenith};
  }

  /** Angle between a direction among the stars and the Sun, rad. */
  double angleTo(double[] axis, double seconds) {
    double x = at(path.direction()[0], seconds);
    double y = at(path.direction()[1], seconds);
    double z = at(path.direction()[2], seconds);
    double cosine = (axis[0] * x + axis[1] * y + axis[2] * z) / Math.sqrt(x * x + y * y + z * z);
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  private double at(double[] grid, double seconds) {
    double place = Math.max(0, seconds / path.stepSeconds());
    int k = (int) place;
    if (k >= grid.length - 1) {
      return grid[grid.length - 1];
    }
    return grid[k] + (place - k) * (grid[k + 1] - grid[k]);
  }
}

package hark.orbit;

import org.orekit.attitudes.AttitudeProvider;
import org.orekit.frames.Frame;
import org.orekit.propagation.analytical.tle.SGP4;
import org.orekit.propagation.analytical.tle.TLE;

/**
 * SGP4 that knows when drag has taken its mean eccentricity below what the theory allows.
 *
 * <p>Source: AIAA 2006-6753, error 1 of the published code: mean eccentricity below −0.001. Orekit
 * carries on with a tiny eccentricity there.
 */
final class NearEarth extends SGP4 {
  private static final double LEAST_ECCENTRICITY = -0.001;

  /** Orekit's stand-in for eccentricities below it. */
  private static final double CLAMPED = 1e-6;

  private static final double SIMPLE_BELOW_KM = 220;

  NearEarth(TLE tle, AttitudeProvider attitude, Frame teme) {
    super(tle, attitude, DEFAULT_MASS, teme);
  }

  /** True when the last state was outside the theory. */
  boolean isSpent(double elapsedSeconds) {
    return e <= CLAMPED && meanEccentricity(elapsedSeconds / 60) < LEAST_ECCENTRICITY;
  }

  /** How fast drag takes the mean semi-major axis at the epoch, m/s; negative for a negative B*. */
  double lossMetersPerSecond() {
    return 2 * c1 / 60 * a0dp * MeanOrbit.EARTH_RADIUS_METERS;
  }

  private double meanEccentricity(double minutes) {
    double loss = tle.getBStar() * c4 * minutes;
    if (perige >= SIMPLE_BELOW_KM) {
      double c5 = 2 * coef1 * a0dp * beta02 * (1 + 2.75 * (etasq + eeta) + eeta * etasq);
      double drift = tle.getPerigeeArgument() + omgdot * minutes - omega;
      double anomaly = tle.getMeanAnomaly() + xmdot * minutes + drift;
      loss += tle.getBStar() * c5 * (Math.sin(anomaly) - Math.sin(tle.getMeanAnomaly()));
    }
    return tle.getE() - loss;
  }
}

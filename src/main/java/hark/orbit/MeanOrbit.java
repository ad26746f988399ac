package hark.orbit;

import java.time.Instant;
import org.orekit.propagation.analytical.tle.TLEPropagator;

/**
 * The slow motion of a near-circular orbit in closed form: the node turned by the Earth's
 * flattening, the height lost to drag. Seconds count from the epoch of the elements.
 *
 * <p>Source of the rates: Hoots &amp; Roehrich, Spacetrack Report No. 3 (1980), with WGS-72 as SGP4
 * uses it. Height is lost at SGP4's rate at first and faster as the air grows denser, which SGP4
 * leaves out: dx/dt = k·exp(x/H), in closed form x = −H·ln(1 − k·t/H).
 */
final class MeanOrbit {
  /** WGS-72, m. */
  static final double EARTH_RADIUS_METERS = 6378135.0;

  private static final double MU = 3.986008e14;
  private static final double J2 = 0.001082616;
  private static final double J3 = -0.00000253881;
  private static final double J4 = -0.00000165597;

  /** The air thins by e over this, m: 55–70 km between 400 and 600 km, from memory. */
  private static final double SCALE_HEIGHT_METERS = 60e3;

  /** Below this an orbit lives for a few days only and the law above fails, m. */
  private static final double LEAST_HEIGHT_METERS = 200e3;

  private final double epochUnixSeconds;
  private final double axis;
  private final double eccentricity;
  private final double inclination;
  private final double node;
  private final double nodeRate;
  private final double perigee;
  private final double perigeeRate;
  private final double meanRate;
  private final double loss;

  /** What the doubts shift: mean height m, loss of height m/s, inclination rad/s. */
  record Shift(double meters, double lossMetersPerSecond, double tiltRate) {
    static final Shift NONE = new Shift(0, 0, 0);
  }

  private final Shift shift;

  private MeanOrbit(ElementSet set, double loss, Shift shift) {
    this.epochUnixSeconds = Trajectory.between(Instant.EPOCH, set.epoch());
    this.eccentricity = set.eccentricity();
    this.inclination = Math.toRadians(set.inclinationDeg());
    this.node = Math.toRadians(set.raanDeg());
    this.perigee = Math.toRadians(set.perigeeArgumentDeg());
    this.meanRate = 2 * Math.PI / set.periodSeconds();
    this.axis = axis() + shift.meters();
    this.shift = shift;
    this.loss = Math.max(0, loss + shift.lossMetersPerSecond());
    double p = axis * (1 - eccentricity * eccentricity) / EARTH_RADIUS_METERS;
    double n = Math.sqrt(MU / (axis * axis * axis));
    double k2 = J2 / 2 / (p * p);
    double k4 = -0.375 * J4 / (p * p * p * p);
    double c = Math.cos(inclination);
    double c3 = c * c * c;
    this.nodeRate =
        n * (-3 * k2 * c + 1.5 * k2 * k2 * (4 * c - 19 * c3) + 2.5 * k4 * (3 * c - 7 * c3));
    this.perigeeRate = n * 1.5 * k2 * (5 * c * c - 1);
  }

  static MeanOrbit of(ElementSet set, EarthModel earth) {
    TLEPropagator chosen = Trajectory.propagator(set.toTle(earth), earth.teme());
    double loss = chosen instanceof NearEarth near ? near.lossMetersPerSecond() : 0;
    return new MeanOrbit(set, loss, Shift.NONE);
  }

  /** The same elements with something in doubt. */
  static MeanOrbit shifted(ElementSet set, MeanOrbit base, Shift shift) {
    return new MeanOrbit(set, base.loss, shift);
  }

  /** From the mean motion as published (Kozai) to the semi-major axis SGP4 works with, m. */
  private double axis() {
    double c = Math.cos(inclination);
    double beta2 = 1 - eccentricity * eccentricity;
    double weight = 0.75 * J2 * (3 * c * c - 1) / Math.pow(beta2, 1.5);
    double first = Math.cbrt(MU / (meanRate * meanRate)) / EARTH_RADIUS_METERS;
    double d1 = weight / (first * first);
    double second = first * (1 - d1 / 3 - d1 * d1 - 134.0 / 81 * d1 * d1 * d1);
    double d0 = weight / (second * second);
    return second / (1 - d0) * EARTH_RADIUS_METERS;
  }

  double unixSeconds(double seconds) {
    return epochUnixSeconds + seconds;
  }

  /** Loss of height at the epoch, m/s. */
  double lossMetersPerSecond() {
    return loss;
  }

  /** Mean height over the equator's radius at the epoch, m. */
  double heightMeters() {
    return axis - EarthModel.EQUATORIAL_RADIUS_METERS;
  }

  /** When the height has gone so far that this model ends, s; infinite without drag. */
  double endSeconds() {
    double room = axis - EARTH_RADIUS_METERS - LEAST_HEIGHT_METERS;
    if (room <= 0) {
      return Double.NEGATIVE_INFINITY;
    }
    return SCALE_HEIGHT_METERS / loss * -Math.expm1(-room / SCALE_HEIGHT_METERS);
  }

  /** Mean semi-major axis, m. */
  double axisMeters(double seconds) {
    return axis + SCALE_HEIGHT_METERS * Math.log1p(-loss * seconds / SCALE_HEIGHT_METERS);
  }

  /** From node to node, s. */
  double periodSeconds(double seconds) {
    double now = axisMeters(seconds) / (axis - shift.meters());
    return 2 * Math.PI / (meanRate + perigeeRate) * Math.pow(now, 1.5);
  }

  /**
   * Right ascension of the node, rad: the rate goes with the axis to the power −7/2, so what the
   * loss of height adds is 7/2 of its integral over time; and with the cosine of the inclination.
   */
  double nodeRad(double seconds) {
    double y = loss * seconds / SCALE_HEIGHT_METERS;
    double lost =
        Math.abs(y) < 1e-5
            ? loss * seconds * seconds / 2
            : SCALE_HEIGHT_METERS * seconds * ((1 - y) * Math.log1p(-y) + y) / y;
    double tilted = Math.tan(inclination) * shift.tiltRate() * seconds * seconds / 2;
    return node + nodeRate * (seconds + 3.5 * lost / axis - tilted);
  }

  /** Unit vectors: towards the node, 90° further along the orbit, along its normal. */
  double[][] axes(double seconds) {
    double cosNode = Math.cos(nodeRad(seconds));
    double sinNode = Math.sin(nodeRad(seconds));
    double cos = Math.cos(inclination);
    double sin = Math.sin(inclination);
    return new double[][] {
      {cosNode, sinNode, 0},
      {-sinNode * cos, cosNode * cos, sin},
      {sinNode * sin, -cosNode * sin, cos}
    };
  }

  /**
   * Distance from the Earth's centre, m, by SGP4's first-order terms: ellipse, the pear shape of
   * the Earth (J3) and its flattening (J2).
   *
   * @param cosU cosine of the angle from the node
   * @param sinU its sine
   */
  double radiusMeters(double seconds, double cosU, double sinU) {
    double a = axisMeters(seconds);
    double sin = Math.sin(inclination);
    double cos2 = 1 - sin * sin;
    double turn = perigee + perigeeRate * seconds;
    double towards = eccentricity * Math.cos(turn) * cosU;
    double pear = -J3 / J2 / 2 * sin * EARTH_RADIUS_METERS / a;
    double along = (eccentricity * Math.sin(turn) + pear) * sinU;
    double k2 = J2 / 2 * EARTH_RADIUS_METERS * EARTH_RADIUS_METERS / a;
    double cos2u = cosU * cosU - sinU * sinU;
    return a * (1 - towards - along) + k2 * (-1.5 * (3 * cos2 - 1) + 0.5 * sin * sin * cos2u);
  }
}

package hark.signal;

import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.State;
import hark.orbit.Trajectory;
import hark.station.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Measured curves whose truth is known, made without any of the code under test: the station is
 * turned into the inertial frame by a sidereal time of its own, and the shift comes from
 * differences of the light path, not from a range rate.
 */
final class CurveSimulator {
  private static final double LIGHT = 299_792_458;

  private final ElementSet truth;
  private final EarthModel earth = EarthModel.bundled();

  CurveSimulator(ElementSet truth) {
    this.truth = truth;
  }

  /**
   * How a pass is received.
   *
   * @param lateSeconds of the object
   * @param clockSeconds of the station, ahead
   * @param carrierHz in the middle of the pass
   */
  record Setting(
      double lateSeconds,
      double clockSeconds,
      double carrierHz,
      double driftHzPerSecond,
      double noiseHz,
      double burstSeconds) {}

  /** One point a burst while the object is above a height. */
  DopplerCurve curve(
      Site site, Instant from, Instant to, double leastDeg, Setting set, SplittableRandom random) {
    List<DopplerPoint> points = new ArrayList<>();
    double middle = Duration.between(from, to).toMillis() / 2000.0;
    double length = 2 * middle;
    for (double t = random.nextDouble() * set.burstSeconds(); t < length; t += set.burstSeconds()) {
      Instant when = plus(from, t);
      if (elevationDeg(site, when, set.lateSeconds()) < leastDeg) {
        continue;
      }
      double received = frequencyHz(site, when, t - middle, set);
      double measured = received + set.noiseHz() * gaussian(random);
      points.add(new DopplerPoint(plus(when, set.clockSeconds()), measured, Double.NaN));
    }
    return points.isEmpty() ? null : new DopplerCurve(site.name(), points, "simulated");
  }

  /** What arrives without noise. */
  double frequencyHz(Site site, Instant when, double fromMiddle, Setting set) {
    double sent = set.carrierHz() + set.driftHzPerSecond() * fromMiddle;
    double before = rangeMeters(site, plus(when, -0.05), set.lateSeconds());
    double after = rangeMeters(site, plus(when, 0.05), set.lateSeconds());
    return sent * (1 - (after - before) / 0.1 / LIGHT);
  }

  static double gaussian(SplittableRandom random) {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private static Instant plus(Instant time, double seconds) {
    return time.plusNanos(Math.round(seconds * 1e9));
  }

  double elevationDeg(Site site, Instant time, double late) {
    double[] station = station(site, time);
    State object = object(time, late);
    double[] d = {
      object.xMeters() - station[0], object.yMeters() - station[1], object.zMeters() - station[2]
    };
    double lat = Math.toRadians(site.latitudeDeg());
    double lon = Math.toRadians(site.longitudeDeg()) + sidereal(time);
    double[] up = {Math.cos(lat) * Math.cos(lon), Math.cos(lat) * Math.sin(lon), Math.sin(lat)};
    double dot = up[0] * d[0] + up[1] * d[1] + up[2] * d[2];
    return Math.toDegrees(Math.asin(dot / Math.sqrt(d[0] * d[0] + d[1] * d[1] + d[2] * d[2])));
  }

  private double rangeMeters(Site site, Instant time, double late) {
    double[] station = station(site, time);
    State object = object(time, late);
    double x = object.xMeters() - station[0];
    double y = object.yMeters() - station[1];
    double z = object.zMeters() - station[2];
    return Math.sqrt(x * x + y * y + z * z);
  }

  private State object(Instant time, double late) {
    return Trajectory.of(truth, earth).temeAt(plus(time, -late)).orElseThrow();
  }

  /** Greenwich mean sidereal time by the day number, rad (Meeus, Astronomical Algorithms, 12.4). */
  private static double sidereal(Instant time) {
    double days = Duration.between(Instant.parse("2000-01-01T12:00:00Z"), time).toNanos() / 86400e9;
    double t = days / 36525;
    double degrees =
        280.46061837 + 360.98564736629 * days + 0.000387933 * t * t - t * t * t / 38710000;
    return Math.toRadians(degrees % 360);
  }

  private static double[] station(Site site, Instant time) {
    double f = 1 / 298.257223563;
    double a = 6378137;
    double lat = Math.toRadians(site.latitudeDeg());
    double lon = Math.toRadians(site.longitudeDeg()) + sidereal(time);
    double e2 = f * (2 - f);
    double n = a / Math.sqrt(1 - e2 * Math.sin(lat) * Math.sin(lat));
    double across = (n + site.altitudeMeters()) * Math.cos(lat);
    return new double[] {
      across * Math.cos(lon),
      across * Math.sin(lon),
      (n * (1 - e2) + site.altitudeMeters()) * Math.sin(lat)
    };
  }

  /** An invented object of an invented launch, 520 km. */
  static ElementSet base() {
    return ElementSets.ofLines(
        "1 98001U 26001A   26279.50000000  .00000000  00000-0  30000-4 0  9995",
        "2 98001  97.5000 200.0000 0010000  90.0000 270.0000 15.15000000    15");
  }

  /** The base object so many seconds later on its orbit. */
  static ElementSet later(double seconds) {
    ElementSet base = base();
    return base.corrected(-seconds / base.periodSeconds() * 360, 0, 1);
  }
}

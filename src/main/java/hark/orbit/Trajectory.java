package hark.orbit;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.attitudes.FrameAlignedProvider;
import org.orekit.errors.OrekitException;
import org.orekit.frames.Frame;
import org.orekit.propagation.analytical.tle.SGP4;
import org.orekit.propagation.analytical.tle.TLE;
import org.orekit.propagation.analytical.tle.TLEPropagator;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.PVCoordinates;

/**
 * One element set in motion by SGP4 (or SDP4 for periods of 225 minutes and more); where the set
 * carries a computed path, along that.
 *
 * <p><b>Not safe to share between threads</b>: make one for each task; that costs a few
 * microseconds.
 *
 * <p>Fast calls count <em>seconds since the epoch of the elements</em> on the UTC clock, as the
 * published SGP4 code does: a leap second in between is not counted (the last was in 2016). The
 * elements are no longer valid once the model breaks down or the object is nearer to the centre of
 * the Earth than 6378.135 km; nothing is thrown then, calls say so by {@code false} or empty.
 */
public final class Trajectory {
  /** Below this the model's object is inside the Earth, m (WGS-72 radius, as SGP4 uses it). */
  static final double GROUND_RADIUS_METERS = 6378135.0;

  private static final double NANOS = 1e9;

  private final ElementSet elements;
  private final EarthRotation rotation;
  private final TLEPropagator propagator;
  private final AbsoluteDate epochDate;
  private final double epochUnixSeconds;
  private final PathTable path;

  private Trajectory(ElementSet elements, EarthModel earth) {
    TLE tle = elements.toTle(earth);
    this.elements = elements;
    this.rotation = new EarthRotation(earth);
    this.epochDate = tle.getDate();
    this.epochUnixSeconds = between(Instant.EPOCH, elements.epoch());
    this.propagator = propagator(tle, earth.teme());
    this.path = elements.path().orElse(null);
  }

  static TLEPropagator propagator(TLE tle, Frame teme) {
    TLEPropagator chosen = TLEPropagator.selectExtrapolator(tle, teme);
    return chosen instanceof SGP4
        ? new NearEarth(tle, FrameAlignedProvider.of(teme), teme)
        : chosen;
  }

  /** Makes an element set ready to move. */
  public static Trajectory of(ElementSet elements, EarthModel earth) {
    return new Trajectory(elements, earth);
  }

  /** The elements that move. */
  public ElementSet elements() {
    return elements;
  }

  /** Time as seconds since the epoch of the elements. */
  public double secondsAt(Instant time) {
    return between(elements.epoch(), time);
  }

  /** Seconds from one time to another on the UTC clock. */
  static double between(Instant start, Instant end) {
    Duration since = Duration.between(start, end);
    return since.getSeconds() + since.getNano() / NANOS;
  }

  /** The inverse of {@link #secondsAt}, to the nanosecond. */
  public Instant instantAt(double seconds) {
    double whole = Math.floor(seconds);
    long nanos = Math.round((seconds - whole) * NANOS);
    return elements.epoch().plusSeconds((long) whole).plusNanos(nanos);
  }

  /** Seconds since 1970 on the UTC clock, for the Sun and the Earth's rotation. */
  double unixSeconds(double seconds) {
    return epochUnixSeconds + seconds;
  }

  /** Position and velocity in TEME of date; empty when the elements are not valid then. */
  public Optional<State> temeAt(Instant time) {
    double[] six = new double[6];
    return teme(secondsAt(time), six) ? Optional.of(State.of(six)) : Optional.empty();
  }

  /** Position and velocity in the Earth-fixed frame; empty when the elements are not valid then. */
  public Optional<State> earthFixedAt(Instant time) {
    double[] six = new double[6];
    return earthFixed(secondsAt(time), six) ? Optional.of(State.of(six)) : Optional.empty();
  }

  /**
   * Position m and velocity m/s in TEME of date.
   *
   * @param seconds since the epoch of the elements
   * @param into six numbers, overwritten; meaningless when the answer is false
   * @return false when the elements are not valid at that time
   */
  public boolean teme(double seconds, double[] into) {
    if (path != null && path.at(seconds, into)) {
      return true;
    }
    try {
      PVCoordinates pv = propagator.getPVCoordinates(epochDate.shiftedBy(seconds));
      Vector3D position = pv.getPosition();
      Vector3D velocity = pv.getVelocity();
      into[0] = position.getX();
      into[1] = position.getY();
      into[2] = position.getZ();
      into[3] = velocity.getX();
      into[4] = velocity.getY();
      into[5] = velocity.getZ();
      if (propagator instanceof NearEarth near && near.isSpent(seconds)) {
        return false;
      }
    } catch (OrekitException e) {
      return false;
    }
    return radius(into) >= GROUND_RADIUS_METERS; // false for NaN too
  }

  /** As {@link #teme}, in the Earth-fixed frame (velocity as seen from the turning Earth). */
  public boolean earthFixed(double seconds, double[] into) {
    boolean valid = teme(seconds, into);
    rotation.toEarthFixed(unixSeconds(seconds), into);
    return valid;
  }

  /**
   * As {@link #earthFixed}, for an object that runs late on its orbit while the Earth turns on.
   *
   * @param lateSeconds it is where the elements had it so much earlier; negative when it runs early
   */
  public boolean earthFixedLate(double seconds, double lateSeconds, double[] into) {
    boolean valid = teme(seconds - lateSeconds, into);
    rotation.toEarthFixed(unixSeconds(seconds), into);
    return valid;
  }

  /**
   * When the elements stop being valid inside a span.
   *
   * @return the first time without a valid state, to the millisecond; {@code from} itself when they
   *     never were; empty when they hold to the end
   */
  public Optional<Instant> validUntil(Instant from, Instant to) {
    double start = secondsAt(from);
    double end = Validity.end(this, start, secondsAt(to));
    if (Double.isNaN(end)) {
      return Optional.empty();
    }
    return Optional.of(end == start ? from : instantAt(end));
  }

  static double radius(double[] state) {
    return Math.sqrt(state[0] * state[0] + state[1] * state[1] + state[2] * state[2]);
  }
}

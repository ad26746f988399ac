package hark.orbit;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.orekit.propagation.analytical.tle.TLE;

/**
 * Mean elements of one object at one epoch, as SGP4 wants them. An immutable value.
 *
 * <p>Read them with {@link ElementSets#parse}. A set that stands for a state (CCSDS OPM or OEM)
 * also carries the path computed from it; the mean elements then follow that path as well as SGP4
 * can and serve before its begin and after its end.
 */
public final class ElementSet {
  private static final double SECONDS_A_DAY = 86400;

  private final String objectId;
  private final Optional<String> name;
  private final Instant epoch;
  private final Mean mean;
  private final String origin;
  private final Optional<PathTable> path;
  private final Optional<StateSpread> spread;

  ElementSet(String objectId, Optional<String> name, Instant epoch, Mean mean, String origin) {
    this(objectId, name, epoch, mean, origin, Optional.empty(), Optional.empty());
  }

  private ElementSet(
      String objectId,
      Optional<String> name,
      Instant epoch,
      Mean mean,
      String origin,
      Optional<PathTable> path,
      Optional<StateSpread> spread) {
    this.objectId = objectId;
    this.name = name;
    this.epoch = epoch;
    this.mean = mean;
    this.origin = origin;
    this.path = path;
    this.spread = spread;
  }

  /** The same elements, with the path they stand for. */
  ElementSet along(PathTable computed, StateSpread known) {
    return new ElementSet(
        objectId, name, epoch, mean, origin, Optional.of(computed), Optional.of(known));
  }

  /**
   * The same elements under another number: what a message calls by name, the catalogue calls so.
   */
  public ElementSet named(String id) {
    return new ElementSet(id, name, epoch, mean, origin, path, spread);
  }

  Optional<PathTable> path() {
    return path;
  }

  /** True when the set stands for a state that was propagated numerically. */
  public boolean isState() {
    return path.isPresent();
  }

  /** How well a state is known along its track; empty for published mean elements. */
  public Optional<StateSpread> spread() {
    return spread;
  }

  /**
   * The numbers in the units of the formats.
   *
   * @param meanMotionRevPerDay revolutions a day (Kozai mean, as published)
   * @param bstar drag term, 1 / Earth radii
   * @param halfMeanMotionDot the field of the formats: half the first derivative, rev/day²
   * @param sixthMeanMotionDotDot the field of the formats: a sixth of the second, rev/day³
   */
  record Mean(
      double meanMotionRevPerDay,
      double eccentricity,
      double inclinationDeg,
      double raanDeg,
      double perigeeArgumentDeg,
      double meanAnomalyDeg,
      double bstar,
      double halfMeanMotionDot,
      double sixthMeanMotionDotDot) {}

  /** Catalogue number as the file gives it, with leading zeros to five characters. */
  public String objectId() {
    return objectId;
  }

  /** Name line or object name, when the file gives one. */
  public Optional<String> name() {
    return name;
  }

  /** Time the elements hold for. */
  public Instant epoch() {
    return epoch;
  }

  /** Where they were read, {@code file:line}. */
  public String origin() {
    return origin;
  }

  /** Revolutions a day. */
  public double meanMotionRevPerDay() {
    return mean.meanMotionRevPerDay();
  }

  /** Eccentricity, 0…1. */
  public double eccentricity() {
    return mean.eccentricity();
  }

  /** Inclination to the equator, degrees. */
  public double inclinationDeg() {
    return mean.inclinationDeg();
  }

  /** Right ascension of the ascending node, degrees. */
  public double raanDeg() {
    return mean.raanDeg();
  }

  /** Argument of perigee, degrees. */
  public double perigeeArgumentDeg() {
    return mean.perigeeArgumentDeg();
  }

  /** Mean anomaly, degrees. */
  public double meanAnomalyDeg() {
    return mean.meanAnomalyDeg();
  }

  /** Drag term, 1 / Earth radii. */
  public double bstar() {
    return mean.bstar();
  }

  /**
   * The same object with a corrected orbit; a computed path is left behind.
   *
   * @param meanAnomalyDeg added to the mean anomaly at the epoch
   * @param raanDeg added to the right ascension of the ascending node
   * @param meanMotionRatio multiplies the mean motion
   */
  public ElementSet corrected(double meanAnomalyDeg, double raanDeg, double meanMotionRatio) {
    Mean moved =
        new Mean(
            mean.meanMotionRevPerDay() * meanMotionRatio,
            mean.eccentricity(),
            mean.inclinationDeg(),
            turned(mean.raanDeg() + raanDeg),
            mean.perigeeArgumentDeg(),
            turned(mean.meanAnomalyDeg() + meanAnomalyDeg),
            mean.bstar(),
            mean.halfMeanMotionDot(),
            mean.sixthMeanMotionDotDot());
    return new ElementSet(objectId, name, epoch, moved, origin);
  }

  static double turned(double degrees) {
    double within = degrees % 360;
    return within < 0 ? within + 360 : within;
  }

  /** Half the first derivative of the mean motion, as the formats have it, rev/day². */
  double halfMeanMotionDot() {
    return mean.halfMeanMotionDot();
  }

  /** A sixth of the second derivative of the mean motion, as the formats have it, rev/day³. */
  double sixthMeanMotionDotDot() {
    return mean.sixthMeanMotionDotDot();
  }

  /** Time of one revolution, s. */
  public double periodSeconds() {
    return SECONDS_A_DAY / mean.meanMotionRevPerDay();
  }

  /**
   * For Orekit. Number, launch and revolution count do not touch the motion, so they are left
   * blank; that lets nine-digit numbers through.
   */
  TLE toTle(EarthModel earth) {
    double perDay = 2 * Math.PI / SECONDS_A_DAY;
    return new TLE(
        0,
        'U',
        2000,
        1,
        "A",
        TLE.DEFAULT,
        0,
        earth.date(epoch),
        mean.meanMotionRevPerDay() * perDay,
        mean.halfMeanMotionDot() * 2 * perDay / SECONDS_A_DAY,
        mean.sixthMeanMotionDotDot() * 6 * perDay / (SECONDS_A_DAY * SECONDS_A_DAY),
        mean.eccentricity(),
        Math.toRadians(mean.inclinationDeg()),
        Math.toRadians(mean.perigeeArgumentDeg()),
        Math.toRadians(mean.raanDeg()),
        Math.toRadians(mean.meanAnomalyDeg()),
        0,
        mean.bstar(),
        earth.utc());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ElementSet that
        && objectId.equals(that.objectId)
        && name.equals(that.name)
        && epoch.equals(that.epoch)
        && mean.equals(that.mean)
        && spread.equals(that.spread);
  }

  @Override
  public int hashCode() {
    return Objects.hash(objectId, epoch, mean);
  }

  @Override
  public String toString() {
    return objectId + name.map(text -> " " + text).orElse("") + " at " + epoch;
  }
}

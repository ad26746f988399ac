package hark.trial;

import hark.station.HorizonMask;
import hark.station.Look;

/**
 * Where an object stands over a station: looks at even times, straight between them. Beyond its
 * ends nothing is seen.
 */
public final class PlainPath {
  private final double start;
  private final double step;
  private final Place[] places;
  private final PlainPath antenna;

  /**
   * A path.
   *
   * @param start time of the first look, s since separation
   * @param step between looks, s
   */
  public PlainPath(double start, double step, Look[] looks, HorizonMask mask) {
    this.start = start;
    this.step = step;
    places = new Place[looks.length];
    for (int k = 0; k < looks.length; k++) {
      places[k] = place(looks[k], mask);
    }
    antenna = this;
  }

  private PlainPath(PlainPath path, PlainPath antenna) {
    start = path.start;
    step = path.step;
    places = path.places;
    this.antenna = antenna;
  }

  private PlainPath(double start, double step, Place[] places) {
    this.start = start;
    this.step = step;
    this.places = places;
    antenna = this;
  }

  /**
   * The same path followed by an antenna that turns in azimuth no faster than this, second by
   * second the shorter way round; it waits on the path until that has risen.
   */
  public PlainPath followedBy(double degreesPerSecond) {
    int seconds = (int) Math.floor((places.length - 1) * step);
    Place[] pointed = new Place[seconds];
    double azimuth = 0;
    for (int k = 0; k < seconds; k++) {
      Place there = at(start + k);
      double wanted = there.azimuthDeg();
      double turn = wanted - azimuth - 360 * Math.rint((wanted - azimuth) / 360);
      boolean waits = k == 0 || there.aboveMaskDeg() < 0;
      azimuth += waits ? turn : Math.max(-degreesPerSecond, Math.min(degreesPerSecond, turn));
      pointed[k] = there.turned(azimuth - wanted);
    }
    return new PlainPath(this, new PlainPath(start, 1, pointed));
  }

  /** Where the antenna points that follows this path. */
  Place aimAt(double seconds) {
    return antenna.at(seconds);
  }

  private static Place place(Look look, HorizonMask mask) {
    if (Double.isNaN(look.elevationDeg())) {
      return Place.NOWHERE;
    }
    double azimuth = Math.toRadians(look.azimuthDeg());
    double elevation = Math.toRadians(look.elevationDeg());
    return new Place(
        Math.sin(azimuth) * Math.cos(elevation),
        Math.cos(azimuth) * Math.cos(elevation),
        Math.sin(elevation),
        look.rangeMeters(),
        look.rangeRateMetersPerSecond(),
        look.elevationDeg() - mask.elevationDegAt(look.azimuthDeg()));
  }

  /** The place at a time, s since separation. */
  public Place at(double seconds) {
    double where = (seconds - start) / step;
    int k = (int) Math.floor(where);
    if (k < 0 || k >= places.length - 1) {
      return Place.NOWHERE;
    }
    return places[k].towards(places[k + 1], where - k);
  }

  /**
   * A direction, a distance and how it changes.
   *
   * @param east of the unit vector from the station, and so on for the others
   * @param rangeRate positive when it goes away, m/s
   * @param aboveMaskDeg height over the skyline, degrees
   */
  public record Place(
      double east,
      double north,
      double up,
      double rangeMeters,
      double rangeRate,
      double aboveMaskDeg) {
    /** Out of sight. */
    static final Place NOWHERE = new Place(0, 1, 0, 1e8, 0, -90);

    private Place towards(Place next, double share) {
      double x = east + share * (next.east - east);
      double y = north + share * (next.north - north);
      double z = up + share * (next.up - up);
      double length = Math.sqrt(x * x + y * y + z * z);
      return new Place(
          x / length,
          y / length,
          z / length,
          rangeMeters + share * (next.rangeMeters - rangeMeters),
          rangeRate + share * (next.rangeRate - rangeRate),
          aboveMaskDeg + share * (next.aboveMaskDeg - aboveMaskDeg));
    }

    /** Turned about the vertical, towards the east as seen by who looks north. */
    Place turned(double degrees) {
      double angle = Math.toRadians(degrees);
      double towardsEast = east * Math.cos(angle) + north * Math.sin(angle);
      double towardsNorth = north * Math.cos(angle) - east * Math.sin(angle);
      return new Place(towardsEast, towardsNorth, up, rangeMeters, rangeRate, aboveMaskDeg);
    }

    double azimuthDeg() {
      return Math.toDegrees(Math.atan2(east, north));
    }

    double degreesFrom(Place other) {
      double cosine = east * other.east + north * other.north + up * other.up;
      return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
    }
  }
}

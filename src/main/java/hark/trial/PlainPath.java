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

    double azimuthDeg() {
      return Math.toDegrees(Math.atan2(east, north));
    }

    double degreesFrom(Place other) {
      double cosine = east * other.east + north * other.north + up * other.up;
      return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
    }
  }
}

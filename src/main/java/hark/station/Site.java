package hark.station;

/**
 * A place on the WGS-84 ellipsoid.
 *
 * @param name what people call it
 * @param latitudeDeg geodetic latitude, −90…90
 * @param longitudeDeg east longitude, −180…360
 * @param altitudeMeters height above the ellipsoid
 */
public record Site(String name, double latitudeDeg, double longitudeDeg, double altitudeMeters) {
  /** Refuses places that are not on Earth. */
  public Site {
    if (!(latitudeDeg >= -90 && latitudeDeg <= 90)) {
      throw new IllegalArgumentException("latitude " + latitudeDeg + " is outside [-90, 90]");
    }
    if (!(longitudeDeg >= -180 && longitudeDeg <= 360)) {
      throw new IllegalArgumentException("longitude " + longitudeDeg + " is outside [-180, 360]");
    }
    if (!(altitudeMeters >= -500 && altitudeMeters <= 9000)) {
      throw new IllegalArgumentException(
          "altitude " + altitudeMeters + " m is outside [-500, 9000]");
    }
  }
}

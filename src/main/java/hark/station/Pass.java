package hark.station;

import java.time.Instant;

/**
 * One pass of an object over a site: from rising above the mask (AOS) to setting below it (LOS).
 *
 * @param objectId catalogue number
 * @param site the site's name
 * @param culmination time of the highest elevation
 * @param sunlitAtCulmination true when any of the Sun's disc is seen from the object then
 */
public record Pass(
    String objectId,
    String site,
    Instant aos,
    Instant culmination,
    Instant los,
    double maxElevationDeg,
    double aosAzimuthDeg,
    double culminationAzimuthDeg,
    double losAzimuthDeg,
    double culminationRangeKm,
    boolean sunlitAtCulmination) {}

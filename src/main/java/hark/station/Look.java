package hark.station;

/**
 * Where an object stands as seen from a site, without refraction.
 *
 * @param azimuthDeg from north through east, 0…360
 * @param rangeRateMetersPerSecond time derivative of the range; negative when approaching
 */
public record Look(
    double azimuthDeg, double elevationDeg, double rangeMeters, double rangeRateMetersPerSecond) {}

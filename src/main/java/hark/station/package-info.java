/**
 * Ground stations and what they see: places, skylines, passes, looks.
 *
 * <p>Entry types: {@link hark.station.Passes} finds passes, {@link hark.station.Looks} gives
 * directions, {@link hark.station.Station} describes what a station can do. All of it is pure; what
 * takes a {@code Trajectory} shares its limit of one thread.
 *
 * <p>Not modelled: refraction (elevations are geometric), buildings nearer than the horizon mask
 * shows, and rotator motion.
 */
package hark.station;

/**
 * Where objects are: element sets, their propagation, the Earth's rotation, the Sun, and eclipses.
 *
 * <p>Entry types: {@link hark.orbit.ElementSets} reads text into {@link hark.orbit.ElementSet}
 * values, {@link hark.orbit.Trajectory} moves one of them, {@link hark.orbit.Eclipses} finds its
 * shadow passages; {@link hark.orbit.SunGeometry} follows the Sun along it, and {@link
 * hark.orbit.SunYear} tells a year's sunlight without it. {@link hark.orbit.EarthModel} holds the
 * time scales and the Earth's orientation; only {@code EarthModel.fromFolder} touches a disk, all
 * else is pure. A {@code Trajectory} is the one type that is not safe to share between threads.
 *
 * <p>Not modelled: refraction, the Moon, the atmosphere's shadow, manoeuvres, and any force beyond
 * SGP4 and SDP4. Without an Orekit data folder UT1 is taken as UTC and the pole as still: up to 0.9
 * s of Earth rotation, 447 m on the ground. Orekit is seen in this room only.
 */
package hark.orbit;

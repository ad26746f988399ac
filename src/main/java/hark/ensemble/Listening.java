package hark.ensemble;

import hark.link.Way;

/**
 * How a station listens through a window.
 *
 * @param way how bursts are looked for
 * @param windowHz half-width listened to, Hz
 * @param offsetSeconds pointed and tuned as if the object came so much later
 * @param tracked index of the candidate that is followed
 * @param extraGainDb a larger antenna than the station's own, dB
 * @param extraNoiseDb noise above the usual in that hour, dB
 */
public record Listening(
    Way way,
    double windowHz,
    double offsetSeconds,
    int tracked,
    double extraGainDb,
    double extraNoiseDb) {
  /** The same, pointed and tuned so much later, in so much more noise. */
  Listening shifted(double seconds, double noiseDb) {
    return new Listening(way, windowHz, seconds, tracked, extraGainDb, noiseDb);
  }
}

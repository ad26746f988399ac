package hark.ensemble;

import hark.link.Way;
import java.util.OptionalDouble;

/**
 * How a station listens through a window.
 *
 * @param way how bursts are looked for
 * @param windowHz half-width listened to, Hz
 * @param offsetSeconds pointed and tuned as if the object came so much later
 * @param tracked index of the candidate that is followed
 * @param extraGainDb a larger antenna than the station's own, dB
 * @param extraNoiseDb noise above the usual in that hour, dB
 * @param frequencyHz middle of the band listened to, before Doppler; NaN for each beacon's own
 * @param otherHand with the other hand of circular polarisation than the station's own
 */
public record Listening(
    Way way,
    double windowHz,
    double offsetSeconds,
    int tracked,
    double extraGainDb,
    double extraNoiseDb,
    double frequencyHz,
    boolean otherHand) {
  /** With the station's own hand. */
  public Listening(
      Way way,
      double windowHz,
      double offsetSeconds,
      int tracked,
      double extraGainDb,
      double extraNoiseDb,
      double frequencyHz) {
    this(way, windowHz, offsetSeconds, tracked, extraGainDb, extraNoiseDb, frequencyHz, false);
  }

  /** Tuned to each beacon's own frequency. */
  public Listening(
      Way way,
      double windowHz,
      double offsetSeconds,
      int tracked,
      double extraGainDb,
      double extraNoiseDb) {
    this(way, windowHz, offsetSeconds, tracked, extraGainDb, extraNoiseDb, Double.NaN);
  }

  /** The same, pointed and tuned so much later, in so much more noise. */
  Listening shifted(double seconds, double noiseDb) {
    return new Listening(
        way, windowHz, seconds, tracked, extraGainDb, noiseDb, frequencyHz, otherHand);
  }

  /** The same with another frequency in the middle, Hz; empty leaves it as it is. */
  Listening tunedTo(OptionalDouble hertz) {
    double middle = hertz.orElse(frequencyHz);
    return new Listening(
        way, windowHz, offsetSeconds, tracked, extraGainDb, extraNoiseDb, middle, otherHand);
  }

  /** The same, better by so many dB. */
  Listening better(double decibel) {
    double gain = extraGainDb + decibel;
    return new Listening(
        way, windowHz, offsetSeconds, tracked, gain, extraNoiseDb, frequencyHz, otherHand);
  }

  /** True when antenna and radio do the same, whatever the width of the band and who listens. */
  boolean aimsAs(Listening other) {
    return offsetSeconds == other.offsetSeconds
        && tracked == other.tracked
        && extraGainDb == other.extraGainDb
        && extraNoiseDb == other.extraNoiseDb
        && otherHand == other.otherHand
        && Double.compare(frequencyHz, other.frequencyHz) == 0;
  }

  /** How far a beacon's frequency lies above the middle of the band listened to, Hz. */
  double beaconAboveHz(double beaconHz) {
    return Double.isNaN(frequencyHz) ? 0 : beaconHz - frequencyHz;
  }
}

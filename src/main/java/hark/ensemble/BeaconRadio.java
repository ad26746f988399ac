package hark.ensemble;

import hark.station.Station;

/**
 * A beacon as a receiver meets it.
 *
 * @param radiated EIRP averaged over the sphere, in power, dBm
 * @param frequencyErrorHz how far the carrier may be from nominal, Hz
 * @param requiredSnrDb at 50 % detection in {@code bandwidthHz}
 * @param patternSdDb spread of the pattern over orientations, dB
 */
public record BeaconRadio(
    String name,
    double frequencyHz,
    Uncertain radiated,
    Uncertain frequencyErrorHz,
    Station.Polarisation polarisation,
    double bandwidthHz,
    Form form,
    double requiredSnrDb,
    double patternSdDb) {
  /** What a burst is made of. */
  public enum Form {
    CARRIER,
    MORSE,
    FRAMES
  }
}

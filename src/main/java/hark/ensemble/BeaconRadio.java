package hark.ensemble;

import hark.station.Station;
import java.util.Optional;

/**
 * A beacon as a receiver meets it.
 *
 * @param radiated EIRP averaged over the sphere, in power, dBm
 * @param frequencyErrorHz how far the carrier may be from nominal, Hz
 * @param requiredSnrDb at 50 % detection in {@code bandwidthHz}
 * @param patternSdDb spread of the pattern over orientations, dB
 * @param telling what it tells beside being there
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
    double patternSdDb,
    Telling telling) {
  /** A beacon of whose words nothing is known. */
  public BeaconRadio(
      String name,
      double frequencyHz,
      Uncertain radiated,
      Uncertain frequencyErrorHz,
      Station.Polarisation polarisation,
      double bandwidthHz,
      Form form,
      double requiredSnrDb,
      double patternSdDb) {
    this(
        name,
        frequencyHz,
        radiated,
        frequencyErrorHz,
        polarisation,
        bandwidthHz,
        form,
        requiredSnrDb,
        patternSdDb,
        Telling.NOTHING_KNOWN);
  }

  /**
   * The words of a beacon.
   *
   * @param callSign its own; empty when the mission does not say
   * @param counterSurvivesReset whether its counter of bursts goes on through a restart
   */
  public record Telling(Optional<String> callSign, boolean counterSurvivesReset) {
    /** No call sign; a counter that begins again with every restart. */
    public static final Telling NOTHING_KNOWN = new Telling(Optional.empty(), false);
  }

  /** What a burst is made of. */
  public enum Form {
    CARRIER,
    MORSE,
    FRAMES
  }
}

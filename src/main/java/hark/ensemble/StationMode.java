package hark.ensemble;

import hark.station.StationFault;
import java.util.Optional;

/**
 * One state of a station's persistent health: as believed, or one fault. What it changes of a
 * hearing stands in numbers, so that tables and links need not know the faults by name.
 *
 * @param fault empty for a station that works as believed
 * @param prior belief at separation, 0…1; the modes of a station sum to 1
 * @param lossDb weaker reception, dB; infinite when nothing is heard
 * @param tunedLowHz the radio stands so much below where it should
 * @param dopplerFactor Doppler correction applied over that needed: 1 as it should be, 0 none, −1
 *     the wrong sign
 * @param turnedDeg the antenna stands too far to the east
 * @param lateSeconds the clock is late
 * @param otherSet the element set of the next likeliest candidate is loaded
 * @param otherHand the antenna has the other hand of circular polarisation
 */
record StationMode(
    Optional<StationFault> fault,
    double prior,
    double lossDb,
    double tunedLowHz,
    double dopplerFactor,
    double turnedDeg,
    double lateSeconds,
    boolean otherSet,
    boolean otherHand) {

  /** A strong satellite is found although something is wrong that should hide it. Judged. */
  private static final double FOUND_ANYWAY = 0.03;

  /**
   * A strong satellite is found by its wide signal with Doppler or clock wrong. Judged: half of the
   * crews would notice.
   */
  private static final double FOUND_OFF_TUNE = 0.5;

  static StationMode asBelieved(double prior) {
    return new StationMode(Optional.empty(), prior, 0, 0, 1, 0, 0, false, false);
  }

  static StationMode deaf(double prior) {
    return new StationMode(
        Optional.of(StationFault.DEAF), prior, Double.POSITIVE_INFINITY, 0, 1, 0, 0, false, false);
  }

  StationMode withPrior(double changed) {
    return new StationMode(
        fault,
        changed,
        lossDb,
        tunedLowHz,
        dopplerFactor,
        turnedDeg,
        lateSeconds,
        otherSet,
        otherHand);
  }

  boolean works() {
    return fault.isEmpty();
  }

  /** True when nothing can be heard whatever is sent. */
  boolean isDeaf() {
    return lossDb == Double.POSITIVE_INFINITY;
  }

  /**
   * Chance that a strong known satellite is found in spite of the mode, over that of a station as
   * believed, 0…1. It is listened for with its own element set, so a wrong set loaded for ours does
   * not show; a frequency error shows in our band only.
   *
   * @param sameBand the known satellite sends in the band of our beacon
   */
  double foundInCheck(boolean sameBand) {
    if (isDeaf() || (tunedLowHz != 0 && sameBand)) {
      return FOUND_ANYWAY;
    }
    return dopplerFactor != 1 || lateSeconds != 0 ? FOUND_OFF_TUNE : 1;
  }

  /**
   * How much weaker than expected a known satellite is measured, dB; where it is found at all.
   *
   * @param sameHand the known satellite has the polarisation of our beacon
   * @param beamwidthDeg of the station's antenna
   */
  double dropInCheckDb(boolean sameHand, double beamwidthDeg) {
    double drop = isDeaf() ? 0 : lossDb;
    drop += hark.link.LinkBudget.pointingLossDb(turnedDeg, beamwidthDeg);
    return drop + (otherHand && sameHand ? OTHER_HAND_DB : 0);
  }

  /** Between opposite hands, dB; as in {@link hark.link.LinkBudget#polarisationLossDb}. */
  private static final double OTHER_HAND_DB =
      hark.link.LinkBudget.polarisationLossDb(
          hark.station.Station.Polarisation.RHCP, hark.station.Station.Polarisation.LHCP);
}

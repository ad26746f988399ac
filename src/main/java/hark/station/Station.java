package hark.station;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A ground station as the mission file describes it: where it stands, what it sees, how it hears,
 * whether it may send.
 *
 * @param site place and name; the name identifies the station in the journal
 * @param mask skyline, never below the station's least elevation
 * @param receive the receiving chain
 * @param transmit the sending chain; empty for a station that only listens
 * @param rotator what turns the antenna; empty for one that points without fail: fixed and broad,
 *     or by hand
 * @param doubts how far all this may be wrong
 * @param cost what it costs to sit there
 */
public record Station(
    Site site,
    HorizonMask mask,
    Receive receive,
    Optional<Transmit> transmit,
    Optional<Rotator> rotator,
    StationDoubts doubts,
    Cost cost) {

  /** A station with the usual doubts and an antenna that points without fail. */
  public Station(
      Site site,
      HorizonMask mask,
      Receive receive,
      Optional<Transmit> transmit,
      double clockSdSeconds,
      double worksWithProbability,
      Cost cost) {
    this(
        site,
        mask,
        receive,
        transmit,
        Optional.empty(),
        StationDoubts.usual(worksWithProbability, clockSdSeconds),
        cost);
  }

  /** Belief at separation that the station works as believed, 0…1. */
  public double worksWithProbability() {
    return doubts.worksWithProbability();
  }

  /** The station's name. */
  public String name() {
    return site.name();
  }

  /** Hand of the antenna's polarisation. */
  public enum Polarisation {
    LINEAR,
    RHCP,
    LHCP
  }

  /**
   * The receiving chain.
   *
   * @param gainDbi antenna gain on axis, dBi
   * @param systemNoiseKelvin system noise temperature, K
   * @param noiseByAzimuthDeg rows of (azimuth in degrees, extra noise in dB), linear between,
   *     wrapping; may be empty
   * @param beamwidthDeg half-power full width of the beam, degrees
   * @param tuningHz half-width of the band listened to when nothing else is said, Hz
   * @param unattended true when it records by itself at almost no cost of people's time
   */
  public record Receive(
      double gainDbi,
      double systemNoiseKelvin,
      List<double[]> noiseByAzimuthDeg,
      double beamwidthDeg,
      Polarisation polarisation,
      double tuningHz,
      boolean unattended) {}

  /**
   * What turns the antenna.
   *
   * @param rateDegPerSecond fastest turn in azimuth, degrees/s
   * @param keyhole true for azimuth over elevation without going over the top: near the zenith the
   *     azimuth must turn faster than it can, and the antenna lags
   */
  public record Rotator(double rateDegPerSecond, boolean keyhole) {
    /** Refuses a rate that is not positive. */
    public Rotator {
      if (!(rateDegPerSecond > 0)) {
        throw new IllegalArgumentException("rotator rate " + rateDegPerSecond + " °/s");
      }
    }
  }

  /** The sending chain: radiated power is {@code powerWatts} into {@code gainDbi}. */
  public record Transmit(double powerWatts, double gainDbi, Licence licence) {}

  /**
   * Leave to transmit. Hark gates command options by it and defers to its holder.
   *
   * @param bandsMhz rows of (lowest, highest) frequency, MHz
   */
  public record Licence(
      String holder, List<double[]> bandsMhz, Optional<Instant> until, List<String> mayAuthorise) {}

  /**
   * Hours of people's time.
   *
   * @param sessionHours set-up of a sitting, h
   * @param passHours each pass attended, h
   * @param nightFactor multiplies both when the pass falls between 22 and 06 local solar time
   */
  public record Cost(double sessionHours, double passHours, double nightFactor) {}
}

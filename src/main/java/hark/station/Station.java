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
 * @param use when it may be used
 */
public record Station(
    Site site,
    HorizonMask mask,
    Receive receive,
    Optional<Transmit> transmit,
    Optional<Rotator> rotator,
    StationDoubts doubts,
    Cost cost,
    Use use) {

  /** A station that may be used at any time. */
  public Station(
      Site site,
      HorizonMask mask,
      Receive receive,
      Optional<Transmit> transmit,
      Optional<Rotator> rotator,
      StationDoubts doubts,
      Cost cost) {
    this(site, mask, receive, transmit, rotator, doubts, cost, Use.ALWAYS);
  }

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
   * @param silent when nothing may be sent all the same
   */
  public record Licence(
      String holder,
      List<double[]> bandsMhz,
      Optional<Instant> until,
      List<String> mayAuthorise,
      Rota silent) {
    /** A licence without times of silence. */
    public Licence(
        String holder,
        List<double[]> bandsMhz,
        Optional<Instant> until,
        List<String> mayAuthorise) {
      this(holder, bandsMhz, until, mayAuthorise, Rota.NEVER);
    }

    /** True when it still holds at a time. */
    public boolean holdsAt(Instant time) {
      return until.map(end -> !end.isBefore(time)).orElse(true);
    }

    /** True when a frequency lies in one of its bands. */
    public boolean covers(double megahertz) {
      return bandsMhz.stream().anyMatch(band -> band[0] <= megahertz && megahertz <= band[1]);
    }
  }

  /**
   * Hours of people's time.
   *
   * @param sessionHours set-up of a sitting, h
   * @param passHours each pass attended, h
   * @param nightFactor multiplies both when the pass falls between 22 and 06 local solar time
   * @param authorityHours for each transmission: asking who may authorise it, h
   */
  public record Cost(
      double sessionHours, double passHours, double nightFactor, double authorityHours) {
    /** Asking for leave to send costs nothing. */
    public Cost(double sessionHours, double passHours, double nightFactor) {
      this(sessionHours, passHours, nightFactor, 0);
    }
  }

  /**
   * When it may be used.
   *
   * @param available at which times
   * @param hoursPerWeek of its antenna in a calendar week, h; infinite when nobody counts them
   */
  public record Use(Availability available, double hoursPerWeek) {
    /** At any time. */
    public static final Use ALWAYS = new Use(Availability.ALWAYS, Double.POSITIVE_INFINITY);

    /** Refuses hours that are not positive. */
    public Use {
      if (!(hoursPerWeek > 0)) {
        throw new IllegalArgumentException(hoursPerWeek + " hours a week");
      }
    }
  }
}

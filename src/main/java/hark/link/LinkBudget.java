package hark.link;

import hark.station.Station.Polarisation;

/**
 * Levels along the way of one burst, in decibels. No method allocates; kernels may call them in
 * their innermost loops. Bad values (not positive frequencies, ranges) give NaN or infinities and
 * never a plausible number: the records at the edges refuse them.
 */
public final class LinkBudget {
  /** Speed of light in vacuum, m/s. Exact, SI. */
  public static final double SPEED_OF_LIGHT = 299_792_458.0;

  /** Boltzmann's constant, J/K. Exact, SI 2019. */
  public static final double BOLTZMANN = 1.380649e-23;

  /** Half of the power: 10 log10 2, dB. */
  private static final double LINEAR_TO_CIRCULAR_DB = 10 * Math.log10(2);

  /**
   * Loss between opposite hands of circular polarisation, dB. Ideal antennas lose everything; axial
   * ratios of about 2 dB at both ends leave 15 to 25 dB. Common practice.
   */
  private static final double OPPOSITE_HANDS_DB = 20;

  /**
   * Loss straight up, dB: oxygen and water vapour at 100–500 MHz are some 0.02 dB (ITU-R P.676),
   * the rest allows for the ionosphere and for tropospheric scintillation. Common practice.
   */
  private static final double ZENITH_LOSS_DB = 0.05;

  /** Loss near the horizon, dB; the cosecant law has no meaning there. Common practice. */
  private static final double HORIZON_LOSS_DB = 1.5;

  /** Side lobes: no direction is worse than this off a real antenna, dB. Common practice. */
  private static final double SIDE_LOBE_FLOOR_DB = 25;

  private static final double FOUR_PI_OVER_C = 4 * Math.PI / SPEED_OF_LIGHT;

  private LinkBudget() {}

  /**
   * Free-space loss between isotropic antennas, dB (ITU-R P.525-5).
   *
   * @param frequencyHz positive
   * @param rangeMeters positive
   */
  public static double freeSpaceLossDb(double frequencyHz, double rangeMeters) {
    return 20 * Math.log10(FOUR_PI_OVER_C * frequencyHz * rangeMeters);
  }

  /** Thermal noise {@code k·T·B}, dBm. */
  public static double noisePowerDbm(double kelvin, double bandwidthHz) {
    return 10 * Math.log10(1000 * BOLTZMANN * kelvin * bandwidthHz);
  }

  /**
   * Loss by polarisation, dB. Linear to linear is taken as aligned: how the plane turns with a
   * tumbling spacecraft belongs to the spread of its pattern.
   */
  public static double polarisationLossDb(Polarisation tx, Polarisation rx) {
    if (tx == rx) {
      return 0;
    }
    boolean oneIsLinear = tx == Polarisation.LINEAR || rx == Polarisation.LINEAR;
    return oneIsLinear ? LINEAR_TO_CIRCULAR_DB : OPPOSITE_HANDS_DB;
  }

  /**
   * Loss in the atmosphere at VHF and UHF, dB: 0.05 dB straight up, growing as the cosecant of the
   * elevation (0.6 dB at 5°), at most 1.5 dB (below 1.9°, and below the horizon). Common practice.
   */
  public static double atmosphereLossDb(double elevationDeg) {
    double sine = Math.sin(Math.toRadians(elevationDeg));
    return sine * HORIZON_LOSS_DB <= ZENITH_LOSS_DB ? HORIZON_LOSS_DB : ZENITH_LOSS_DB / sine;
  }

  /**
   * Loss off the axis of an antenna, dB: {@code 12·(θ/beamwidth)²}, 3 dB at half the beamwidth, at
   * most 25 dB for side lobes. The parabola is common practice for the main lobe.
   *
   * @param offAxisDeg angle off the axis, degrees, either sign
   * @param beamwidthDeg half-power full width, degrees
   */
  public static double pointingLossDb(double offAxisDeg, double beamwidthDeg) {
    double ratio = offAxisDeg / beamwidthDeg;
    return Math.min(SIDE_LOBE_FLOOR_DB, 12 * ratio * ratio);
  }

  /**
   * Signal over noise in the burst's bandwidth, dB, for kernels that keep their losses by part.
   *
   * @param eirpDbm radiated power in that direction, dBm
   * @param pathLossDb free space, atmosphere and polarisation together, dB
   * @param pointingLossDb off the receiving antenna's axis, dB
   * @param gainDbi receiving antenna on its axis, dBi
   * @param noiseDbm noise power in the burst's bandwidth, dBm
   */
  public static double snrDb(
      double eirpDbm, double pathLossDb, double pointingLossDb, double gainDbi, double noiseDbm) {
    return eirpDbm - pathLossDb - pointingLossDb + gainDbi - noiseDbm;
  }

  /** Signal over noise of one burst in its own bandwidth, dB. */
  public static double snrDb(Burst burst, Receiver receiver, Geometry geometry) {
    double path =
        freeSpaceLossDb(burst.frequencyHz(), geometry.rangeMeters())
            + atmosphereLossDb(geometry.elevationDeg())
            + polarisationLossDb(burst.polarisation(), receiver.polarisation());
    double noise =
        noisePowerDbm(receiver.systemNoiseKelvin(), burst.bandwidthHz()) + receiver.extraNoiseDb();
    double pointing = pointingLossDb(geometry.offAxisDeg(), receiver.beamwidthDeg());
    return snrDb(burst.eirpDbm(), path, pointing, receiver.gainDbi(), noise);
  }

  /** One burst as it leaves the spacecraft. */
  public record Burst(
      double eirpDbm, double frequencyHz, double bandwidthHz, Polarisation polarisation) {}

  /**
   * A receiving chain at the time of the burst.
   *
   * @param extraNoiseDb noise above the system's own in that direction and hour, dB
   */
  public record Receiver(
      double gainDbi,
      double systemNoiseKelvin,
      double extraNoiseDb,
      double beamwidthDeg,
      Polarisation polarisation) {}

  /**
   * Where the spacecraft stands for the station.
   *
   * @param offAxisDeg between the antenna's axis and the spacecraft, degrees
   */
  public record Geometry(double rangeMeters, double elevationDeg, double offAxisDeg) {}
}

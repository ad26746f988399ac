package hark.trial;

import hark.station.Station.Polarisation;

/** What is lost on the way between two antennas, dB; the same up and down. */
final class Losses {
  /** Exact, SI. */
  static final double LIGHT_METERS_PER_SECOND = 299_792_458;

  /** Cross-polarised circular antennas still let this much through, dB down. Common practice. */
  private static final double OTHER_HAND_DB = 20;

  private static final double ZENITH_DB = 0.05;
  private static final double HORIZON_DB = 1.5;
  private static final double SIDE_LOBE_DB = 25;

  private Losses() {}

  /** Distance, air and an antenna that points beside the other. */
  static double wayDb(
      PlainPath.Place there, PlainPath.Place aim, double frequencyHz, double beamwidthDeg) {
    double waves = 4 * Math.PI * there.rangeMeters() * frequencyHz / LIGHT_METERS_PER_SECOND;
    double air = there.up() > 0 ? Math.min(HORIZON_DB, ZENITH_DB / there.up()) : HORIZON_DB;
    double off = aim.degreesFrom(there) / beamwidthDeg;
    return 20 * Math.log10(waves) + air + Math.min(SIDE_LOBE_DB, 12 * off * off);
  }

  /** Between two polarisations. */
  static double crossDb(Polarisation one, Polarisation other) {
    if (one == other) {
      return 0;
    }
    boolean linear = one == Polarisation.LINEAR || other == Polarisation.LINEAR;
    return linear ? 10 * Math.log10(2) : OTHER_HAND_DB;
  }
}

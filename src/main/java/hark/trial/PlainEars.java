package hark.trial;

import hark.station.Station.Polarisation;
import java.util.List;

/**
 * A station's receiving chain and the way it listens.
 *
 * @param noiseByAzimuthDeg rows of (azimuth, extra noise in dB); may be empty
 * @param halfWidthHz of the band listened to, Hz
 */
public record PlainEars(
    double gainDbi,
    double noiseKelvin,
    List<double[]> noiseByAzimuthDeg,
    double beamwidthDeg,
    Polarisation polarisation,
    double halfWidthHz,
    Skill skill) {
  /** How bursts are looked for: threshold beside the decoder's and its spread, dB. */
  public enum Skill {
    DECODER(0, 1),
    EAR(-5, 2.5),
    WATERFALL(-9, 2.5),
    RECORDING(-13, 1.5);

    private final double offsetDb;
    private final double widthDb;

    Skill(double offsetDb, double widthDb) {
      this.offsetDb = offsetDb;
      this.widthDb = widthDb;
    }

    double widthDb() {
      return widthDb;
    }

    /** Level noticed half of the time, dB. */
    double thresholdDb(PlainBeacon beacon) {
      double threshold = beacon.requiredSnrDb() + offsetDb;
      if (this == DECODER) {
        return threshold;
      }
      return Math.max(threshold, Math.min(energyBoundDb(beacon), beacon.requiredSnrDb()));
    }

    /**
     * What adding up energy needs at one false alarm in a million, by the cube-root rule of Wilson
     * and Hilferty for chi-squared numbers.
     */
    private static double energyBoundDb(PlainBeacon beacon) {
      double oneInAMillion = 4.7534; // upper quantile of the standard normal, from tables
      double looks = Math.max(1, beacon.durationSeconds() * beacon.bandwidthHz());
      double ninth = 1 / (9 * looks);
      double threshold = Math.pow(1 - ninth + oneInAMillion * Math.sqrt(ninth), 3);
      return 10 * Math.log10(threshold - 1);
    }
  }
}

package hark.trial;

import hark.station.Station.Polarisation;

/**
 * One beacon as it really is: every number definite.
 *
 * @param radiatedDbm mean power over all directions, dBm
 * @param carrierErrorHz carrier minus nominal, Hz
 * @param requiredSnrDb a decoder reads half of the bursts there, dB in {@code bandwidthHz}
 * @param patternSdDb spread of the pattern over directions, dB
 */
public record PlainBeacon(
    double frequencyHz,
    double radiatedDbm,
    double carrierErrorHz,
    Polarisation polarisation,
    double bandwidthHz,
    double durationSeconds,
    double requiredSnrDb,
    double patternSdDb) {}

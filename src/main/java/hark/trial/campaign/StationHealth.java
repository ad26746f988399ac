package hark.trial.campaign;

import hark.ensemble.Candidate;
import hark.ensemble.DiagnosisInput;
import hark.station.Station;
import hark.station.Station.Polarisation;
import hark.station.StationDoubts;
import hark.station.StationFault;
import hark.trial.PlainFlaws;
import hark.trial.score.Ranks;
import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Draws what a station really is from how far its description says it may be wrong: as believed or
 * with one fault; and, either way, small errors of clock and azimuth.
 */
final class StationHealth {
  /** A turned antenna that loses less than this is as good as believed, dB. */
  private static final double AS_GOOD_DB = 1;

  // checks: judged, the same as the diagnosis believes
  private static final double MISSED = 0.03;
  private static final double FOUND_ANYWAY = 0.03;
  private static final double FOUND_OFF_TUNE = 0.5;
  private static final double LOUD_DB = 20;
  private static final double NOTICED_DB = 3;
  private static final double SPREAD_DB = 3;
  private static final double OTHER_HAND_DB = 20;
  private static final double SIDE_LOBE_DB = 25;

  private final StationDoubts doubts;
  private final double beamwidthDeg;
  private final Map<StationFault, Double> shares = new EnumMap<>(StationFault.class);

  StationHealth(Station station, DiagnosisInput input) {
    doubts = station.doubts();
    beamwidthDeg = station.receive().beamwidthDeg();
    for (StationFault fault : StationFault.values()) {
      double share = doubts.faultShares().getOrDefault(fault, 0.0);
      if (share > 0 && matters(fault, station, input)) {
        shares.put(fault, share);
      }
    }
    if (shares.isEmpty()) {
      shares.put(StationFault.DEAF, 1.0);
    }
  }

  /** Faults that this mission could never notice are none of its stations'. */
  private boolean matters(StationFault fault, Station station, DiagnosisInput input) {
    if (fault == StationFault.POINTING) {
      return pointingDb() >= AS_GOOD_DB;
    }
    if (fault == StationFault.WRONG_SET) {
      return input.candidates().stream().filter(StationHealth::catalogued).count() > 1;
    }
    if (fault == StationFault.WRONG_HAND) {
      return station.receive().polarisation() != Polarisation.LINEAR
          && input.beacons().stream().anyMatch(b -> b.polarisation() != Polarisation.LINEAR);
    }
    return true;
  }

  static boolean catalogued(Candidate candidate) {
    return !candidate.objectId().equals(Candidate.NONE);
  }

  Truth.StationTruth draw(SplittableRandom random) {
    boolean works = random.nextDouble() < doubts.worksWithProbability();
    StationFault fault = fault(random.nextDouble());
    double turned = doubts.azimuthSdDeg() * random.nextGaussian();
    double late = doubts.clockSdSeconds() * random.nextGaussian();
    double attended = 1 - doubts.minutesLostShare();
    if (works) {
      PlainFlaws small = new PlainFlaws(0, 0, 1, turned, late, attended);
      return new Truth.StationTruth(true, small, false, false, heard(1, 0));
    }
    PlainFlaws flaws =
        new PlainFlaws(
            fault == StationFault.DEAF
                ? Double.POSITIVE_INFINITY
                : size(fault, StationFault.INSENSITIVE, doubts.sizes().insensitiveDb()),
            size(fault, StationFault.FREQUENCY, doubts.sizes().frequencyHz()),
            fault == StationFault.DOPPLER_OFF ? 0 : fault == StationFault.DOPPLER_SIGN ? -1 : 1,
            turned + size(fault, StationFault.POINTING, doubts.sizes().azimuthDeg()),
            late + size(fault, StationFault.CLOCK, doubts.sizes().clockSeconds()),
            attended);
    return new Truth.StationTruth(
        false,
        flaws,
        fault == StationFault.WRONG_SET,
        fault == StationFault.WRONG_HAND,
        checkHeard(fault));
  }

  /** As the diagnosis judges checks on our band and hand, a loud satellite picked for each. */
  private double checkHeard(StationFault fault) {
    return switch (fault) {
      case DEAF, FREQUENCY -> heard(FOUND_ANYWAY, 0);
      case DOPPLER_OFF, DOPPLER_SIGN, CLOCK -> heard(FOUND_OFF_TUNE, 0);
      case INSENSITIVE -> heard(1, doubts.sizes().insensitiveDb());
      case POINTING -> heard(1, pointingDb());
      case WRONG_HAND -> heard(1, OTHER_HAND_DB);
      case WRONG_SET -> heard(1, 0);
    };
  }

  private static double heard(double found, double dropDb) {
    return (1 - MISSED) * found * Ranks.normalBelow((LOUD_DB - dropDb - NOTICED_DB) / SPREAD_DB);
  }

  private double pointingDb() {
    double off = doubts.sizes().azimuthDeg() / beamwidthDeg;
    return Math.min(SIDE_LOBE_DB, 12 * off * off);
  }

  private static double size(StationFault is, StationFault of, double size) {
    return is == of ? size : 0;
  }

  private StationFault fault(double u) {
    double all = shares.values().stream().mapToDouble(Double::doubleValue).sum();
    double sum = 0;
    StationFault last = StationFault.DEAF;
    for (Map.Entry<StationFault, Double> share : shares.entrySet()) {
      sum += share.getValue();
      last = share.getKey();
      if (u * all < sum) {
        return last;
      }
    }
    return last;
  }
}

package hark.ensemble;

import hark.link.LinkBudget;
import hark.station.Station;
import hark.station.Station.Polarisation;
import hark.station.StationDoubts;
import hark.station.StationFault;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The modes of a station's health that can make a difference in a mission, the one that works as
 * believed first. Faults that cannot be told from working (the wrong hand between linear antennas)
 * take no share.
 */
final class StationModes {
  /** A mode less likely than this is not followed; its prior goes to the others. */
  private static final double LEAST_PRIOR = 1e-4;

  /** A turned antenna whose loss is below this is as good as believed, dB. */
  private static final double NOTICED_DB = 1;

  private StationModes() {}

  /** All modes of a station. */
  static List<StationMode> of(DiagnosisInput input, int stationIndex) {
    Station station = input.stations().get(stationIndex);
    double works = station.worksWithProbability();
    List<StationMode> faults = new ArrayList<>();
    for (StationFault fault : StationFault.values()) {
      double share = station.doubts().faultShares().getOrDefault(fault, 0.0);
      if (share > 0 && matters(fault, input, station)) {
        faults.add(mode(fault, share, station.doubts().sizes()));
      }
    }
    if (faults.isEmpty()) {
      faults.add(StationMode.deaf(1));
    }
    double all = sum(faults);
    faults.removeIf(mode -> (1 - works) * mode.prior() / all < LEAST_PRIOR);
    double kept = sum(faults);
    List<StationMode> modes = new ArrayList<>();
    modes.add(StationMode.asBelieved(kept > 0 ? works : 1));
    faults.forEach(mode -> modes.add(mode.withPrior((1 - works) * mode.prior() / kept)));
    return modes;
  }

  /** Working and deaf alone: enough to choose hearings by. */
  static List<StationMode> coarse(DiagnosisInput input, int stationIndex) {
    double works = input.stations().get(stationIndex).worksWithProbability();
    return List.of(StationMode.asBelieved(works), StationMode.deaf(1 - works));
  }

  private static double sum(List<StationMode> modes) {
    return modes.stream().mapToDouble(StationMode::prior).sum();
  }

  private static boolean matters(StationFault fault, DiagnosisInput input, Station station) {
    return switch (fault) {
      case POINTING ->
          LinkBudget.pointingLossDb(
                  station.doubts().sizes().azimuthDeg(), station.receive().beamwidthDeg())
              >= NOTICED_DB;
      case WRONG_SET -> catalogued(input) > 1;
      case WRONG_HAND ->
          station.receive().polarisation() != Polarisation.LINEAR
              && input.beacons().stream().anyMatch(b -> b.polarisation() != Polarisation.LINEAR);
      case DEAF, INSENSITIVE, FREQUENCY, DOPPLER_OFF, DOPPLER_SIGN, CLOCK -> true;
    };
  }

  private static long catalogued(DiagnosisInput input) {
    return input.candidates().stream().filter(c -> !c.objectId().equals(Candidate.NONE)).count();
  }

  private static StationMode mode(StationFault fault, double prior, StationDoubts.Sizes sizes) {
    Optional<StationFault> is = Optional.of(fault);
    return switch (fault) {
      case DEAF -> StationMode.deaf(prior);
      case INSENSITIVE ->
          new StationMode(is, prior, sizes.insensitiveDb(), 0, 1, 0, 0, false, false);
      case FREQUENCY -> new StationMode(is, prior, 0, sizes.frequencyHz(), 1, 0, 0, false, false);
      case DOPPLER_OFF -> new StationMode(is, prior, 0, 0, 0, 0, 0, false, false);
      case DOPPLER_SIGN -> new StationMode(is, prior, 0, 0, -1, 0, 0, false, false);
      case POINTING -> new StationMode(is, prior, 0, 0, 1, sizes.azimuthDeg(), 0, false, false);
      case CLOCK -> new StationMode(is, prior, 0, 0, 1, 0, sizes.clockSeconds(), false, false);
      case WRONG_SET -> new StationMode(is, prior, 0, 0, 1, 0, 0, true, false);
      case WRONG_HAND -> new StationMode(is, prior, 0, 0, 1, 0, 0, false, true);
    };
  }

  /** The candidate whose set is loaded by mistake when another is to be followed. */
  static int mistaken(DiagnosisInput input, int followed) {
    int best = -1;
    for (int k = 0; k < input.candidates().size(); k++) {
      Candidate candidate = input.candidates().get(k);
      boolean other = k != followed && !candidate.objectId().equals(Candidate.NONE);
      if (other && (best < 0 || candidate.prior() > input.candidates().get(best).prior())) {
        best = k;
      }
    }
    return best < 0 ? followed : best;
  }
}

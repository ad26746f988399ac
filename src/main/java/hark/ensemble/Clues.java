package hark.ensemble;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.link.Way;
import hark.station.Station;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns the record into clues: which sky, which way of listening, which probe. */
final class Clues {
  /** Spread of a level read by ear or eye when none is written, dB. Common practice. */
  private static final double LEVEL_SD_DB = 2;

  /**
   * Spread of a telemetered voltage when none is written, V. Common practice for an 8-bit channel.
   */
  private static final double VOLTS_SD = 0.05;

  /**
   * A station that works hears a strong satellite nearly always; a deaf one may still hear it,
   * because a strong satellite proves pointing and cabling, not sensitivity. With level, hand and
   * band all as expected it proves much more. Judged.
   */
  private static final double CHECK_HEARD_IF_WORKS = 0.97;

  private static final double CHECK_HEARD_IF_DEAF = 0.25;
  private static final double FULL_CHECK_HEARD_IF_DEAF = 0.03;
  private static final double LEVEL_AS_EXPECTED_DB = 3;

  private final DiagnosisInput input;
  private final Sky sky;
  private final List<Clue> clues = new ArrayList<>();
  private final List<Double> probes = new ArrayList<>();

  Clues(DiagnosisInput input, Sky sky) {
    this.input = input;
    this.sky = sky;
    for (int k = 0; k < input.evidence().size(); k++) {
      add(k, input.evidence().get(k));
    }
  }

  List<Clue> all() {
    return List.copyOf(clues);
  }

  double[] probeSeconds() {
    return probes.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private void add(int index, Entry entry) {
    Evidence evidence = entry.evidence();
    if (evidence instanceof Evidence.NothingHeard silence) {
      SkyWindow window = window(silence.station(), silence.from(), silence.to());
      Listening listening =
          listening(silence.station(), silence.way(), silence.windowHz(), silence.object())
              .shifted(silence.offsetSeconds(), silence.noiseDb());
      clues.add(new Silence(index, window, listening));
    } else if (evidence instanceof Evidence.Heard heard) {
      SkyWindow window = window(heard.station(), heard.from(), heard.to());
      Listening listening =
          listening(heard.station(), Optional.empty(), OptionalDouble.empty(), heard.object());
      double patternSd = input.beacons().get(0).patternSdDb();
      double sd = Math.hypot(heard.levelSdDb().orElse(LEVEL_SD_DB), patternSd);
      clues.add(new Sound(index, window, listening, heard.levelDb().orElse(Double.NaN), sd));
    } else if (evidence instanceof Evidence.Telemetry telemetry) {
      double seconds = input.seconds(telemetry.at());
      clues.add(
          new Volts(
              index,
              probes.size(),
              seconds,
              telemetry.volts(),
              telemetry.voltsSd().orElse(VOLTS_SD)));
      probes.add(seconds);
    } else if (evidence instanceof Evidence.StationCheck check) {
      double heardIfDeaf =
          provesSensitivity(check) ? FULL_CHECK_HEARD_IF_DEAF : CHECK_HEARD_IF_DEAF;
      double works = check.heard() ? CHECK_HEARD_IF_WORKS : 1 - CHECK_HEARD_IF_WORKS;
      double deaf = check.heard() ? heardIfDeaf : 1 - heardIfDeaf;
      clues.add(new Check(index, input.stationIndex(check.station()), works, deaf));
    }
  }

  private static boolean provesSensitivity(Evidence.StationCheck check) {
    boolean sameAntennaAndBand = check.sameHand().orElse(false) && check.sameBand().orElse(false);
    boolean bothLevels = check.levelDb().isPresent() && check.expectedDb().isPresent();
    return sameAntennaAndBand
        && bothLevels
        && Math.abs(check.levelDb().getAsDouble() - check.expectedDb().getAsDouble())
            <= LEVEL_AS_EXPECTED_DB;
  }

  private SkyWindow window(String station, Instant from, Instant to) {
    return sky.window(input.stationIndex(station), from, to, List.of());
  }

  private Listening listening(
      String stationName, Optional<Way> way, OptionalDouble windowHz, Optional<String> object) {
    Station station = input.stations().get(input.stationIndex(stationName));
    int tracked = object.map(input::candidateIndex).orElse(input.likeliestCandidate());
    Way how = way.orElse(usualWay(input.beacons().get(0), station));
    return new Listening(how, windowHz.orElse(station.receive().tuningHz()), 0, tracked, 0, 0);
  }

  /** Chance that a strong known satellite is heard, by the chance that the station works. */
  static double checkHeard(double works) {
    return works * CHECK_HEARD_IF_WORKS + (1 - works) * CHECK_HEARD_IF_DEAF;
  }

  /** How a beacon is listened for when nothing else is said; an unattended station records. */
  static Way usualWay(BeaconRadio beacon, Station station) {
    if (station.receive().unattended()) {
      return Way.RECORDING;
    }
    return switch (beacon.form()) {
      case FRAMES -> Way.DECODER;
      case MORSE -> Way.EAR;
      case CARRIER -> Way.WATERFALL;
    };
  }
}

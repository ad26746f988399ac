package hark.ensemble;

import hark.evidence.Evidence;
import hark.evidence.OutsideReport;
import hark.evidence.SearchResult;
import hark.link.Detector;
import hark.link.Way;
import hark.station.HorizonMask;
import hark.station.Site;
import hark.station.Station;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns what was listened for into clues: at our stations, elsewhere, and in recordings. */
final class ListeningClues {
  /** Spread of a level read by ear or eye when none is written, dB. Common practice. */
  private static final double LEVEL_SD_DB = 2;

  /** Level at which a neighbour's call sign was read, dB over noise. Judged: a plain one. */
  private static final double NEIGHBOUR_DB = 10;

  /** What was found in a recording by a search is something else so often. Judged. */
  private static final double FOUND_NOT_OURS = 0.03;

  /** A listener of whom nothing is known is this much worse than our first station, dB. Judged. */
  private static final double OUTSIDE_DB = -3;

  private static final double OUTSIDE_CLOCK_SECONDS = 10;
  private static final double OUTSIDE_TRUST = 0.6;

  /** Skyline of a listener of whom nothing is known, degrees. Judged. */
  private static final double OUTSIDE_SKYLINE_DEG = 10;

  private final DiagnosisInput input;
  private final Sky sky;

  ListeningClues(DiagnosisInput input, Sky sky) {
    this.input = input;
    this.sky = sky;
  }

  Clue silence(int index, Evidence.NothingHeard silence) {
    SkyWindow window = window(silence.station(), silence.from(), silence.to());
    Listening listening =
        listening(silence.station(), silence.way(), silence.windowHz(), silence.object())
            .shifted(silence.offsetSeconds(), silence.noiseDb())
            .tunedTo(silence.frequencyHz());
    return new Silence(index, window, listening);
  }

  /**
   * Something was heard. A call sign that is not ours tells only that the station hears: like a
   * check on a plain satellite of the same band.
   */
  Clue heard(int index, Evidence.Heard heard) {
    if (input.isForeign(heard)) {
      int at = input.stationIndex(heard.station());
      double beam = input.stations().get(at).receive().beamwidthDeg();
      double hand = Check.LIKE_OURS_UNSAID;
      return new Check(index, at, true, Double.NaN, NEIGHBOUR_DB, hand, 1, beam);
    }
    SkyWindow window = window(heard.station(), heard.from(), heard.to());
    Optional<Way> way = noticedBy(heard);
    Optional<Pitch> pitch =
        heard.frequencyHz().isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Pitch(
                    heard.frequencyHz().getAsDouble(),
                    heard.frequencySdHz().orElse(Pitch.USUAL_SD_HZ)));
    return new Sound(
        index,
        window,
        listening(heard.station(), way, OptionalDouble.empty(), heard.object()),
        notOurs(heard),
        heard.levelDb().orElse(Double.NaN),
        heard.levelSdDb().orElse(LEVEL_SD_DB),
        pitch);
  }

  /** A carrier or a fragment is noticed below what a decoder needs. */
  private static Optional<Way> noticedBy(Evidence.Heard heard) {
    return switch (heard.form().orElse("")) {
      case "carrier" -> Optional.of(Way.WATERFALL);
      case "fragment", "morse" -> Optional.of(Way.EAR);
      default -> Optional.empty();
    };
  }

  /**
   * Chance that something else is heard in a window and taken for ours: interference, or one of the
   * others of the same launch, which send in the same band and are mistaken for ours the more
   * easily the less of it was read. Few share a frequency within a few kilohertz. Judged.
   */
  private static double notOurs(Evidence.Heard heard) {
    if (heard.callSign().isPresent()) {
      return 0.001;
    }
    return switch (heard.form().orElse("")) {
      case "carrier" -> 0.05;
      case "fragment" -> 0.03;
      case "frames" -> 0.005;
      default -> 0.02;
    };
  }

  Clue outside(int index, OutsideReport report) {
    Station there = station(report);
    double clock = report.clockSdSeconds().orElse(OUTSIDE_CLOCK_SECONDS);
    SkyWindow window = sky.elsewhere(there, report.from(), report.to(), clock);
    double gain = report.sensitivityDb().orElse(OUTSIDE_DB);
    Listening listening =
        new Listening(
            usualWay(input.beacons().get(0), there),
            there.receive().tuningHz(),
            0,
            input.likeliestCandidate(),
            gain,
            0);
    double trust = report.trust().orElse(OUTSIDE_TRUST);
    return new OutsideClue(index, there, window, listening, clock, report.heard(), trust);
  }

  /** Our first station's receiver, carried to the place of the report, under a plain skyline. */
  private Station station(OutsideReport report) {
    Station.Receive ours = input.stations().get(0).receive();
    if (report.place().isEmpty()) {
      return input.stations().get(input.stationIndex(report.station().orElseThrow()));
    }
    OutsideReport.Place place = report.place().get();
    Station.Receive plain =
        new Station.Receive(
            ours.gainDbi(),
            ours.systemNoiseKelvin(),
            List.of(),
            ours.beamwidthDeg(),
            ours.polarisation(),
            ours.tuningHz(),
            false);
    Site site =
        new Site(
            report.station().orElse("elsewhere"), place.latitudeDeg(), place.longitudeDeg(), 0);
    return new Station(
        site,
        HorizonMask.flat(OUTSIDE_SKYLINE_DEG),
        plain,
        Optional.empty(),
        0,
        1,
        new Station.Cost(0, 0, 1));
  }

  /**
   * A recording that was searched is a listening by recording; its upper limit, where it was
   * stated, takes the place of the search's usual threshold.
   */
  Clue searched(int index, SearchResult result) {
    String station = result.station().orElseThrow();
    SkyWindow window = window(station, result.from(), result.to());
    BeaconRadio beacon = input.beacons().get(0);
    double perHertzDb = 10 * Math.log10(beacon.bandwidthHz());
    double duration = input.body().typical().beacons().get(0).durationSeconds();
    Detector usual =
        Detector.of(Way.RECORDING, beacon.requiredSnrDb(), duration, beacon.bandwidthHz());
    double better =
        result.upperLimitDbHz().isEmpty()
            ? 0
            : usual.thresholdDb() + perHertzDb - result.upperLimitDbHz().getAsDouble();
    Listening listening =
        listening(station, Optional.of(Way.RECORDING), OptionalDouble.empty(), result.object())
            .shifted(result.offsetSeconds(), 0)
            .better(better);
    if (!result.detected()) {
      return new Silence(index, window, listening);
    }
    double level = result.levelDbHz().orElse(Double.NaN) - perHertzDb + better;
    return new Sound(
        index, window, listening, FOUND_NOT_OURS, level, LEVEL_SD_DB, Optional.empty());
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

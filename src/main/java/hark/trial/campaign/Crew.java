package hark.trial.campaign;

import hark.ensemble.BeaconRadio;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.link.Way;
import hark.power.PowerModel;
import hark.station.Station;
import hark.station.Station.Polarisation;
import hark.trial.PlainBeacon;
import hark.trial.PlainEars;
import hark.trial.PlainHistory;
import hark.trial.PlainLink;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * Listens by a plain rule and writes down what it hears: every window of the first day, then a
 * fixed share of them, each station in its usual way after the likeliest object. What people and
 * things do wrong happens at the rates that the diagnosis believes in.
 */
final class Crew {
  private static final double DAY = 86_400;

  /** Error of a level that is read off, dB. Common practice. */
  private static final double LEVEL_SD = 2;

  /** Error of a telemetered voltage, V. Common practice for an 8-bit channel. */
  private static final double VOLTS_SD = 0.05;

  /** The real terminals differ from any model's by so much, V a cell. Judged. */
  private static final double VOLTS_OF_MODELS_SD_PER_CELL = 0.03;

  /** Share of voltages that are wrong altogether, anywhere within so many volts. */
  private static final double WRONG_VOLTS = 0.01;

  private static final double WRONG_VOLTS_SPREAD = 5;

  /** Share of sittings that fail without anybody noticing. */
  private static final double SLIP = 0.03;

  /** Share of windows in which something else is taken for ours, at any of so many levels. */
  private static final double NOT_OURS = 0.02;

  private static final double NOT_OURS_SPREAD_DB = 30;

  /** Stations are checked on these days after separation. */
  private static final double[] CHECK_DAYS = {4.5, 11.5};

  private final DiagnosisInput input;
  private final Geometry geometry;
  private final int followed;
  private final int mistaken;

  Crew(DiagnosisInput input, Geometry geometry) {
    this.input = input;
    this.geometry = geometry;
    followed = input.likeliestCandidate();
    mistaken = mistaken(input, followed);
  }

  /** The object whose set is loaded by mistake: the likeliest of the others. */
  private static int mistaken(DiagnosisInput input, int followed) {
    int best = followed;
    for (int k = 0; k < input.candidates().size(); k++) {
      boolean other = k != followed && StationHealth.catalogued(input.candidates().get(k));
      boolean likelier =
          best == followed
              || input.candidates().get(k).prior() > input.candidates().get(best).prior();
      best = other && likelier ? k : best;
    }
    return best;
  }

  /** The windows it sits through, rising. */
  List<Geometry.Window> chosen(SplittableRandom random) {
    List<Geometry.Window> chosen = new ArrayList<>();
    for (Geometry.Window window : geometry.windows) {
      boolean early = input.seconds(window.from()) < DAY;
      if (random.nextDouble() < Settings.LISTENED_SHARE || early) {
        chosen.add(window);
      }
    }
    return chosen;
  }

  /** What comes of one window, in the order of time: heard or not, and telemetry that was read. */
  List<Evidence> sit(
      Geometry.Window window, Truth truth, PlainHistory body, SplittableRandom random) {
    Station station = input.stations().get(window.station());
    Way way = Diagnosis.usualWay(input.beacons().get(0), station);
    boolean fails = random.nextDouble() < SLIP;
    boolean foreign = random.nextDouble() < NOT_OURS;
    double foreignDb =
        input.beacons().get(0).requiredSnrDb()
            + NOT_OURS_SPREAD_DB * (random.nextDouble() - 1.0 / 3);
    List<PlainLink.Noticed> noticed = listen(window, truth, body, way, random);
    double misreadDb = LEVEL_SD * random.nextGaussian();
    if (foreign) {
      return List.of(heard(station, window, foreignDb));
    }
    if (fails || noticed.isEmpty()) {
      return List.of(silence(station, window));
    }
    PlainLink.Noticed best =
        Collections.max(noticed, Comparator.comparingDouble(PlainLink.Noticed::levelDb));
    List<Evidence> evidence = new ArrayList<>();
    evidence.add(heard(station, window, best.levelDb() + misreadDb));
    boolean read = way == Way.DECODER && input.beacons().get(0).form() == BeaconRadio.Form.FRAMES;
    if (read) {
      telemetry(best.seconds(), truth, body, random).ifPresent(evidence::add);
    }
    return evidence;
  }

  /** Whether any burst is noticed in a window by a sitting that may fail. */
  boolean notices(Geometry.Window window, Truth truth, PlainHistory body, SplittableRandom random) {
    Way way = Diagnosis.usualWay(input.beacons().get(0), input.stations().get(window.station()));
    boolean fails = random.nextDouble() < SLIP;
    return !listen(window, truth, body, way, random).isEmpty() && !fails;
  }

  private List<PlainLink.Noticed> listen(
      Geometry.Window window, Truth truth, PlainHistory body, Way way, SplittableRandom random) {
    double late = truth.alongTrackZ() * window.sdSeconds()[truth.object()];
    Truth.StationTruth health = truth.stations().get(window.station());
    PlainLink.Window stretch =
        new PlainLink.Window(
            input.seconds(window.from()),
            input.seconds(window.to()),
            window.paths().get(truth.object()),
            late,
            window.paths().get(health.otherSet() ? mistaken : followed));
    PlainEars ears = ears(input.stations().get(window.station()), way, health.otherHand());
    List<PlainLink.Noticed> noticed = new ArrayList<>();
    for (int b = 0; b < input.beacons().size(); b++) {
      PlainLink link = new PlainLink(beacon(b, truth), ears, health.flaws());
      double tumble = truth.model().attitude().rateDegPerSecond();
      noticed.addAll(link.listen(body.bursts().get(b), truth.harms(), stretch, tumble, random));
    }
    return noticed;
  }

  private PlainBeacon beacon(int b, Truth truth) {
    BeaconRadio radio = input.beacons().get(b);
    PowerModel.Beacon sent = truth.model().beacons().get(b);
    return new PlainBeacon(
        radio.frequencyHz(),
        truth.radiatedDbm()[b],
        truth.carrierErrorHz()[b],
        radio.polarisation(),
        radio.bandwidthHz(),
        sent.durationSeconds(),
        radio.requiredSnrDb(),
        radio.patternSdDb());
  }

  private static PlainEars ears(Station station, Way way, boolean otherHand) {
    Station.Receive receive = station.receive();
    Polarisation hand = receive.polarisation();
    Polarisation other = hand == Polarisation.RHCP ? Polarisation.LHCP : Polarisation.RHCP;
    return new PlainEars(
        receive.gainDbi(),
        receive.systemNoiseKelvin(),
        receive.noiseByAzimuthDeg(),
        receive.beamwidthDeg(),
        otherHand ? other : hand,
        receive.tuningHz(),
        PlainEars.Skill.valueOf(way.name()));
  }

  private Optional<Evidence> telemetry(
      double seconds, Truth truth, PlainHistory body, SplittableRandom random) {
    int k = (int) (seconds / body.gridSeconds());
    double volts = body.volts()[k];
    double models = VOLTS_OF_MODELS_SD_PER_CELL * truth.model().battery().series();
    double told = volts + Math.hypot(VOLTS_SD, models) * random.nextGaussian();
    if (random.nextDouble() < WRONG_VOLTS) {
      told = volts + WRONG_VOLTS_SPREAD * (random.nextDouble() - 0.5);
    }
    if (Double.isNaN(told)) {
      return Optional.empty();
    }
    Instant at = input.instant(seconds);
    return Optional.of(new Evidence.Telemetry(at, Math.max(0, told), OptionalDouble.of(VOLTS_SD)));
  }

  private static Evidence heard(Station station, Geometry.Window window, double levelDb) {
    return new Evidence.Heard(
        station.name(),
        window.from(),
        window.to(),
        OptionalDouble.of(levelDb),
        OptionalDouble.of(LEVEL_SD),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Evidence silence(Station station, Geometry.Window window) {
    return new Evidence.NothingHeard(
        station.name(),
        window.from(),
        window.to(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        0,
        Optional.empty(),
        0);
  }

  /** Satellites known to send are listened for now and then. */
  List<Evidence> checks(Truth truth, SplittableRandom random) {
    List<Evidence> checks = new ArrayList<>();
    for (double day : CHECK_DAYS) {
      Instant at = input.instant(day * DAY);
      for (int s = 0; s < input.stations().size() && at.isBefore(input.now()); s++) {
        double chance = truth.stations().get(s).checkHeard();
        checks.add(
            new Evidence.StationCheck(
                input.stations().get(s).name(),
                at,
                random.nextDouble() < chance,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(true),
                Optional.of(true)));
      }
    }
    return checks;
  }

  /** The record as a journal would hold it, in the order of time. */
  static List<Entry> journal(List<Evidence> evidence) {
    List<Evidence> inTime = new ArrayList<>(evidence);
    inTime.sort(Comparator.comparing(Evidence::at));
    List<Entry> entries = new ArrayList<>();
    for (Evidence each : inTime) {
      entries.add(new Entry(entries.size() + 1, each.end(), "", "", Map.of(), each));
    }
    return entries;
  }
}

package hark.trial.campaign;

import hark.ensemble.BeaconRadio;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.evidence.Evidence;
import hark.link.Way;
import hark.station.Station;
import hark.trial.PlainHistory;
import hark.trial.PlainLink;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
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

  /** Error of a telemetered voltage, V. Common practice for an 8-bit channel. */
  private static final double VOLTS_SD = 0.05;

  /** The real terminals differ from any model's by so much, V a cell. Judged. */
  private static final double VOLTS_OF_MODELS_SD_PER_CELL = 0.03;

  /** Share of voltages that are wrong altogether, anywhere within so many volts. */
  private static final double WRONG_VOLTS = 0.01;

  private static final double WRONG_VOLTS_SPREAD = 5;

  /** Share of windows in which something else is taken for ours, at any of so many levels. */
  private static final double NOT_OURS = 0.02;

  private static final double NOT_OURS_SPREAD_DB = 30;

  /** Stations are checked on these days after separation. */
  private static final double[] CHECK_DAYS = {4.5, 11.5};

  private final DiagnosisInput input;
  private final Geometry geometry;
  private final Listener listener;

  Crew(DiagnosisInput input, Geometry geometry) {
    this.input = input;
    this.geometry = geometry;
    listener = new Listener(input);
  }

  /** The windows it sits through, rising. */
  List<Geometry.Window> chosen(SplittableRandom random) {
    List<Geometry.Window> chosen = new ArrayList<>();
    for (Geometry.Window window : geometry.windows()) {
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
    boolean fails = random.nextDouble() < Crews.SLIP;
    boolean foreign = random.nextDouble() < NOT_OURS;
    double foreignDb =
        input.beacons().get(0).requiredSnrDb()
            + NOT_OURS_SPREAD_DB * (random.nextDouble() - 1.0 / 3);
    List<PlainLink.Noticed> noticed = listen(window, truth, body, random);
    double misreadDb = Crews.LEVEL_SD * random.nextGaussian();
    if (foreign) {
      return List.of(Crews.heard(input, window, foreignDb));
    }
    if (fails || noticed.isEmpty()) {
      return List.of(Crews.silence(input, window));
    }
    PlainLink.Noticed best =
        Collections.max(noticed, Comparator.comparingDouble(PlainLink.Noticed::levelDb));
    List<Evidence> evidence = new ArrayList<>();
    evidence.add(Crews.heard(input, window, best.levelDb() + misreadDb));
    boolean read = way == Way.DECODER && input.beacons().get(0).form() == BeaconRadio.Form.FRAMES;
    if (read) {
      telemetry(best.seconds(), truth, body, random).ifPresent(evidence::add);
    }
    return evidence;
  }

  /** Whether any burst is noticed in a window by a sitting that may fail. */
  boolean notices(Geometry.Window window, Truth truth, PlainHistory body, SplittableRandom random) {
    boolean fails = random.nextDouble() < Crews.SLIP;
    return !listen(window, truth, body, random).isEmpty() && !fails;
  }

  private List<PlainLink.Noticed> listen(
      Geometry.Window window, Truth truth, PlainHistory body, SplittableRandom random) {
    Listener.Sent sent = new Listener.Sent(body.bursts(), truth.harms());
    return listener.noticed(window, truth, sent, listener.usual(window.station()), random);
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

  /** Satellites known to send are listened for now and then. */
  List<Evidence> checks(Truth truth, SplittableRandom random) {
    List<Evidence> checks = new ArrayList<>();
    for (double day : CHECK_DAYS) {
      Instant at = input.instant(day * DAY);
      for (int s = 0; s < input.stations().size() && at.isBefore(input.now()); s++) {
        double chance = truth.stations().get(s).checkHeard();
        checks.add(Crews.check(input, s, at, random.nextDouble() < chance));
      }
    }
    return checks;
  }
}

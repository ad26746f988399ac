package hark.ensemble;

import hark.link.Detection;
import hark.link.Detector;
import hark.link.LinkBudget;
import hark.power.BodyHistory;
import hark.power.Illumination;
import hark.power.PowerModel;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import hark.power.SimulationRequest.TimedChange;
import hark.station.Station;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Event sets put to the test on a few bodies, without any evidence: is such a body heard again
 * after the events have begun? The typical body and {@value #DRAWN} draws fly with all events of a
 * set beginning when the quiet time ends. A body counts as audible when it would more likely than
 * not be heard at least once in {@value #PASSES} passes of five minutes, by the best of the
 * mission's stations at an elevation of {@value #ELEVATION_DEG}°, listening as usual, tuned and
 * pointed right. Which passes there are, and all that is wrong on the ground, is left out.
 */
public final class EventTrial {
  /** Bodies drawn beside the typical one. */
  public static final int DRAWN = 6;

  /** Passes of the stretch that is looked at. */
  public static final int PASSES = 12;

  private static final double ELEVATION_DEG = 30;
  private static final double PASS_SECONDS = 300;
  private static final double EARTH_RADIUS_METERS = 6_378_137;

  /** Gravity of the Earth, m³/s². WGS-84. */
  private static final double EARTH_GRAVITY = 3.986004418e14;

  private static final double DAY = 86400;

  /** Whole orbits would show the same light at every pass; this step does not divide them, s. */
  private static final double LOOK_STEP_SECONDS = 1717;

  private final DiagnosisInput input;
  private final Illumination light;
  private final Span span;
  private final Draws draws;

  /**
   * When a body is looked at, days after its events began; what it had in its battery when they did
   * is gone by then, or is not.
   */
  public record Span(double fromDays, double toDays) {
    /** Refuses an empty span. */
    public Span {
      if (!(fromDays >= 0 && toDays > fromDays)) {
        throw new IllegalArgumentException("from " + fromDays + " to " + toDays + " days");
      }
    }
  }

  private EventTrial(DiagnosisInput input, Illumination light, Span span) {
    this.input = input;
    this.light = light;
    this.span = span;
    int dimensions = Population.FIRST_BODY_DIMENSION + input.body().numbers().size();
    this.draws = new Draws(DRAWN, dimensions, input.seed());
  }

  /** In the sunlight of the first days after separation. */
  public static EventTrial afterSeparation(DiagnosisInput input, Span span) {
    double quiet = input.body().typical().quietSeconds();
    Instant wanted = input.instant(quiet + span.toDays() * DAY);
    Instant end = wanted.isAfter(input.now()) ? wanted : input.end();
    return new EventTrial(input, Sky.of(input.until(end)).illumination(), span);
  }

  /** In sunlight without any shadow, at the Sun's mean distance. */
  public static EventTrial inFullSun(DiagnosisInput input, Span span) {
    Illumination noShadow = new Illumination(new double[4][0], SunWalk.IRRADIANCE_1AU);
    return new EventTrial(input, noShadow, span);
  }

  /** Share of the bodies that are audible, for each set of causes. */
  public double[] audible(List<List<Integer>> sets, Workers workers) {
    double[] shares = new double[sets.size()];
    double[][] chances = new double[sets.size()][];
    int perBlock = Math.max(1, Simulation.BLOCK / (DRAWN + 1));
    workers.eachBlock(
        sets.size(),
        perBlock,
        (from, to) -> {
          List<Simulation.Job> jobs = new ArrayList<>();
          for (int s = from; s < to; s++) {
            for (int draw = -1; draw < DRAWN; draw++) {
              jobs.add(job(sets.get(s), draw));
            }
          }
          List<BodyHistory> flown = Simulation.runAll(jobs, light);
          for (int s = from; s < to; s++) {
            chances[s] = chances(sets.get(s), flown, (s - from) * (DRAWN + 1));
          }
        });
    for (int s = 0; s < shares.length; s++) {
      int audible = 0;
      for (double chance : chances[s]) {
        audible += chance >= 0.5 ? 1 : 0;
      }
      shares[s] = (double) audible / chances[s].length;
    }
    return shares;
  }

  private double[] chances(List<Integer> set, List<BodyHistory> flown, int first) {
    double[] chances = new double[DRAWN + 1];
    for (int draw = -1; draw < DRAWN; draw++) {
      chances[draw + 1] = chance(radio(set, draw), flown.get(first + draw + 1));
    }
    return chances;
  }

  private double size(int draw, int slot) {
    return draw < 0 ? 0.5 : draws.at(draw, 2 * (slot % 2) + 1);
  }

  private RadioChange radio(List<Integer> set, int draw) {
    RadioChange all = RadioChange.NONE;
    for (int slot = 0; slot < set.size(); slot++) {
      double size = size(draw, slot);
      for (Effect effect : input.causes().get(set.get(slot)).effects()) {
        all = all.plus(effect.radio(size));
      }
    }
    return all;
  }

  private Simulation.Job job(List<Integer> set, int draw) {
    PowerModel model = draw < 0 ? input.body().typical() : drawn(draw);
    double begin = model.quietSeconds();
    List<TimedChange> changes = new ArrayList<>();
    for (int slot = 0; slot < set.size(); slot++) {
      Cause cause = input.causes().get(set.get(slot));
      for (Effect effect : cause.effects()) {
        effect
            .onboard(size(draw, slot), cause.clearings())
            .map(change -> new TimedChange(begin, change))
            .ifPresent(changes::add);
      }
    }
    double end = input.body().typical().quietSeconds() + span.toDays() * DAY;
    SimulationRequest request =
        new SimulationRequest(end, 0, DAY, changes, new double[0], new double[0]);
    return new Simulation.Job(model, request);
  }

  private PowerModel drawn(int draw) {
    double[] values = new double[input.body().numbers().size()];
    for (int k = 0; k < values.length; k++) {
      double u = draws.at(draw, Population.FIRST_BODY_DIMENSION + k);
      values[k] = input.body().numbers().get(k).quantile(u);
    }
    return input.body().build().apply(values);
  }

  /** Chance that at least one of some passes spread over the span is heard. */
  private double chance(RadioChange radio, BodyHistory history) {
    if (radio.mute()) {
      return 0;
    }
    double[] burst = new double[input.beacons().size()];
    for (int b = 0; b < burst.length; b++) {
      burst[b] = burstHeard(b, radio);
    }
    double quiet = input.body().typical().quietSeconds();
    double to = quiet + span.toDays() * DAY - PASS_SECONDS;
    double sum = 0;
    int looks = 0;
    for (double t = quiet + span.fromDays() * DAY; t < to; t += LOOK_STEP_SECONDS) {
      sum += heardFrom(t, history, burst);
      looks++;
    }
    return 1 - Math.pow(1 - sum / looks, PASSES);
  }

  private static double heardFrom(double from, BodyHistory history, double[] burst) {
    double miss = 1;
    for (BodyHistory.BeaconSegment segment :
        Ear.Segments.overlapping(history.segments(), from, from + PASS_SECONDS)) {
      double last = Math.min(from + PASS_SECONDS, segment.end());
      double t = Ear.Segments.firstBurstFrom(segment, from);
      double bursts = t > last ? 0 : 1 + Math.floor((last - t) / segment.interval());
      miss *= Math.pow(1 - burst[segment.beacon()], bursts);
    }
    return 1 - miss;
  }

  /** Chance that one burst of a beacon is noticed by the station that hears it best. */
  private double burstHeard(int beacon, RadioChange radio) {
    double best = 0;
    for (Station station : input.stations()) {
      best = Math.max(best, burstHeard(input.beacons().get(beacon), beacon, radio, station));
    }
    return best;
  }

  private double burstHeard(BeaconRadio beacon, int index, RadioChange radio, Station station) {
    Station.Receive receive = station.receive();
    double noise = LinkBudget.noisePowerDbm(receive.systemNoiseKelvin(), beacon.bandwidthHz());
    double path =
        LinkBudget.freeSpaceLossDb(beacon.frequencyHz(), rangeMeters())
            + LinkBudget.atmosphereLossDb(ELEVATION_DEG)
            + LinkBudget.polarisationLossDb(beacon.polarisation(), receive.polarisation());
    double radiated =
        beacon.radiated().quantile(0.5) - Tables.medianBelowMeanDb(beacon.patternSdDb());
    double snr =
        LinkBudget.snrDb(radiated - radio.downlinkLossDb(), path, 0, receive.gainDbi(), noise);
    double duration = input.body().typical().beacons().get(index).durationSeconds();
    Detector detector =
        Detector.of(
            ListeningClues.usualWay(beacon, station),
            beacon.requiredSnrDb(),
            duration,
            beacon.bandwidthHz());
    double gate =
        Detection.inWindow(radio.frequencyShiftHz(), receive.tuningHz(), beacon.bandwidthHz());
    return gate * detector.fadedProbability(snr, beacon.patternSdDb());
  }

  /** Slant range at the elevation looked at, over a sphere, from the likeliest object's period. */
  private double rangeMeters() {
    double period =
        input.candidates().get(input.likeliestCandidate()).sets().get(0).periodSeconds();
    double axis = Math.cbrt(EARTH_GRAVITY * Math.pow(period / (2 * Math.PI), 2));
    double sine = Math.sin(Math.toRadians(ELEVATION_DEG));
    double up = EARTH_RADIUS_METERS * sine;
    return Math.sqrt(up * up + axis * axis - EARTH_RADIUS_METERS * EARTH_RADIUS_METERS) - up;
  }
}

package hark.assessment;

import hark.ensemble.BeaconRadio;
import hark.ensemble.Candidate;
import hark.evidence.Evidence;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.orbit.Trajectory;
import hark.problem.BadInput;
import hark.problem.Problem;
import hark.signal.Carrier;
import hark.signal.ContactTimes;
import hark.signal.DopplerCurve;
import hark.signal.DopplerPoint;
import hark.signal.Listener;
import hark.signal.Suspect;
import hark.signal.WhoseQuestion;
import hark.station.HorizonMask;
import hark.station.Looks;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Site;
import hark.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Turns a mission and its Doppler curves into the question whose they are: candidates with their
 * weights and along-track spreads at the time of the curves, stations with their clocks, the beacon
 * with its carrier. Pure.
 */
public final class CurveDesk {
  /**
   * Weight of an object that is no candidate when the mission leaves none: a catalogue is never
   * complete after a shared launch. Judged.
   */
  private static final double NONE_AT_LEAST = 0.01;

  /** A curve may reach a little below the horizon: elements and clocks are not exact, degrees. */
  private static final double BELOW_HORIZON_DEG = -3;

  /** Skylines are known to about a degree. Judged. */
  private static final double SKYLINE_SD_DEG = 1;

  /** On a grazing pass a degree is minutes. */
  private static final double LONGEST_EDGE_SECONDS = 120;

  private static final Duration LOOKED_FOR_PASSES = Duration.ofHours(13);

  private final Mission mission;
  private final EarthModel earth;
  private final Instant now;

  /** A desk for a mission at a time: sets from after it are not known yet. */
  public CurveDesk(Mission mission, EarthModel earth, Instant now) {
    this.mission = mission;
    this.earth = earth;
    this.now = now;
  }

  /**
   * The question for some curves.
   *
   * @throws BadInput when no candidate was in view during one of them; it names the nearest pass
   */
  public WhoseQuestion question(List<DopplerCurve> curves) {
    return question(curves, Map.of());
  }

  /**
   * The same with other weights than the mission's.
   *
   * @param weights of every candidate and of {@link Candidate#NONE}; empty for the mission's
   */
  public WhoseQuestion question(List<DopplerCurve> curves, Map<String, Double> weights) {
    refuseOutsidePasses(curves);
    Instant middle = middle(curves);
    List<Suspect> suspects =
        candidates().stream()
            .map(each -> suspect(each, weights.getOrDefault(each.objectId(), each.prior()), middle))
            .toList();
    return new WhoseQuestion(
        suspects, curves, listeners(), carrier(), WhoseQuestion.Noise.USUAL, earth);
  }

  /** The mission's candidates and none of them, with weights that sum to 1. */
  private List<Candidate> candidates() {
    List<Candidate> listed = Assessor.candidates(mission);
    double sum = listed.stream().mapToDouble(Candidate::prior).sum();
    boolean without = listed.stream().noneMatch(c -> c.objectId().equals(Candidate.NONE));
    double kept = (without ? 1 - NONE_AT_LEAST : 1) / sum;
    List<Candidate> all = new ArrayList<>();
    for (Candidate each : listed) {
      all.add(weighing(each, each.objectId(), each.prior() * kept));
    }
    if (without) {
      Candidate heaviest =
          listed.stream().max(Comparator.comparingDouble(Candidate::prior)).orElseThrow();
      all.add(weighing(heaviest, Candidate.NONE, NONE_AT_LEAST));
    }
    return all;
  }

  private static Candidate weighing(Candidate like, String id, double weight) {
    return new Candidate(id, like.sets(), like.alongTrack(), weight);
  }

  /**
   * Weights after start and end of what was heard, nothing else: each contact against the pass of
   * each candidate over that station.
   */
  public Map<String, Double> byTimes(List<Evidence.Heard> contacts) {
    List<Candidate> candidates = candidates();
    double[] weights = candidates.stream().mapToDouble(Candidate::prior).toArray();
    double[] logs = new double[weights.length];
    double interval = mission.body().typical().beacons().get(0).intervalSeconds();
    for (Evidence.Heard heard : contacts) {
      Station station =
          mission.stations().stream()
              .filter(each -> each.name().equals(heard.station()))
              .findFirst()
              .orElseThrow();
      for (int k = 0; k < logs.length; k++) {
        Candidate candidate = candidates.get(k);
        double sd =
            Math.hypot(candidate.sdSeconds(heard.from(), now), station.doubts().clockSdSeconds());
        logs[k] +=
            ContactTimes.logLikelihood(
                new ContactTimes.Contact(heard.from(), heard.to()),
                views(candidate, station, heard, sd),
                sd,
                interval);
      }
    }
    double[] posterior = ContactTimes.posterior(weights, logs);
    Map<String, Double> byObject = new LinkedHashMap<>();
    for (int k = 0; k < posterior.length; k++) {
      byObject.put(candidates.get(k).objectId(), posterior[k]);
    }
    return byObject;
  }

  private List<ContactTimes.View> views(
      Candidate candidate, Station station, Evidence.Heard heard, double sd) {
    Duration around = Duration.ofMillis(Math.round(1000 * (60 + 5 * sd)));
    Trajectory trajectory = Trajectory.of(candidate.setAt(heard.from(), now), earth);
    return Passes.find(
            trajectory,
            station.site(),
            station.mask(),
            heard.from().minus(around),
            heard.to().plus(around))
        .stream()
        .map(
            pass ->
                new ContactTimes.View(
                    pass.aos(),
                    pass.los(),
                    edgeSeconds(trajectory, station.site(), pass.aos()),
                    edgeSeconds(trajectory, station.site(), pass.los())))
        .toList();
  }

  /** Time an object takes to climb or sink through a degree, by which skylines are in doubt. */
  private static double edgeSeconds(Trajectory trajectory, Site site, Instant edge) {
    double at = trajectory.secondsAt(edge);
    double before = Looks.late(trajectory, site, at - 0.5, 0).elevationDeg();
    double after = Looks.late(trajectory, site, at + 0.5, 0).elevationDeg();
    return Math.min(LONGEST_EDGE_SECONDS, SKYLINE_SD_DEG / Math.abs(after - before));
  }

  /** How much a candidate's lateness may grow in a day, one standard deviation, s. */
  public double perDaySeconds(String objectId) {
    return Assessor.candidates(mission).stream()
        .filter(candidate -> candidate.objectId().equals(objectId))
        .findFirst()
        .map(candidate -> candidate.alongTrack().of(candidate.setAt(now, now)))
        .orElseThrow()
        .perDaySeconds();
  }

  private Suspect suspect(Candidate candidate, double prior, Instant at) {
    return new Suspect(
        candidate.objectId(), candidate.setAt(at, now), prior, candidate.sdSeconds(at, now));
  }

  private List<Listener> listeners() {
    return mission.stations().stream()
        .map(station -> new Listener(station.site(), station.doubts().clockSdSeconds()))
        .toList();
  }

  private Carrier carrier() {
    BeaconRadio beacon = mission.beacons().get(0);
    double low = beacon.frequencyErrorHz().quantile(0.1587);
    double high = beacon.frequencyErrorHz().quantile(0.8413);
    double sd = Math.max(1, 0.5 * (high - low));
    return new Carrier(
        beacon.frequencyHz(),
        beacon.frequencyErrorHz().mean(),
        sd,
        Carrier.USUAL_DRIFT_SD_HZ_PER_SECOND);
  }

  private static Instant middle(List<DopplerCurve> curves) {
    List<Instant> times =
        curves.stream()
            .flatMap(curve -> curve.points().stream())
            .map(DopplerPoint::time)
            .sorted()
            .toList();
    return times.get(times.size() / 2);
  }

  private void refuseOutsidePasses(List<DopplerCurve> curves) {
    List<Problem> problems = new ArrayList<>();
    for (DopplerCurve curve : curves) {
      Site site = site(curve.station());
      boolean seen =
          Assessor.candidates(mission).stream()
              .anyMatch(
                  candidate ->
                      curve.points().stream().anyMatch(p -> inView(candidate, site, p.time())));
      if (!seen) {
        Instant at = curve.points().get(curve.points().size() / 2).time();
        problems.add(
            new Problem(
                "no candidate was over " + site.name() + " at " + at,
                curve.origin(),
                nearest(site, at)
                    .map(CurveDesk::advice)
                    .orElse("check the times (UTC), the station and the element sets")));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  private static String advice(Pass pass) {
    return "check times and station; the nearest pass is of "
        + pass.objectId()
        + ", "
        + pass.aos().truncatedTo(java.time.temporal.ChronoUnit.SECONDS)
        + " to "
        + pass.los().truncatedTo(java.time.temporal.ChronoUnit.SECONDS);
  }

  /** In view at the time, or within three spreads of its lateness. */
  private boolean inView(Candidate candidate, Site site, Instant at) {
    Trajectory trajectory = Trajectory.of(candidate.setAt(at, now), earth);
    double spread = 3 * candidate.sdSeconds(at, now);
    for (double late : new double[] {0, -spread, spread}) {
      double elevation =
          Looks.late(trajectory, site, trajectory.secondsAt(at), late).elevationDeg();
      if (elevation > BELOW_HORIZON_DEG) {
        return true;
      }
    }
    return false;
  }

  private Optional<Pass> nearest(Site site, Instant at) {
    List<Pass> passes = new ArrayList<>();
    for (Candidate candidate : Assessor.candidates(mission)) {
      Trajectory trajectory = Trajectory.of(candidate.setAt(at, now), earth);
      passes.addAll(
          Passes.find(
              trajectory,
              site,
              HorizonMask.flat(0),
              at.minus(LOOKED_FOR_PASSES),
              at.plus(LOOKED_FOR_PASSES)));
    }
    return passes.stream()
        .min(Comparator.comparing(pass -> Duration.between(pass.culmination(), at).abs()));
  }

  private Site site(String name) {
    return mission.stations().stream()
        .map(Station::site)
        .filter(site -> site.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}

package hark.assessment;

import hark.ensemble.BeaconRadio;
import hark.ensemble.Candidate;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.orbit.Trajectory;
import hark.problem.BadInput;
import hark.problem.Problem;
import hark.signal.Carrier;
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
import java.util.List;
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
    refuseOutsidePasses(curves);
    Instant middle = middle(curves);
    List<Suspect> suspects = new ArrayList<>();
    List<Candidate> candidates = Assessor.candidates(mission);
    double sum = candidates.stream().mapToDouble(Candidate::prior).sum();
    boolean without = candidates.stream().noneMatch(c -> c.objectId().equals(Candidate.NONE));
    double kept = without ? 1 - NONE_AT_LEAST : 1;
    for (Candidate candidate : candidates) {
      suspects.add(suspect(candidate, candidate.prior() / sum * kept, middle));
    }
    if (without) {
      Candidate heaviest =
          candidates.stream().max(Comparator.comparingDouble(Candidate::prior)).orElseThrow();
      suspects.add(
          suspect(
              new Candidate(Candidate.NONE, heaviest.sets(), heaviest.alongTrack(), NONE_AT_LEAST),
              NONE_AT_LEAST,
              middle));
    }
    return new WhoseQuestion(
        suspects, curves, listeners(), carrier(), WhoseQuestion.Noise.USUAL, earth);
  }

  /** How much a candidate's lateness may grow in a day, one standard deviation, s. */
  public double perDaySeconds(String objectId) {
    return Assessor.candidates(mission).stream()
        .filter(candidate -> candidate.objectId().equals(objectId))
        .findFirst()
        .orElseThrow()
        .alongTrack()
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

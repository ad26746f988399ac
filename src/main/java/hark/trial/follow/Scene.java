package hark.trial.follow;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Sky;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.plan.Procedure;
import hark.power.Illumination;
import hark.station.Station;
import hark.trial.campaign.Geometry;
import hark.trial.campaign.Listener;
import hark.trial.campaign.World;
import java.time.Instant;
import java.util.List;

/**
 * What all campaigns over one orbit share.
 *
 * @param input of the diagnosis with the last moment as its now
 * @param windows of all stations to the end, rising
 */
record Scene(
    String name,
    Mission mission,
    EarthModel earth,
    DiagnosisInput input,
    Illumination light,
    List<Geometry.Window> windows,
    World world,
    Listener listener) {
  private static final double DAY = 86_400;

  /** A contact that lasts longer is none that these campaigns are about, days. */
  static final double LATEST_START_DAYS = 10;

  static Scene of(Mission mission, String name, FollowSettings settings, EarthModel earth) {
    double days = LATEST_START_DAYS + settings.days();
    Instant now = mission.separation().plusMillis((long) (days * 1000 * DAY));
    AssessmentRequest request =
        new AssessmentRequest(now, 1.0 / 24, settings.members(), settings.seed(), 1);
    DiagnosisInput input = Assessor.input(mission, List.of(), request, earth);
    Illumination light = Sky.of(input).illumination();
    return new Scene(
        name,
        mission,
        earth,
        input,
        light,
        open(input),
        new World(input, light, settings.world()),
        new Listener(input));
  }

  /** Windows in which the stations may be used. */
  private static List<Geometry.Window> open(DiagnosisInput input) {
    return new Geometry(input)
        .windows().stream()
            .filter(
                w -> input.stations().get(w.station()).use().available().covers(w.from(), w.to()))
            .toList();
  }

  double from(int window) {
    return input.seconds(windows.get(window).from());
  }

  double to(int window) {
    return input.seconds(windows.get(window).to());
  }

  /** The highest that the likeliest object of a window rises, degrees above the skyline. */
  double highestDeg(int window) {
    double highest = Double.NEGATIVE_INFINITY;
    int likeliest = input.likeliestCandidate();
    for (double t = from(window); t <= to(window); t += 20) {
      double above = windows.get(window).paths().get(likeliest).at(t).aboveMaskDeg();
      highest = Math.max(highest, above);
    }
    return highest;
  }

  /** When a command is sent in a window: when the likeliest object stands highest. */
  double sendingTime(int window) {
    double best = 0.5 * (from(window) + to(window));
    double highest = Double.NEGATIVE_INFINITY;
    int likeliest = input.likeliestCandidate();
    for (double t = from(window); t <= to(window); t += 5) {
      double up = windows.get(window).paths().get(likeliest).at(t).up();
      best = up > highest ? t : best;
      highest = Math.max(highest, up);
    }
    return best;
  }

  /** Whether a station may send to this mission's receiver then. */
  boolean maySend(int window) {
    Geometry.Window sky = windows.get(window);
    double megahertz = input.receiver().frequencyHz() / 1e6;
    return input
        .stations()
        .get(sky.station())
        .transmit()
        .map(transmit -> transmit.licence())
        .filter(
            licence ->
                licence.covers(megahertz)
                    && licence.holdsAt(sky.to())
                    && !licence.silent().meets(sky.from(), sky.to()))
        .isPresent();
  }

  /** Beside session and pass: the procedure itself, and asking who may authorise a command, h. */
  double extraHours(int window, Procedure procedure) {
    Station.Cost cost = input.stations().get(windows.get(window).station()).cost();
    boolean sends = procedure.change() instanceof Procedure.Command;
    return procedure.costHours() + (sends ? cost.authorityHours() : 0);
  }

  List<Procedure> procedures() {
    return mission.procedures();
  }
}

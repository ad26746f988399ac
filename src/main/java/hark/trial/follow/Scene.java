package hark.trial.follow;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Sky;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.plan.Procedure;
import hark.power.Illumination;
import hark.trial.campaign.Geometry;
import hark.trial.campaign.Listener;
import hark.trial.campaign.World;
import java.time.Duration;
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
        new Geometry(input).windows(),
        new World(input, light, settings.world()),
        new Listener(input));
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
        .filter(licence -> licence.until().map(end -> !end.isBefore(sky.to())).orElse(true))
        .filter(
            licence ->
                licence.bandsMhz().stream()
                    .anyMatch(band -> band[0] <= megahertz && megahertz <= band[1]))
        .isPresent();
  }

  List<Procedure> procedures() {
    return mission.procedures();
  }

  static double days(Duration span) {
    return span.toMillis() / (1000 * DAY);
  }
}

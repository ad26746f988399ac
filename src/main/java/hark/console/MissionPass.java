package hark.console;

import hark.assessment.Assessment.Geometry;
import hark.assessment.Assessment.Window;
import hark.console.ConsoleModel.BeaconView;
import hark.console.ConsoleModel.Moment;
import hark.console.ConsoleModel.PassTrack;
import hark.console.ConsoleModel.PassView;
import hark.ensemble.BeaconRadio;
import hark.link.Doppler;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.Trajectory;
import hark.power.PowerModel;
import hark.station.Look;
import hark.station.Looks;
import hark.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A pass second by second, for those who sit through it. */
final class MissionPass {
  /** Before AOS and after LOS, so that the antenna can wait and nothing ends too early. */
  static final Duration AROUND = Duration.ofMinutes(2);

  /**
   * Between samples. Read linearly between them, the largest error is at the culmination of a high
   * pass: under 0.1° and under 1 Hz at 437 MHz from 500 km below 80° ({@code MissionPassTest}).
   */
  static final double STEP_SECONDS = 2;

  private final Mission mission;
  private final EarthModel earth;
  private final MissionSky sky;

  MissionPass(Mission mission, EarthModel earth, MissionSky sky) {
    this.mission = mission;
    this.earth = earth;
    this.sky = sky;
  }

  Optional<PassView> view(Window window) {
    return sky.station(window.station())
        .map(
            station ->
                new PassView(
                    MissionSky.skyline(station),
                    tracks(station, window),
                    beacons(),
                    station.transmit().map(sending -> mission.receiver().frequencyHz())));
  }

  private List<PassTrack> tracks(Station station, Window window) {
    List<PassTrack> tracks = new ArrayList<>();
    for (Geometry pass : window.geometry()) {
      sky.elements(pass.object(), pass.aos())
          .map(set -> track(station, set, window))
          .ifPresent(tracks::add);
    }
    return tracks;
  }

  /** All candidates are sampled at the same times, whenever each of them rises. */
  private PassTrack track(Station station, ElementSet set, Window window) {
    Instant from = window.aos();
    Instant to = window.los();
    for (Geometry pass : window.geometry()) {
      from = pass.aos().isBefore(from) ? pass.aos() : from;
      to = pass.los().isAfter(to) ? pass.los() : to;
    }
    from = from.minus(AROUND);
    double seconds = Duration.between(from, to.plus(AROUND)).toMillis() / 1000.0;
    int count = (int) Math.ceil(seconds / STEP_SECONDS) + 1;
    Trajectory trajectory = Trajectory.of(set, earth);
    List<Moment> moments = new ArrayList<>();
    for (Look look : Looks.sample(trajectory, station.site(), from, STEP_SECONDS, count)) {
      if (!Double.isFinite(look.elevationDeg())) {
        break;
      }
      double shift = Doppler.shiftHz(1, look.rangeRateMetersPerSecond());
      moments.add(
          new Moment(look.azimuthDeg(), look.elevationDeg(), look.rangeMeters() / 1000, shift));
    }
    return new PassTrack(set.objectId(), from, STEP_SECONDS, moments);
  }

  private List<BeaconView> beacons() {
    List<PowerModel.Beacon> sending = mission.body().typical().beacons();
    List<BeaconView> views = new ArrayList<>();
    for (BeaconRadio radio : mission.beacons()) {
      sending.stream()
          .filter(beacon -> beacon.name().equals(radio.name()))
          .map(beacon -> view(radio, beacon))
          .forEach(views::add);
    }
    return views;
  }

  private static BeaconView view(BeaconRadio radio, PowerModel.Beacon beacon) {
    return new BeaconView(
        radio.name(),
        radio.frequencyHz(),
        beacon.intervalSeconds(),
        beacon.durationSeconds(),
        beacon.states().stream().sorted().map(s -> s.name().toLowerCase(Locale.ROOT)).toList());
  }
}

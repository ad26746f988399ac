package hark.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment.Geometry;
import hark.assessment.Assessment.Window;
import hark.console.ConsoleModel.Moment;
import hark.console.ConsoleModel.PassTrack;
import hark.console.ConsoleModel.PassView;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.Trajectory;
import hark.station.Look;
import hark.station.Looks;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the page reads between samples against the prediction itself. */
class MissionPassTest {
  /** Of light, m/s: exact by the definition of the metre. */
  private static final double LIGHT = 299_792_458;

  private final Mission mission = Missions.read(ResourceFolder.of("hark/demo"));
  private final EarthModel earth = EarthModel.bundled();
  private final MissionSky sky = new MissionSky(mission, earth);
  private final Station station = mission.stations().get(0);
  private final Instant from = mission.now().orElseThrow();
  private final ElementSet set = sky.elements("97311", from).orElseThrow();
  private final Trajectory trajectory = Trajectory.of(set, earth);
  private final Pass pass = highest();
  private final PassView view = new MissionPass(mission, earth, sky).view(window()).orElseThrow();

  @Test
  void betweenSamplesAStraightLineIsGoodEnoughToPointAndTuneBy() {
    PassTrack track = view.tracks().get(0);
    double frequencyHz = mission.beacons().get(0).frequencyHz();
    double tenthOfDegree = 0.1;
    double twoHertz = 2;
    for (int i = 0; i + 1 < track.moments().size(); i += 3) {
      Moment a = track.moments().get(i);
      Moment b = track.moments().get(i + 1);
      Instant middle = track.from().plusMillis(Math.round((i + 0.5) * 1000 * track.stepSeconds()));
      Look there = Looks.at(trajectory, station.site(), middle);
      double turn = ((b.azimuthDeg() - a.azimuthDeg() + 540) % 360) - 180;
      double azimuthError = (a.azimuthDeg() + turn / 2 - there.azimuthDeg() + 540) % 360 - 180;
      double across = azimuthError * Math.cos(Math.toRadians(there.elevationDeg()));
      assertEquals(0, across, tenthOfDegree);
      assertEquals(there.elevationDeg(), (a.elevationDeg() + b.elevationDeg()) / 2, tenthOfDegree);
      double shiftHz = -there.rangeRateMetersPerSecond() / LIGHT * frequencyHz;
      assertEquals(shiftHz, (a.shift() + b.shift()) / 2 * frequencyHz, twoHertz);
    }
  }

  @Test
  void theShiftIsTheChangeOfRangeOverTheSpeedOfLight() {
    PassTrack track = view.tracks().get(0);
    double step = track.stepSeconds();
    double oneInAThousandOfTheLargest = 2.5e-8;
    for (int i = 1; i + 1 < track.moments().size(); i += 10) {
      double gone = track.moments().get(i + 1).rangeKm() - track.moments().get(i - 1).rangeKm();
      assertEquals(
          -gone * 1000 / (2 * step) / LIGHT,
          track.moments().get(i).shift(),
          oneInAThousandOfTheLargest);
    }
  }

  @Test
  void itBeginsBeforeAosEndsAfterLosAndNamesTheBeaconsPace() {
    PassTrack track = view.tracks().get(0);
    assertEquals(pass.aos().minus(MissionPass.AROUND), track.from());
    double seconds = (track.moments().size() - 1) * track.stepSeconds();
    assertTrue(seconds >= Duration.between(track.from(), pass.los()).toSeconds() + 120);
    assertEquals(mission.beacons().get(0).frequencyHz(), view.beacons().get(0).frequencyHz());
    assertTrue(view.beacons().get(0).intervalSeconds() > 0);
    assertEquals(station.transmit().isPresent(), view.receiverHz().isPresent());
  }

  private Pass highest() {
    List<Pass> passes =
        Passes.find(
            trajectory, station.site(), station.mask(), from, from.plus(Duration.ofDays(4)));
    return passes.stream().max(Comparator.comparing(Pass::maxElevationDeg)).orElseThrow();
  }

  private Window window() {
    Geometry geometry =
        new Geometry(
            "97311",
            pass.aos(),
            pass.culmination(),
            pass.los(),
            pass.maxElevationDeg(),
            0,
            0,
            0,
            600,
            true);
    return new Window(
        station.name() + " " + pass.aos(),
        station.name(),
        pass.aos(),
        pass.culmination(),
        pass.los(),
        pass.maxElevationDeg(),
        List.of(geometry),
        0.5,
        0.01,
        0.2,
        0.4,
        0.6,
        10,
        false,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }
}

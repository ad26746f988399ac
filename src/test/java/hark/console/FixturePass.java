package hark.console;

import hark.assessment.Assessment.Window;
import hark.console.ConsoleModel.BeaconView;
import hark.console.ConsoleModel.Direction;
import hark.console.ConsoleModel.Moment;
import hark.console.ConsoleModel.PassTrack;
import hark.console.ConsoleModel.PassView;
import hark.console.ConsoleModel.SkyView;
import hark.console.ConsoleModel.Track;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A pass along the fixture's straight flight, with a shift that falls evenly through it. */
final class FixturePass {
  private static final double MOST_SHIFT = 2.2e-5;

  private FixturePass() {}

  static PassView of(Window window, SkyView sky) {
    List<PassTrack> tracks = sky.tracks().stream().map(FixturePass::track).toList();
    List<BeaconView> beacons =
        List.of(new BeaconView("main", 437_250_000, 30, 1.5, List.of("safe", "nominal")));
    Optional<Double> receiver =
        window.station().equals("Fen Hill") ? Optional.of(435_100_000.0) : Optional.empty();
    return new PassView(sky.skyline(), tracks, beacons, receiver);
  }

  private static PassTrack track(Track flight) {
    List<Moment> moments = new ArrayList<>();
    int last = flight.points().size() - 1;
    for (int i = 0; i <= last; i++) {
      Direction at = flight.points().get(i);
      double along = 2.0 * i / last - 1;
      moments.add(
          new Moment(
              at.azimuthDeg(), at.elevationDeg(), 600 + 1800 * along * along, -MOST_SHIFT * along));
    }
    return new PassTrack(flight.object(), flight.from(), flight.stepSeconds(), moments);
  }
}

package hark.bench;

import hark.orbit.DetectorPasses;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.Trajectory;
import hark.station.HorizonMask;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Site;
import java.util.ArrayList;
import java.util.List;

/**
 * Thirty days of passes of one low orbit over one station against Orekit's elevation detector. The
 * aim is eight times faster with the same passes.
 */
final class PassesBench {
  private static final double DAYS = 30;
  private static final double ELEVATION_DEG = 5;
  private static final double AIM = 8;

  /** Edges may differ by this much, s. */
  private static final double SAME_SECONDS = 0.005;

  /** The detector looks this often: a shorter pass may escape it, which ours may not. */
  private static final double CHECK_SECONDS = 60;

  /** Orekit's default; it may lose passes shorter than ten minutes. */
  private static final double DEFAULT_CHECK_SECONDS = 600;

  private static final Site SITE = new Site("hill", 48.9, 8.4, 115);
  private static final double[] PLACE = {48.9, 8.4, 115};
  private static final ElementSet SET =
      ElementSets.ofLines(
          "1 25544U 98067A   19343.69339541  .00001764  00000-0  38792-4 0  9991",
          "2 25544  51.6439 211.2001 0007417  17.6667  85.6398 15.50103472202482");

  private PassesBench() {}

  static void run() {
    DetectorPasses twin = new DetectorPasses();
    EarthModel earth = EarthModel.bundled();
    compare(ours(earth), twin.crossings(SET, PLACE, ELEVATION_DEG, DAYS, CHECK_SECONDS));
    double ratio =
        Ratio.measure(
            "passes, 30 days, detector looking every 60 s",
            () -> ours(earth).size(),
            () -> twin.crossings(SET, PLACE, ELEVATION_DEG, DAYS, CHECK_SECONDS).size());
    Ratio.measure(
        "passes, 30 days, detector looking every 600 s",
        () -> ours(earth).size(),
        () -> twin.crossings(SET, PLACE, ELEVATION_DEG, DAYS, DEFAULT_CHECK_SECONDS).size());
    System.out.println(ratio >= AIM ? "the aim of 8 is met" : "the aim of 8 is missed");
  }

  private static List<Pass> ours(EarthModel earth) {
    Trajectory trajectory = Trajectory.of(SET, earth);
    return Passes.find(
        trajectory,
        SITE,
        HorizonMask.flat(ELEVATION_DEG),
        trajectory.instantAt(0),
        trajectory.instantAt(DAYS * 86400));
  }

  private static void compare(List<Pass> passes, List<Double> crossings) {
    Trajectory trajectory = Trajectory.of(SET, EarthModel.bundled());
    List<Double> edges = new ArrayList<>();
    for (Pass pass : passes) {
      edges.add(trajectory.secondsAt(pass.aos()));
      edges.add(trajectory.secondsAt(pass.los()));
    }
    // ours name the true edges of passes in progress at the ends; the detector sees only the span
    edges.removeIf(t -> t < 0 || t > DAYS * 86400);
    if (edges.size() != crossings.size()) {
      throw new IllegalStateException(
          edges.size() + " edges, the detector has " + crossings.size());
    }
    double worst = 0;
    for (int i = 0; i < edges.size(); i++) {
      worst = Math.max(worst, Math.abs(edges.get(i) - crossings.get(i)));
    }
    System.out.printf("%d passes, edges agree within %.4f s%n", passes.size(), worst);
    if (worst > SAME_SECONDS) {
      throw new IllegalStateException("edges differ by " + worst + " s");
    }
  }
}

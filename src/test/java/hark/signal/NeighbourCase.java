package hark.signal;

import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.Trajectory;
import hark.station.HorizonMask;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * One of twelve neighbours on one orbit sends; stations measure some of its passes. Everything is
 * drawn from the priors that the fit is told.
 */
final class NeighbourCase {
  static final Site NORTH = new Site("North", 54, 8, 10);
  static final Site SOUTH = new Site("South", 38, -9, 100);
  static final double NOMINAL_HZ = 437e6;
  static final Carrier CARRIER =
      new Carrier(NOMINAL_HZ, 0, 600, Carrier.USUAL_DRIFT_SD_HZ_PER_SECOND);

  /**
   * A case's numbers.
   *
   * @param spacingSeconds between neighbours
   * @param passes how many are measured, taken in turn from the stations
   */
  record Setting(
      int neighbours,
      double spacingSeconds,
      double lateSdSeconds,
      double clockSdSeconds,
      double noiseHz,
      int passes,
      double leastTopDeg) {}

  final int truth;
  final double lateSeconds;
  final WhoseQuestion question;

  private NeighbourCase(int truth, double lateSeconds, WhoseQuestion question) {
    this.truth = truth;
    this.lateSeconds = lateSeconds;
    this.question = question;
  }

  static NeighbourCase draw(Setting set, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Suspect> suspects = new ArrayList<>();
    for (int k = 0; k < set.neighbours(); k++) {
      ElementSet elements =
          CurveSimulator.later((k - 0.5 * (set.neighbours() - 1)) * set.spacingSeconds());
      suspects.add(new Suspect("9800" + k, elements, 1.0 / set.neighbours(), set.lateSdSeconds()));
    }
    int truth = random.nextInt(set.neighbours());
    double late = set.lateSdSeconds() * CurveSimulator.gaussian(random);
    List<Listener> listeners =
        List.of(
            new Listener(NORTH, set.clockSdSeconds()), new Listener(SOUTH, set.clockSdSeconds()));
    double[] clock = {
      set.clockSdSeconds() * CurveSimulator.gaussian(random),
      set.clockSdSeconds() * CurveSimulator.gaussian(random)
    };
    CurveSimulator simulator = new CurveSimulator(suspects.get(truth).elements());
    Instant from = simulator0().plus(Duration.ofHours(random.nextInt(72)));
    List<DopplerCurve> curves = new ArrayList<>();
    for (int p = 0; p < set.passes(); p++) {
      int station = p % 2;
      Site site = listeners.get(station).site();
      Pass pass = next(suspects.get(truth).elements(), site, from, set.leastTopDeg());
      from = pass.los();
      CurveSimulator.Setting how =
          new CurveSimulator.Setting(
              late,
              clock[station],
              NOMINAL_HZ + CARRIER.sdHz() * CurveSimulator.gaussian(random),
              CARRIER.driftSdHzPerSecond() * CurveSimulator.gaussian(random),
              set.noiseHz(),
              30);
      Instant early = pass.aos().minusSeconds(120);
      curves.add(simulator.curve(site, early, pass.los().plusSeconds(120), 5, how, random));
    }
    WhoseQuestion.Noise noise = new WhoseQuestion.Noise(set.noiseHz(), 1);
    return new NeighbourCase(
        truth,
        late,
        new WhoseQuestion(suspects, curves, listeners, CARRIER, noise, EarthModel.bundled()));
  }

  private static Instant simulator0() {
    return CurveSimulator.base().epoch();
  }

  private static Pass next(ElementSet elements, Site site, Instant from, double leastTopDeg) {
    Trajectory trajectory = Trajectory.of(elements, EarthModel.bundled());
    HorizonMask mask = HorizonMask.flat(5);
    return Passes.find(trajectory, site, mask, from, from.plus(Duration.ofDays(3))).stream()
        .filter(pass -> pass.aos().isAfter(from) && pass.maxElevationDeg() >= leastTopDeg)
        .findFirst()
        .orElseThrow();
  }
}

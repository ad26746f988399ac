package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.link.Detector;
import hark.link.Doppler;
import hark.link.LinkBudget;
import hark.link.Way;
import hark.power.BodyHistory;
import hark.power.PowerModel;
import hark.power.SimulationRequest;
import hark.station.Pass;
import hark.station.Station;
import hark.station.StationDoubts;
import hark.station.StationFault;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * The chance to hear one pass of a spacecraft that sends all the time, from the weighing's nodes,
 * modes and tables, against plain sampling of everything: object, along-track error, power,
 * carrier, clock, azimuth, fault, slip, lost minutes, fading and threshold of each burst.
 */
class HearingQuadratureTest {
  private static final int SAMPLES = 20_000;
  private final SmallCase mission = new SmallCase();

  /** A clock and an azimuth bad enough to matter. */
  private DiagnosisInput input() {
    StationDoubts usual = StationDoubts.usual(0.7, 0);
    StationDoubts doubts = new StationDoubts(0.7, usual.faultShares(), usual.sizes(), 15, 10, 0.1);
    DiagnosisInput plain = mission.input();
    List<Station> stations = new ArrayList<>();
    for (Station s : plain.stations()) {
      stations.add(
          new Station(
              s.site(), s.mask(), s.receive(), s.transmit(), Optional.empty(), doubts, s.cost()));
    }
    return with(plain, stations, List.of());
  }

  private static DiagnosisInput with(
      DiagnosisInput plain, List<Station> stations, List<hark.evidence.Entry> evidence) {
    return new DiagnosisInput(
        plain.separation(),
        plain.now(),
        plain.end(),
        plain.body(),
        plain.beacons(),
        plain.receiver(),
        plain.candidates(),
        stations,
        plain.causes(),
        List.copyOf(evidence),
        plain.earth(),
        plain.bodiesPerSet(),
        plain.seed());
  }

  @Test
  void nodesModesAndTablesGiveWhatPlainSamplingGives() {
    DiagnosisInput input = input();
    Pass pass = mission.pass(SmallCase.NEAR, 3);
    SkyWindow window =
        Sky.of(input)
            .window(
                0,
                pass.aos().minus(Duration.ofSeconds(60)),
                pass.los().plus(Duration.ofSeconds(60)),
                List.of());
    Listening listening = new Listening(Way.DECODER, 3000, 0, 0, 0, 0);
    double[] nodes = byNodes(input, new Silence(0, window, listening));
    double mean = 0;
    double spread = 0;
    for (double group : nodes) {
      mean += group / nodes.length;
    }
    for (double group : nodes) {
      spread += (group - mean) * (group - mean) / (nodes.length - 1) / nodes.length;
    }
    double sampled = sampled(input, window, listening);
    double error = Math.sqrt(spread + sampled * (1 - sampled) / SAMPLES);
    assertTrue(sampled > 0.2 && sampled < 0.8, "a case that could go either way: " + sampled);
    // 0.01: levels between samples of 10 s, and the gate read at the nearest
    assertEquals(sampled, 1 - mean, 3.5 * error + 0.01, "standard error " + error);
  }

  /** Chance of silence, by group of nodes. */
  private double[] byNodes(DiagnosisInput input, Silence clue) {
    Ear ear = new Ear(input.beacons(), input.body().typical());
    HearingNodes[] groups =
        mission.with(workers -> new HearingProposal(input, List.of(), ear).choose(workers));
    double[] silent = new double[groups.length];
    Member unharmed = new Member(0, 0, 0, new double[0], 1, RadioTimeline.UNHARMED);
    for (int g = 0; g < groups.length; g++) {
      Weigher weigher = new Weigher(oneEntry(input), ear, 1);
      NodeState state = weigher.begin(groups[g]);
      Body body = sending(input);
      silent[g] = weigher.apply(clue, unharmed, body, weigher.tables(clue, groups[g]), state);
    }
    return silent;
  }

  /** With an entry in the record, so that there is room to remember what it says. */
  private DiagnosisInput oneEntry(DiagnosisInput input) {
    return with(input, input.stations(), mission.nothing(SmallCase.NEAR, 3).evidence);
  }

  private static Body sending(DiagnosisInput input) {
    PowerModel typical = input.body().typical();
    double end = input.seconds(input.end());
    double interval = typical.beacons().get(0).intervalSeconds();
    BodyHistory history =
        new BodyHistory(
            0,
            end,
            new float[1],
            new byte[1],
            List.of(new BodyHistory.BeaconSegment(0, 2700, interval, end)),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return new Body(
        typical,
        new SimulationRequest(end, 0, end, List.of(), new double[0], new double[0]),
        history);
  }

  private static double sampled(DiagnosisInput input, SkyWindow window, Listening listening) {
    SplittableRandom random = new SplittableRandom(77);
    int heard = 0;
    for (int k = 0; k < SAMPLES; k++) {
      heard += isHeard(input, window, listening, random) ? 1 : 0;
    }
    return (double) heard / SAMPLES;
  }

  private static double normal(SplittableRandom random) {
    return Math.sqrt(-2 * Math.log(1 - random.nextDouble()))
        * Math.cos(2 * Math.PI * random.nextDouble());
  }

  /** One world, one sitting. */
  private static boolean isHeard(
      DiagnosisInput input, SkyWindow window, Listening listening, SplittableRandom random) {
    Station station = input.stations().get(0);
    BeaconRadio beacon = input.beacons().get(0);
    Optional<StationFault> fault = fault(station, random);
    boolean slip = random.nextDouble() < 0.03;
    int object = object(input, random);
    double sd =
        input
            .candidates()
            .get(object)
            .sdSeconds(input.instant(0.5 * (window.from() + window.to())), input.now());
    double late = sd * normal(random);
    double meanDbm = beacon.radiated().quantile(random.nextDouble(1e-9, 1 - 1e-9));
    double carrier = beacon.frequencyErrorHz().quantile(random.nextDouble(1e-9, 1 - 1e-9));
    double clock = 15 * normal(random) + (is(fault, StationFault.CLOCK) ? 60 : 0);
    double turned = 10 * normal(random) + (is(fault, StationFault.POINTING) ? 60 : 0);
    if (slip || is(fault, StationFault.DEAF)) {
      return false;
    }
    double medianDbm = meanDbm - 4 * 4 * Math.log(10) / 20;
    double doppler =
        is(fault, StationFault.DOPPLER_OFF) ? 0 : is(fault, StationFault.DOPPLER_SIGN) ? -1 : 1;
    double low = is(fault, StationFault.FREQUENCY) ? 10_000 : 0;
    PassGeometry followed =
        window.paths().get(is(fault, StationFault.WRONG_SET) ? 1 : listening.tracked());
    Detector detector = Detector.of(Way.DECODER, beacon.requiredSnrDb(), 1.5, beacon.bandwidthHz());
    double tumble = input.body().typical().attitude().rateDegPerSecond();
    double interval = input.body().typical().beacons().get(0).intervalSeconds();
    assertTrue(tumble * interval >= Ear.INDEPENDENT_AFTER_DEG, "each burst fades by itself");
    PassGeometry.Point there = new PassGeometry.Point();
    PassGeometry.Point aim = new PassGeometry.Point();
    for (double t = 2700 + interval * Math.ceil((window.from() - 2700) / interval);
        t <= window.to();
        t += interval) {
      window.paths().get(object).at(t - late, there);
      if (there.aboveMaskDeg < 0) {
        continue;
      }
      followed.at(t - clock, aim);
      aim.turn(turned);
      double snr =
          LinkBudget.snrDb(
                  new LinkBudget.Burst(
                      medianDbm, beacon.frequencyHz(), beacon.bandwidthHz(), beacon.polarisation()),
                  new LinkBudget.Receiver(
                      station.receive().gainDbi(),
                      station.receive().systemNoiseKelvin(),
                      0,
                      station.receive().beamwidthDeg(),
                      station.receive().polarisation()),
                  new LinkBudget.Geometry(
                      there.rangeMeters, there.elevationDeg(), there.angleDeg(aim)))
              - (is(fault, StationFault.INSENSITIVE) ? 12 : 0)
              + 4 * normal(random);
      double offset =
          Doppler.shiftHz(beacon.frequencyHz(), there.rangeRate)
              - doppler * Doppler.shiftHz(beacon.frequencyHz(), aim.rangeRate)
              + carrier
              + low;
      double inBand = (listening.windowHz() - Math.abs(offset)) / beacon.bandwidthHz() + 0.5;
      boolean open = random.nextDouble() < Math.min(1, inBand) * 0.9;
      if (open && snr > detector.thresholdDb() + detector.widthDb() * normal(random)) {
        return true;
      }
    }
    return false;
  }

  private static boolean is(Optional<StationFault> fault, StationFault which) {
    return fault.filter(f -> f == which).isPresent();
  }

  /** Without the wrong hand, which a linear beacon does not notice. */
  private static Optional<StationFault> fault(Station station, SplittableRandom random) {
    if (random.nextDouble() < station.worksWithProbability()) {
      return Optional.empty();
    }
    Map<StationFault, Double> shares = station.doubts().faultShares();
    double u = random.nextDouble() * (1 - shares.get(StationFault.WRONG_HAND));
    for (StationFault fault : StationFault.values()) {
      u -= fault == StationFault.WRONG_HAND ? 0 : shares.get(fault);
      if (u < 0) {
        return Optional.of(fault);
      }
    }
    return Optional.of(StationFault.DEAF);
  }

  private static int object(DiagnosisInput input, SplittableRandom random) {
    double u = random.nextDouble();
    for (int k = 0; k < input.candidates().size(); k++) {
      u -= input.candidates().get(k).prior();
      if (u < 0) {
        return k;
      }
    }
    return 0;
  }
}

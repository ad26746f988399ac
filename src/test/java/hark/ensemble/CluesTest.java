package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.evidence.Channel;
import hark.evidence.Source;
import hark.power.BodyHistory;
import hark.power.BodyHistory.BeaconSegment;
import hark.power.PowerModel.BusState;
import hark.station.StationFault;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What single clues weigh, without an ensemble. */
class CluesTest {
  private static final double ORBIT = 5700;
  private static final double NOW = 40 * ORBIT + 1500;

  private static final StationMode WORKS = StationMode.asBelieved(0.9);
  private static final StationMode WEAK =
      new StationMode(Optional.of(StationFault.INSENSITIVE), 0.1, 12, 0, 1, 0, 0, false, false);

  private static Check check(double level, double expected, double sameBand) {
    return new Check(0, 0, true, level, expected, 1, sameBand, 40);
  }

  private static double odds(Check check) {
    return check.likelihood(WORKS) / check.likelihood(WEAK);
  }

  @Test
  void aStrongSatelliteProvesPointingAndNotSensitivity() {
    double strong = odds(check(Double.NaN, 25, 1));
    assertTrue(strong < 1.1, "25 dB are heard with 12 dB less as well: " + strong);
    double measured = odds(check(25, 25, 1));
    assertTrue(measured > 100, "a level as expected is another matter: " + measured);
    assertTrue(odds(check(13, 25, 1)) < 0.01, "12 dB short speaks for the loss");
  }

  @Test
  void anotherBandSaysLessThanOurOwn() {
    assertTrue(odds(check(25, 25, 0)) < odds(check(25, 25, 1)));
    assertTrue(odds(check(25, 25, 0)) > 1);
  }

  @Test
  void aLevelWithoutAnExpectedOneSaysNothing() {
    assertEquals(odds(check(Double.NaN, Double.NaN, 1)), odds(check(9, Double.NaN, 1)), 0);
  }

  @Test
  void theSilenceOfOthersIsWeakAndTheirSoundIsAsGoodAsTheirTrust() {
    double heardNothing = report(false, 0.9).likelihood(1) / report(false, 0.9).likelihood(0);
    assertTrue(heardNothing > 0.5 && heardNothing < 1, "" + heardNothing);
    double trusted = report(true, 0.9).likelihood(0.9) / report(true, 0.9).likelihood(0);
    double doubted = report(true, 0.3).likelihood(0.9) / report(true, 0.3).likelihood(0);
    assertTrue(trusted > doubted && doubted > 1);
    assertEquals(report(true, 0).likelihood(1), report(true, 0).likelihood(0), 0);
  }

  private static OutsideClue report(boolean heard, double trust) {
    return new OutsideClue(0, null, null, null, 0, heard, trust);
  }

  @Test
  void wordOnAnObjectIsBelievedBySource() {
    Verdict ours = Verdict.of(0, 1, true, Source.CATALOGUE, 4);
    assertEquals(1, ours.ifIt() + 3 * ours.ifNot(), 1e-12);
    Verdict hearsay = Verdict.of(0, 1, true, Source.HEARSAY, 4);
    assertTrue(ours.ifIt() / ours.ifNot() > hearsay.ifIt() / hearsay.ifNot());
    Verdict excluded = Verdict.of(0, 1, false, Source.NEIGHBOUR, 4);
    assertTrue(excluded.ifIt() < 0.05 * excluded.ifNot());
    assertEquals(Source.NEIGHBOUR, Source.of(Optional.of("the crew of our neighbour")));
    assertEquals(Source.HEARSAY, Source.of(Optional.empty()));
  }

  /** A bus that has run without a break, and one that starts 600 s into every orbit. */
  private static Counters steady() {
    BeaconSegment all = new BeaconSegment(0, 30, 30, NOW);
    return new Counters(history(List.of(all), 0, NOW), 0, false);
  }

  private static Counters cycling() {
    List<BeaconSegment> runs = new java.util.ArrayList<>();
    for (int orbit = 0; orbit <= 40; orbit++) {
      double start = orbit * ORBIT + 600;
      runs.add(new BeaconSegment(0, start + 30, 30, Math.min(NOW, start + 3000)));
    }
    return new Counters(history(runs, 40, NOW - 40 * ORBIT - 600), 0, false);
  }

  private static BodyHistory history(List<BeaconSegment> runs, int resets, double uptime) {
    BodyHistory.Probe probe =
        new BodyHistory.Probe(NOW, 0.5, 7.2, 0.1, 10, BusState.SAFE, resets, uptime, 2, 1, 10);
    return new BodyHistory(
        0,
        60,
        new float[0],
        new byte[0],
        runs,
        List.of(),
        List.of(),
        List.of(probe),
        List.of(),
        List.of());
  }

  private static List<Told> told(Channel channel, double value) {
    return List.of(new Told(channel, value, Told.usualSd(channel)));
  }

  @Test
  void anUptimeThatBeganAfterSunriseSpeaksForLifeInSunlight() {
    List<Told> uptime = told(Channel.UPTIME_S, 950);
    double ratio = cycling().likelihood(uptime) / steady().likelihood(uptime);
    assertTrue(ratio > 1000, "950 s since the start, 900 s expected: " + ratio);
    List<Told> long_ = told(Channel.UPTIME_S, NOW);
    assertTrue(steady().likelihood(long_) > 1e6 * cycling().likelihood(long_));
  }

  @Test
  void oneUnforeseenRestartDoesNotRuleOutASteadyBus() {
    List<Told> uptime = told(Channel.UPTIME_S, 100_000);
    double perSecond = Counters.UNFORESEEN_PER_DAY / 86_400;
    assertEquals(perSecond, steady().likelihood(uptime), 0.05 * perSecond);
  }

  @Test
  void theBeaconCounterCountsBurstsSinceTheLastStart() {
    assertEquals(30, cycling().sentSince(900));
    List<Told> counter = told(Channel.BEACON_COUNTER, 30);
    double ratio = cycling().likelihood(counter) / steady().likelihood(counter);
    assertTrue(ratio > 1000, "" + ratio);
  }

  @Test
  void uptimeAndCounterThatAgreeOnAnUnforeseenRestartAreWeighedAsOne() {
    List<Told> both =
        List.of(new Told(Channel.UPTIME_S, 100_000, 5), new Told(Channel.BEACON_COUNTER, 3333, 1));
    List<Told> apart =
        List.of(new Told(Channel.UPTIME_S, 100_000, 5), new Told(Channel.BEACON_COUNTER, 300, 1));
    assertTrue(steady().likelihood(both) > 1e6 * steady().likelihood(apart));
  }

  @Test
  void fortyRestartsSpeakForTheBusThatHadThem() {
    List<Told> resets = told(Channel.RESETS, 38);
    assertTrue(cycling().likelihood(resets) > 1e6 * steady().likelihood(resets));
    List<Told> none = told(Channel.RESETS, 0);
    assertTrue(steady().likelihood(none) > 0.5);
  }

  @Test
  void tailsOfCountersRunFromNoneToAll() {
    for (Channel channel : List.of(Channel.RESETS, Channel.UPTIME_S, Channel.BEACON_COUNTER)) {
      double before = -1e-9;
      for (double value : new double[] {0, 1, 10, 1000, 1e5, 1e7}) {
        double below = steady().below(new Told(channel, value, 1));
        assertTrue(below >= before && below <= 1 + 1e-9, channel + " " + value + " " + below);
        before = below - 1e-9;
      }
      assertEquals(1, steady().below(new Told(channel, 1e9, 1)), 1e-3, channel.key());
    }
  }
}

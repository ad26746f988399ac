package hark.trial.follow;

import hark.ensemble.Cause;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Effect;
import hark.ensemble.RadioChange;
import hark.ensemble.ReceiverRadio;
import hark.plan.Procedure;
import hark.power.OnboardCommand;
import hark.station.Station;
import hark.trial.PlainBody;
import hark.trial.PlainLink;
import hark.trial.PlainRequest;
import hark.trial.PlainUplink;
import hark.trial.campaign.Listener;
import hark.trial.campaign.Settings;
import hark.trial.campaign.Truth;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The hidden spacecraft of one campaign under one rule: it goes on in time and may be sent
 * commands.
 */
final class Craft {
  /** Tries of a command follow each other after so long, s. Common practice. */
  private static final double BETWEEN_TRIES = 5;

  /** A command on the air takes so long, s. Common practice. */
  private static final double COMMAND_SECONDS = 0.5;

  // judged, the same as the diagnosis believes
  private static final double DEAF_CAN_SEND = 0.5;
  private static final double COUNTER_FOUND = 0.5;
  static final double RELEASE_WORKS = 0.3;

  private final Scene scene;
  private final Truth truth;
  private final Luck luck;
  private final PlainBody body;
  private final List<PlainLink.Harm> harms;
  private double lateUplinkGainDb;
  private boolean freed;
  private double at;

  Craft(Scene scene, Truth truth, Luck luck) {
    this.scene = scene;
    this.truth = truth;
    this.luck = luck;
    double end = scene.input().seconds(scene.input().now());
    PlainRequest request =
        new PlainRequest(end, Settings.TRUTH_STEP_SECONDS, 30, truth.changes(), List.of());
    body = PlainBody.start(truth.model(), scene.light(), request);
    harms = new ArrayList<>(truth.harms());
  }

  void advance(double seconds) {
    body.advance(seconds);
    at = Math.max(at, seconds);
  }

  /** What it has sent so far. */
  Listener.Sent sent() {
    return new Listener.Sent(body.bursts(), List.copyOf(harms));
  }

  /**
   * Sends a command around the culmination of a window; the first try that is received counts,
   * since the others carry the same number.
   *
   * @return whether it was received and accepted
   */
  boolean send(int window, Procedure.Command command) {
    return reaches(window, command) && accept(window, command.command());
  }

  /**
   * Whether any try of a command arrives; the body goes on in time to the one that does, or past
   * the last, and is left as it is.
   */
  boolean reaches(int window, Procedure.Command command) {
    DiagnosisInput input = scene.input();
    SplittableRandom random = luck.of(Luck.Purpose.SENDING, window);
    Truth.StationTruth health = truth.stations().get(scene.windows().get(window).station());
    Station station = input.stations().get(scene.windows().get(window).station());
    boolean mute =
        Double.isInfinite(health.flaws().lossDb()) && random.nextDouble() > DEAF_CAN_SEND;
    Station.Polarisation hand = station.receive().polarisation();
    PlainUplink up =
        new PlainUplink(
            new PlainUplink.Receiver(
                input.receiver().frequencyHz(),
                input.receiver().sensitivityDbm(),
                input.receiver().antennaGainDbi(),
                input.beacons().get(0).polarisation(),
                input.beacons().get(0).patternSdDb()),
            new PlainUplink.Sender(
                station.transmit().orElseThrow().powerWatts(),
                station.transmit().orElseThrow().gainDbi(),
                station.receive().beamwidthDeg(),
                health.otherHand() ? Listener.other(hand) : hand),
            health.flaws());
    PlainLink.Window stretch =
        scene.listener().stretch(scene.windows().get(window), truth, input.likeliestCandidate());
    double first = scene.sendingTime(window) - BETWEEN_TRIES * (command.repeats() - 1) / 2.0;
    for (int k = 0; k < command.repeats(); k++) {
      double when = Math.max(at, first + k * BETWEEN_TRIES);
      advance(when);
      boolean hears = random.nextDouble() < truth.model().receiver().duty() && listens(when);
      boolean arrives = up.arrives(stretch, when, uplinkLossDb(when), random);
      if (!mute && hears && arrives) {
        return true;
      }
    }
    return false;
  }

  private boolean accept(int window, OnboardCommand command) {
    ReceiverRadio receiver = scene.input().receiver();
    boolean lost =
        receiver.authentication() == ReceiverRadio.Authentication.COUNTER
            && receiver.counterLostOnReset()
            && body.boots() > 1;
    if (lost && luck.of(Luck.Purpose.COUNTER, window).nextDouble() > COUNTER_FOUND) {
      return false;
    }
    if (command == OnboardCommand.RELEASE) {
      if (luck.of(Luck.Purpose.RELEASE, window).nextDouble() < RELEASE_WORKS) {
        body.command(command);
        free();
      }
      return true;
    }
    body.command(command);
    return true;
  }

  /** A stowed antenna comes out: its losses end. */
  private void free() {
    if (freed) {
      return;
    }
    freed = true;
    for (int c = 0; c < truth.onsets().length; c++) {
      Cause cause = scene.input().causes().get(c);
      boolean stowed = cause.effects().stream().anyMatch(Effect.AntennaStowed.class::isInstance);
      if (stowed && cause.clearsOn().contains(Cause.ClearsOn.COMMAND) && truth.begunBy(c, at)) {
        for (Effect effect : cause.effects()) {
          RadioChange change = effect.radio(truth.sizes()[c]);
          lateUplinkGainDb += change.uplinkLossDb();
          harms.add(new PlainLink.Harm(at, false, -change.downlinkLossDb(), 0));
        }
      }
    }
  }

  private double uplinkLossDb(double seconds) {
    double loss = -lateUplinkGainDb;
    for (int c = 0; c < truth.onsets().length; c++) {
      if (truth.begunBy(c, seconds)) {
        for (Effect effect : scene.input().causes().get(c).effects()) {
          loss += effect.radio(truth.sizes()[c]).uplinkLossDb();
        }
      }
    }
    return loss;
  }

  /** Whether the receiver on board has power, works, and is not drowned by its own transmitter. */
  private boolean listens(double seconds) {
    for (int c = 0; c < truth.onsets().length; c++) {
      for (Effect effect : scene.input().causes().get(c).effects()) {
        RadioChange change = effect.radio(0.5);
        if ((change.deaf() || change.refusesCommands()) && truth.begunBy(c, seconds)) {
          return false;
        }
      }
    }
    return body.receives() && !(scene.input().receiver().halfDuplex() && sends(seconds));
  }

  private boolean sends(double seconds) {
    for (int b = 0; b < body.bursts().size(); b++) {
      double length = truth.model().beacons().get(b).durationSeconds();
      double[] bursts = body.bursts().get(b);
      int k = java.util.Arrays.binarySearch(bursts, seconds + COMMAND_SECONDS);
      int last = k >= 0 ? k : -k - 2;
      if (last >= 0 && bursts[last] + length > seconds) {
        return true;
      }
    }
    return false;
  }
}

package hark.trial.follow;

import hark.evidence.Evidence;
import hark.trial.PlainLink;
import hark.trial.campaign.Crews;
import hark.trial.campaign.Listener;
import hark.trial.campaign.Truth;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What comes of sitting through a window. */
final class Sittings {
  private Sittings() {}

  /** The loudest burst that was noticed; empty for silence or a sitting that failed. */
  static Optional<PlainLink.Noticed> loudest(
      Scene scene, Truth truth, Listener.Sent sent, int window, Listener.Manner manner, Luck luck) {
    List<PlainLink.Noticed> noticed = noticed(scene, truth, sent, window, manner, luck);
    return noticed.stream().max(Comparator.comparingDouble(PlainLink.Noticed::levelDb));
  }

  /** When the first burst was noticed. */
  static Optional<Double> first(
      Scene scene, Truth truth, Listener.Sent sent, int window, Listener.Manner manner, Luck luck) {
    List<PlainLink.Noticed> noticed = noticed(scene, truth, sent, window, manner, luck);
    return noticed.stream().map(PlainLink.Noticed::seconds).min(Comparator.naturalOrder());
  }

  private static List<PlainLink.Noticed> noticed(
      Scene scene, Truth truth, Listener.Sent sent, int window, Listener.Manner manner, Luck luck) {
    if (luck.of(Luck.Purpose.SLIP, window).nextDouble() < Crews.SLIP) {
      return List.of();
    }
    return scene
        .listener()
        .noticed(
            scene.windows().get(window),
            truth,
            sent,
            manner,
            luck.of(Luck.Purpose.LISTENING, window));
  }

  /** How a window is written down in which a station listened as usual. */
  static Evidence usual(Scene scene, int window, Optional<PlainLink.Noticed> loudest, Luck luck) {
    double error = Crews.LEVEL_SD * luck.of(Luck.Purpose.LEVEL, window).nextGaussian();
    return loudest
        .map(
            best -> Crews.heard(scene.input(), scene.windows().get(window), best.levelDb() + error))
        .orElseGet(() -> Crews.silence(scene.input(), scene.windows().get(window)));
  }
}

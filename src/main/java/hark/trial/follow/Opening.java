package hark.trial.follow;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.trial.PlainLink;
import hark.trial.campaign.Crews;
import hark.trial.campaign.Listener;
import hark.trial.campaign.Trial;
import hark.trial.campaign.Truth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * How a campaign begins: a truth with something wrong was heard in its first days and is silent
 * now.
 *
 * @param drawn truths it took
 * @param start when the crew takes the silence for one, s since separation
 * @param next index of the first window after it
 * @param record of everything until then
 */
record Opening(Truth truth, Luck luck, int drawn, double start, int next, List<Entry> record) {
  private static final int MOST_DRAWN = 50_000;
  private static final double DAY = 86_400;

  /** Everything is listened to on the first day, then this share of the windows. Judged. */
  private static final double LISTENED_SHARE = 0.4;

  /** Contact must have been made by then. */
  private static final double FIRST_CONTACT = 3 * DAY;

  /** So many silent sittings in a row are a silence. Judged. */
  private static final int SILENT = 6;

  /** With nothing wrong, so many of these would not have been silent. Judged. */
  private static final int BROKEN = 2;

  /**
   * Campaign number {@code index} of a seed.
   *
   * @throws Trial.Impossible when no truth gives one
   */
  static Opening of(Scene scene, long seed, int index) {
    SplittableRandom random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + index);
    Luck luck = new Luck(seed, index);
    for (int drawn = 1; drawn <= MOST_DRAWN; drawn++) {
      Truth truth = scene.world().draw(random.split());
      Optional<Opening> opening = attempt(scene, truth, luck, drawn);
      if (opening.isPresent()) {
        return opening.get();
      }
    }
    throw new Trial.Impossible("contact was not lost once in " + MOST_DRAWN + " truths");
  }

  private static Optional<Opening> attempt(Scene scene, Truth truth, Luck luck, int drawn) {
    double latest = Scene.LATEST_START_DAYS * DAY;
    double first = Arrays.stream(truth.onsets()).filter(on -> on >= 0).min().orElse(latest);
    if (first >= latest) {
      return Optional.empty();
    }
    Craft craft = new Craft(scene, truth, luck);
    List<Evidence> evidence = new ArrayList<>();
    List<Integer> silences = new ArrayList<>();
    boolean heard = false;
    for (int w = 0; w < scene.windows().size() && scene.to(w) < latest; w++) {
      boolean early = scene.from(w) < DAY;
      boolean sits = luck.of(Luck.Purpose.LOT, w).nextDouble() < LISTENED_SHARE;
      if (!early && !sits) {
        continue;
      }
      if (!heard && scene.from(w) > FIRST_CONTACT) {
        return Optional.empty();
      }
      craft.advance(scene.to(w));
      Optional<PlainLink.Noticed> loudest =
          Sittings.loudest(
              scene, truth, craft.sent(), w, scene.listener().usual(station(scene, w)), luck);
      evidence.add(Sittings.usual(scene, w, loudest, luck));
      heard |= loudest.isPresent();
      silences.add(w);
      if (loudest.isPresent()) {
        silences.clear();
      }
      if (heard && silences.size() == SILENT && first < scene.to(w)) {
        if (!isCaused(scene, truth, luck, silences)) {
          return Optional.empty();
        }
        evidence.addAll(checks(scene, truth, luck, scene.to(w)));
        List<Entry> record = Crews.journal(evidence);
        return Optional.of(new Opening(truth, luck, drawn, scene.to(w), w + 1, record));
      }
    }
    return Optional.empty();
  }

  /** With nothing wrong on board, the same luck would have broken the silence. */
  private static boolean isCaused(Scene scene, Truth truth, Luck luck, List<Integer> silences) {
    Truth unharmed = truth.unharmed();
    Craft craft = new Craft(scene, unharmed, luck);
    int broken = 0;
    for (int w : silences) {
      craft.advance(scene.to(w));
      Listener.Manner usual = scene.listener().usual(station(scene, w));
      broken += Sittings.first(scene, unharmed, craft.sent(), w, usual, luck).isPresent() ? 1 : 0;
    }
    return broken >= BROKEN;
  }

  private static int station(Scene scene, int window) {
    return scene.windows().get(window).station();
  }

  /** Before it takes the silence for one, a crew checks its stations. */
  private static List<Evidence> checks(Scene scene, Truth truth, Luck luck, double at) {
    List<Evidence> checks = new ArrayList<>();
    for (int s = 0; s < truth.stations().size(); s++) {
      double chance = truth.stations().get(s).checkHeard();
      boolean found = luck.of(Luck.Purpose.CHECK, s).nextDouble() < chance;
      checks.add(Crews.check(scene.input(), s, scene.input().instant(at - 60), found));
    }
    return checks;
  }
}

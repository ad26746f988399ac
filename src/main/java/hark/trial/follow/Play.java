package hark.trial.follow;

import hark.evidence.CommandSent;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.plan.Procedure;
import hark.trial.campaign.Crews;
import hark.trial.campaign.Listener;
import hark.trial.score.RuleRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** One campaign under one rule, window by window until the first reception or the last day. */
final class Play {
  private static final double DAY = 86_400;

  /** A reception that comes less than this sooner or later came in the same window, s. */
  private static final double NOTICEABLE = 1800;

  private final Scene scene;
  private final Opening opening;
  private final Base base;
  private final Timesheet sheet;
  private final double end;
  private final List<Evidence> evidence = new ArrayList<>();
  private final List<Integer> sat = new ArrayList<>();
  private final List<Choice> done = new ArrayList<>();
  private Craft commanded;
  private Craft uncommanded;
  private int commands;
  private int received;

  /**
   * The spacecraft to which nothing is sent, shared by all rules of a campaign.
   *
   * @param sent to the end of the campaign
   */
  record Base(Listener.Sent sent) {}

  Play(Scene scene, Opening opening, Base base, Timesheet sheet, double end) {
    this.scene = scene;
    this.opening = opening;
    this.base = base;
    this.sheet = sheet;
    this.end = end;
    opening.record().forEach(entry -> evidence.add(entry.evidence()));
  }

  /** What a rule looks at before it decides. */
  List<Entry> record() {
    return Crews.journal(evidence);
  }

  Timesheet sheet() {
    return sheet;
  }

  RuleRun run(String rule, Chooser chooser) {
    Optional<Double> heard = Optional.empty();
    for (int w = opening.next(); w < scene.windows().size() && heard.isEmpty(); w++) {
      if (scene.from(w) < opening.start() || scene.to(w) > end) {
        continue;
      }
      Optional<Choice> choice = chooser.at(w, this);
      boolean affordable =
          choice.isPresent() && sheet.fits(w, scene.extraHours(w, choice.get().procedure()));
      if (affordable) {
        heard = sit(w, choice.get());
      }
    }
    double days = (heard.orElse(end) - opening.start()) / DAY;
    boolean[] moved = moved(heard);
    return new RuleRun(
        rule,
        heard.isPresent(),
        days,
        sheet.total(),
        sheet.nights(),
        sat.size(),
        commands,
        received,
        moved[0],
        moved[1]);
  }

  private Optional<Double> sit(int window, Choice choice) {
    sheet.sit(window, scene.extraHours(window, choice.procedure()));
    sat.add(window);
    done.add(choice);
    if (choice.procedure().change() instanceof Procedure.Command command) {
      send(window, command);
    }
    Optional<Double> heard =
        Sittings.first(
            scene, opening.truth(), sent(window), window, choice.manner(), opening.luck());
    if (heard.isEmpty()) {
      evidence.add(Crews.silence(scene.input(), scene.windows().get(window), choice.manner()));
    }
    return heard;
  }

  private Listener.Sent sent(int window) {
    if (commanded == null) {
      return base.sent();
    }
    commanded.advance(scene.to(window));
    return commanded.sent();
  }

  /** A body of its own only from the first command on that arrives. */
  private void send(int window, Procedure.Command command) {
    commands++;
    evidence.add(
        new CommandSent(
            scene.input().stations().get(scene.windows().get(window).station()).name(),
            scene.input().instant(scene.sendingTime(window)),
            command.command().name(),
            OptionalDouble.empty(),
            OptionalInt.of(command.repeats()),
            Optional.empty()));
    if (commanded == null && uncommanded == null) {
      uncommanded = new Craft(scene, opening.truth(), opening.luck());
    }
    Craft craft = commanded == null ? uncommanded : commanded;
    craft.advance(scene.from(window));
    if (craft.send(window, command)) {
      received++;
      commanded = craft;
    }
  }

  /**
   * What commands changed: the same sittings once more without them. Harmed: heard sooner without;
   * helped: heard later or never without.
   */
  private boolean[] moved(Optional<Double> heard) {
    if (received == 0) {
      return new boolean[] {false, false};
    }
    Optional<Double> without = Optional.empty();
    for (int k = 0; k < sat.size() && without.isEmpty(); k++) {
      without =
          Sittings.first(
              scene,
              opening.truth(),
              base.sent(),
              sat.get(k),
              done.get(k).manner(),
              opening.luck());
    }
    double with = heard.orElse(Double.POSITIVE_INFINITY);
    double alone = without.orElse(Double.POSITIVE_INFINITY);
    return new boolean[] {alone < with - NOTICEABLE, with < alone - NOTICEABLE};
  }
}

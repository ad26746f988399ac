package hark.trial.follow;

import hark.plan.Procedure;
import hark.trial.campaign.Listener;
import hark.trial.score.RuleRun;
import java.util.ArrayList;
import java.util.List;

/**
 * Knows the truth and its luck: the first window in which any procedure brings a reception, nothing
 * or one command sent before. No rule with at most one command that arrives hears anything sooner.
 */
final class Oracle {
  private static final double DAY = 86_400;

  /** Windows in which each command is tried, the first ones. */
  private static final int TRIED = 3;

  private final Scene scene;
  private final Opening opening;
  private final Checklist list;
  private final double end;

  /** What was found: when, in which window, and which was used to send; −1 for none. */
  private record Found(double seconds, int window, int sending, Choice choice, Choice sent) {}

  Oracle(Scene scene, Opening opening, double end) {
    this.scene = scene;
    this.opening = opening;
    this.end = end;
    list = new Checklist(scene);
  }

  RuleRun run(Play.Base base, Timesheet sheet) {
    Found best = first(base.sent(), opening.next(), end, -1, null);
    for (Procedure procedure : scene.procedures()) {
      if (procedure.change() instanceof Procedure.Command command) {
        Found sent = withCommand(procedure, command, best == null ? end : best.seconds());
        best = sent == null ? best : sent;
      }
    }
    if (best == null) {
      double days = (end - opening.start()) / DAY;
      return new RuleRun("oracle", false, days, 0, 0, 0, 0, 0, false, false);
    }
    int sat = 1;
    if (best.sending() >= 0 && best.sending() != best.window()) {
      sheet.sit(best.sending(), scene.extraHours(best.sending(), best.sent().procedure()));
      sat = 2;
    }
    sheet.sit(best.window(), scene.extraHours(best.window(), best.choice().procedure()));
    int commands = best.sending() >= 0 ? 1 : 0;
    double days = (best.seconds() - opening.start()) / DAY;
    return new RuleRun(
        "oracle",
        true,
        days,
        sheet.total(),
        sheet.nights(),
        sat,
        commands,
        commands,
        false,
        commands > 0);
  }

  /** A reception sooner than a time by one command; null when there is none. */
  private Found withCommand(Procedure procedure, Procedure.Command command, double before) {
    Found best = null;
    int tried = 0;
    Craft untouched = new Craft(scene, opening.truth(), opening.luck());
    for (int w = opening.next(); w < scene.windows().size() && tried < TRIED; w++) {
      double latest = best == null ? before : best.seconds();
      boolean inTime = scene.from(w) >= opening.start() && scene.to(w) <= latest;
      if (!inTime || !scene.maySend(w)) {
        continue;
      }
      untouched.advance(scene.from(w));
      if (untouched.reaches(w, command)) {
        tried++;
        Craft craft = new Craft(scene, opening.truth(), opening.luck());
        craft.advance(scene.from(w));
        craft.send(w, command);
        craft.advance(latest);
        Found found = first(craft.sent(), w, latest, w, list.choice(procedure, w));
        best = found == null ? best : found;
      }
    }
    return best;
  }

  private Found first(Listener.Sent sent, int from, double before, int sending, Choice how) {
    for (int w = from; w < scene.windows().size() && scene.from(w) < before; w++) {
      if (scene.from(w) < opening.start() || scene.to(w) > end) {
        continue;
      }
      Found best = null;
      for (Choice choice : w == sending ? List.of(how) : manners(w)) {
        double heard =
            Sittings.first(scene, opening.truth(), sent, w, choice.manner(), opening.luck())
                .orElse(Double.POSITIVE_INFINITY);
        if (heard < before && (best == null || heard < best.seconds())) {
          best = new Found(heard, w, sending, choice, how);
        }
      }
      if (best != null) {
        return best;
      }
    }
    return null;
  }

  private List<Choice> manners(int window) {
    List<Choice> choices = new ArrayList<>();
    for (Procedure procedure : scene.procedures()) {
      boolean ours = !procedure.needs().contains("outside_station");
      if (procedure.change() instanceof Procedure.Listen && ours) {
        choices.add(list.choice(procedure, window));
      }
    }
    return choices;
  }
}

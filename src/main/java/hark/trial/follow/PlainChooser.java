package hark.trial.follow;

import hark.plan.Procedure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Rules without a model: at the beginning of each week they choose its windows. */
final class PlainChooser implements Chooser {
  private final Scene scene;
  private final Rule rule;
  private final Opening opening;
  private final Checklist list;
  private final double end;
  private final Map<Integer, Choice> plan = new HashMap<>();

  /** Place in the checklist, by station. */
  private final int[] turn;

  private int planned = -1;

  PlainChooser(Scene scene, Rule rule, Opening opening, double end) {
    this.scene = scene;
    this.rule = rule;
    this.opening = opening;
    this.end = end;
    list = new Checklist(scene);
    turn = new int[scene.input().stations().size()];
  }

  @Override
  public Optional<Choice> at(int window, Play play) {
    int week = play.sheet().week(window);
    if (week > planned) {
      planned = week;
      plan(week, play.sheet());
    }
    return Optional.ofNullable(plan.get(window));
  }

  private void plan(int week, Timesheet sheet) {
    List<Integer> chosen = new ArrayList<>();
    for (int window : wanted(week, sheet)) {
      List<Integer> more = new ArrayList<>(chosen);
      more.add(window);
      Collections.sort(more);
      Timesheet trial = sheet.blank();
      if (fits(more, choices(more, turn.clone()), trial)) {
        chosen = more;
      }
    }
    plan.putAll(choices(chosen, turn));
  }

  private boolean fits(List<Integer> windows, Map<Integer, Choice> choices, Timesheet trial) {
    for (int window : windows) {
      double extra = scene.extraHours(window, choices.get(window).procedure());
      if (!trial.fits(window, extra)) {
        return false;
      }
      trial.sit(window, extra);
    }
    return true;
  }

  /** Windows of the week, those first that are wanted most. */
  private List<Integer> wanted(int week, Timesheet sheet) {
    List<Integer> all = new ArrayList<>();
    for (int w = opening.next(); w < scene.windows().size(); w++) {
      if (scene.from(w) >= opening.start() && scene.to(w) <= end && sheet.week(w) == week) {
        all.add(w);
      }
    }
    if (rule == Rule.HIGHEST || rule == Rule.HIGHEST_ROTATION) {
      Map<Integer, Double> highest = new HashMap<>();
      all.forEach(w -> highest.put(w, scene.highestDeg(w)));
      all.sort(Comparator.comparingDouble((Integer w) -> -highest.get(w)));
    }
    if (rule == Rule.RANDOM) {
      long lot = opening.luck().of(Luck.Purpose.LOT, -1 - week).nextLong();
      Collections.shuffle(all, new Random(lot));
    }
    return all;
  }

  private Map<Integer, Choice> choices(List<Integer> windows, int[] turns) {
    Map<Integer, Choice> choices = new HashMap<>();
    for (int window : windows) {
      choices.put(window, choice(window, turns));
    }
    return choices;
  }

  private Choice choice(int window, int[] turns) {
    if (!rule.checks()) {
      return list.plain(window);
    }
    List<Procedure> possible = list.possible(window);
    int at = turns[scene.windows().get(window).station()]++;
    if (rule == Rule.RANDOM) {
      at = opening.luck().of(Luck.Purpose.LOT, window).nextInt(possible.size());
    }
    return list.choice(possible.get(at % possible.size()), window);
  }
}

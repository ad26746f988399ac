package hark.trial.follow;

import hark.ensemble.Diagnosis;
import hark.ensemble.Listening;
import hark.ensemble.SkyWindow;
import hark.ensemble.Workers;
import hark.evidence.Entry;
import hark.plan.OptionValue;
import hark.plan.PlanOutcome;
import hark.plan.PlanSettings;
import hark.plan.Planner;
import hark.plan.Procedure;
import hark.trial.campaign.Listener;
import hark.trial.campaign.SameThread;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Follows the plan that users get, made again as the record grows. */
final class PlanChooser implements Chooser {
  /** How far the plan looks ahead, days. */
  private static final double HORIZON_DAYS = 7;

  private static final double DAY = 86_400;

  /** Windows of the plan and of the scene that begin so close are the same, s. */
  private static final double SAME_SECONDS = 120;

  private final Scene scene;
  private final Opening opening;
  private final FollowSettings settings;
  private final Mind mind;
  private final double end;
  private final List<Procedure> procedures;
  private final Map<Integer, Choice> plan = new HashMap<>();
  private double madeAt = Double.NEGATIVE_INFINITY;
  private int madeOf = -1;

  PlanChooser(Scene scene, Opening opening, FollowSettings settings, Mind mind, double end) {
    this.scene = scene;
    this.opening = opening;
    this.settings = settings;
    this.mind = mind;
    this.end = end;
    procedures = procedures(scene.procedures(), settings.without());
  }

  private static List<Procedure> procedures(List<Procedure> all, Set<Ingredient> without) {
    List<Procedure> left = new ArrayList<>();
    for (Procedure procedure : all) {
      boolean sends = procedure.change() instanceof Procedure.Command;
      boolean another =
          procedure.change() instanceof Procedure.Listen
              && !procedure.id().equals("listen-as-planned");
      boolean elsewhere = procedure.needs().contains("outside_station");
      boolean dropped =
          (sends && without.contains(Ingredient.COMMANDS))
              || (another && without.contains(Ingredient.WAYS));
      if (!dropped && !elsewhere) {
        left.add(procedure);
      }
    }
    return left;
  }

  @Override
  public Optional<Choice> at(int window, Play play) {
    double now = Math.max(opening.start(), scene.from(window) - 60);
    int entries = play.record().size();
    double age = (now - madeAt) / 3600;
    boolean grown = entries > madeOf && age >= settings.replanHours();
    if (grown || age > 24 * HORIZON_DAYS / 2) {
      make(now, play);
      madeAt = now;
      madeOf = entries;
    }
    return Optional.ofNullable(plan.get(window));
  }

  private void make(double now, Play play) {
    plan.clear();
    double until = Math.min(end, now + HORIZON_DAYS * DAY);
    if (until < now + 3600) {
      return;
    }
    List<Entry> record =
        settings.without().contains(Ingredient.INFERENCE) ? opening.record() : play.record();
    Instant from = scene.input().instant(now);
    Diagnosis diagnosis = mind.of(record, from, scene.input().instant(until));
    PlanSettings limits =
        new PlanSettings(settings.hoursPerWeek(), scene.mission().hazardLimit())
            .by(settings.planBy())
            .weeksFrom(scene.input().instant(opening.start()))
            .spent(Math.max(0, settings.hoursPerWeek() - play.sheet().left(now)));
    Workers alone = new Workers(new SameThread(), 1);
    PlanOutcome outcome = Planner.plan(diagnosis, procedures, limits, alone);
    for (Map.Entry<Integer, Procedure> chosen : outcome.choices().entrySet()) {
      SkyWindow sky = diagnosis.windows().get(chosen.getKey());
      find(sky)
          .ifPresent(
              window ->
                  plan.put(
                      window, choice(chosen.getValue(), outcome.options().get(chosen.getKey()))));
    }
  }

  private Optional<Integer> find(SkyWindow sky) {
    for (int w = opening.next(); w < scene.windows().size(); w++) {
      boolean same =
          scene.windows().get(w).station() == sky.station()
              && Math.abs(scene.from(w) - sky.from()) < SAME_SECONDS;
      if (same) {
        return Optional.of(w);
      }
    }
    return Optional.empty();
  }

  private static Choice choice(Procedure procedure, List<OptionValue> options) {
    Listening listening =
        options.stream()
            .filter(value -> value.option().procedure().equals(procedure))
            .findFirst()
            .orElseThrow()
            .option()
            .listening();
    return new Choice(
        procedure,
        new Listener.Manner(
            listening.way(),
            listening.windowHz(),
            listening.offsetSeconds(),
            listening.tracked(),
            listening.extraGainDb()));
  }
}

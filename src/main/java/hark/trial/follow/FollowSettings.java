package hark.trial.follow;

import hark.plan.PlanSettings;
import hark.trial.campaign.Settings;
import java.util.List;
import java.util.Set;

/**
 * What is to be followed.
 *
 * @param campaigns how many
 * @param days of each, from the silence on
 * @param seed of all draws
 * @param world where truths come from
 * @param members bodies for each event set of order ≤ 1 of the diagnosis
 * @param hoursPerWeek of people's time, for every rule
 * @param rules in the order of the report
 * @param without what the plan does without
 * @param replanHours a plan is made again when the record has grown and the plan is older
 * @param planBy how the plan chooses windows
 */
public record FollowSettings(
    int campaigns,
    double days,
    long seed,
    Settings.Kind world,
    int members,
    double hoursPerWeek,
    List<Rule> rules,
    Set<Ingredient> without,
    double replanHours,
    PlanSettings.Rule planBy) {
  private static final double MOST_DAYS = 30;
  private static final double MOST_HOURS = 168;

  /** Refuses numbers out of range. */
  public FollowSettings {
    if (campaigns < 1 || campaigns > 100_000) {
      throw new IllegalArgumentException("campaigns " + campaigns + " is outside 1 … 100000");
    }
    if (!(days >= 1 && days <= MOST_DAYS)) {
      throw new IllegalArgumentException("days " + days + " is outside 1 … 30");
    }
    if (!(hoursPerWeek > 0 && hoursPerWeek <= MOST_HOURS)) {
      throw new IllegalArgumentException(
          "hours a week " + hoursPerWeek + " is outside 0 … 168, 0 left out");
    }
    if (!(replanHours >= 0)) {
      throw new IllegalArgumentException("replan hours " + replanHours + " is negative");
    }
    rules = List.copyOf(rules);
    without = Set.copyOf(without);
  }
}

package hark.mission;

import hark.plan.PlanSettings;

/**
 * What a crew keeps to beside its hours.
 *
 * @param hoursBetweenCommands least time from one command to the next, h
 * @param outsideHoursPerWeek hours of other people's antennas in a week, h
 */
public record CrewRules(double hoursBetweenCommands, double outsideHoursPerWeek) {
  /** What is taken when nothing is written. */
  public static final CrewRules USUAL =
      new CrewRules(PlanSettings.USUAL_COMMAND_GAP_HOURS, PlanSettings.USUAL_OUTSIDE_HOURS);

  /** Limits of a plan for so many hours a week. */
  public PlanSettings settings(double hoursPerWeek, double hazardLimit) {
    return new PlanSettings(hoursPerWeek, hazardLimit)
        .apart(hoursBetweenCommands)
        .outside(outsideHoursPerWeek);
  }
}

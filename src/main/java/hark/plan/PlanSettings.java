package hark.plan;

/**
 * What a plan must keep to.
 *
 * @param hours people's hours over the horizon
 * @param hazardLimit options above this hazard are ranked last, 0…1
 */
public record PlanSettings(double hours, double hazardLimit) {}

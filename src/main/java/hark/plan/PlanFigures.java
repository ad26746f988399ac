package hark.plan;

/**
 * What a plan is worth, on the possibilities it was not chosen by.
 *
 * @param found chance to have heard something by the horizon
 * @param foundError Monte-Carlo standard error of it
 * @param meanDays restricted mean time to the first reception, horizon where none comes, days
 * @param meanHours people's hours spent until the first reception or the horizon, mean
 * @param hours people's hours if nothing is ever heard
 * @param hazard chance that its commands delay the first audible time, at most
 * @param commands how many it sends
 */
public record PlanFigures(
    double found,
    double foundError,
    double meanDays,
    double meanHours,
    double hours,
    double hazard,
    int commands) {}

package hark.plan;

import java.time.Instant;
import java.util.Optional;

/**
 * What a plan must keep to.
 *
 * @param hoursPerWeek people's hours in a week
 * @param weekBegins a time at which a week begins; empty for Monday 00:00 UTC
 * @param spentHours of this week's hours that are gone already
 * @param hazardLimit options above this hazard are ranked last and never planned, 0…1
 * @param leastGainPerHour weight found early that an hour must bring to be worth planning, 1/h
 * @param commandGapHours least time from one command to the next, h
 * @param outsideHoursPerWeek hours of other people's antennas in a week
 * @param rule how windows are chosen
 */
public record PlanSettings(
    double hoursPerWeek,
    Optional<Instant> weekBegins,
    double spentHours,
    double hazardLimit,
    double leastGainPerHour,
    double commandGapHours,
    double outsideHoursPerWeek,
    Rule rule) {
  /**
   * An hour that finds less than this is better slept: at 20 hours a week a month of such hours
   * would find less than one in ten. Judged.
   */
  public static final double USUAL_LEAST_GAIN_PER_HOUR = 1e-3;

  /** A command is listened after for a pass or two before the next one is sent, h. Judged. */
  public static final double USUAL_COMMAND_GAP_HOURS = 3;

  /** Friends with a dish give so much a week, h. Judged. */
  public static final double USUAL_OUTSIDE_HOURS = 2;

  /** Refuses what is not a number or negative. */
  public PlanSettings {
    boolean sensible =
        hoursPerWeek >= 0
            && spentHours >= 0
            && hazardLimit >= 0
            && leastGainPerHour >= 0
            && commandGapHours >= 0
            && outsideHoursPerWeek >= 0;
    if (!sensible) {
      throw new IllegalArgumentException("a plan's limits are numbers that are not negative");
    }
  }

  /** So many hours a week, none of them gone, all else as usual. */
  public PlanSettings(double hoursPerWeek, double hazardLimit) {
    this(
        hoursPerWeek,
        Optional.empty(),
        0,
        hazardLimit,
        USUAL_LEAST_GAIN_PER_HOUR,
        USUAL_COMMAND_GAP_HOURS,
        USUAL_OUTSIDE_HOURS,
        Rule.COVER);
  }

  /** The same when so much of this week's hours is gone. */
  public PlanSettings spent(double hours) {
    return new PlanSettings(
        hoursPerWeek,
        weekBegins,
        hours,
        hazardLimit,
        leastGainPerHour,
        commandGapHours,
        outsideHoursPerWeek,
        rule);
  }

  /** The same with weeks that begin at that time of the week. */
  public PlanSettings weeksFrom(Instant begin) {
    return new PlanSettings(
        hoursPerWeek,
        Optional.of(begin),
        spentHours,
        hazardLimit,
        leastGainPerHour,
        commandGapHours,
        outsideHoursPerWeek,
        rule);
  }

  /** The same with so many hours at least between two commands. */
  public PlanSettings apart(double hours) {
    return new PlanSettings(
        hoursPerWeek,
        weekBegins,
        spentHours,
        hazardLimit,
        leastGainPerHour,
        hours,
        outsideHoursPerWeek,
        rule);
  }

  /** The same with so many hours of other people's antennas in a week. */
  public PlanSettings outside(double hours) {
    return new PlanSettings(
        hoursPerWeek,
        weekBegins,
        spentHours,
        hazardLimit,
        leastGainPerHour,
        commandGapHours,
        hours,
        rule);
  }

  /** The same with another way to choose. */
  public PlanSettings by(Rule other) {
    return new PlanSettings(
        hoursPerWeek,
        weekBegins,
        spentHours,
        hazardLimit,
        leastGainPerHour,
        commandGapHours,
        outsideHoursPerWeek,
        other);
  }

  /** The same with another price of an hour. */
  public PlanSettings asking(double gainPerHour) {
    return new PlanSettings(
        hoursPerWeek,
        weekBegins,
        spentHours,
        hazardLimit,
        gainPerHour,
        commandGapHours,
        outsideHoursPerWeek,
        rule);
  }

  /** How windows are chosen. All discount a reception by {@code exp(−delay/3 days)}. */
  public enum Rule {
    /** The set that finds most early for its hours: greedy, then exchanges. */
    COVER,
    /** The one move that finds most early, then the one after it; what lies between is left out. */
    NEXT_BEST,
    /** As COVER, with every move of the next window tried first. */
    LOOK_AHEAD
  }
}

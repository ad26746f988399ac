package hark.assessment;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The case for going on, as a review board reads it: what effort finds, what time brings, what
 * would have to be true, what the cheapest watch would catch, and how far all of that hangs on what
 * was assumed. It decides nothing. Weights are shares of all that still fits, 0…1.
 *
 * @param until end of the look ahead
 * @param hours of people's time that the plan takes until then
 * @param found chance that the plan hears it by then
 * @param foundError Monte-Carlo standard error of the part found by listening
 * @param byListening the part of {@code found} that needs no command
 * @param curve weight found against hours; rising
 * @param steps the next ten hours and the ten after them
 * @param dates at which more becomes reachable, in the order of time
 * @param orbit how long there is anything to listen to; empty without an orbit to tell it from
 * @param unheard what would have to be true; with {@code notWorkedOut} the weights sum to 1
 * @param notWorkedOut weight of three and more events at once
 * @param shifts what {@code found} would be under other assumptions
 */
public record ReviewCase(
    String mission,
    Instant now,
    Instant until,
    Assessment.Silence silence,
    double crewHoursPerWeek,
    double hours,
    double found,
    double foundError,
    double byListening,
    List<Assessment.GoingOn> curve,
    List<Step> steps,
    Effort effort,
    List<Dated> dates,
    Optional<LastDate> orbit,
    List<Unheard> unheard,
    double notWorkedOut,
    Optional<Watch> watch,
    List<Shift> shifts,
    List<String> assumptions,
    Arguments arguments) {

  /** What hours between two marks of the curve add. */
  public record Step(double fromHours, double toHours, double adds) {}

  /**
   * Where effort buys little.
   *
   * @param gain what counts as little, 0…1
   * @param perHours for so many hours
   * @param fromHours from where on the curve they add less; empty when nowhere on it
   * @param monthHours people's hours in a month at the present pace
   * @param monthAtMost what a month after the plan could add at most: all that sends by then and
   *     that the plan does not find
   */
  public record Effort(
      double gain,
      double perHours,
      OptionalDouble fromHours,
      double monthHours,
      double monthAtMost) {}

  /**
   * A date at which more becomes reachable.
   *
   * @param until end of the stretch, if it has one
   * @param spreadDays one standard deviation of the date; 0 when it is not known better
   * @param weight that becomes reachable; NaN when nobody can say
   * @param basis what the date rests on
   * @param procedure id of the procedure that goes with it
   */
  public record Dated(
      Instant from,
      Optional<Instant> until,
      double spreadDays,
      String what,
      double weight,
      String basis,
      Optional<String> procedure) {}

  /**
   * When the orbit ends: under an active Sun with more drag than believed, in the mean, and under a
   * quiet Sun with less.
   *
   * @param late empty when it is further than a century
   */
  public record LastDate(
      double heightKm,
      double areaPerMass,
      Instant early,
      Optional<Instant> middle,
      Optional<Instant> late) {}

  /** Possibilities of one kind, and the explanations that carry most of it. */
  public record Unheard(String id, String sentence, double weight, List<Part> parts) {}

  /** A title and its weight. */
  public record Part(String title, double weight) {}

  /**
   * The cheapest watch to keep.
   *
   * @param found chance that it hears something by the end of the look ahead
   * @param catches by cause, the weight it would find
   */
  public record Watch(
      String station,
      boolean unattended,
      int windows,
      double hoursPerWeek,
      double found,
      List<Part> catches) {}

  /** An assumption and what the chance found would be at both of its ends. */
  public record Shift(
      String assumption, String lowWords, double low, String highWords, double high) {
    /** Distance between the ends. */
    public double width() {
      return Math.abs(high - low);
    }
  }

  /**
   * What speaks on either side, and what would make stopping defensible. Sentences; people decide.
   */
  public record Arguments(List<String> goingOn, List<String> stopping, String defensible) {}
}

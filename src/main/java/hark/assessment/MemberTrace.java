package hark.assessment;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One member followed from separation to the horizon.
 *
 * @param member its number, from 1
 * @param members how many there are
 * @param weight its weight among all, 0…1; 0 when the evidence leaves nothing of it
 * @param body its drawn numbers by key of the mission file
 * @param events what happens to it, each with its onset
 * @param explanations the sets of events that share this body, heaviest first, with their shares of
 *     its weight
 * @param rows rising; one a step and one a change of state
 */
public record MemberTrace(
    int member,
    int members,
    double weight,
    Map<String, Double> body,
    List<Event> events,
    List<Share> explanations,
    List<Row> rows) {

  /**
   * An event of this member.
   *
   * @param does what it does to the electrical system, in words
   */
  public record Event(String cause, String title, Instant onset, String does) {}

  /** Something and its share, 0…1. */
  public record Share(String title, double share) {}

  /**
   * One time. Numbers that do not exist are NaN.
   *
   * @param sunlit share of full sunlight, 0…1
   * @param batteryAmps positive into the battery
   * @param volts at the bus under load
   * @param state off, boot, safe or nominal
   * @param change why the state became what it is at this very time; empty on the other rows
   */
  public record Row(
      Instant time,
      double sunlit,
      double arrayWatts,
      double loadWatts,
      double batteryAmps,
      double volts,
      double soc,
      double batteryCelsius,
      double structureCelsius,
      String state,
      Optional<String> change) {}
}

package hark.plan;

import hark.power.OnboardCommand;
import java.util.List;
import java.util.Optional;

/**
 * A procedure: something a crew can do, as the model and as people read it.
 *
 * @param needs what it needs: {@code receiver}, {@code transmitter}, {@code licence}, {@code
 *     rotator}, {@code outside_station}
 * @param change what it changes for the model
 * @param costHours people's hours beside the session and the pass
 * @param cautions shown with it, always
 * @param forbiddenIf conditions in words under which it must not be done
 * @param markdown the text for people
 */
public record Procedure(
    String id,
    String title,
    Kind kind,
    List<String> needs,
    Change change,
    double costHours,
    List<String> cautions,
    List<String> forbiddenIf,
    String markdown) {

  /** What sort of thing a procedure is. */
  public enum Kind {
    LISTEN,
    COMMAND,
    DESK,
    WAIT
  }

  /** What a procedure changes. A closed set. */
  public sealed interface Change {}

  /**
   * Listen differently.
   *
   * @param way how bursts are looked for; empty keeps the beacon's own way
   * @param windowHz half-width listened to; empty keeps the station's
   * @param offsetSeconds pointing and tuning as if the object were so much later (positive) or
   *     earlier
   * @param otherCandidate follow the second most likely object instead of the first
   * @param extraGainDb a larger antenna somewhere else, dB over the station's own; 0 for ours
   */
  public record Listen(
      Optional<hark.link.Way> way,
      Optional<Double> windowHz,
      double offsetSeconds,
      boolean otherCandidate,
      double extraGainDb)
      implements Change {}

  /** Send a command so many times in the pass, listening before and after. */
  public record Command(OnboardCommand command, int repeats) implements Change {}

  /** Check a station against a satellite that is known to send. */
  public record SelfCheck() implements Change {}

  /** Send nothing, let it charge, stay at home. */
  public record Wait() implements Change {}
}

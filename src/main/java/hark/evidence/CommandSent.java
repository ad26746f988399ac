package hark.evidence;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A command was sent.
 *
 * @param command what it was: the id of a procedure, or words
 * @param powerWatts of the transmitter, W; empty means the station's own
 * @param repeats how often it was sent in that sitting; empty means once
 * @param acknowledged whether the spacecraft answered; empty when it was not said
 */
public record CommandSent(
    String station,
    Instant at,
    String command,
    OptionalDouble powerWatts,
    OptionalInt repeats,
    Optional<Boolean> acknowledged)
    implements Evidence {
  /** Refuses a command without words, without power or sent less than once. */
  public CommandSent {
    Refuse.blank("command", command);
    Refuse.notPositive("power", powerWatts);
    repeats.ifPresent(n -> Refuse.outside("repeats", n, 1, 100_000));
  }

  @Override
  public String kind() {
    return "command-sent";
  }
}

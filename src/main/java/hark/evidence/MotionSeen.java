package hark.evidence;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How it turns or sinks, as seen from outside.
 *
 * @param tumbleSeconds time of one turn, s
 * @param tumbleSdSeconds give or take
 * @param decay against the neighbours of the same launch
 * @param source how it was seen, in words
 */
public record MotionSeen(
    Instant at,
    OptionalDouble tumbleSeconds,
    OptionalDouble tumbleSdSeconds,
    Optional<Decay> decay,
    Optional<String> source)
    implements Evidence {
  /** Refuses a sighting that says nothing. */
  public MotionSeen {
    if (tumbleSeconds.isEmpty() && decay.isEmpty()) {
      throw new IllegalArgumentException("motion without a period and without a decay");
    }
    Refuse.notPositive("time of a turn", tumbleSeconds);
    Refuse.notPositive("spread of the time of a turn", tumbleSdSeconds);
  }

  /** How fast the orbit sinks against objects of the same kind. */
  public enum Decay {
    FASTER,
    SLOWER,
    SAME
  }

  @Override
  public String kind() {
    return "motion";
  }
}

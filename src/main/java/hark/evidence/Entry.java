package hark.evidence;

import java.time.Instant;
import java.util.Map;

/**
 * One line of the record.
 *
 * @param number rising from 1, never reused
 * @param recordedAt when it was written down
 * @param who who wrote it; empty when not said
 * @param note words beside it; may be empty
 * @param keys the keys as written, from which {@code evidence} was parsed; a correction replaces
 *     among them
 */
public record Entry(
    int number,
    Instant recordedAt,
    String who,
    String note,
    Map<String, String> keys,
    Evidence evidence) {
  /** Keeps its own copy. */
  public Entry {
    keys = Map.copyOf(keys);
  }
}

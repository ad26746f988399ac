package hark.evidence;

import java.time.Instant;
import java.util.Optional;

/**
 * Someone says that a catalogued object is ours, or is not.
 *
 * @param confirmed true: it is ours; false: it is not
 * @param source who says so; {@link Source} says how far each is believed
 */
public record ObjectVerdict(Instant at, String object, boolean confirmed, Optional<String> source)
    implements Evidence {
  /** Refuses a verdict on nothing. */
  public ObjectVerdict {
    Refuse.blank("object", object);
  }

  @Override
  public String kind() {
    return "object";
  }
}

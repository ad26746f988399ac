package hark.evidence;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A recording was searched for a weak beacon.
 *
 * @param from start of the recording; the same as {@code to} when its span was not said
 * @param station where it was made; empty when not said: then nothing can be weighed
 * @param levelDbHz carrier to noise density of what was found, dB·Hz
 * @param upperLimitDbHz what would have been found half of the time, dB·Hz
 * @param object the object searched for; empty means the likeliest candidate
 * @param offsetSeconds searched as if the object were so much later
 */
public record SearchResult(
    Optional<String> station,
    Instant from,
    Instant to,
    String file,
    boolean detected,
    OptionalDouble levelDbHz,
    OptionalDouble upperLimitDbHz,
    Optional<String> object,
    double offsetSeconds)
    implements Spanned {
  /** Refuses a span that ends before it begins and numbers that are none. */
  public SearchResult {
    Refuse.backwards(from, to);
    Refuse.blank("file", file);
    Refuse.notFinite("level", levelDbHz);
    Refuse.notFinite("upper limit", upperLimitDbHz);
    Refuse.notFinite("offset", offsetSeconds);
  }

  /** True when station and span are known, so that the result can be weighed. */
  public boolean isPlaced() {
    return station.isPresent() && to.isAfter(from);
  }

  @Override
  public String kind() {
    return "search-result";
  }
}

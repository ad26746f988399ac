package hark.evidence;

import java.util.Locale;
import java.util.Optional;

/**
 * Who says which object is ours: the first of these words that the source holds. Anything else is
 * hearsay.
 */
public enum Source {
  /** A curve measured and fitted by ourselves or others. */
  DOPPLER,
  /** The crew of a neighbour that has found its own. */
  NEIGHBOUR,
  /** The network that keeps the catalogue. */
  CATALOGUE,
  /** The operator of the launch or the deployer. */
  OPERATOR,
  /** Said by somebody. */
  HEARSAY;

  /** The source that words name. */
  public static Source of(Optional<String> words) {
    String text = words.orElse("").toLowerCase(Locale.ROOT);
    for (Source source : values()) {
      if (text.contains(source.name().toLowerCase(Locale.ROOT))) {
        return source;
      }
    }
    return HEARSAY;
  }
}

package hark.console;

import hark.problem.BadInput;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * An entry as a form gives it, before it is understood.
 *
 * @param kind as in the journal, such as {@code nothing-heard}
 * @param keys as in the journal; {@code who} and {@code note} may be among them
 * @param token by which a sender who got no answer may send again: what comes twice under one token
 *     is written down once
 */
public record NewEntry(String kind, Map<String, String> keys, Optional<String> token) {
  private static final Pattern TOKEN = Pattern.compile("[A-Za-z0-9-]{8,64}");

  /** An entry that is sent once only. */
  public NewEntry(String kind, Map<String, String> keys) {
    this(kind, keys, Optional.empty());
  }

  /** Keeps its own copy, in order of key. */
  public NewEntry {
    if (token.isPresent() && !TOKEN.matcher(token.get()).matches()) {
      throw BadInput.of(
          "the token is not 8 to 64 letters, digits and hyphens", "token", "send a UUID");
    }
    keys = java.util.Collections.unmodifiableMap(new TreeMap<>(keys));
  }
}

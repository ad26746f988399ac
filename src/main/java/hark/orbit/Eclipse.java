package hark.orbit;

import java.time.Instant;
import java.util.Optional;

/**
 * One passage through the Earth's shadow.
 *
 * @param penumbraEntry the Sun's disc touches the Earth's limb
 * @param umbraEntry the disc has gone; empty when it never went
 * @param umbraExit the disc comes back; empty when it never went
 * @param penumbraExit the whole disc is seen again
 */
public record Eclipse(
    Instant penumbraEntry,
    Optional<Instant> umbraEntry,
    Optional<Instant> umbraExit,
    Instant penumbraExit) {
  /** Refuses an umbra that only enters or only exits. */
  public Eclipse {
    if (umbraEntry.isPresent() != umbraExit.isPresent()) {
      throw new IllegalArgumentException("umbra with one edge only");
    }
  }
}

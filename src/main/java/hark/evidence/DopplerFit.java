package hark.evidence;

import java.time.Instant;
import java.util.Optional;

/**
 * A measured Doppler curve was laid beside the candidates, and one fits.
 *
 * @param object the one that fits
 * @param station where it was measured
 * @param file the curve
 */
public record DopplerFit(Instant at, String object, Optional<String> station, Optional<String> file)
    implements Evidence {
  /** Refuses a fit to nothing. */
  public DopplerFit {
    Refuse.blank("object", object);
  }

  @Override
  public String kind() {
    return "doppler";
  }
}

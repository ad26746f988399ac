package hark.evidence;

import java.time.Instant;
import java.util.Optional;

/**
 * What is known of the release.
 *
 * @param confirmed true when somebody saw or measured that it left its deployer; false when nobody
 *     could say
 * @param file the deployer's state vector or report
 */
public record Separation(Instant at, boolean confirmed, Optional<String> file) implements Evidence {
  @Override
  public String kind() {
    return "separation";
  }
}

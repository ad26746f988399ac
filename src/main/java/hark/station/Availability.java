package hark.station;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * When a station may be used.
 *
 * @param on the times; empty for always
 * @param gaps times in which it may not be used all the same
 */
public record Availability(Optional<Rota> on, Rota gaps) {
  /** At any time. */
  public static final Availability ALWAYS = new Availability(Optional.empty(), Rota.NEVER);

  /** True when it may be used all of the time between. */
  public boolean covers(Instant begin, Instant end) {
    return on.map(rota -> rota.covers(begin, end)).orElse(true) && !gaps.meets(begin, end);
  }

  /** Why it may not be used all of that time, in words; empty when it may. */
  public Optional<String> against(Instant begin, Instant end) {
    List<Stretch> gap = gaps.between(begin, end);
    if (!gap.isEmpty()) {
      return Optional.of("closed until " + gap.get(0).to());
    }
    return covers(begin, end) ? Optional.empty() : Optional.of("outside of its hours");
  }
}

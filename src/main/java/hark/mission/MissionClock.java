package hark.mission;

import hark.evidence.Entry;
import hark.evidence.EvidenceBook;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;

/**
 * What time it is for a mission: one rule for every command and the console. A mission with its own
 * clock stands still at {@link Mission#now()}, or {@link #SETTLE} after the end of the latest thing
 * written down when that is later: so an outcome of a window to come can be tried in a demo, and
 * counts. Every other mission lives in real time. Pure.
 */
public final class MissionClock {
  /** A mission's own clock goes this far past an outcome, until the last candidate has set too. */
  public static final Duration SETTLE = Duration.ofMinutes(2);

  private MissionClock() {}

  /**
   * The time it is.
   *
   * @param journal every entry so far, corrections among them
   * @param real asked only when the mission has no clock of its own
   */
  public static Instant now(Mission mission, List<Entry> journal, InstantSource real) {
    return mission.now().map(start -> latest(start, journal)).orElseGet(real::instant);
  }

  private static Instant latest(Instant start, List<Entry> journal) {
    return EvidenceBook.effective(journal, Instant.MAX).stream()
        .map(entry -> entry.evidence().end())
        .filter(end -> end.isAfter(start))
        .map(end -> end.plus(SETTLE))
        .max(Instant::compareTo)
        .orElse(start);
  }
}

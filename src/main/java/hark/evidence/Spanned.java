package hark.evidence;

import java.time.Instant;

/** What took a while: it happened from one time to another. */
sealed interface Spanned extends Evidence
    permits Evidence.NothingHeard,
        Evidence.Heard,
        Evidence.NotListened,
        OutsideReport,
        SearchResult {
  /** When it began. */
  Instant from();

  /** When it was over. */
  Instant to();

  @Override
  default Instant at() {
    return from();
  }

  @Override
  default Instant end() {
    return to();
  }
}

package hark.ensemble;

import java.util.function.Supplier;

/**
 * Hearing tables of one clue and one group of nodes, by {@code [mode][beacon]} or {@code
 * [window][beacon]}, made when the first is asked for. Several threads may ask at once.
 */
final class LazyTables {
  private final int rows;
  private final Supplier<HearingTable[][]> making;
  private HearingTable[][] made;

  /** {@code rows}: how many the supplier will make. */
  LazyTables(int rows, Supplier<HearingTable[][]> making) {
    this.rows = rows;
    this.making = making;
  }

  /** Number of modes or windows. */
  int rows() {
    return rows;
  }

  synchronized HearingTable[][] get() {
    if (made == null) {
      made = making.get();
    }
    return made;
  }
}

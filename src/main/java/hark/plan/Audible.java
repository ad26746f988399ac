package hark.plan;

import java.util.function.IntToDoubleFunction;

/** When a possibility can first be heard at all. */
final class Audible {
  /**
   * A window counts as audible when the widest ear of a working station hears it with at least this
   * chance.
   */
  static final double AT_LEAST = 0.2;

  /** No window within the horizon. */
  static final int NEVER = Integer.MAX_VALUE;

  private Audible() {}

  /** Index of the first audible window from {@code first} on, or {@link #NEVER}. */
  static int from(int first, int windows, IntToDoubleFunction chance) {
    for (int w = first; w < windows; w++) {
      if (chance.applyAsDouble(w) >= AT_LEAST) {
        return w;
      }
    }
    return NEVER;
  }
}

package hark.trial.follow;

import java.util.SplittableRandom;

/**
 * Chance of one campaign, tied to windows and purposes: two rules that do the same in the same
 * window meet the same.
 */
final class Luck {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private final long seed;

  Luck(long seed, int campaign) {
    this.seed = mixed(seed * GOLDEN + campaign);
  }

  /** What a draw is for. */
  enum Purpose {
    LISTENING(1),
    SLIP(2),
    SENDING(3),
    RELEASE(4),
    COUNTER(5),
    CHECK(6),
    LEVEL(7),
    LOT(8);

    private final int number;

    Purpose(int number) {
      this.number = number;
    }
  }

  SplittableRandom of(Purpose purpose, int window) {
    return new SplittableRandom(mixed(seed + GOLDEN * (window * 16L + purpose.number)));
  }

  /** The finishing steps of a well-known mixing function (Stafford's variant 13). */
  private static long mixed(long z) {
    long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
    return b ^ (b >>> 31);
  }
}

package hark.orbit;

/**
 * A set held against the one before it: where the newer has the object at its own epoch, seen from
 * where the older foretold it.
 *
 * @param days between the two epochs
 * @param lateSeconds how much later on the track than foretold; negative when it runs early
 * @param crossMeters aside of the foretold track, positive along the orbit's normal
 * @param radialMeters above it
 * @param sigmas lateness in standard deviations of what is usual after so many days
 */
public record SetStep(
    ElementSet before,
    ElementSet after,
    double days,
    double lateSeconds,
    double crossMeters,
    double radialMeters,
    double sigmas) {
  /** Beyond so many spreads it is no error any more: a manoeuvre, or another object. Judged. */
  public static final double JUMP_SIGMAS = 5;

  /** Early sets place the plane within some kilometres; further aside is another orbit. Judged. */
  public static final double JUMP_CROSS_METERS = 15e3;

  /** True when the newer set does not go on where the older ended. */
  public boolean isJump() {
    return Math.abs(sigmas) > JUMP_SIGMAS
        || Math.abs(crossMeters) > JUMP_CROSS_METERS
        || Double.isNaN(sigmas);
  }
}

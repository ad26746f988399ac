package hark.console;

import hark.problem.BadInput;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/**
 * A clock for practice: begins at a time of its own, runs faster or slower than the real one, and
 * can be held. Safe for several threads.
 */
public final class Rehearsal implements InstantSource {
  /** Fastest pace; beyond it a pass is over before anybody sees it. */
  public static final double MOST_SPEED = 3600;

  private final InstantSource real;
  private Instant start;
  private Instant since;
  private double speed;
  private boolean held;

  /**
   * @param real the clock it is measured by
   * @param start what it says now
   * @param speed its seconds for each real one
   * @throws BadInput when the speed is not over 0 and up to {@link #MOST_SPEED}
   */
  public Rehearsal(InstantSource real, Instant start, double speed) {
    this.real = real;
    this.start = start;
    this.since = real.instant();
    this.speed = checked(speed);
  }

  @Override
  public synchronized Instant instant() {
    if (held) {
      return start;
    }
    double seconds = Duration.between(since, real.instant()).toNanos() / 1e9 * speed;
    return start.plusMillis(Math.round(1000 * Math.max(0, seconds)));
  }

  /** Holds it, or lets it go on from where it stands. */
  public synchronized void hold(boolean on) {
    anchor();
    held = on;
  }

  /** Runs on at another speed from where it stands. */
  public synchronized void run(double anotherSpeed) {
    double good = checked(anotherSpeed);
    anchor();
    speed = good;
  }

  /** Jumps to a later time. */
  public synchronized void goTo(Instant later) {
    if (later.isBefore(instant())) {
      throw BadInput.of("a rehearsal's clock does not run backwards", "to", "start it again");
    }
    anchor();
    start = later;
  }

  /** Its seconds for each real one while it runs. */
  public synchronized double speed() {
    return speed;
  }

  /** The same, 0 while it is held. */
  public synchronized double pace() {
    return held ? 0 : speed;
  }

  /** Whether it stands still. */
  public synchronized boolean isHeld() {
    return held;
  }

  private void anchor() {
    start = instant();
    since = real.instant();
  }

  private static double checked(double speed) {
    if (!(speed > 0 && speed <= MOST_SPEED)) {
      throw BadInput.of(
          "a speed of " + speed + " is not over 0 and up to " + (int) MOST_SPEED,
          "--speed",
          "take 60 for a minute in each second");
    }
    return speed;
  }
}

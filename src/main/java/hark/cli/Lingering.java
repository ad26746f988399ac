package hark.cli;

import java.util.concurrent.atomic.AtomicBoolean;

/** Tells the entry point that a server has been started and the process must stay. */
final class Lingering {
  private static final AtomicBoolean SERVING = new AtomicBoolean();

  private Lingering() {}

  static void serving() {
    SERVING.set(true);
  }

  static boolean isServing() {
    return SERVING.get();
  }
}

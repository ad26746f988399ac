package hark.assessment;

import hark.ensemble.Workers;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;

/** Threads for the time of one computation; the answer does not depend on how many. */
final class Threads {
  private Threads() {}

  static <T> T with(int threads, Function<Workers, T> work) {
    ExecutorService executor = Executors.newFixedThreadPool(threads, Threads::daemon);
    try {
      return work.apply(new Workers(executor, threads));
    } catch (RuntimeException e) {
      executor.shutdownNow(); // somebody stopped it, or it failed: nobody waits for the rest
      throw e;
    } finally {
      executor.shutdown();
    }
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task, "assess");
    thread.setDaemon(true);
    return thread;
  }
}

package hark.trial.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/** Campaigns side by side, each in one thread; results in the order asked for. */
public final class SideBySide {
  private SideBySide() {}

  /** Works on all indices with so many threads. */
  public static <T> List<T> each(List<Integer> indices, int threads, IntFunction<T> work) {
    ExecutorService executor = Executors.newFixedThreadPool(threads, SideBySide::daemon);
    try {
      List<Future<T>> futures = new ArrayList<>();
      for (int index : indices) {
        futures.add(executor.submit(() -> work.apply(index)));
      }
      List<T> results = new ArrayList<>();
      for (Future<T> future : futures) {
        results.add(future.get());
      }
      return results;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while campaigns ran", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException failure) {
        throw failure;
      }
      throw new IllegalStateException("a campaign failed", e.getCause());
    } finally {
      executor.shutdownNow();
    }
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task, "trial");
    thread.setDaemon(true);
    return thread;
  }
}

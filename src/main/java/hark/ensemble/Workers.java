package hark.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;

/**
 * Runs the same work for many indices on a given executor. Each index writes only its own results,
 * so the outcome does not depend on the number of threads.
 */
public final class Workers {
  private final ExecutorService executor;
  private final int threads;

  /**
   * The executor is the caller's to close; {@code threads} says in how many strides work is cut.
   */
  public Workers(ExecutorService executor, int threads) {
    if (threads < 1) {
      throw new IllegalArgumentException("threads " + threads + " is below 1");
    }
    this.executor = executor;
    this.threads = threads;
  }

  /**
   * Calls the task once for each index from 0 to {@code count − 1}; waits for all; rethrows the
   * first failure.
   */
  public void each(int count, IntConsumer task) {
    List<Future<?>> strides = new ArrayList<>();
    for (int start = 0; start < threads; start++) {
      int first = start;
      strides.add(
          executor.submit(
              () -> {
                for (int index = first; index < count; index += threads) {
                  if (Thread.currentThread().isInterrupted()) {
                    throw new IllegalStateException("stopped while computing");
                  }
                  task.accept(index);
                }
              }));
    }
    for (Future<?> stride : strides) {
      await(stride);
    }
  }

  /**
   * Calls the task for blocks of indices that together are {@code 0 … count − 1}; how they are cut
   * does not depend on the number of threads.
   */
  public void eachBlock(int count, int size, BlockTask task) {
    each(
        (count + size - 1) / size,
        block -> task.accept(block * size, Math.min(count, (block + 1) * size)));
  }

  /** Work on the indices from {@code from} to {@code to}, the latter not included. */
  @FunctionalInterface
  public interface BlockTask {
    /** Does it. */
    void accept(int from, int to);
  }

  private static void await(Future<?> stride) {
    try {
      stride.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while computing", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException failure) {
        throw failure;
      }
      throw new IllegalStateException("a worker failed", e.getCause());
    }
  }
}

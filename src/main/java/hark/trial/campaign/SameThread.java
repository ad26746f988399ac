package hark.trial.campaign;

import java.util.List;
import java.util.concurrent.AbstractExecutorService;
import java.util.concurrent.TimeUnit;

/** Runs what it is given at once: campaigns go side by side, each in one thread. */
public final class SameThread extends AbstractExecutorService {
  private volatile boolean closed;

  @Override
  public void execute(Runnable task) {
    task.run();
  }

  @Override
  public void shutdown() {
    closed = true;
  }

  @Override
  public List<Runnable> shutdownNow() {
    closed = true;
    return List.of();
  }

  @Override
  public boolean isShutdown() {
    return closed;
  }

  @Override
  public boolean isTerminated() {
    return closed;
  }

  @Override
  public boolean awaitTermination(long timeout, TimeUnit unit) {
    return closed;
  }
}

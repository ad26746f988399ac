package hark.console;

import hark.assessment.Assessment;
import hark.evidence.Entry;
import hark.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The assessment now shown, and the one worker that replaces it. Requests for a recomputation that
 * arrive while one waits are folded into it.
 */
final class Revisions implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Revisions.class);

  /**
   * An assessment with the record it was made from.
   *
   * @param provisional true when the whole is still being worked out
   */
  record Revision(
      int number, ConsoleModel.Answer answer, List<Entry> entries, boolean provisional) {
    Assessment assessment() {
      return answer.assessment();
    }
  }

  /** What happens to a revision; told to those who listen, in this order. */
  sealed interface News {
    /** A recomputation has begun. */
    record Working(int after) implements News {}

    /** It has ended well. */
    record Ready(Revision revision) implements News {}

    /** It has not; the former revision stands. */
    record Failed(Problem problem) implements News {}
  }

  private final ConsoleModel model;
  private final Consumer<News> listener;
  private final ExecutorService worker;
  private final AtomicBoolean waiting = new AtomicBoolean();
  private volatile Optional<Revision> current = Optional.empty();
  private volatile boolean working;
  private volatile double lastSeconds;

  Revisions(ConsoleModel model, Consumer<News> listener) {
    this.model = model;
    this.listener = listener;
    this.worker =
        Executors.newSingleThreadExecutor(
            task -> {
              Thread thread = new Thread(task, "hark-assess");
              thread.setDaemon(true);
              return thread;
            });
  }

  Optional<Revision> current() {
    return current;
  }

  /** A window of the present assessment by its id. */
  Optional<Assessment.Window> window(String id) {
    return current.stream()
        .flatMap(now -> now.assessment().windows().stream())
        .filter(window -> window.id().equals(id))
        .findFirst();
  }

  /** How long the last assessment took, s; 0 before the first. */
  double lastSeconds() {
    return lastSeconds;
  }

  /** True while something newer than {@link #current} is being worked out or waits for it. */
  boolean isWorking() {
    return working || waiting.get();
  }

  void refresh() {
    if (!worker.isShutdown() && waiting.compareAndSet(false, true)) {
      worker.execute(this::work);
    }
  }

  private void work() {
    working = true;
    waiting.set(false);
    int after = current.map(Revision::number).orElse(0);
    listener.accept(new News.Working(after));
    boolean first = firstLook(after + 1);
    News outcome = outcome(after + (first ? 2 : 1));
    working = false;
    listener.accept(outcome);
  }

  /** Shows a provisional answer where there is one; whether it did. */
  private boolean firstLook(int number) {
    try {
      List<Entry> entries = List.copyOf(model.entries());
      Optional<ConsoleModel.Answer> quick = model.provisional();
      if (quick.isEmpty()) {
        return false;
      }
      Revision revision = new Revision(number, quick.get(), entries, true);
      current = Optional.of(revision);
      listener.accept(new News.Ready(revision));
      return true;
    } catch (RuntimeException e) {
      LOG.debug("No provisional answer", e);
      return false;
    }
  }

  private News outcome(int number) {
    try {
      List<Entry> entries = List.copyOf(model.entries());
      long began = System.nanoTime();
      Revision revision = new Revision(number, model.assess(), entries, false);
      lastSeconds = (System.nanoTime() - began) / 1e9;
      current = Optional.of(revision);
      return new News.Ready(revision);
    } catch (RuntimeException e) {
      LOG.warn("The assessment could not be worked out: {}", e.toString());
      LOG.debug("Where it failed", e);
      return new News.Failed(
          new Problem(
              "the numbers could not be worked out: " + e.getMessage(),
              "the assessment",
              "the figures shown are those from before the last entry; `hark check` may tell why"));
    }
  }

  @Override
  public void close() {
    worker.shutdownNow();
    try {
      worker.awaitTermination(2, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}

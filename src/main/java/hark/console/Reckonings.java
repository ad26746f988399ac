package hark.console;

import hark.assessment.Assessment;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Assessments of changed missions, each on a thread of its own that can be stopped. One at a time:
 * each takes the whole machine, so a new one stops the one before it.
 */
final class Reckonings implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Reckonings.class);

  /** Ended ones that can still be asked for. */
  static final int KEPT = 8;

  private static final double NANOS = 1e9;

  /** What has become of one. */
  sealed interface State {
    /** It runs, since so many seconds. */
    record Running(double seconds) implements State {}

    /** It has ended well, after so many seconds. */
    record Done(Assessment assessment, double seconds) implements State {}

    /** It could not be worked out. */
    record Failed(List<Problem> problems) implements State {}

    /** Somebody stopped it, or a newer one took its place. */
    record Stopped() implements State {}
  }

  private static final class One {
    private final long began = System.nanoTime();
    private Thread thread;
    private State ended;

    private double seconds() {
      return (System.nanoTime() - began) / NANOS;
    }
  }

  private final Map<Integer, One> all = new LinkedHashMap<>();
  private int last;

  /** Begins one and returns its number. */
  synchronized int start(Supplier<Assessment> work) {
    all.keySet().stream().toList().forEach(this::stop);
    One one = new One();
    last++;
    all.keySet().removeIf(number -> number <= last - KEPT);
    all.put(last, one);
    one.thread = new Thread(() -> work(one, work), "hark-reckon");
    one.thread.setDaemon(true);
    one.thread.start();
    return last;
  }

  private void work(One one, Supplier<Assessment> work) {
    State end;
    try {
      end = new State.Done(work.get(), one.seconds());
    } catch (BadInput bad) {
      end = new State.Failed(bad.problems());
    } catch (RuntimeException e) {
      LOG.debug("Where a reckoning failed", e);
      end =
          new State.Failed(
              List.of(
                  new Problem(
                      "it could not be worked out: " + e.getMessage(),
                      "the changed mission",
                      "take the last change back")));
    }
    synchronized (this) {
      one.ended = one.ended == null ? end : one.ended;
    }
  }

  /** What has become of one; empty for a number never given or long forgotten. */
  synchronized Optional<State> state(int number) {
    return Optional.ofNullable(all.get(number))
        .map(one -> one.ended == null ? new State.Running(one.seconds()) : one.ended);
  }

  /** Stops one that still runs. */
  synchronized void stop(int number) {
    One one = all.get(number);
    if (one != null && one.ended == null) {
      one.ended = new State.Stopped();
      one.thread.interrupt();
    }
  }

  @Override
  public synchronized void close() {
    all.keySet().forEach(this::stop);
  }
}

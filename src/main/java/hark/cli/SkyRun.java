package hark.cli;

import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.Trajectory;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/** Computes something for each object, two at a time, and tells of objects that end on the way. */
final class SkyRun {
  private static final int THREADS = 2;

  private final List<ElementSet> sets;
  private final EarthModel earth;
  private final Instant from;
  private final Instant to;
  private final PrintWriter err;

  SkyRun(SkyOptions options, java.time.Clock clock, Instant to, PrintWriter err) {
    this.sets = options.elementSets(clock);
    this.earth = options.earth();
    this.from = options.from(clock);
    this.to = to;
    this.err = err;
  }

  Instant from() {
    return from;
  }

  /** All results in the order of the objects in the file. */
  <T> List<T> each(Function<Trajectory, List<T>> work) {
    ExecutorService executor = Executors.newFixedThreadPool(THREADS);
    try {
      List<Future<Found<T>>> futures = new ArrayList<>();
      for (ElementSet set : sets) {
        Callable<Found<T>> task = () -> find(set, work);
        futures.add(executor.submit(task));
      }
      List<T> all = new ArrayList<>();
      for (Future<Found<T>> future : futures) {
        Found<T> found = future.get();
        found.end().ifPresent(end -> err.println(words(found.objectId(), end)));
        all.addAll(found.rows());
      }
      return all;
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException known
          ? known
          : new IllegalStateException("an object could not be computed", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CouldNot("interrupted", e);
    } finally {
      executor.shutdownNow();
    }
  }

  private <T> Found<T> find(ElementSet set, Function<Trajectory, List<T>> work) {
    Trajectory trajectory = Trajectory.of(set, earth);
    return new Found<>(set.objectId(), work.apply(trajectory), trajectory.validUntil(from, to));
  }

  private record Found<T>(String objectId, List<T> rows, Optional<Instant> end) {}

  private String words(String objectId, Instant end) {
    return end.equals(from)
        ? objectId + ": the elements are not valid at " + UtcTime.print(from) + "; no rows"
        : objectId + ": the elements hold until " + UtcTime.print(end) + " (decay); rows end there";
  }
}

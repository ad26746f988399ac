package hark.cli;

import hark.orbit.EarthModel;
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
import java.util.function.BiFunction;

/** Computes something for each leg, two at a time, and tells of objects that end on the way. */
record SkyRun(List<Leg> legs, EarthModel earth, PrintWriter err) {
  private static final int THREADS = 2;

  /** All results in the order of the legs. */
  <T> List<T> each(BiFunction<Trajectory, Leg, List<T>> work) {
    ExecutorService executor = Executors.newFixedThreadPool(THREADS);
    try {
      List<Future<Found<T>>> futures = new ArrayList<>();
      for (Leg leg : legs) {
        Callable<Found<T>> task = () -> find(leg, work);
        futures.add(executor.submit(task));
      }
      List<T> all = new ArrayList<>();
      for (Future<Found<T>> future : futures) {
        Found<T> found = future.get();
        found.end().ifPresent(end -> err.println(words(found.leg(), end)));
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

  private <T> Found<T> find(Leg leg, BiFunction<Trajectory, Leg, List<T>> work) {
    Trajectory trajectory = Trajectory.of(leg.set(), earth);
    return new Found<>(
        leg, work.apply(trajectory, leg), trajectory.validUntil(leg.from(), leg.to()));
  }

  private record Found<T>(Leg leg, List<T> rows, Optional<Instant> end) {}

  private static String words(Leg leg, Instant end) {
    String objectId = leg.set().objectId();
    return end.equals(leg.from())
        ? objectId + ": the elements are not valid at " + UtcTime.print(end) + "; no rows"
        : objectId + ": the elements hold until " + UtcTime.print(end) + " (decay); rows end there";
  }
}

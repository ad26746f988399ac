package hark.bench;

import hark.orbit.DetectorPasses;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.ElementText;
import hark.orbit.OmmText;
import hark.orbit.Trajectory;
import hark.station.HorizonMask;
import hark.station.Pass;
import hark.station.Passes;
import hark.station.Site;
import java.lang.management.ManagementFactory;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * A whole catalogue: 30,000 invented objects read in under 3 s of processor time, and a day of
 * passes of 1000 of them over one station in under 20 s of it (10 s on two cores), each task with
 * its own propagator. The answers of some are held against Orekit's detector.
 */
final class CatalogueBench {
  private static final int OBJECTS = 30_000;
  private static final int PASSING = 1000;
  private static final int COMPARED = 20;
  private static final double READ_AIM_SECONDS = 3;
  private static final double PASSES_AIM_SECONDS = 20;
  private static final double SAME_SECONDS = 0.01;
  private static final double CHECK_SECONDS = 60;
  private static final double[] PLACE = {48.9, 8.4, 115};
  private static final Site SITE = new Site("hill", 48.9, 8.4, 115);

  private CatalogueBench() {}

  static void run() {
    List<ElementSet> sets = catalogue();
    StringBuilder lines = new StringBuilder();
    sets.forEach(set -> lines.append(ElementText.twoLines(set)));
    read("two-line", lines.toString());
    read("OMM as JSON", OmmText.json(sets, Instant.parse("2026-10-06T00:00:00Z")));
    read("OMM as XML", OmmText.xml(sets, Instant.parse("2026-10-06T00:00:00Z")));
    read("OMM as KVN", OmmText.lines(sets, Instant.parse("2026-10-06T00:00:00Z")));
    passes(sets.subList(0, PASSING));
    compare(sets.subList(0, COMPARED));
  }

  /** Mostly low and near-circular, some half-day ellipses and some geostationary ones. */
  private static List<ElementSet> catalogue() {
    SplittableRandom random = new SplittableRandom(30_000);
    List<ElementSet> sets = new ArrayList<>();
    for (int i = 0; i < OBJECTS; i++) {
      double kind = random.nextDouble();
      double motion = kind < 0.9 ? 12.5 + 3 * random.nextDouble() : kind < 0.95 ? 2.0057 : 1.0027;
      double eccentricity = kind < 0.9 ? 0.01 * random.nextDouble() : kind < 0.95 ? 0.7 : 0.0002;
      double inclination = kind < 0.95 ? 20 + 80 * random.nextDouble() : 2 * random.nextDouble();
      String one =
          String.format(
              Locale.ROOT,
              "1 %05dU 26001A   26279.50000000  .00000000  00000-0  30000-4 0  999",
              i + 1);
      String two =
          String.format(
              Locale.ROOT,
              "2 %05d %8.4f %8.4f %07d %8.4f %8.4f %11.8f    1",
              i + 1,
              inclination,
              360 * random.nextDouble(),
              Math.round(1e7 * eccentricity),
              360 * random.nextDouble(),
              360 * random.nextDouble(),
              motion);
      sets.add(ElementSets.ofLines(one + checksum(one), two + checksum(two)));
    }
    return sets;
  }

  private static int checksum(String line) {
    int sum = 0;
    for (char c : line.toCharArray()) {
      sum += Character.isDigit(c) ? c - '0' : c == '-' ? 1 : 0;
    }
    return sum % 10;
  }

  private static void read(String form, String text) {
    double before = processSeconds();
    int count = ElementSets.parse(form, text).size();
    double cpu = processSeconds() - before;
    if (count != OBJECTS) {
      throw new IllegalStateException(form + ": " + count + " objects");
    }
    System.out.printf(
        Locale.ROOT,
        "reading %d objects as %s, %.1f MB: %.2f s of processor time, the aim of %.0f is %s%n",
        count,
        form,
        text.length() / 1e6,
        cpu,
        READ_AIM_SECONDS,
        cpu < READ_AIM_SECONDS ? "met" : "missed");
  }

  private static void passes(List<ElementSet> sets) {
    EarthModel earth = EarthModel.bundled();
    double before = processSeconds();
    ExecutorService two = Executors.newFixedThreadPool(2);
    long found = 0;
    try {
      List<Future<Integer>> futures = new ArrayList<>();
      for (ElementSet set : sets) {
        Callable<Integer> task = () -> day(set, earth).size();
        futures.add(two.submit(task));
      }
      for (Future<Integer> future : futures) {
        found += future.get();
      }
    } catch (InterruptedException | java.util.concurrent.ExecutionException e) {
      throw new IllegalStateException(e);
    } finally {
      two.shutdownNow();
    }
    double cpu = processSeconds() - before;
    Runtime memory = Runtime.getRuntime();
    System.out.printf(
        Locale.ROOT,
        "a day of passes of %d objects: %d passes, %.2f s of processor time on two threads, the aim of"
            + " %.0f is %s; heap in use %d MB%n",
        sets.size(),
        found,
        cpu,
        PASSES_AIM_SECONDS,
        cpu < PASSES_AIM_SECONDS ? "met" : "missed",
        (memory.totalMemory() - memory.freeMemory()) >> 20);
  }

  private static List<Pass> day(ElementSet set, EarthModel earth) {
    Trajectory trajectory = Trajectory.of(set, earth);
    return Passes.find(
        trajectory,
        SITE,
        HorizonMask.flat(5),
        trajectory.instantAt(0),
        trajectory.instantAt(86400));
  }

  private static void compare(List<ElementSet> sets) {
    EarthModel earth = EarthModel.bundled();
    DetectorPasses twin = new DetectorPasses();
    double worst = 0;
    for (ElementSet set : sets) {
      List<Double> edges = edges(set, earth);
      List<Double> crossings = twin.crossings(set, PLACE, 5, 1, CHECK_SECONDS);
      if (edges.size() != crossings.size()) {
        throw new IllegalStateException(
            set + ": " + edges.size() + " edges, the detector has " + crossings.size());
      }
      for (int i = 0; i < edges.size(); i++) {
        worst = Math.max(worst, Math.abs(edges.get(i) - crossings.get(i)));
      }
    }
    System.out.printf(Locale.ROOT, "edges agree within %.4f s%n", worst);
    if (worst > SAME_SECONDS) {
      throw new IllegalStateException("edges differ by " + worst + " s");
    }
    Ratio.measure(
        "a day of passes of " + sets.size() + " objects, detector looking every 60 s",
        () -> sets.stream().mapToInt(set -> day(set, earth).size()).sum(),
        () ->
            sets.stream()
                .mapToInt(set -> twin.crossings(set, PLACE, 5, 1, CHECK_SECONDS).size())
                .sum());
  }

  private static List<Double> edges(ElementSet set, EarthModel earth) {
    Trajectory trajectory = Trajectory.of(set, earth);
    List<Double> edges = new ArrayList<>();
    for (Pass pass : day(set, earth)) {
      edges.add(trajectory.secondsAt(pass.aos()));
      edges.add(trajectory.secondsAt(pass.los()));
    }
    edges.removeIf(t -> t < 0 || t > 86400);
    return edges;
  }

  /** Processor time of the whole process so far, s. */
  private static double processSeconds() {
    if (ManagementFactory.getOperatingSystemMXBean()
        instanceof com.sun.management.OperatingSystemMXBean system) {
      return system.getProcessCpuTime() / 1e9;
    }
    return System.nanoTime() / 1e9;
  }
}

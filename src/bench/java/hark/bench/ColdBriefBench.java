package hark.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The demo's brief over seven days as somebody at a terminal gets it: the program's own jar, a new
 * process each time, from start to exit. The goal is 15 s on two cores; it has no twin, so the
 * ratio is goal over time. Any two runs must print the same bytes.
 */
final class ColdBriefBench {
  private static final double GOAL_SECONDS = 15;
  private static final int RUNS = 3;
  private static final Path JAR = Path.of("target", "hark.jar");

  private ColdBriefBench() {}

  static void run() {
    try {
      Path folder = Files.createTempDirectory("hark-bench-");
      try {
        measure(folder);
      } finally {
        delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  private static void measure(Path folder) throws IOException, InterruptedException {
    Path mission = folder.resolve("demo");
    hark(folder.resolve("demo.txt"), "demo", mission.toString());
    // other work on the machine makes a time worthless: say how much there was
    double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    List<byte[]> briefs = new ArrayList<>();
    long[] nanos = new long[RUNS];
    for (int i = 0; i < RUNS; i++) {
      Path printed = folder.resolve("brief-" + i + ".txt");
      long start = System.nanoTime();
      hark(printed, "brief", mission.toString(), "--days", "7");
      nanos[i] = System.nanoTime() - start;
      briefs.add(Files.readAllBytes(printed));
    }
    double seconds = Ratio.median(nanos) / 1e9;
    System.out.printf(
        Locale.ROOT,
        "demo brief, 7 days, %d cores, load before %.1f, new process: median %.1f s of %d, goal %.0f"
            + " s, ratio %.2f (%d bytes)%n",
        Runtime.getRuntime().availableProcessors(),
        load,
        seconds,
        RUNS,
        GOAL_SECONDS,
        GOAL_SECONDS / seconds,
        briefs.get(0).length);
    System.out.println(seconds < GOAL_SECONDS ? "the goal is met" : "the goal is missed");
    requireAlike(briefs);
  }

  private static void requireAlike(List<byte[]> briefs) {
    for (byte[] brief : briefs) {
      if (brief.length == 0 || !Arrays.equals(brief, briefs.get(0))) {
        throw new IllegalStateException("the same brief came out differently");
      }
    }
  }

  private static void hark(Path printed, String... args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-jar", JAR.toString()));
    command.addAll(List.of(args));
    int code =
        new ProcessBuilder(command)
            .redirectOutput(printed.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start()
            .waitFor();
    if (code != 0) {
      throw new IllegalStateException(String.join(" ", command) + " ended with code " + code);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}

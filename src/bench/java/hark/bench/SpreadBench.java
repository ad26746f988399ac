package hark.bench;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.ensemble.CauseMarginal;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Posterior;
import hark.ensemble.Workers;
import hark.evidence.Entry;
import hark.evidence.EvidenceBook;
import hark.journal.Journal;
import hark.mission.Mission;
import hark.mission.MissionClock;
import hark.mission.MissionFolder;
import hark.orbit.EarthModel;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;

/**
 * How far the posterior of each cause wanders between seeds, beside the error that is stated for
 * it; bodies and processor time. The mission is a folder such as {@code hark demo DIR} writes.
 */
final class SpreadBench {
  private static final int SEEDS = 8;
  private static final double SHOWN_FROM = 0.02;

  private SpreadBench() {}

  static void run(Path folder) {
    Mission mission = MissionFolder.read(folder);
    List<Entry> journal = Journal.read(folder.resolve("journal.db"));
    Instant now = MissionClock.now(mission, journal, Clock.systemUTC());
    ExecutorService executor = Executors.newFixedThreadPool(2);
    try {
      Workers workers = new Workers(executor, 2);
      List<Posterior> posteriors =
          IntStream.rangeClosed(1, SEEDS)
              .mapToObj(seed -> posterior(mission, journal, now, seed, workers))
              .toList();
      print(mission, posteriors);
    } finally {
      executor.shutdownNow();
    }
  }

  private static Posterior posterior(
      Mission mission, List<Entry> journal, Instant now, long seed, Workers workers) {
    AssessmentRequest usual = AssessmentRequest.at(now);
    AssessmentRequest request =
        new AssessmentRequest(now, usual.horizonDays(), usual.members(), seed, 2);
    List<Entry> evidence = EvidenceBook.effective(journal, now);
    DiagnosisInput input = Assessor.input(mission, evidence, request, EarthModel.bundled());
    double before = processorSeconds();
    Posterior posterior = Posterior.of(input, workers);
    System.out.printf(
        Locale.ROOT,
        "seed %d: %d bodies, %.1f s of processor%n",
        seed,
        posterior.bodies(),
        processorSeconds() - before);
    return posterior;
  }

  private static void print(Mission mission, List<Posterior> posteriors) {
    for (int cause = 0; cause < mission.causes().size(); cause++) {
      int c = cause;
      List<CauseMarginal> marginals = posteriors.stream().map(p -> p.causes().get(c)).toList();
      double mean = marginals.stream().mapToDouble(CauseMarginal::posterior).average().orElse(0);
      double stated = marginals.stream().mapToDouble(CauseMarginal::error).average().orElse(0);
      double squares = marginals.stream().mapToDouble(m -> Math.pow(m.posterior() - mean, 2)).sum();
      if (mean >= SHOWN_FROM) {
        System.out.printf(
            Locale.ROOT,
            "%-18s mean %.3f  sd between seeds %.4f  error stated %.4f  bodies alone %s%n",
            mission.causes().get(c).id(),
            mean,
            Math.sqrt(squares / (posteriors.size() - 1)),
            stated,
            posteriors.stream().map(p -> Math.round(p.effectiveBodies()[1 + c])).toList());
      }
    }
  }

  private static double processorSeconds() {
    var system =
        (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    return system.getProcessCpuTime() / 1e9;
  }
}

package hark.bench;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.assessment.EnergyDesk;
import hark.ensemble.Workers;
import hark.mission.FolderSource;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.EarthModel;
import hark.power.Bodies;
import hark.power.BodyHistory;
import hark.power.Illumination;
import hark.power.PowerModel.AttitudeMode;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import hark.trial.PlainBody;
import hark.trial.PlainHistory;
import hark.trial.PlainRequest;
import hark.trial.TwinComparison;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.LongAdder;

/**
 * Error against cost of the simulation's longest step. Bodies are drawn from the demo's mission
 * file, well and with each of a dozen faults; the reference is the plain body at steps of 1 s, and
 * speed, in processor time, is measured against the plain body at steps of 10 s.
 */
final class EnergyBench {
  private static final double DAY = 86_400;
  private static final double DAYS = 6;
  private static final int BODIES = 96;
  private static final double GRID = 600;
  private static final double[] POLICIES = {60, 100, 200, 300, 400, 600};
  private static final int MANY = 1920;
  private static final int THREADS = 2;
  private static final FolderSource DEMO = ResourceFolder.of("hark/demo");
  private static final int BODIES_A_SET = 96;
  private static final double WHAT_IF_DAYS = 14;

  private EnergyBench() {}

  static void run() {
    List<EnergyCase> cases = EnergyCase.cases(BODIES);
    Illumination light = Bodies.orbitsWithPath(16, 0.3);
    List<PlainHistory> truth = new ArrayList<>();
    for (EnergyCase body : cases) {
      truth.add(plain(body, light, 1));
    }
    double twinMicros = twinMicros(cases, light);
    System.out.printf(
        Locale.ROOT,
        "energy: %d bodies, %.0f days; plain twin at 10 s: %.0f µs a member-day%n",
        BODIES,
        DAYS,
        twinMicros);
    for (double step : POLICIES) {
      line(step, cases, light, truth, twinMicros);
    }
    turning(cases, light);
    throughput(light);
    whatIf();
  }

  /** Bodies whose array power changes as they turn: error and cost at the usual step. */
  private static void turning(List<EnergyCase> cases, Illumination light) {
    for (AttitudeMode mode :
        List.of(AttitudeMode.TUMBLING, AttitudeMode.SPINNING, AttitudeMode.NADIR)) {
      List<EnergyCase> turned = new ArrayList<>();
      for (int i = 0; i < cases.size(); i++) { // below 0.6 degrees a second a tumble is followed
        turned.add(cases.get(i).turning(mode, 0.02 + 0.57 * i / cases.size()));
      }
      List<PlainHistory> truth = turned.stream().map(body -> plain(body, light, 1)).toList();
      System.out.print("  " + mode.name().toLowerCase(Locale.ROOT) + " slowly,");
      line(usual(turned.get(0)), turned, light, truth, twinMicros(turned, light));
    }
  }

  private static double usual(EnergyCase body) {
    double[] none = new double[0];
    return new SimulationRequest(DAY, 0, GRID, body.changes(), none, none).longestStepSeconds();
  }

  /**
   * Another number for the demo's bodies, no evidence, so that all of them count; the desk warm.
   */
  private static void whatIf() {
    Mission demo = Missions.read(DEMO);
    AssessmentRequest request =
        new AssessmentRequest(demo.now().orElseThrow(), WHAT_IF_DAYS, BODIES_A_SET, 1, THREADS);
    EnergyDesk desk = Assessor.energy(demo, List.of(), request, EarthModel.bundled());
    double start = 0;
    double best = Double.MAX_VALUE;
    for (int round = 0; round < 8; round++) {
      Map<String, String> set =
          Map.of("spacecraft.battery.cell.capacity_Ah", Double.toString(2 + round / 10.0));
      start = System.nanoTime();
      desk.whatIf(set, Missions.read(DEMO, set));
      best = Math.min(best, (System.nanoTime() - start) / 1e9);
    }
    System.out.printf(
        Locale.ROOT,
        "  what-if on the demo, %d bodies at most, %.0f days ahead, warm: %.2f s of a goal of 1 s%n",
        EnergyDesk.MOST_BODIES,
        WHAT_IF_DAYS,
        best);
  }

  private static PlainHistory plain(EnergyCase body, Illumination light, double step) {
    return PlainBody.run(
        body.model(), light, new PlainRequest(DAYS * DAY, step, GRID, body.changes(), List.of()));
  }

  /** Processor time of this thread, ns: what else the machine does is not counted. */
  private static long processorNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double twinMicros(List<EnergyCase> cases, Illumination light) {
    long best = Long.MAX_VALUE;
    for (int round = 0; round < 3; round++) {
      long start = processorNanos();
      for (EnergyCase body : cases) {
        plain(body, light, 10);
      }
      best = Math.min(best, processorNanos() - start);
    }
    return best / 1e3 / (BODIES * DAYS);
  }

  private static void line(
      double step,
      List<EnergyCase> cases,
      Illumination light,
      List<PlainHistory> truth,
      double twinMicros) {
    TwinErrors errors = new TwinErrors(DAYS, GRID);
    List<BodyHistory> fast = together(cases, light, DAYS, step);
    for (int i = 0; i < cases.size(); i++) {
      errors.add(TwinComparison.of(fast.get(i), truth.get(i)), truth.get(i));
    }
    double micros = micros(cases, light, step);
    System.out.printf(
        Locale.ROOT,
        "  steps of %3.0f s: charge error median %.2f %%, 99 %% %.2f %% where the paths are one"
            + " (%.0f %% of the time); edges apart by %.3f; time on %.2f %% longer, in storms %.2f"
            + " %%; %.1f µs a member-day, %.0f times the twin%n",
        step,
        100 * errors.quantile(0.5),
        100 * errors.quantile(0.99),
        100 * errors.togetherShare(),
        errors.edgeDistance(),
        100 * errors.onExcess(false),
        100 * errors.onExcess(true),
        micros,
        twinMicros / micros);
  }

  private static List<BodyHistory> together(
      List<EnergyCase> cases, Illumination light, double days, double step) {
    List<Simulation.Job> jobs =
        cases.stream()
            .map(body -> new Simulation.Job(body.model(), body.request(days, step)))
            .toList();
    return Simulation.runAll(jobs, light);
  }

  private static double micros(List<EnergyCase> cases, Illumination light, double step) {
    long best = Long.MAX_VALUE;
    for (int round = 0; round < 10; round++) {
      long start = processorNanos();
      together(cases, light, DAYS, step);
      best = Math.min(best, processorNanos() - start);
    }
    return best / 1e3 / (BODIES * DAYS);
  }

  /** As the ensemble runs them: blocks on two threads, fourteen days, the usual step. */
  private static void throughput(Illumination light) {
    List<EnergyCase> well =
        EnergyCase.cases(MANY).stream()
            .map(body -> new EnergyCase(body.model(), List.of()))
            .toList();
    throughput("well bodies", well, light);
    throughput("one in six well, the others each with a fault", EnergyCase.cases(MANY), light);
  }

  private static void throughput(String which, List<EnergyCase> cases, Illumination light) {
    double step = usual(cases.get(0));
    ExecutorService executor = Executors.newFixedThreadPool(THREADS);
    try {
      Workers workers = new Workers(executor, THREADS);
      BodyHistory[] histories = new BodyHistory[MANY];
      long best = Long.MAX_VALUE;
      long leastUsed = Long.MAX_VALUE;
      for (int round = 0; round < 5; round++) {
        LongAdder used = new LongAdder();
        long start = System.nanoTime();
        workers.eachBlock(
            MANY,
            Simulation.BLOCK,
            (from, to) -> {
              long before = processorNanos();
              List<BodyHistory> block = together(cases.subList(from, to), light, 14, step);
              used.add(processorNanos() - before);
              for (int k = from; k < to; k++) {
                histories[k] = block.get(k - from);
              }
            });
        best = Math.min(best, System.nanoTime() - start);
        leastUsed = Math.min(leastUsed, used.sum());
      }
      double perSecond = MANY * 14 / (best / 1e9);
      double micros = leastUsed / 1e3 / (MANY * 14);
      System.out.printf(
          Locale.ROOT,
          "  %d bodies (%s), 14 days, two threads: %.2f s, %.0f member-days a second (aim"
              + " 100000); %.1f µs of processor time each, with two processors of its own %.0f a"
              + " second; %.0f bytes a member-day%n",
          MANY,
          which,
          best / 1e9,
          perSecond,
          micros,
          THREADS * 1e6 / micros,
          Arrays.stream(histories).mapToDouble(EnergyBench::bytes).sum() / (MANY * 14));
    } finally {
      executor.shutdown();
    }
  }

  /**
   * What a history keeps: its grid, and a record's head and numbers for each stretch and change.
   */
  private static double bytes(BodyHistory history) {
    double records = 48.0 * history.segments().size() + 32.0 * history.transitions().size();
    return 5.0 * history.soc().length + records + 40.0 * history.receiverOn().size();
  }
}

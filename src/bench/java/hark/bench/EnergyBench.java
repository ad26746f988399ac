package hark.bench;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.assessment.EnergyDesk;
import hark.ensemble.BodyPrior;
import hark.ensemble.Uncertain;
import hark.ensemble.Workers;
import hark.mission.FolderSource;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.EarthModel;
import hark.power.Bodies;
import hark.power.BodyHistory;
import hark.power.Illumination;
import hark.power.OnboardChange;
import hark.power.OnboardChange.Clearing;
import hark.power.PowerModel;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import hark.power.SimulationRequest.TimedChange;
import hark.trial.PlainBody;
import hark.trial.PlainHistory;
import hark.trial.PlainRequest;
import hark.trial.TwinComparison;
import hark.trial.TwinComparison.Edge;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Error against cost of the simulation's longest step. Bodies are drawn from the demo's mission
 * file, well and with each of a dozen faults; the reference is the plain body at steps of 1 s, and
 * speed is measured against the plain body at steps of 10 s.
 */
final class EnergyBench {
  private static final double DAY = 86_400;
  private static final double DAYS = 6;
  private static final int BODIES = 48;
  private static final double GRID = 600;
  private static final double[] POLICIES = {60, 100, 150, 200, 300, 600};
  private static final int MANY = 1920;
  private static final int THREADS = 2;
  private static final FolderSource DEMO = ResourceFolder.of("hark/demo");
  private static final BodyPrior BODY = Missions.read(DEMO).body();
  private static final int BODIES_A_SET = 96;
  private static final double WHAT_IF_DAYS = 14;

  /** More boots a day than this is a storm. */
  private static final double STORM_BOOTS_A_DAY = 20;

  private EnergyBench() {}

  private record Case(PowerModel model, List<TimedChange> changes) {
    SimulationRequest request(double days, double step) {
      double[] none = new double[0];
      return new SimulationRequest(days * DAY, 0, GRID, changes, none, none, step);
    }
  }

  static void run() {
    List<Case> cases = cases(BODIES);
    Illumination light = Bodies.orbitsWithPath(16, 0.3);
    List<PlainHistory> truth = new ArrayList<>();
    for (Case body : cases) {
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
    throughput(light);
    whatIf();
  }

  /** A draw of the demo's body. */
  private static PowerModel body(SplittableRandom random) {
    List<Uncertain> numbers = BODY.numbers();
    double[] values = new double[numbers.size()];
    for (int k = 0; k < values.length; k++) {
      values[k] = numbers.get(k).quantile(0.02 + 0.96 * random.nextDouble());
    }
    return BODY.build().apply(values);
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

  /** Well bodies and bodies with something wrong from some hours on, in turn. */
  private static List<Case> cases(int count) {
    Set<Clearing> removed = Set.of(Clearing.POWER_REMOVED);
    List<List<OnboardChange>> kinds =
        List.of(
            List.of(),
            List.of(),
            List.of(new OnboardChange.ArrayFactor(0.5)),
            List.of(new OnboardChange.ArrayFactor(0.3)),
            List.of(new OnboardChange.ExtraLoad(0.8, false)),
            List.of(new OnboardChange.BatteryOpen()),
            List.of(new OnboardChange.StringsOpen(1)),
            List.of(new OnboardChange.HoldOffLost(), new OnboardChange.ArrayFactor(0.35)),
            List.of(new OnboardChange.TemperatureShift(-20)),
            List.of(new OnboardChange.ChargePathOpen(false)),
            List.of(new OnboardChange.ComputerHung(0.8, removed)),
            List.of(new OnboardChange.CapacityFactor(0.4)));
    List<Case> cases = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      SplittableRandom random = new SplittableRandom(i);
      List<TimedChange> changes = new ArrayList<>();
      for (OnboardChange change : kinds.get(i % kinds.size())) {
        changes.add(new TimedChange(30_000, change));
      }
      cases.add(new Case(body(random), changes));
    }
    return cases;
  }

  private static PlainHistory plain(Case body, Illumination light, double step) {
    return PlainBody.run(
        body.model(), light, new PlainRequest(DAYS * DAY, step, GRID, body.changes(), List.of()));
  }

  private static double twinMicros(List<Case> cases, Illumination light) {
    long best = Long.MAX_VALUE;
    for (int round = 0; round < 3; round++) {
      long start = System.nanoTime();
      for (Case body : cases) {
        plain(body, light, 10);
      }
      best = Math.min(best, System.nanoTime() - start);
    }
    return best / 1e3 / (BODIES * DAYS);
  }

  private static void line(
      double step,
      List<Case> cases,
      Illumination light,
      List<PlainHistory> truth,
      double twinMicros) {
    Errors errors = new Errors();
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
      List<Case> cases, Illumination light, double days, double step) {
    List<Simulation.Job> jobs =
        cases.stream()
            .map(body -> new Simulation.Job(body.model(), body.request(days, step)))
            .toList();
    return Simulation.runAll(jobs, light);
  }

  private static double micros(List<Case> cases, Illumination light, double step) {
    long best = Long.MAX_VALUE;
    for (int round = 0; round < 15; round++) {
      long start = System.nanoTime();
      together(cases, light, DAYS, step);
      best = Math.min(best, System.nanoTime() - start);
    }
    return best / 1e3 / (BODIES * DAYS);
  }

  /** As the ensemble runs them: blocks on two threads, fourteen days, the usual step. */
  private static void throughput(Illumination light) {
    List<Case> well = cases(MANY).stream().map(body -> new Case(body.model(), List.of())).toList();
    throughput("well bodies", well, light);
    throughput("one in six well, the others each with a fault", cases(MANY), light);
  }

  private static void throughput(String which, List<Case> cases, Illumination light) {
    double step = cases.get(0).request(1, 200).longestStepSeconds();
    ExecutorService executor = Executors.newFixedThreadPool(THREADS);
    try {
      Workers workers = new Workers(executor, THREADS);
      BodyHistory[] histories = new BodyHistory[MANY];
      long best = Long.MAX_VALUE;
      for (int round = 0; round < 4; round++) {
        long start = System.nanoTime();
        workers.eachBlock(
            MANY,
            Simulation.BLOCK,
            (from, to) -> {
              List<BodyHistory> block = together(cases.subList(from, to), light, 14, step);
              for (int k = from; k < to; k++) {
                histories[k] = block.get(k - from);
              }
            });
        best = Math.min(best, System.nanoTime() - start);
      }
      double perSecond = MANY * 14 / (best / 1e9);
      System.out.printf(
          Locale.ROOT,
          "  %d bodies (%s), 14 days, two threads: %.2f s, %.0f member-days a second (aim"
              + " 100000), %.0f bytes a member-day%n",
          MANY,
          which,
          best / 1e9,
          perSecond,
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

  /** Errors of one policy over all bodies. */
  private static final class Errors {
    private final List<Double> together = new ArrayList<>();
    private final List<Double> fastPhases = new ArrayList<>();
    private final List<Double> plainPhases = new ArrayList<>();
    private final double[] fastOn = new double[2];
    private final double[] plainOn = new double[2];
    private int all;

    @SuppressWarnings("EnumOrdinal") // the history promises ordinals
    void add(TwinComparison pair, PlainHistory truth) {
      boolean storm = truth.boots() > STORM_BOOTS_A_DAY * DAYS;
      int which = storm ? 1 : 0;
      fastOn[which] += pair.fastOn();
      plainOn[which] += pair.plainOn();
      phases(pair.fastEdges(), fastPhases);
      phases(pair.plainEdges(), plainPhases);
      if (storm) {
        return;
      }
      int changes = 0;
      boolean one = true;
      for (int g = 0; g < pair.fast().soc().length; g++) {
        boolean same = pair.fast().states()[g] == truth.states().get(g).ordinal();
        // once a switch has come orbits apart, the two lives are two lives
        changes = same ? 0 : changes + 1;
        one &= changes * GRID < 1800;
        all++;
        if (one) {
          together.add(Math.abs(pair.fast().soc()[g] - truth.soc()[g]));
        }
      }
    }

    private static void phases(List<Edge> edges, List<Double> into) {
      edges.forEach(edge -> into.add(edge.seconds() % Bodies.ORBIT_SECONDS));
    }

    double quantile(double share) {
      double[] sorted = together.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      return sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
    }

    double togetherShare() {
      return (double) together.size() / all;
    }

    double onExcess(boolean storm) {
      int which = storm ? 1 : 0;
      return fastOn[which] / plainOn[which] - 1;
    }

    /** Greatest distance of the two distributions of edges over the orbit (Kolmogorov, Smirnov). */
    double edgeDistance() {
      double[] a = fastPhases.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      double[] b = plainPhases.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      double worst = 0;
      for (double phase = 0; phase <= Bodies.ORBIT_SECONDS; phase += 10) {
        worst = Math.max(worst, Math.abs(below(a, phase) - below(b, phase)));
      }
      return worst;
    }

    private static double below(double[] sorted, double value) {
      return (double) Arrays.stream(sorted).filter(x -> x <= value).count() / sorted.length;
    }
  }
}

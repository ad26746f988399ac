package hark.trial.campaign;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.KeptEnsemble;
import hark.ensemble.Posterior;
import hark.ensemble.Sky;
import hark.ensemble.Workers;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.trial.score.Closeness;
import hark.trial.score.Outcome;
import hark.trial.score.Report;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntConsumer;

/**
 * Simulated campaigns of a mission whose truth is known, held against the diagnosis. Windows, paths
 * and sunlight are worked out once for all campaigns; so are bodies, many of them, unless each
 * campaign is to have its own: shared ones give all campaigns one common error, which their number
 * keeps small.
 */
public final class Trial {
  /** The diagnosis looks ahead no further than it must, days. */
  private static final double HORIZON_DAYS = 1.0 / 24;

  /** How much larger the sample is that the fixed cases are held against. */
  public static final int LARGE = 20;

  private final Mission mission;
  private final Settings settings;
  private final Campaign.Stage stage;
  private final Examiner examiner;
  private final int members;
  private KeptEnsemble kept;

  /** A trial of a mission. */
  public Trial(Mission mission, Settings settings, EarthModel earth) {
    this.mission = mission;
    this.settings = settings;
    Instant now = mission.separation().plus(Duration.ofMillis((long) (settings.days() * 86.4e6)));
    AssessmentRequest request =
        new AssessmentRequest(now, HORIZON_DAYS, settings.members(), settings.seed(), 1);
    DiagnosisInput input = Assessor.input(mission, List.of(), request, earth);
    members = input.bodiesPerSet();
    Sky sky = Sky.of(input);
    World truths = new World(input, sky.illumination(), settings.world());
    World same = new World(input, sky.illumination(), Settings.Kind.SAME);
    stage = new Campaign.Stage(input, sky.illumination(), truths, new Geometry(input));
    examiner = new Examiner(input, sky, same);
  }

  /**
   * Runs the campaigns that are still to be run.
   *
   * @param out where outcomes are kept; empty to keep them in memory alone
   * @param resume go on with what is there
   * @param done called with the number of campaigns done so far, from any thread
   */
  public List<Outcome> run(Optional<Path> out, boolean resume, int threads, IntConsumer done) {
    if (out.isEmpty()) {
      return run(new TreeMap<>(), outcome -> {}, threads, done);
    }
    try (ResultsFile<Outcome> file = ResultsFile.open(out.get(), Outcome.class, head(), resume)) {
      return run(file.known(), file::add, threads, done);
    }
  }

  private interface Keeper {
    void keep(Outcome outcome);
  }

  private List<Outcome> run(
      Map<Integer, Outcome> known, Keeper keeper, int threads, IntConsumer done) {
    Map<Integer, Outcome> outcomes = new TreeMap<>();
    List<Integer> open = new ArrayList<>();
    for (int index = 1; index <= settings.campaigns(); index++) {
      if (known.containsKey(index)) {
        outcomes.put(index, known.get(index));
      } else {
        open.add(index);
      }
    }
    done.accept(outcomes.size());
    SideBySide.each(
        open,
        threads,
        index -> {
          Outcome outcome = one(index);
          synchronized (outcomes) {
            keeper.keep(outcome);
            outcomes.put(index, outcome);
            done.accept(outcomes.size());
          }
          return outcome;
        });
    return List.copyOf(outcomes.values());
  }

  /**
   * One campaign and its examination; depends on seed and number alone, and on the bodies that all
   * share.
   */
  Outcome one(int index) {
    Campaign campaign = Campaign.run(stage, settings.seed(), index);
    Posterior diagnosis =
        settings.ownBodies()
            ? examiner.diagnose(campaign, members, seedOf(index), alone())
            : examiner.diagnose(campaign, shared(), alone());
    return examiner.judge(index, campaign, diagnosis, seedOf(index));
  }

  private static Workers alone() {
    return new Workers(new SameThread(), 1);
  }

  /** Made by the first campaign that asks. */
  private synchronized KeptEnsemble shared() {
    if (kept == null) {
      kept = examiner.kept(Settings.SHARED * members, settings.seed(), alone());
    }
    return kept;
  }

  private long seedOf(int index) {
    return settings.seed() * 1_000_003L + index;
  }

  /**
   * The first campaigns once more with {@value #LARGE} times the bodies: what the diagnosis would
   * say if it had all the time it wants.
   */
  public List<Closeness> cases(int count, int threads, IntConsumer done) {
    List<Integer> all = new ArrayList<>();
    for (int index = 1; index <= count; index++) {
      all.add(index);
    }
    int[] finished = {0};
    return SideBySide.each(
        all,
        threads,
        index -> {
          Closeness close = closeness(index);
          synchronized (finished) {
            done.accept(++finished[0]);
          }
          return close;
        });
  }

  private Closeness closeness(int index) {
    Campaign campaign = Campaign.run(stage, settings.seed(), index);
    Posterior usual =
        settings.ownBodies()
            ? examiner.diagnose(campaign, members, seedOf(index), alone())
            : examiner.diagnose(campaign, shared(), alone());
    Outcome small = examiner.judge(index, campaign, usual, seedOf(index));
    // another seed: a larger sample must not hold the small one's draws
    Posterior large = examiner.diagnose(campaign, LARGE * members, ~seedOf(index), alone());
    Outcome big = examiner.judge(index, campaign, large, seedOf(index));
    return Closeness.of(small, big, weights(usual), weights(large));
  }

  private static double[] weights(Posterior diagnosis) {
    double[] sets = diagnosis.setWeights();
    double[] all = java.util.Arrays.copyOf(sets, sets.length + 1);
    all[sets.length] = diagnosis.remainder();
    return all;
  }

  /** No campaign of the wanted kind was found. */
  public static final class Impossible extends IllegalStateException {
    private static final long serialVersionUID = 1;

    /** Says why. */
    public Impossible(String why) {
      super(why);
    }
  }

  /** What the figures are about, for reports. */
  public Report.Subject subject() {
    return new Report.Subject(
        mission.name(),
        settings.days(),
        settings.seed(),
        settings.world().name().toLowerCase(java.util.Locale.ROOT),
        settings.ownBodies() ? members : Settings.SHARED * members,
        stage.input().causes().stream().map(cause -> cause.id()).toList(),
        stage.input().body().keys(),
        examiner.objects(),
        stage.input().stations().stream().map(station -> station.name()).toList());
  }

  private String head() {
    return String.format(
        java.util.Locale.ROOT,
        "{\"hark\":2,\"trial\":\"%s\",\"days\":%s,\"seed\":%d,\"truth\":\"%s\",\"members\":%d,"
            + "\"own\":%b,\"causes\":%d,\"windows\":%d}",
        mission.name().replace('"', '\''),
        settings.days(),
        settings.seed(),
        settings.world(),
        members,
        settings.ownBodies(),
        stage.input().causes().size(),
        stage.geometry().windows().size());
  }
}

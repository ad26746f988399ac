package hark.trial.follow;

import hark.ensemble.Cause;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.trial.campaign.ResultsFile;
import hark.trial.campaign.SideBySide;
import hark.trial.score.FollowReport;
import hark.trial.score.Followed;
import hark.trial.score.RuleRun;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

/**
 * Campaigns of one spacecraft over many orbits, each followed under several rules with one truth
 * and the same luck. Campaign {@code k} depends on seed and {@code k} alone.
 */
public final class FollowTrial {
  private static final double DAY = 86_400;

  private final Mission mission;
  private final FollowSettings settings;
  private final EarthModel earth;
  private final List<Orbits.Orbit> orbits = Orbits.all();

  /** A trial with a mission's spacecraft. */
  public FollowTrial(Mission mission, FollowSettings settings, EarthModel earth) {
    this.mission = mission;
    this.settings = settings;
    this.earth = earth;
  }

  /**
   * Runs the campaigns that are still to be run, orbit by orbit.
   *
   * @param out where results are kept; empty to keep them in memory alone
   * @param resume go on with what is there
   * @param done called with the number of campaigns done so far, from any thread
   */
  public List<Followed> run(Optional<Path> out, boolean resume, int threads, IntConsumer done) {
    if (out.isEmpty()) {
      return run(new TreeMap<>(), each -> {}, threads, done);
    }
    try (ResultsFile<Followed> file = ResultsFile.open(out.get(), Followed.class, head(), resume)) {
      return run(file.known(), file::add, threads, done);
    }
  }

  private List<Followed> run(
      Map<Integer, Followed> known, Consumer<Followed> keeper, int threads, IntConsumer done) {
    Map<Integer, Followed> all = new TreeMap<>(known);
    all.keySet().removeIf(index -> index > settings.campaigns());
    done.accept(all.size());
    for (int orbit = 0; orbit < orbits.size(); orbit++) {
      List<Integer> open = new ArrayList<>();
      for (int index = orbit + 1; index <= settings.campaigns(); index += orbits.size()) {
        if (!all.containsKey(index)) {
          open.add(index);
        }
      }
      if (!open.isEmpty()) {
        Scene scene = scene(orbit);
        Mind mind = mind(scene);
        int over = orbit;
        SideBySide.each(
            open,
            threads,
            index -> {
              Followed followed = one(scene, mind, over, index);
              synchronized (all) {
                keeper.accept(followed);
                all.put(index, followed);
                done.accept(all.size());
              }
              return followed;
            });
      }
    }
    return List.copyOf(all.values());
  }

  private Scene scene(int orbit) {
    Orbits.Orbit there = orbits.get(orbit);
    return Scene.of(Orbits.of(mission, there), there.name(), settings, earth);
  }

  /** Only the plan needs one. */
  private Mind mind(Scene scene) {
    return settings.rules().contains(Rule.HARK) ? new Minds(scene) : (record, now, end) -> null;
  }

  private Followed one(Scene scene, Mind mind, int orbit, int index) {
    Opening opening = Opening.of(scene, settings.seed(), index);
    double end = opening.start() + settings.days() * DAY;
    Craft craft = new Craft(scene, opening.truth(), opening.luck());
    craft.advance(end);
    Play.Base base = new Play.Base(craft.sent());
    List<RuleRun> runs = new ArrayList<>();
    for (Rule rule : settings.rules()) {
      Timesheet sheet = new Timesheet(scene, opening.start(), end, settings.hoursPerWeek());
      Chooser chooser =
          rule == Rule.HARK
              ? new PlanChooser(scene, opening, settings, mind, end)
              : new PlainChooser(scene, rule, opening, end);
      runs.add(new Play(scene, opening, base, sheet, end).run(rule.word(), chooser));
    }
    Timesheet sheet = new Timesheet(scene, opening.start(), end, settings.hoursPerWeek());
    runs.add(new Oracle(scene, opening, end).run(base, sheet));
    return new Followed(
        index, orbit, opening.drawn(), opening.start() / DAY, begun(scene, opening), runs);
  }

  private static List<String> begun(Scene scene, Opening opening) {
    List<String> begun = new ArrayList<>();
    for (int c = 0; c < scene.input().causes().size(); c++) {
      Cause cause = scene.input().causes().get(c);
      if (opening.truth().begunBy(c, opening.start())) {
        begun.add(cause.id());
      }
    }
    return begun;
  }

  /** What the figures are about, for reports. */
  public FollowReport.Subject subject() {
    return new FollowReport.Subject(
        mission.name(),
        settings.days(),
        settings.seed(),
        settings.world().name().toLowerCase(Locale.ROOT),
        settings.hoursPerWeek(),
        orbits.stream().map(Orbits.Orbit::name).toList(),
        settings.rules().stream().map(Rule::word).toList(),
        settings.without().stream().map(Ingredient::word).sorted().toList());
  }

  private String head() {
    return String.format(
        Locale.ROOT,
        "{\"hark\":1,\"followed\":\"%s\",\"days\":%s,\"seed\":%d,\"truth\":\"%s\",\"members\":%d,"
            + "\"hours\":%s,\"rules\":\"%s\",\"without\":\"%s\",\"replan\":%s,\"by\":\"%s\",\"orbits\":%d}",
        mission.name().replace('"', '\''),
        settings.days(),
        settings.seed(),
        settings.world(),
        settings.members(),
        settings.hoursPerWeek(),
        String.join(" ", subject().rules()),
        String.join(" ", subject().without()),
        settings.replanHours(),
        settings.planBy(),
        orbits.size());
  }
}

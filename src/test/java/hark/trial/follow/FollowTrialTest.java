package hark.trial.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.EarthModel;
import hark.plan.PlanSettings;
import hark.plan.Procedure;
import hark.trial.campaign.Settings;
import hark.trial.score.FollowReport;
import hark.trial.score.FollowText;
import hark.trial.score.Followed;
import hark.trial.score.RuleRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every rule meets the same truth and the same luck, and keeps to its hours. */
class FollowTrialTest {
  private static final Mission DEMO = Missions.read(ResourceFolder.of("hark/demo"), Map.of());
  private static final List<Rule> PLAIN =
      List.of(Rule.EVERY, Rule.HIGHEST, Rule.RANDOM, Rule.ROTATION, Rule.HIGHEST_ROTATION);

  @TempDir private static Path folder;

  private static FollowTrial trial(Mission mission, int campaigns, double hours, List<Rule> rules) {
    FollowSettings settings =
        new FollowSettings(
            campaigns,
            8,
            3,
            Settings.Kind.SAME,
            60,
            hours,
            rules,
            Set.of(),
            48,
            PlanSettings.Rule.COVER);
    return new FollowTrial(mission, settings, EarthModel.bundled());
  }

  private static List<Followed> run(FollowTrial trial, int threads) {
    return trial.run(Optional.empty(), false, threads, done -> {});
  }

  private static String text(FollowTrial trial, List<Followed> all) {
    return FollowText.json(FollowReport.of(trial.subject(), all));
  }

  @Test
  void threadsAndInterruptionsChangeNothing() throws IOException {
    FollowTrial whole = trial(DEMO, 3, 5, PLAIN);
    String expected = text(whole, run(whole, 1));
    Path file = folder.resolve("followed.jsonl");
    FollowTrial first = trial(DEMO, 2, 5, PLAIN);
    first.run(Optional.of(file), false, 2, done -> {});
    String kept = Files.readString(file);
    Files.writeString(file, kept.substring(0, kept.length() - 30));
    FollowTrial resumed = trial(DEMO, 3, 5, PLAIN);
    assertEquals(expected, text(resumed, resumed.run(Optional.of(file), true, 2, done -> {})));
  }

  /** A checklist of one item is no checklist: both rules must fare the same to the last digit. */
  @Test
  void rulesThatDoTheSameMeetTheSame() {
    List<Procedure> one =
        DEMO.procedures().stream().filter(p -> p.id().equals("listen-as-planned")).toList();
    Mission plain = DEMO.with(DEMO.causes(), one);
    List<Rule> both = List.of(Rule.EVERY, Rule.ROTATION);
    for (Followed each : run(trial(plain, 4, 10, both), 2)) {
      RuleRun every = each.of("every");
      RuleRun rotation = each.of("rotation");
      assertEquals(every.days(), rotation.days());
      assertEquals(every.hours(), rotation.hours());
    }
  }

  @Test
  void everyRuleKeepsToItsHoursAndNoneIsAheadOfTheOracle() {
    double hours = 4;
    for (Followed each : run(trial(DEMO, 6, hours, PLAIN), 2)) {
      RuleRun oracle = each.of(FollowReport.ORACLE);
      for (RuleRun run : each.runs()) {
        assertTrue(run.hours() <= hours * 8 / 7 + 1e-6, run.toString());
        boolean comparable = run.received() <= 1;
        assertTrue(!comparable || oracle.days() <= run.days() + 1e-9, run + " " + oracle);
      }
    }
  }

  @Test
  void thePlanIsFollowedToo() {
    FollowTrial trial = trial(DEMO, 1, 5, List.of(Rule.HARK, Rule.EVERY));
    List<Followed> all = run(trial, 1);
    RuleRun plan = all.get(0).of("hark");
    assertTrue(plan.sittings() > 0, plan.toString());
    assertTrue(text(trial, all).contains("\"other\" : \"every\""));
  }
}

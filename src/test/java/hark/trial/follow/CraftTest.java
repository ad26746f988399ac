package hark.trial.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Cause;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.EarthModel;
import hark.plan.PlanSettings;
import hark.plan.Procedure;
import hark.power.OnboardCommand;
import hark.trial.campaign.Certain;
import hark.trial.campaign.Settings;
import hark.trial.campaign.Truth;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What commands do to the hidden spacecraft of a campaign. */
class CraftTest {
  private static final Mission DEMO = Missions.read(ResourceFolder.of("hark/demo"), Map.of());
  private static final double DAY = 86_400;

  /** The first orbit with one cause that is there from the start. */
  private static Scene scene(String cause) {
    Mission mission = Orbits.of(DEMO, Orbits.all().get(0));
    List<Cause> causes =
        mission.causes().stream()
            .filter(each -> each.id().equals(cause))
            .map(each -> Certain.cause(each, Certain.CERTAIN, Cause.Onset.SEPARATION))
            .toList();
    Mission only = mission.with(causes, mission.procedures());
    FollowSettings settings =
        new FollowSettings(
            1,
            2,
            1,
            Settings.Kind.SAME,
            60,
            5,
            List.of(Rule.EVERY),
            Set.of(),
            0,
            PlanSettings.Rule.COVER);
    return Scene.of(only, "test", settings, EarthModel.bundled());
  }

  /** Sends a command in every window until it is received; the number of the window, or −1. */
  private static int send(Scene scene, Craft craft, OnboardCommand command) {
    for (int w = 0; w < scene.windows().size() && scene.to(w) < 4 * DAY; w++) {
      craft.advance(scene.from(w));
      if (scene.maySend(w) && craft.send(w, new Procedure.Command(command, 6))) {
        return w;
      }
    }
    return -1;
  }

  private static long bursts(Craft craft, double from) {
    return craft.sent().bursts().stream()
        .flatMapToDouble(Arrays::stream)
        .filter(t -> t >= from)
        .count();
  }

  @Test
  void aReceivedCommandBringsBackABeaconThatIsOff() {
    Scene scene = scene("storage_corrupt");
    Truth truth = scene.world().draw(new SplittableRandom(4));
    Luck luck = new Luck(1, 1);
    Craft left = new Craft(scene, truth, luck);
    Craft sent = new Craft(scene, truth, luck);
    int window = send(scene, sent, OnboardCommand.BEACON_ON);
    assertTrue(window >= 0, "the command was never received");
    double from = scene.to(window);
    left.advance(from + DAY);
    sent.advance(from + DAY);
    assertEquals(0, bursts(left, from));
    assertTrue(bursts(sent, from) > 100);
  }

  @Test
  void aReleaseThatWorksTakesTheAntennasLossAwayOnce() {
    Scene scene = scene("antenna_stowed");
    boolean freed = false;
    for (int k = 0; k < 30 && !freed; k++) {
      Truth truth = scene.world().draw(new SplittableRandom(k));
      Craft craft = new Craft(scene, truth, new Luck(2, k));
      send(scene, craft, OnboardCommand.RELEASE);
      double loss = craft.sent().harms().stream().mapToDouble(harm -> harm.lossDb()).sum();
      freed = Math.abs(loss) < 1e-9;
      assertTrue(loss > -1e-9, "an antenna cannot be freed twice");
    }
    assertTrue(freed);
  }

  @Test
  void aDeafReceiverAcceptsNothing() {
    Scene scene = scene("receiver_deaf");
    Truth truth = scene.world().draw(new SplittableRandom(4));
    Craft craft = new Craft(scene, truth, new Luck(1, 1));
    assertFalse(send(scene, craft, OnboardCommand.RESET) >= 0);
  }
}

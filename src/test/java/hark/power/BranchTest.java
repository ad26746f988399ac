package hark.power;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.power.BodyHistory.BeaconSegment;
import hark.power.BodyHistory.Checkpoint;
import hark.power.BodyHistory.Transition;
import hark.power.OnboardChange.Clearing;
import hark.power.PowerModel.BusState;
import hark.power.SimulationRequest.TimedChange;
import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Checkpoints, what goes on from them, and commands. */
class BranchTest {
  private static final double END = 6 * Bodies.DAY;

  /** On the grid of steps: there, going on is exact. */
  private static final double LATER = 2 * Bodies.DAY + 1200;

  private static final Illumination LIGHT = Bodies.orbits(6);

  private static SimulationRequest request(List<TimedChange> changes) {
    return new SimulationRequest(
        END, 0, 300, changes, new double[] {3600, LATER, 5 * Bodies.DAY}, new double[] {LATER});
  }

  private static List<TimedChange> hung(Clearing by) {
    return List.of(Bodies.at(Bodies.DAY, new OnboardChange.ComputerHung(0.1, Set.of(by))));
  }

  private static BodyHistory branch(
      Bodies body, List<TimedChange> changes, OnboardCommand command) {
    SimulationRequest request = request(changes);
    Checkpoint at = Simulation.run(body.model(), LIGHT, request).checkpoints().get(0);
    return Simulation.branch(body.model(), LIGHT, request, at, command);
  }

  private static boolean speaksAfter(BodyHistory history, double seconds) {
    return history.segments().stream().anyMatch(s -> s.end() > seconds);
  }

  /** A body that has much going on: it cycles, storms and loses parts. */
  private static List<TimedChange> troubles(double arrayFactor) {
    return List.of(
        Bodies.at(0, new OnboardChange.ArrayFactor(arrayFactor)),
        Bodies.at(4000, new OnboardChange.TimersRestart(9000)),
        Bodies.at(Bodies.DAY, new OnboardChange.BatteryOpen()),
        Bodies.at(1.5 * Bodies.DAY, new OnboardChange.HoldOffLost()),
        Bodies.at(3 * Bodies.DAY, new OnboardChange.BootLoop(Set.of(Clearing.POWER_CYCLE))));
  }

  @ParameterizedTest
  @EnumSource(OnboardCommand.class)
  void commandedSideBySideEqualsCommandedAlone(OnboardCommand command) {
    List<Simulation.Continuation> jobs = new ArrayList<>();
    for (int i = 0; i < Simulation.BLOCK + 6; i++) {
      double arrayFactor = 0.2 + 0.011 * i;
      List<TimedChange> changes =
          i % 3 == 0 ? troubles(arrayFactor) : List.of(troubles(arrayFactor).get(0));
      PowerModel model = new Bodies().model();
      SimulationRequest request = request(changes);
      Checkpoint at = Simulation.run(model, LIGHT, request).checkpoints().get(0);
      jobs.add(new Simulation.Continuation(model, request, at));
    }
    List<BodyHistory> together = Simulation.branchAll(jobs, LIGHT, command);
    assertEquals(jobs.size(), together.size());
    for (int i = 0; i < jobs.size(); i++) {
      Simulation.Continuation job = jobs.get(i);
      BodyHistory alone = Simulation.branch(job.model(), LIGHT, job.request(), job.from(), command);
      assertArrayEquals(alone.soc(), together.get(i).soc(), 0, "body " + i);
      assertEquals(alone.segments(), together.get(i).segments());
      assertEquals(alone.transitions(), together.get(i).transitions());
    }
  }

  @ParameterizedTest(name = "array factor {0}")
  @ValueSource(doubles = {1, 0.5, 0.3})
  void goingOnFromACheckpointEqualsNeverHavingStopped(double arrayFactor) {
    for (List<TimedChange> changes :
        List.of(troubles(arrayFactor), List.of(troubles(arrayFactor).get(0)))) {
      PowerModel model = new Bodies().model();
      SimulationRequest request = request(changes);
      BodyHistory whole = Simulation.run(model, LIGHT, request);
      BodyHistory rest = Simulation.resume(model, LIGHT, request, whole.checkpoints().get(0));
      int skipped = (int) Math.round(rest.gridStart() / rest.gridStep());
      assertTrue(rest.gridStart() >= LATER && rest.gridStart() < LATER + 300);
      assertArrayEquals(from(whole.soc(), skipped), rest.soc());
      assertArrayEquals(
          Arrays.copyOfRange(whole.states(), skipped, whole.states().length), rest.states());
      assertEquals(
          whole.segments().stream().filter(s -> s.end() > LATER).toList(), rest.segments());
      List<Transition> later =
          whole.transitions().stream().filter(t -> t.seconds() > LATER).toList();
      boolean all = whole.transitions().size() < PowerPhysics.TRANSITIONS_KEPT;
      int kept = all ? rest.transitions().size() : later.size(); // a storm fills the list
      assertTrue(later.equals(rest.transitions().subList(0, kept)), "transitions differ");
      assertEquals(whole.probes().subList(1, 3), rest.probes());
    }
  }

  private static float[] from(float[] values, int first) {
    return Arrays.copyOfRange(values, first, values.length);
  }

  @Test
  void aCommandWithoutEffectChangesNoBurst() {
    Bodies body = new Bodies();
    BodyHistory plain = Simulation.run(body.model(), LIGHT, request(List.of()));
    BodyHistory told = branch(body, List.of(), OnboardCommand.BEACON_ON);
    assertEquals(plain.segments(), told.segments());
    assertArrayEquals(from(plain.soc(), plain.soc().length - told.soc().length), told.soc());
  }

  @Test
  void theSameArgumentsGiveTheSameHistory() {
    PowerModel model = new Bodies().model();
    BodyHistory one = Simulation.run(model, LIGHT, request(troubles(0.3)));
    BodyHistory two = Simulation.run(model, LIGHT, request(troubles(0.3)));
    assertArrayEquals(one.soc(), two.soc());
    assertEquals(one.segments(), two.segments());
    assertEquals(one.transitions(), two.transitions());
  }

  @Test
  void aResetClearsAHangAndStartsTheTrainOfBurstsAnew() {
    for (Clearing by : List.of(Clearing.RESET_COMMAND, Clearing.POWER_CYCLE)) {
      BodyHistory history = branch(new Bodies(), hung(by), OnboardCommand.RESET);
      double boot = LATER + 2;
      assertEquals(
          new Transition(LATER, BusState.OFF, "reset command"), history.transitions().get(0));
      assertEquals(new Transition(boot, BusState.BOOT, "restart"), history.transitions().get(1));
      assertEquals(
          List.of(new BeaconSegment(0, boot + 30 + 30, 30, END)),
          history.segments(),
          "boot takes thirty seconds, the first burst comes an interval later");
    }
  }

  @Test
  void aResetDoesNotHelpALatchUp() {
    BodyHistory history = branch(new Bodies(), hung(Clearing.POWER_REMOVED), OnboardCommand.RESET);
    assertFalse(speaksAfter(history, LATER));
    assertEquals(BusState.BOOT, history.transitions().get(1).to());
    assertEquals(2, history.transitions().size(), "a hung computer does not leave boot");
  }

  @Test
  void softwareCommandsDoNotReachAHungComputer() {
    for (OnboardCommand command : List.of(OnboardCommand.BEACON_ON, OnboardCommand.LOW_POWER)) {
      BodyHistory history = branch(new Bodies(), hung(Clearing.POWER_CYCLE), command);
      assertFalse(speaksAfter(history, LATER), command.name());
      assertEquals(List.of(), history.transitions());
    }
  }

  @Test
  void beaconOnEndsASilencedBeacon() {
    TimedChange off =
        Bodies.at(Bodies.DAY, new OnboardChange.BeaconDisabled(Set.of(Clearing.BEACON_COMMAND)));
    BodyHistory history = branch(new Bodies(), List.of(off), OnboardCommand.BEACON_ON);
    assertEquals(List.of(new BeaconSegment(0, LATER + 30, 30, END)), history.segments());
  }

  @Test
  void aResetRestartsQuietTimeOnlyWhereTimersDoNotSurviveIt() {
    Bodies body = new Bodies();
    body.restartsOnReset = true;
    BodyHistory history = branch(body, List.of(), OnboardCommand.RESET);
    double boot = LATER + 2;
    BeaconSegment last = history.segments().get(history.segments().size() - 1);
    assertEquals(boot + body.quietSeconds + 30, last.firstBurst());
  }

  @Test
  void lowPowerHoldsSafeForADayAboveTheNominalThreshold() {
    BodyHistory history = branch(new Bodies(), List.of(), OnboardCommand.LOW_POWER);
    Transition down = history.transitions().get(0);
    Transition up = history.transitions().get(1);
    assertEquals(BusState.SAFE, down.to());
    assertEquals(LATER, down.seconds());
    assertEquals(BusState.NOMINAL, up.to());
    assertEquals(LATER + Bodies.DAY, up.seconds(), 1);
    assertEquals(1, history.segments().size(), "both states carry the beacon: no break");
  }

  @Test
  void aReleaseDrawsItsCurrentOnce() {
    Bodies body = new Bodies();
    SimulationRequest plain = request(List.of());
    Checkpoint at = Simulation.run(body.model(), LIGHT, plain).checkpoints().get(0);
    SimulationRequest close =
        new SimulationRequest(
            END, 0, 300, List.of(), new double[] {LATER + 10, LATER + 30}, new double[0]);
    BodyHistory with = Simulation.branch(body.model(), LIGHT, close, at, OnboardCommand.RELEASE);
    BodyHistory without = Simulation.resume(body.model(), LIGHT, close, at);
    double during = without.probes().get(0).batteryAmps() - with.probes().get(0).batteryAmps();
    double after = without.probes().get(1).batteryAmps() - with.probes().get(1).batteryAmps();
    assertEquals(5 / 7.7, during, 0.05);
    assertEquals(0, after, 0.01);
  }

  @Test
  void aWatchdogClearsAHangWithinItsTime() {
    Bodies body = new Bodies();
    body.watchdogSeconds = OptionalDouble.of(7200);
    BodyHistory history = Simulation.run(body.model(), LIGHT, request(hung(Clearing.WATCHDOG)));
    assertEquals(Bodies.DAY + 7200 + 2 + 30 + 30, history.segments().get(1).firstBurst());
    BodyHistory other = Simulation.run(body.model(), LIGHT, request(hung(Clearing.RESET_COMMAND)));
    assertFalse(speaksAfter(other, Bodies.DAY + 1));
  }

  @Test
  void theCommandLossTimerResetsAHungComputerAndItsOtherActionsDoNot() {
    Bodies body = new Bodies();
    for (PowerModel.CommandLossAction action : PowerModel.CommandLossAction.values()) {
      body.commandLoss = Optional.of(new PowerModel.CommandLoss(2 * Bodies.DAY, action, true));
      BodyHistory history =
          Simulation.run(body.model(), LIGHT, request(hung(Clearing.POWER_CYCLE)));
      boolean resets = action == PowerModel.CommandLossAction.RESET;
      assertEquals(resets, speaksAfter(history, 2 * Bodies.DAY), action.name());
    }
  }

  @Test
  void aCheckpointOfAnotherRunIsRefused() {
    PowerModel model = new Bodies().model();
    Checkpoint at = Simulation.run(model, LIGHT, request(List.of())).checkpoints().get(0);
    assertThrows(
        IllegalArgumentException.class,
        () -> Simulation.resume(model, LIGHT, request(troubles(1)), at));
    assertThrows(
        IllegalArgumentException.class,
        () -> Simulation.resume(model, LIGHT, request(List.of()), () -> 5));
  }

  /** A field left out of the copy would make branches differ where no other test looks. */
  @Test
  void aCopyOfTheStateHasEveryField() throws IllegalAccessException {
    BodyState state = new BodyState(2, 2, 2);
    for (Field field : BodyState.class.getDeclaredFields()) {
      if (Modifier.isStatic(field.getModifiers())) {
        continue;
      }
      if (field.getType() == double.class) {
        field.setDouble(state, 17.5);
      } else if (field.getType() == boolean.class) {
        field.setBoolean(state, true);
      } else if (field.getType() == int.class) {
        field.setInt(state, 3);
      } else if (field.getType() == long.class) {
        field.setLong(state, 5);
      } else if (field.getType() == BusState.class) {
        field.set(state, BusState.SAFE);
      } else if (field.getType() == boolean[].class) {
        Array.setBoolean(field.get(state), 1, true);
      } else {
        Array.setDouble(field.get(state), 1, 9);
      }
    }
    BodyState copy = state.copy();
    for (Field field : BodyState.class.getDeclaredFields()) {
      Object[] pair = {field.get(state), field.get(copy)};
      assertTrue(
          Arrays.deepEquals(new Object[] {pair[0]}, new Object[] {pair[1]}), field.getName());
      assertTrue(!field.getType().isArray() || pair[0] != pair[1], field.getName() + " is shared");
    }
  }

  /** A command on the list of what happens does what the same command does at a checkpoint. */
  @ParameterizedTest(name = "{0}")
  @EnumSource(OnboardCommand.class)
  void aCommandThatIsForeseenDoesWhatABranchDoes(OnboardCommand command) {
    List<TimedChange> changes =
        new java.util.ArrayList<>(
            List.of(Bodies.at(Bodies.DAY, new OnboardChange.ComputerHung(0.1, CLEARED))));
    BodyHistory branched = branch(new Bodies(), changes, command);
    changes.add(Bodies.at(LATER, new OnboardChange.Commanded(command)));
    BodyHistory foreseen = Simulation.run(new Bodies().model(), LIGHT, request(changes));
    int skipped = (int) Math.round(branched.gridStart() / branched.gridStep());
    assertArrayEquals(
        Arrays.copyOfRange(foreseen.states(), skipped, foreseen.states().length),
        branched.states());
    assertArrayEquals(from(foreseen.soc(), skipped), branched.soc(), 1e-4f);
    assertEquals(
        command == OnboardCommand.RESET, speaksAfter(foreseen, LATER + 3600), "clears the hang");
  }

  private static final Set<Clearing> CLEARED = Set.of(Clearing.RESET_COMMAND);
}

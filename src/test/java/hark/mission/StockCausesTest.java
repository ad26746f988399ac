package hark.mission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.ensemble.Cause;
import hark.ensemble.Effect;
import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTrees;
import hark.fault.Solution;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class StockCausesTest {
  private final CausesFile stock = CausesFile.stock();

  @Test
  void thereIsOneOnEveryBranchAndEachIsTold() {
    assertEquals(25, stock.causes().size());
    Set<String> branches =
        stock.causes().stream().map(Cause::branch).collect(Collectors.toCollection(TreeSet::new));
    assertEquals(
        Set.of("power", "computer", "radio", "antenna", "thermal", "mechanical"), branches);
    for (Cause cause : stock.causes()) {
      assertTrue(cause.probability() > 0, cause.id());
      assertTrue(cause.mechanism().endsWith("."), cause.id());
      assertFalse(cause.signature().isEmpty(), cause.id());
      assertEquals("judgement", cause.sources().get(0), cause.id());
      assertTrue(cause.sources().size() > 1, cause.id() + " names no anchor");
      assertFalse(cause.effects().isEmpty(), cause.id());
    }
    assertTrue(stock.warnings().isEmpty(), stock.warnings().toString());
  }

  @Test
  void priorsAddUpToTheirFirstProposal() {
    // judgement at separation: any of them about one in three
    double none =
        stock.causes().stream().mapToDouble(c -> 1 - c.probability()).reduce(1, (a, b) -> a * b);
    assertEquals(1.0 / 3, 1 - none, 0.05);
    assertEquals(.05, sum("computer_hung", "boot_loop", "storage_corrupt"), 1e-12);
    assertEquals(.024, sum("battery_open", "string_open"), 1e-12);
    assertEquals(.02, sum("threshold_wrong", "hold_off_lost"), 1e-12);
    assertEquals(.024, sum("antenna_stowed", "antenna_broken"), 1e-12);
    assertEquals(.012, sum("battery_cold", "transmitter_hot"), 1e-12);
  }

  @Test
  void treeLeavesAreTheCausesAndFourNuisancesWithoutProbability() {
    List<String> nuisances =
        stock.tree().events().values().stream()
            .filter(BasicEvent::nuisance)
            .map(BasicEvent::id)
            .toList();
    assertEquals(
        List.of("wrong_object", "along_track_error", "station_deaf", "fast_tumble"), nuisances);
    assertEquals(29, stock.tree().events().size());
    Set<String> joined =
        Set.of(
            "power", "computer", "radio", "antenna", "thermal", "mechanical", "orbit", "station");
    assertEquals(joined, Set.copyOf(stock.tree().gates().get("no_beacon_heard").inputs()));
  }

  @Test
  void treeIsSolvedAndWhatSilencesAloneIsACutSetOfOne() {
    Solution solved = FaultTrees.solve(stock.tree(), 9);
    // by hand: receiver and counter silence nothing by themselves, the other 23 do
    double none =
        stock.causes().stream()
            .filter(c -> !Set.of("receiver_deaf", "counter_out_of_step").contains(c.id()))
            .mapToDouble(c -> 1 - c.probability())
            .reduce(1, (a, b) -> a * b);
    assertEquals(1 - none, solved.probability(), 1e-12);
    assertEquals(23, solved.cutSets().byOrder().get(1));
    assertEquals(23, solved.cutSets().count());
  }

  @Test
  void everyEffectThereIsIsReadFromItsKey() {
    Set<Class<?>> used =
        stock.causes().stream()
            .flatMap(cause -> cause.effects().stream())
            .map(Effect::getClass)
            .collect(Collectors.toSet());
    Set<Class<?>> known = Set.of(Effect.class.getPermittedSubclasses());
    // which string or face is lost is for a mission's own file to say
    Set<Class<?>> named = Set.of(Effect.ArrayStringLost.class, Effect.FaceLost.class);
    assertEquals(named, missing(known, used));
    assertEquals(Set.of(), missing(used, known));
  }

  private static Set<Class<?>> missing(Set<Class<?>> all, Set<Class<?>> there) {
    return all.stream().filter(one -> !there.contains(one)).collect(Collectors.toSet());
  }

  @Test
  void releaseCanCureWhatIsStowedAndNotWhatIsBroken() {
    assertTrue(cause("antenna_stowed").clearsOn().contains(Cause.ClearsOn.COMMAND));
    assertTrue(cause("arrays_stowed").clearsOn().contains(Cause.ClearsOn.COMMAND));
    assertTrue(cause("antenna_broken").clearsOn().isEmpty());
    assertEquals(Set.of(Cause.ClearsOn.POWER_REMOVED), cause("latch_up").clearsOn());
  }

  private Cause cause(String id) {
    return stock.causes().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }

  private double sum(String... ids) {
    return List.of(ids).stream().mapToDouble(id -> cause(id).probability()).sum();
  }
}

package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.Assessment.TreeNode;
import hark.ensemble.CauseMarginal;
import hark.ensemble.Diagnosis;
import hark.ensemble.SmallCase;
import hark.fault.FaultTree;
import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTree.Gate;
import hark.fault.FaultTree.Join;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TreeNodesTest {
  private static final double ROUNDING = 1e-9;
  private static final Diagnosis DIAGNOSIS =
      new SmallCase()
          .heard(SmallCase.NEAR, 0)
          .nothing(SmallCase.NEAR, 2)
          .nothing(SmallCase.FAR, 3)
          .diagnose();

  private final Map<String, TreeNode> nodes =
      TreeNodes.of(tree(), DIAGNOSIS).stream()
          .collect(Collectors.toMap(TreeNode::id, Function.identity()));

  private static FaultTree tree() {
    Map<String, BasicEvent> events = new LinkedHashMap<>();
    DIAGNOSIS
        .input()
        .causes()
        .forEach(c -> events.put(c.id(), new BasicEvent(c.id(), c.title(), c.probability())));
    events.put("ground", BasicEvent.nuisance("ground", "kept elsewhere"));
    Map<String, Gate> gates = new LinkedHashMap<>();
    for (Gate gate :
        List.of(
            gate("top", Join.OR, "mute", "both", "neither", "place"),
            gate("mute", Join.OR, "transmitter_dead", "lost"),
            gate("both", Join.AND, "weak", "hung"),
            gate("neither", Join.NOT, "mute"),
            gate("place", Join.OR, "ground"))) {
      gates.put(gate.id(), gate);
    }
    return new FaultTree("top", gates, events);
  }

  private static Gate gate(String id, Join join, String... inputs) {
    return new Gate(id, id, join, 0, List.of(inputs));
  }

  @Test
  void anEventStandsWhereItsCauseStands() {
    for (String id : List.of("transmitter_dead", "lost", "weak", "hung")) {
      int at = DIAGNOSIS.input().causes().stream().map(c -> c.id()).toList().indexOf(id);
      CauseMarginal cause = DIAGNOSIS.causes().get(at);
      assertEquals(cause.posterior(), nodes.get(id).now().getAsDouble(), ROUNDING, id);
      assertEquals(cause.error(), nodes.get(id).error(), ROUNDING, id);
      assertEquals(cause.prior(), nodes.get(id).prior().getAsDouble(), ROUNDING, id);
    }
  }

  @Test
  void aGateHoldsWhereWhatHasBegunMakesItHold() {
    double mute = DIAGNOSIS.anyBegun(List.of(0, 1))[0];
    assertEquals(mute, nodes.get("mute").now().getAsDouble(), ROUNDING);
    double of = 1 - DIAGNOSIS.remainder();
    assertEquals(of - mute, nodes.get("neither").now().getAsDouble(), ROUNDING);
    double both = nodes.get("both").now().getAsDouble();
    assertTrue(both > 0 && both < nodes.get("weak").now().getAsDouble(), "both: " + both);
  }

  @Test
  void atTheStartGatesAreExact() {
    assertEquals(1 - 0.97 * 0.99, nodes.get("mute").prior().getAsDouble(), ROUNDING);
    assertEquals(0.05 * 0.05, nodes.get("both").prior().getAsDouble(), ROUNDING);
  }

  @Test
  void whatIsKeptElsewhereHasNoFigure() {
    for (String id : List.of("ground", "place")) {
      assertTrue(nodes.get(id).prior().isEmpty() && nodes.get(id).now().isEmpty(), id);
    }
    assertEquals("elsewhere", nodes.get("ground").join());
  }

  @Test
  void theTopComesFirst() {
    assertEquals("top", TreeNodes.of(tree(), DIAGNOSIS).get(0).id());
  }
}

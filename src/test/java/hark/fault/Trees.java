package hark.fault;

import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTree.Gate;
import hark.fault.FaultTree.Join;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Trees for tests. */
final class Trees {
  private final Map<String, Gate> gates = new LinkedHashMap<>();
  private final Map<String, BasicEvent> events = new LinkedHashMap<>();

  static Trees start() {
    return new Trees();
  }

  Trees event(String id, double probability) {
    events.put(id, new BasicEvent(id, id, probability));
    return this;
  }

  Trees gate(String id, Join join, String... inputs) {
    gates.put(id, new Gate(id, id, join, 0, List.of(inputs)));
    return this;
  }

  Trees atLeast(String id, int k, String... inputs) {
    gates.put(id, new Gate(id, id, Join.AT_LEAST, k, List.of(inputs)));
    return this;
  }

  FaultTree top(String id) {
    return new FaultTree(id, gates, events);
  }

  /** Pressure tank of NUREG-0492 and of NASA's handbook, with gates as they are drawn. */
  static FaultTree pressureTank(double k1) {
    return start()
        .event("T", 5e-6)
        .event("K2", 3e-5)
        .event("S", 1e-4)
        .event("S1", 3e-5)
        .event("R", 1e-4)
        .event("K1", k1)
        .gate("E1", Join.OR, "T", "E2")
        .gate("E2", Join.OR, "E3", "K2")
        .gate("E3", Join.AND, "S", "E4")
        .gate("E4", Join.OR, "S1", "E5")
        .gate("E5", Join.OR, "K1", "R")
        .top("E1");
  }

  /** A seeded tree of up to 8 events in which events and gates are shared. */
  static FaultTree random(long seed, boolean withNot) {
    SplittableRandom random = new SplittableRandom(seed);
    Trees trees = start();
    int events = random.nextInt(2, 9);
    for (int e = 0; e < events; e++) {
      trees.event("e" + e, random.nextDouble());
    }
    int gates = random.nextInt(2, 9);
    for (int g = gates - 1; g >= 0; g--) {
      trees.addRandom(random, g, gates, events, withNot);
    }
    return trees.top("g0");
  }

  private void addRandom(
      SplittableRandom random, int gate, int gates, int events, boolean withNot) {
    int later = gates - gate - 1;
    List<String> inputs =
        random
            .ints(random.nextInt(1, 5), 0, events + later)
            .distinct()
            .mapToObj(i -> i < events ? "e" + i : "g" + (gate + 1 + i - events))
            .toList();
    Join join = Join.values()[random.nextInt(withNot ? 4 : 3)];
    List<String> taken = join == Join.NOT ? inputs.subList(0, 1) : inputs;
    int k = join == Join.AT_LEAST ? random.nextInt(1, taken.size() + 1) : 0;
    String id = "g" + gate;
    this.gates.put(id, new Gate(id, id, join, k, taken));
  }
}

package hark.mission;

import hark.fault.FaultTree;
import hark.fault.FaultTree.BasicEvent;
import hark.fault.FaultTree.Gate;
import hark.fault.FaultTree.Join;
import hark.fault.FaultTrees;
import hark.mission.YamlTree.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The tree part of a causes file: probabilities, gates and top. Keys of the diagnosis (effect,
 * onset …) may be there; {@link CauseReader} reads them.
 *
 * @param tree sound, unless problems were added while it was read
 * @param events definitions of the basic events by id
 * @param gates definitions of the gates by id
 */
record FaultTreeFile(FaultTree tree, Map<String, YamlTree> events, Map<String, YamlTree> gates) {
  /** Days that stock probabilities are meant for. */
  static final double DAYS_OF_PRIOR = 30;

  /** Ways to write a gate. */
  static final List<String> JOINS = List.of("or", "and", "at_least", "not");

  private static final List<String> DIAGNOSIS_KEYS =
      List.of("branch", "onset", "effect", "clears_on", "mechanism", "signature", "sources");

  static FaultTreeFile read(YamlTree file, double missionHours, Problems problems) {
    int before = problems.count();
    YamlMap map = YamlMap.of(file, problems);
    YamlValues.whole(map.require("hark"), 1, 1, problems);
    Map<String, YamlTree> eventNodes = definitions(map.require("events"), problems);
    Map<String, YamlTree> gateNodes = definitions(map.get("gates"), problems);
    String top = YamlValues.text(map.require("top"), problems).orElse("");
    map.finish();
    Map<String, BasicEvent> events = new LinkedHashMap<>();
    eventNodes.forEach((id, n) -> events.put(id, event(id, n, missionHours, problems)));
    Map<String, Gate> gates = new LinkedHashMap<>();
    gateNodes.forEach((id, n) -> gate(id, n, problems).ifPresent(gate -> gates.put(id, gate)));
    FaultTreeFile read =
        new FaultTreeFile(new FaultTree(top, gates, events), eventNodes, gateNodes);
    boolean whole = gates.size() == gateNodes.size() && !top.isEmpty();
    if (whole || problems.count() == before) {
      problems.addAll(FaultTrees.problems(read.tree, id -> read.where(id, file)));
    }
    return read;
  }

  /** Where an id is defined. */
  String where(String id) {
    YamlTree node = gates.containsKey(id) ? gates.get(id) : events.get(id);
    return node == null ? id : node.where();
  }

  private String where(String id, YamlTree file) {
    boolean defined = gates.containsKey(id) || events.containsKey(id);
    return defined ? where(id) : file.find("top").map(YamlTree::where).orElse(file.where());
  }

  private static Map<String, YamlTree> definitions(YamlTree node, Problems problems) {
    if (!node.isNothing() && node.kind() != Kind.MAP) {
      problems.add(node, "found " + node.found() + ", expected ids", "write ID: { … }");
    }
    return node.entries();
  }

  private static BasicEvent event(String id, YamlTree node, double hours, Problems problems) {
    YamlMap map = YamlMap.of(node, problems);
    String title = YamlValues.text(map.get("title"), problems).orElse(id);
    YamlTree reads = map.get("reads");
    YamlTree plain = map.get("probability");
    YamlTree hazard = map.get("hazard_per_day");
    map.finish(DIAGNOSIS_KEYS);
    if (!reads.isNothing()) {
      YamlValues.choice(reads, Reads.class, problems);
      if (!plain.isNothing() || !hazard.isNothing()) {
        problems.add(
            reads,
            "an event that reads something else has no probability of its own",
            "take 'reads' or the probability away");
      }
      return BasicEvent.nuisance(id, title);
    }
    return new BasicEvent(id, title, probability(map.node(), plain, hazard, hours, problems));
  }

  private static double probability(
      YamlTree event, YamlTree plain, YamlTree hazard, double hours, Problems problems) {
    if (plain.isNothing() == hazard.isNothing()) {
      if (event.kind() == Kind.MAP) {
        problems.add(
            event,
            plain.isNothing() ? "the event has no probability" : "the event has two probabilities",
            "write either probability or hazard_per_day");
      }
      return 0;
    }
    Span any = Span.of(0, 1).orIn("percent", 0.01);
    OptionalDouble written = YamlValues.number(plain, any, problems);
    if (!plain.isNothing()) {
      return written.orElse(0);
    }
    double perDay = YamlValues.number(hazard, Span.of(0, 1e6), problems).orElse(0);
    return -Math.expm1(-perDay * hours / 24);
  }

  private static Optional<Gate> gate(String id, YamlTree node, Problems problems) {
    YamlMap map = YamlMap.of(node, problems);
    String title = YamlValues.text(map.get("title"), problems).orElse(id);
    List<String> written = JOINS.stream().filter(j -> !map.get(j).isNothing()).toList();
    YamlTree of = map.get("of");
    map.finish();
    if (written.size() != 1) {
      if (node.kind() == Kind.MAP) {
        problems.add(
            node,
            written.isEmpty() ? "the gate joins nothing" : "the gate joins in two ways",
            "write one of or, and, at_least, not with its inputs");
      }
      return Optional.empty();
    }
    YamlTree inputs = map.get(written.get(0));
    if (written.get(0).equals("at_least")) {
      return atLeast(id, title, inputs, of, problems);
    }
    Join join = Join.valueOf(written.get(0).toUpperCase(java.util.Locale.ROOT));
    return Optional.of(new Gate(id, title, join, 0, YamlValues.texts(inputs, problems)));
  }

  /** {@code at_least: [K, a, b, …]} or {@code at_least: K} with {@code of: [a, b, …]}. */
  private static Optional<Gate> atLeast(
      String id, String title, YamlTree node, YamlTree of, Problems problems) {
    boolean inOne = node.kind() == Kind.LIST;
    boolean missing = inOne ? node.items().isEmpty() : of.isNothing();
    if (missing) {
      problems.add(
          node,
          "found " + node.found() + ", expected how many of which inputs",
          "write at_least: [2, first, second, third]");
      return Optional.empty();
    }
    int most = FaultTrees.MOST_INPUTS;
    Optional<Integer> k = YamlValues.whole(inOne ? node.items().get(0) : node, 0, most, problems);
    List<String> inputs =
        inOne
            ? node.items().stream()
                .skip(1)
                .flatMap(item -> YamlValues.text(item, problems).stream())
                .toList()
            : YamlValues.texts(of, problems);
    return k.map(count -> new Gate(id, title, Join.AT_LEAST, count, inputs));
  }

  /** What a nuisance reads. */
  enum Reads {
    OBJECT,
    ALONG_TRACK,
    STATION,
    TUMBLE
  }
}

package hark.mission;

import hark.ensemble.Cause;
import hark.ensemble.Effect;
import hark.fault.FaultTree.BasicEvent;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the diagnosis needs of each event of a causes file. */
final class CauseReader {
  /** Branches of the tree that causes hang on. */
  private enum Branch {
    POWER,
    COMPUTER,
    RADIO,
    ANTENNA,
    THERMAL,
    MECHANICAL
  }

  /** Onsets of the format that this edition does not compute. */
  private static final Set<String> ONSETS_LATER = Set.of("reset", "command");

  private CauseReader() {}

  /** Causes in the order written, without nuisances; the tree part has been read before. */
  static List<Cause> list(FaultTreeFile file, Problems problems) {
    List<Cause> causes = new ArrayList<>();
    file.events()
        .forEach(
            (id, node) -> {
              BasicEvent event = file.tree().events().get(id);
              if (node.kind() == YamlTree.Kind.MAP && !event.nuisance()) {
                cause(id, YamlMap.of(node, problems), event.probability(), problems)
                    .ifPresent(causes::add);
              }
            });
    return causes;
  }

  private static Optional<Cause> cause(
      String id, YamlMap map, double probability, Problems problems) {
    int before = problems.count();
    String title = YamlValues.text(map.require("title"), problems).orElse("");
    Optional<Branch> branch = YamlValues.choice(map.require("branch"), Branch.class, problems);
    Optional<Cause.Onset> onset = onset(map, problems);
    List<Effect> effects = EffectReader.list(map.require("effect"), problems);
    Set<Cause.ClearsOn> clears = clearsOn(map.get("clears_on"), problems);
    String mechanism = YamlValues.text(map.get("mechanism"), problems).orElse("");
    String signature = YamlValues.text(map.get("signature"), problems).orElse("");
    List<String> sources = YamlValues.texts(map.get("sources"), problems);
    refuseSure(map, probability, problems);
    if (problems.count() > before) {
      return Optional.empty();
    }
    return Optional.of(
        new Cause(
            id,
            title,
            lower(branch.orElseThrow()),
            probability,
            onset.orElseThrow(),
            effects,
            clears,
            mechanism,
            signature,
            sources));
  }

  /** A cause is weighed against its absence, so a sure event is refused. */
  private static void refuseSure(YamlMap map, double probability, Problems problems) {
    if (probability == 1) {
      problems.add(
          map.node(),
          "the event is sure to happen; a cause is weighed against its absence",
          "write a probability below 1, or put it into the mission's numbers");
    }
  }

  private static Optional<Cause.Onset> onset(YamlMap map, Problems problems) {
    YamlTree node = map.get("onset");
    if (node.isNothing()) {
      boolean hazard = !map.get("hazard_per_day").isNothing();
      return Optional.of(hazard ? Cause.Onset.HAZARD : Cause.Onset.UNIFORM);
    }
    if (ONSETS_LATER.contains(node.text())) {
      problems.add(
          node,
          "onset '" + node.text() + "' is part of the format and not yet computed",
          "use separation, uniform, hazard, first_eclipse or first_transmission");
      return Optional.empty();
    }
    return YamlValues.choice(node, Cause.Onset.class, problems);
  }

  private static Set<Cause.ClearsOn> clearsOn(YamlTree node, Problems problems) {
    Set<Cause.ClearsOn> clears = EnumSet.noneOf(Cause.ClearsOn.class);
    for (YamlTree item : YamlValues.list(node, problems)) {
      YamlValues.choice(item, Cause.ClearsOn.class, problems).ifPresent(clears::add);
    }
    return clears;
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(java.util.Locale.ROOT);
  }
}

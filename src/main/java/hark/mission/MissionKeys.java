package hark.mission;

import hark.mission.YamlTree.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Every key of a mission file as a flat list: what is written, then what is taken by default. */
public final class MissionKeys {
  /** Keys of a number with a spread, which is read as one value. */
  private static final Set<String> SPREAD = Set.of("mean", "sd", "min", "max", "median", "factor");

  private final YamlTree top;
  private final List<MissionKey> keys = new ArrayList<>();

  private MissionKeys(YamlTree top) {
    this.top = top;
  }

  /**
   * The keys of a text; none when it cannot be read.
   *
   * @param defaults what the reader took for keys that are not written
   */
  public static List<MissionKey> list(String yaml, List<DefaultUsed> defaults) {
    MissionKeys list = new MissionKeys(YamlTree.parse("mission.yaml", yaml, new Problems()));
    list.add(list.top);
    Set<String> written = list.keys.stream().map(MissionKey::key).collect(Collectors.toSet());
    for (DefaultUsed used : defaults) {
      String key = list.named(used.key());
      if (!written.contains(key)) { // a key written as null is both
        list.keys.add(new MissionKey(key, used.value(), unit(used.key()), 0));
      }
    }
    return List.copyOf(list.keys);
  }

  private void add(YamlTree node) {
    if (node.kind() == Kind.MAP && !isNumber(node)) {
      node.entries().values().forEach(this::add);
    } else if (node.items().stream().anyMatch(item -> item.kind() == Kind.MAP)) {
      node.items().forEach(this::add);
    } else if (!node.path().isEmpty()) {
      String path = node.path();
      keys.add(new MissionKey(named(path), printed(node), unit(path), node.line()));
    }
  }

  private static boolean isNumber(YamlTree map) {
    return !map.entries().isEmpty() && SPREAD.containsAll(map.entries().keySet());
  }

  private String named(String path) {
    return KeyPath.named(top, path);
  }

  private static String unit(String path) {
    return KeyUnits.of(path);
  }

  private static String printed(YamlTree node) {
    return switch (node.kind()) {
      case MAP ->
          node.entries().entrySet().stream()
              .map(e -> e.getKey() + ": " + printed(e.getValue()))
              .collect(Collectors.joining(", ", "{ ", " }"));
      case LIST ->
          node.items().stream()
              .map(MissionKeys::printed)
              .collect(Collectors.joining(", ", "[", "]"));
      case TEXT -> node.text();
      case NOTHING -> "null";
    };
  }
}

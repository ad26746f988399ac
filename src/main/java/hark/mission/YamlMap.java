package hark.mission;

import hark.mission.YamlTree.Kind;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * A map being read: remembers which keys were asked for, and at the end names those nobody knows.
 */
public final class YamlMap {
  private final YamlTree node;
  private final Problems problems;
  private final Set<String> known = new LinkedHashSet<>();

  private YamlMap(YamlTree node, Problems problems) {
    this.node = node;
    this.problems = problems;
  }

  /** Begins reading; a node that is not a map is a problem, and is then read as an empty one. */
  public static YamlMap of(YamlTree node, Problems problems) {
    if (node.kind() != Kind.MAP) {
      problems.add(
          node, "found " + node.found() + ", expected keys with values", "write key: value");
    }
    return new YamlMap(node, problems);
  }

  /** The map itself. */
  public YamlTree node() {
    return node;
  }

  /** The value of an optional key; a node of kind NOTHING when it is not written. */
  public YamlTree get(String key) {
    known.add(key);
    return node.find(key).orElseGet(() -> node.absent(key));
  }

  /** The value of a key that must be there; its absence is a problem named at this map's line. */
  public YamlTree require(String key) {
    YamlTree value = get(key);
    if (value.isNothing() && node.kind() == Kind.MAP) {
      boolean written = node.find(key).isPresent();
      problems.add(
          value,
          written ? "the key has no value" : "the key is missing",
          written ? "write its value after the colon" : "add it here");
    }
    return value;
  }

  /** Names every key that was not asked for, with the nearest one that was. Call it last. */
  public void finish() {
    finish(Set.of());
  }

  /** As {@link #finish()}, with further keys that are known though nobody asked for them. */
  public void finish(Collection<String> alsoKnown) {
    known.addAll(alsoKnown);
    node.entries()
        .forEach(
            (key, value) -> {
              if (!known.contains(key)) {
                problems.add(value, "'" + key + "' is not a key here", advice(key));
              }
            });
  }

  private String advice(String key) {
    Optional<String> nearest = NearestKey.find(key, known);
    return nearest
        .map(near -> "did you mean '" + near + "'?")
        .orElseGet(() -> "known here: " + String.join(", ", known));
  }
}

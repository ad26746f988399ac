package hark.mission;

import hark.mission.YamlTree.Kind;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * A map being read: remembers which keys were asked for, and at the end names those nobody knows.
 */
public final class YamlMap {
  /** How a problem with an unknown key ends. */
  static final String UNKNOWN = "' is not a key here";

  private final YamlTree node;
  private final Problems problems;
  private final Set<String> known = new LinkedHashSet<>();
  private final Map<String, Problem> missing = new HashMap<>();

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
      Problem problem =
          new Problem(
              written ? "the key has no value" : "the key is missing",
              value.where(),
              written ? "write its value after the colon" : "add it here");
      missing.put(key, problem);
      problems.add(problem);
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
                addUnknown(key, value);
              }
            });
  }

  /** A misspelt key that had to be there is one problem, not two. */
  private void addUnknown(String key, YamlTree value) {
    Problem unknown =
        new Problem("'" + key + UNKNOWN, value.where(), NearestWord.advice(key, known));
    Problem absent = NearestWord.find(key, known).map(missing::remove).orElse(null);
    if (absent == null) {
      problems.add(unknown);
    } else {
      problems.replace(absent, unknown);
    }
  }
}

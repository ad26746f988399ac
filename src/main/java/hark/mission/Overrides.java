package hark.mission;

import hark.mission.KeyPath.Step;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Other values for keys of a mission file, laid over it before it is read, so that every check of
 * the reader meets them too. Problems with them point to {@code --what-if KEY=VALUE}.
 */
final class Overrides {
  private static final String OPTION = "--what-if ";
  private static final int MAX_SHOWN = 80;

  private final Map<String, String> values;

  /** Paths of overridden keys by the words that problems point with. */
  private final Map<String, String> pathByLabel = new LinkedHashMap<>();

  /**
   * Takes values by key.
   *
   * @param values YAML by dotted path; laid over the file in the map's order
   */
  Overrides(Map<String, String> values) {
    this.values = new LinkedHashMap<>(values);
  }

  /** The tree with the values in their places; what cannot be placed becomes a problem. */
  YamlTree over(YamlTree top, Problems problems) {
    YamlTree tree = top;
    for (Map.Entry<String, String> entry : values.entrySet()) {
      String key = entry.getKey().strip();
      String label = label(key, entry.getValue());
      Optional<KeyPath> path = KeyPath.parse(key);
      if (path.isEmpty()) {
        problems.add(
            new Problem(
                "'" + key + "' is no path of keys",
                label,
                "write it as hark check --show-defaults prints keys, such as"
                    + " spacecraft.battery.cell.capacity_Ah"));
        continue;
      }
      YamlTree before = tree;
      tree =
          value(entry.getValue(), label, problems)
              .flatMap(value -> new Placing(label, value, problems).at(before, path.get().steps()))
              .orElse(before);
    }
    return tree;
  }

  private static String label(String key, String value) {
    String plain = (key + "=" + value.strip()).replaceAll("\\s+", " ");
    return OPTION + (plain.length() <= MAX_SHOWN ? plain : plain.substring(0, MAX_SHOWN - 1) + "…");
  }

  private static Optional<YamlTree> value(String yaml, String label, Problems problems) {
    if (yaml.isBlank()) {
      problems.add(
          new Problem(
              "there is no value after the key",
              label,
              "write KEY=VALUE; null takes the key away"));
      return Optional.empty();
    }
    Problems own = new Problems();
    YamlTree read = YamlTree.parse(label, yaml, own);
    own.list()
        .forEach(
            p ->
                problems.add(
                    new Problem(
                        p.what(), label, "write a number, a word, [a, b] or { key: value }")));
    return own.isEmpty() ? Optional.of(read) : Optional.empty();
  }

  /** One value on its way down to its place. */
  private final class Placing {
    private final String label;
    private final YamlTree value;
    private final Problems problems;

    Placing(String label, YamlTree value, Problems problems) {
      this.label = label;
      this.value = value;
      this.problems = problems;
    }

    /**
     * The node with the value at the end of the steps; empty, with a problem, when that cannot be.
     */
    Optional<YamlTree> at(YamlTree node, List<Step> steps) {
      if (steps.isEmpty()) {
        pathByLabel.put(label, node.path());
        return Optional.of(value.movedTo(label, node.path()));
      }
      Step step = steps.get(0);
      List<Step> rest = steps.subList(1, steps.size());
      return step.item() ? atItem(node, step, rest) : atKey(node, step.word(), rest);
    }

    private Optional<YamlTree> atKey(YamlTree node, String key, List<Step> rest) {
      if (node.kind() != YamlTree.Kind.MAP && !node.isNothing()) {
        return refuse(
            "'" + node.path() + "' is " + node.found() + " and has no key '" + key + "'",
            "give '" + node.path() + "' a value of its own");
      }
      // a map that is not in the file has no line: what is missing in it is missing here
      YamlTree map = node.isNothing() ? YamlTree.nothing(label, node.path()) : node;
      YamlTree child = map.find(key).orElseGet(() -> map.absent(key));
      return at(child, rest).map(changed -> map.with(key, changed));
    }

    private Optional<YamlTree> atItem(YamlTree node, Step step, List<Step> rest) {
      Optional<Integer> index = KeyPath.index(step, node.items());
      if (index.isEmpty()) {
        List<String> names =
            node.items().stream().flatMap(item -> KeyPath.name(item).stream()).toList();
        String mend =
            names.isEmpty()
                ? "items are counted from 0 in the order written"
                : NearestWord.advice(step.word(), names);
        return refuse("'" + node.path() + "' has no item '" + step.word() + "'", mend);
      }
      return at(node.items().get(index.get()), rest)
          .map(changed -> node.with(index.get(), changed));
    }

    private Optional<YamlTree> refuse(String what, String mend) {
      problems.add(new Problem(what, label, mend));
      return Optional.empty();
    }
  }

  /** Gives problems about overridden keys that nobody knows the nearest key of the whole file. */
  void explain(Reading reading) {
    for (Problem problem : reading.problems.list()) {
      String path = pathByLabel.get(problem.where());
      if (path != null && problem.what().endsWith(YamlMap.UNKNOWN) && isStrange(path, reading)) {
        String key = problem.where().substring(OPTION.length()).replaceFirst("=.*", "");
        List<String> known = new ArrayList<>(reading.known);
        known.removeIf(k -> k.equals(path) || isAncestor(k, path));
        reading.problems.replace(
            problem,
            new Problem(
                "'" + key + "' is no key of a mission",
                problem.where(),
                KeyAdvice.advice(path, known)));
      }
    }
  }

  /** True when the key itself is unknown, and not one inside of its value or of a number's form. */
  private static boolean isStrange(String path, Reading reading) {
    String parent = path.substring(0, Math.max(0, path.lastIndexOf('.')));
    boolean ofNumber =
        reading.known.contains(parent)
            && reading.known.stream().noneMatch(k -> isAncestor(parent, k));
    return !reading.known.contains(path) && !ofNumber;
  }

  private static boolean isAncestor(String path, String of) {
    return of.startsWith(path + ".") || of.startsWith(path + "[");
  }
}

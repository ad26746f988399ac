package hark.mission;

import hark.mission.KeyPath.Step;
import hark.problem.BadInput;
import hark.problem.NearestWord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Sets one key of a YAML text and leaves all else of it as its author wrote it, comments and order
 * included. What is inside a block that is replaced as a whole is lost. Pure.
 */
public final class YamlEdit {
  private static final int INDENT = 2;

  private final String file;
  private final String yaml;

  private YamlEdit(String file, String yaml) {
    this.file = file;
    this.yaml = yaml;
  }

  /**
   * The text with another value at a key; maps on the way that are not there are made.
   *
   * @param file name used in messages
   * @param key as {@code hark check --show-defaults} prints it; items of lists by number or name
   * @param value YAML on one line
   * @throws BadInput when the text, the key or the value cannot be read, or the place cannot be
   *     written to without touching something else
   */
  public static String set(String file, String yaml, String key, String value) {
    YamlTree before = parsed(file, yaml);
    YamlTree wanted = parsed(file + " " + key, oneLine(file, key, value));
    List<Step> steps =
        KeyPath.parse(key.strip())
            .map(KeyPath::steps)
            .orElseThrow(
                () ->
                    BadInput.of(
                        "'" + key + "' is no path of keys",
                        file,
                        "write it like spacecraft.battery.cell.capacity_Ah"));
    String edited = new YamlEdit(file, yaml).at(before, steps, value.strip());
    Problems problems = new Problems();
    YamlTree after = YamlTree.parse(file, edited, problems);
    if (!problems.isEmpty() || !YamlSame.onlySet(before, after, steps, wanted)) {
      throw byHand(file, key);
    }
    return edited;
  }

  private static String oneLine(String file, String key, String value) {
    if (value.isBlank() || value.strip().contains("\n")) {
      throw BadInput.of(
          "the value of " + key + " is " + (value.isBlank() ? "empty" : "longer than one line"),
          file,
          "write a number, a word, [a, b] or { key: value }");
    }
    return value.strip();
  }

  private static YamlTree parsed(String file, String yaml) {
    Problems problems = new Problems();
    YamlTree tree = YamlTree.parse(file, yaml, problems);
    problems.throwIfAny();
    return tree;
  }

  private static BadInput byHand(String file, String key) {
    return BadInput.of(
        "'" + key + "' cannot be set without touching something else of the text",
        file,
        "edit the text itself; aliases and unusual quoting are left to people");
  }

  private String at(YamlTree tree, List<Step> steps, String value) {
    Node node = YamlParser.compose(yaml);
    Node key = null;
    YamlTree here = tree;
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      List<Step> rest = steps.subList(i, steps.size());
      if (step.item()) {
        int index = index(step, here);
        node = ((SequenceNode) node).getValue().get(index);
        key = null;
        here = here.items().get(index);
        continue;
      }
      Optional<NodeTuple> tuple = tuple(node, step.word());
      if (tuple.isEmpty()) {
        return missing(here, key, node, rest, value);
      }
      key = tuple.get().getKeyNode();
      node = tuple.get().getValueNode();
      here = here.find(step.word()).orElseThrow();
    }
    return replaced(key, node, value);
  }

  private int index(Step step, YamlTree list) {
    return KeyPath.index(step, list.items())
        .orElseThrow(
            () -> {
              List<String> names =
                  list.items().stream().flatMap(item -> KeyPath.name(item).stream()).toList();
              return BadInput.of(
                  "'" + list.path() + "' has no item '" + step.word() + "'",
                  file,
                  names.isEmpty()
                      ? "items are counted from 0"
                      : NearestWord.advice(step.word(), names));
            });
  }

  private static Optional<NodeTuple> tuple(Node node, String word) {
    if (!(node instanceof MappingNode map)) {
      return Optional.empty();
    }
    return map.getValue().stream()
        .filter(t -> t.getKeyNode() instanceof ScalarNode key && key.getValue().equals(word))
        .findFirst();
  }

  private String missing(YamlTree here, Node key, Node node, List<Step> rest, String value) {
    if (rest.stream().anyMatch(Step::item)) {
      throw BadInput.of(
          "'" + here.path() + "' has no such list", file, "write the list into the text first");
    }
    if (node instanceof MappingNode map && !map.getValue().isEmpty()) {
      return map.getFlowStyle() == FlowStyle.FLOW
          ? beforeBrace(map, rest, value)
          : afterLast(map, rest, value);
    }
    if (!here.isNothing() && !(node instanceof MappingNode)) {
      throw BadInput.of(
          "'"
              + here.path()
              + "' is "
              + here.found()
              + " and has no key '"
              + rest.get(0).word()
              + "'",
          here.where(),
          "give '" + here.path() + "' a value of its own");
    }
    return replaced(key, node, "{ " + flow(rest, value) + " }");
  }

  /** A new key in {@code { a: 1 }}. */
  private String beforeBrace(MappingNode map, List<Step> rest, String value) {
    int brace = end(map) - 1;
    int at = trimmed(0, brace);
    return yaml.substring(0, at) + ", " + flow(rest, value) + " " + yaml.substring(brace);
  }

  /** A new line under the last one of a block, indented like its first key. */
  private String afterLast(MappingNode map, List<Step> rest, String value) {
    int last = lastEnd(map);
    int newline = yaml.indexOf('\n', last);
    int at = newline < 0 ? yaml.length() : newline;
    int indent = map.getValue().get(0).getKeyNode().getStartMark().getColumn();
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < rest.size(); i++) {
      lines.append('\n').append(" ".repeat(indent + INDENT * i)).append(rest.get(i).word());
      lines.append(i == rest.size() - 1 ? ": " + value : ":");
    }
    return yaml.substring(0, at) + lines + yaml.substring(at);
  }

  private static String flow(List<Step> steps, String value) {
    return steps.size() == 1
        ? steps.get(0).word() + ": " + value
        : steps.get(0).word() + ": { " + flow(steps.subList(1, steps.size()), value) + " }";
  }

  private String replaced(Node key, Node node, String value) {
    int start = offset(node.getStartMark().getIndex());
    int end = lastEnd(node);
    boolean block = node instanceof CollectionNode<?> c && c.getFlowStyle() != FlowStyle.FLOW;
    if (key != null) {
      int colon = yaml.indexOf(':', offset(key.getEndMark().getIndex()));
      if (colon < 0 || start <= colon) {
        throw byHand(file, ((ScalarNode) key).getValue());
      }
      boolean nothing = end <= start;
      if (block || nothing) {
        return yaml.substring(0, colon + 1)
            + " "
            + value
            + yaml.substring(nothing ? colon + 1 : end);
      }
    }
    return yaml.substring(0, start) + value + yaml.substring(end);
  }

  /** Where the text of a node ends; the mark of a block stands at whatever follows it. */
  private int lastEnd(Node node) {
    if (node instanceof CollectionNode<?> c && c.getFlowStyle() != FlowStyle.FLOW) {
      List<Node> inside = new ArrayList<>();
      if (node instanceof MappingNode map) {
        map.getValue().forEach(t -> inside.add(t.getValueNode()));
        map.getValue().forEach(t -> inside.add(t.getKeyNode()));
      } else {
        inside.addAll(((SequenceNode) node).getValue());
      }
      int start = offset(node.getStartMark().getIndex());
      return inside.stream().mapToInt(this::lastEnd).max().orElse(start);
    }
    return trimmed(offset(node.getStartMark().getIndex()), end(node));
  }

  private int end(Node node) {
    return offset(node.getEndMark().getIndex());
  }

  private int trimmed(int from, int to) {
    int at = to;
    while (at > from && Character.isWhitespace(yaml.charAt(at - 1))) {
      at--;
    }
    return at;
  }

  /** Marks count code points. */
  private int offset(int codePoints) {
    return yaml.offsetByCodePoints(0, codePoints);
  }
}

package hark.mission;

import hark.mission.YamlTree.Place;
import hark.problem.Problem;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * Composes YAML into nodes with line marks. No objects are constructed from tags, so a file can
 * name no class.
 */
final class YamlParser {
  /** A longer file is refused before a single character of it is read as YAML. */
  static final int MAX_CHARACTERS = 1_000_000;

  /** Deeper nesting is refused; a mission file has nine levels. */
  static final int MAX_DEPTH = 32;

  /** Aliases of lists and maps; more could swell a small file. */
  static final int MAX_ALIASES = 50;

  /** Nodes after aliases are written out. */
  static final int MAX_NODES = 100_000;

  private final String file;
  private final int firstLine;
  private final Problems problems;
  private int nodes;

  private YamlParser(String file, int firstLine, Problems problems) {
    this.file = file;
    this.firstLine = firstLine;
    this.problems = problems;
  }

  /** Reads a document whose first line is line {@code firstLine} of the file. */
  static YamlTree parse(String file, int firstLine, String yaml, Problems problems) {
    return new YamlParser(file, firstLine, problems).parse(yaml);
  }

  private YamlTree parse(String yaml) {
    Place top = new Place(file, firstLine, "");
    if (yaml.length() > MAX_CHARACTERS) {
      return refuse(
          top,
          yaml.length() + " characters, at most " + MAX_CHARACTERS + " are read",
          "this is not a file written by hand; check that it is the one you meant");
    }
    if (yaml.isBlank()) {
      return refuse(top, "the file is empty", "write its keys, or copy a working file");
    }
    try {
      Node root = compose(yaml);
      return root == null ? refuse(top, "nothing but comments", "write its keys") : tree(root);
    } catch (MarkedYAMLException e) {
      return refuse(at(e.getProblemMark()), "not YAML: " + reason(e), cure(e, yaml));
    } catch (YAMLException e) {
      return refuse(
          top,
          "not YAML: " + firstLineOf(e.getMessage()),
          "only printable UTF-8 text is read; check that it is the file you meant");
    }
  }

  static Node compose(String yaml) {
    LoaderOptions options = new LoaderOptions();
    options.setNestingDepthLimit(MAX_DEPTH);
    options.setMaxAliasesForCollections(MAX_ALIASES);
    options.setCodePointLimit(MAX_CHARACTERS);
    StreamReader reader = new StreamReader(new StringReader(yaml));
    return new Composer(new ParserImpl(reader, options), new Resolver(), options).getSingleNode();
  }

  private YamlTree tree(Node root) {
    YamlTree read = convert(root, place(root, ""), 0);
    if (nodes > MAX_NODES) {
      problems.add(
          new Problem(
              "more than " + MAX_NODES + " values once aliases are written out",
              file,
              "write fewer aliases (*name)"));
    }
    return read;
  }

  private YamlTree convert(Node node, Place place, int depth) {
    nodes++;
    if (depth > MAX_DEPTH) {
      return refuse(place, "nested deeper than " + MAX_DEPTH, "an alias must not contain itself");
    }
    if (nodes > MAX_NODES) {
      return YamlTree.nothing(place);
    }
    if (node instanceof MappingNode map) {
      return YamlTree.map(place, entries(map, place, depth));
    }
    if (node instanceof SequenceNode list) {
      List<YamlTree> items = new ArrayList<>();
      for (Node item : list.getValue()) {
        items.add(convert(item, place(item, place.path() + "[" + items.size() + "]"), depth + 1));
      }
      return YamlTree.list(place, items);
    }
    ScalarNode scalar = (ScalarNode) node;
    if (scalar.isPlain() && scalar.getTag().equals(Tag.NULL)) {
      return YamlTree.nothing(place);
    }
    return YamlTree.text(place, scalar.getValue(), !scalar.isPlain());
  }

  private Map<String, YamlTree> entries(MappingNode map, Place place, int depth) {
    Map<String, YamlTree> entries = new LinkedHashMap<>();
    for (NodeTuple tuple : map.getValue()) {
      if (!(tuple.getKeyNode() instanceof ScalarNode keyNode)) {
        refuse(place(tuple.getKeyNode(), place.path()), "a key must be one word", "quote the key");
        continue;
      }
      String key = keyNode.getValue();
      Place at = place(keyNode, place.path().isEmpty() ? key : place.path() + "." + key);
      YamlTree value = convert(tuple.getValueNode(), at, depth + 1);
      YamlTree earlier = entries.putIfAbsent(key, value);
      if (earlier != null) {
        problems.add(
            value, "the key is written twice, first in line " + earlier.line(), "keep one of them");
      }
    }
    return entries;
  }

  private Place place(Node node, String path) {
    return new Place(file, firstLine + node.getStartMark().getLine(), path);
  }

  private Place at(Mark mark) {
    return new Place(file, mark == null ? firstLine : firstLine + mark.getLine(), "");
  }

  private YamlTree refuse(Place place, String what, String mend) {
    YamlTree nothing = YamlTree.nothing(place);
    problems.add(nothing, what, mend);
    return nothing;
  }

  private static String reason(MarkedYAMLException e) {
    String context = e.getContext() == null ? "" : e.getContext() + ", ";
    return firstLineOf(context + e.getProblem());
  }

  private static String cure(MarkedYAMLException e, String yaml) {
    Mark mark = e.getProblemMark();
    String[] lines = yaml.split("\n", -1);
    boolean tab = mark != null && mark.getLine() < lines.length && hasTab(lines[mark.getLine()]);
    return tab
        ? "indent with spaces: YAML allows no tabs there"
        : "check the indentation, colons and brackets of this line and the one above";
  }

  private static boolean hasTab(String line) {
    return line.indexOf('\t') >= 0;
  }

  private static String firstLineOf(String message) {
    String plain = message == null ? "unreadable" : message.strip();
    int end = plain.indexOf('\n');
    String first = end < 0 ? plain : plain.substring(0, end);
    return first.replaceAll("\\p{Cntrl}+", " ");
  }
}

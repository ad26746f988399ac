package hark.mission;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One node of a YAML document, with the file, line and key path it stands at. Immutable.
 *
 * <p>Scalars keep their text as written: nothing is turned into a number, a date or a truth value
 * behind the reader's back, so {@code 00005} stays a catalogue number and {@code on} stays a word.
 */
public final class YamlTree {
  /** What a node is. */
  public enum Kind {
    MAP,
    LIST,
    TEXT,
    /** Written as {@code null}, {@code ~} or left empty, or not written at all. */
    NOTHING
  }

  private static final int NO_LINE = 0;

  private final String file;
  private final int line;
  private final String path;
  private final Kind kind;
  private final String text;
  private final boolean quoted;
  private final Map<String, YamlTree> entries;
  private final List<YamlTree> items;

  private YamlTree(Place place, Kind kind, String text, boolean quoted, Children children) {
    this.file = place.file();
    this.line = place.line();
    this.path = place.path();
    this.kind = kind;
    this.text = text;
    this.quoted = quoted;
    this.entries = children.entries();
    this.items = children.items();
  }

  /** Where a node stands; the line counts from 1. */
  record Place(String file, int line, String path) {}

  private record Children(Map<String, YamlTree> entries, List<YamlTree> items) {
    static final Children NONE = new Children(Map.of(), List.of());
  }

  /**
   * Reads one YAML document. Everything wrong with its form is added to {@code problems}; the tree
   * that comes back is then empty or partial, never null.
   *
   * @param file name used in messages
   * @param yaml the text, at most {@value YamlParser#MAX_CHARACTERS} characters
   */
  public static YamlTree parse(String file, String yaml, Problems problems) {
    return YamlParser.parse(file, 1, yaml, problems);
  }

  static YamlTree map(Place place, Map<String, YamlTree> entries) {
    Map<String, YamlTree> kept = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    return new YamlTree(place, Kind.MAP, "", false, new Children(kept, List.of()));
  }

  static YamlTree list(Place place, List<YamlTree> items) {
    return new YamlTree(place, Kind.LIST, "", false, new Children(Map.of(), List.copyOf(items)));
  }

  static YamlTree text(Place place, String text, boolean quoted) {
    return new YamlTree(place, Kind.TEXT, text, quoted, Children.NONE);
  }

  static YamlTree nothing(Place place) {
    return new YamlTree(place, Kind.NOTHING, "", false, Children.NONE);
  }

  /** A node that stands in no file: {@code origin} says in words where it comes from. */
  static YamlTree nothing(String origin, String path) {
    return nothing(new Place(origin, NO_LINE, path));
  }

  /** This node and all below it as if they came from {@code origin}, which has no lines. */
  YamlTree movedTo(String origin, String newPath) {
    Map<String, YamlTree> moved = new LinkedHashMap<>();
    entries.forEach((key, value) -> moved.put(key, value.movedTo(origin, newPath + "." + key)));
    List<YamlTree> list = new ArrayList<>();
    for (YamlTree item : items) {
      list.add(item.movedTo(origin, newPath + "[" + list.size() + "]"));
    }
    return new YamlTree(
        new Place(origin, NO_LINE, newPath),
        kind,
        text,
        quoted,
        new Children(Collections.unmodifiableMap(moved), List.copyOf(list)));
  }

  /** This map, or a new one in the place of nothing, with another value for a key. */
  YamlTree with(String key, YamlTree value) {
    Map<String, YamlTree> changed = new LinkedHashMap<>(entries);
    changed.put(key, value);
    return map(new Place(file, line, path), changed);
  }

  /** This list with another item at an index. */
  YamlTree with(int index, YamlTree item) {
    List<YamlTree> changed = new ArrayList<>(items);
    changed.set(index, item);
    return list(new Place(file, line, path), changed);
  }

  /** The file's name as given to {@link #parse}. */
  public String file() {
    return file;
  }

  /** Line, from 1 (0 for what stands in no file); of the key where the node is the value of one. */
  public int line() {
    return line;
  }

  /** Keys from the top, such as {@code spacecraft.solar.faces[2].normal}; empty for the top. */
  public String path() {
    return path;
  }

  /** File, line and key, as problems name them. */
  public String where() {
    if (line == NO_LINE) {
      return file;
    }
    return path.isEmpty() ? file + ":" + line : file + ":" + line + " " + path;
  }

  /** What the node is. */
  public Kind kind() {
    return kind;
  }

  /** True for a null, an empty value or a key that is not there. */
  public boolean isNothing() {
    return kind == Kind.NOTHING;
  }

  /** The scalar as written, without its quotes; empty for any other node. */
  public String text() {
    return text;
  }

  /** True when the scalar was written in quotes, so that it is text whatever it looks like. */
  public boolean isQuoted() {
    return quoted;
  }

  /** Keys and values in the order written; empty for any other node than a map. */
  public Map<String, YamlTree> entries() {
    return entries;
  }

  /** Items in order; empty for any other node than a list. */
  public List<YamlTree> items() {
    return items;
  }

  /** The value of a key; empty when the key is not there. */
  public Optional<YamlTree> find(String key) {
    return Optional.ofNullable(entries.get(key));
  }

  /** A node for a key that is not written: placed at this node's line. */
  YamlTree absent(String key) {
    return nothing(new Place(file, line, path.isEmpty() ? key : path + "." + key));
  }

  /** The node in a few words, as problems quote what was found. */
  public String found() {
    return switch (kind) {
      case MAP -> entries.isEmpty() ? "an empty map" : "a map with " + shortened(entries.keySet());
      case LIST -> "a list of " + items.size();
      case TEXT -> "'" + clipped(text) + "'";
      case NOTHING -> "nothing";
    };
  }

  private static String shortened(Iterable<String> keys) {
    return clipped(String.join(", ", keys));
  }

  private static String clipped(String words) {
    String plain = words.replaceAll("\\p{Cntrl}+", " ");
    return plain.length() <= 60 ? plain : plain.substring(0, 57) + "…";
  }

  @Override
  public String toString() {
    return where() + " " + found();
  }
}

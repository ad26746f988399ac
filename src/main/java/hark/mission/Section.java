package hark.mission;

import hark.ensemble.Uncertain;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * One map of a mission file being read. A value that cannot be read leaves a problem behind and a
 * stand-in that nobody uses, because nothing is built while there are problems.
 */
final class Section {
  private final YamlTree node;
  private final YamlMap map;
  private final Reading reading;

  private Section(YamlTree node, YamlMap map, Reading reading) {
    this.node = node;
    this.map = map;
    this.reading = reading;
  }

  /**
   * Reads a node; one that is absent is read as an empty map when everything in it has defaults.
   */
  static Section of(YamlTree node, Reading reading) {
    YamlTree map =
        node.isNothing()
            ? YamlTree.map(
                new YamlTree.Place(node.file(), node.line(), node.path()), java.util.Map.of())
            : node;
    return new Section(map, YamlMap.of(map, reading.problems), reading);
  }

  YamlTree node() {
    return node;
  }

  private YamlTree get(String key) {
    return reading.asked(map.get(key));
  }

  private YamlTree require(String key) {
    return reading.asked(map.require(key));
  }

  /** The value node of a key, known from now on. */
  YamlTree at(String key) {
    return get(key);
  }

  /** The value node of a key that must be written. */
  YamlTree required(String key) {
    return require(key);
  }

  /** A part that must be there. When it is not, one problem says so and nothing in it is missed. */
  <T> Optional<T> part(String key, Function<Section, T> read) {
    YamlTree value = require(key);
    return value.isNothing() ? Optional.empty() : readPart(value, read);
  }

  /** A part whose absence (or null) means that there is none. */
  <T> Optional<T> partIfWritten(String key, Function<Section, T> read) {
    YamlTree value = get(key);
    return value.isNothing() ? Optional.empty() : readPart(value, read);
  }

  /** A part that may be left out because each of its keys has a default. */
  <T> T partOrDefaults(String key, Function<Section, T> read) {
    YamlTree value = get(key);
    return readPart(value, read)
        .orElseThrow(() -> new IllegalArgumentException("what " + key + " says cannot be used"));
  }

  /** A list of parts; at least one. */
  <T> List<T> parts(String key, Function<Section, T> read) {
    YamlTree value = require(key);
    if (value.kind() == YamlTree.Kind.LIST && value.items().isEmpty()) {
      reading.problems.add(value, "the list is empty, expected at least one", "add one");
    }
    return parts(value, read);
  }

  /** A list of parts that need not be there. */
  <T> List<T> partsIfWritten(String key, Function<Section, T> read) {
    YamlTree value = get(key);
    if (value.isNothing()) {
      noteDefault(value, "[]");
    }
    return parts(value, read);
  }

  private <T> List<T> parts(YamlTree value, Function<Section, T> read) {
    List<T> all = new ArrayList<>();
    for (YamlTree item : YamlValues.list(value, reading.problems)) {
      if (item.isNothing()) {
        reading.problems.add(item, "found nothing, expected keys with values", "remove the item");
      } else {
        readPart(item, read).ifPresent(all::add);
      }
    }
    return all;
  }

  /**
   * Reads a part. A value that the models refuse after the reader has already named it as a problem
   * gives nothing; one that only the models refuse becomes a problem of the part.
   */
  private <T> Optional<T> readPart(YamlTree value, Function<Section, T> read) {
    int before = reading.problems.count();
    Section part = of(value, reading);
    try {
      T result = read.apply(part);
      part.finish();
      return Optional.of(result);
    } catch (IllegalArgumentException refused) {
      if (!reading.isFirst()) {
        throw refused;
      }
      if (reading.problems.count() == before) {
        reading.problems.add(value, refused.getMessage(), "change it to something that can be");
      }
      return Optional.empty();
    }
  }

  void finish() {
    if (reading.isFirst()) {
      map.finish();
    }
  }

  /** A number of the body, which may be uncertain. */
  double number(String key, Span span) {
    return body(require(key), span);
  }

  /** The same with a default. */
  double number(String key, Span span, Uncertain otherwise) {
    YamlTree value = get(key);
    if (value.isNothing()) {
      noteDefault(value, otherwise);
      reading.met(value, otherwise, span);
      return reading.value(value, otherwise, span);
    }
    return body(value, span);
  }

  double number(String key, Span span, double otherwise) {
    return number(key, span, Uncertain.of(otherwise));
  }

  /**
   * The default of a number that is known not to be written, taken at the nearest end of its span.
   */
  double numberOtherwise(String key, Span span, double otherwise) {
    return number(key, span, Uncertain.of(span.clamp(otherwise)));
  }

  private double body(YamlTree value, Span span) {
    if (reading.isDrawn(value)) {
      return reading.drawnValue(value, span);
    }
    Optional<Uncertain> number = UncertainNumbers.read(value, span, reading.problems);
    number.ifPresent(n -> meet(value, n, span));
    return number.map(n -> reading.value(value, n, span)).orElse(span.clamp(0));
  }

  /** A number of the body whose default is not known yet; empty when it is not written. */
  OptionalDouble numberIfWritten(String key, Span span) {
    YamlTree value = get(key);
    return value.isNothing() ? OptionalDouble.empty() : OptionalDouble.of(body(value, span));
  }

  /**
   * A number that is checked when it is written and of which nothing is computed: this body has no
   * use for it.
   */
  void unusedNumber(String key, Span span) {
    YamlTree value = get(key);
    if (!value.isNothing() && reading.isFirst()) {
      uncertain(value, span);
      reading.notComputed.add(value.path());
    }
  }

  /** An uncertain number that is not the body's, such as radiated power. */
  Uncertain uncertain(String key, Span span) {
    return uncertain(require(key), span);
  }

  Uncertain uncertain(String key, Span span, Uncertain otherwise) {
    YamlTree value = get(key);
    if (value.isNothing()) {
      noteDefault(value, otherwise);
      reading.met(value, otherwise, span);
      return otherwise;
    }
    return uncertain(value, span);
  }

  private Uncertain uncertain(YamlTree value, Span span) {
    Optional<Uncertain> number = UncertainNumbers.read(value, span, reading.problems);
    number.ifPresent(n -> meet(value, n, span));
    return number.orElse(Uncertain.of(span.clamp(0)));
  }

  /** A number of which only the mean is used; a spread is allowed and leaves a warning. */
  double mean(String key, Span span) {
    return mean(require(key), span);
  }

  double mean(String key, Span span, double otherwise) {
    YamlTree value = get(key);
    if (value.isNothing()) {
      noteDefault(value, Uncertain.of(otherwise));
      reading.met(value, Uncertain.of(otherwise), span);
      return otherwise;
    }
    return mean(value, span);
  }

  private double mean(YamlTree value, Span span) {
    Uncertain number = uncertain(value, span);
    if (!number.isFixed()) {
      reading.warn(
          value,
          "the spread of this number is not used, only its mean " + Span.print(number.mean()),
          "write the number alone");
    }
    return span.clamp(number.mean());
  }

  private void meet(YamlTree value, Uncertain number, Span span) {
    reading.met(value, number, span);
    warnIfUnusual(value, number, span);
  }

  private void warnIfUnusual(YamlTree value, Uncertain number, Span span) {
    if (!reading.isFirst()) {
      return;
    }
    double mean = number.mean();
    if (!span.isUsual(mean)) {
      String unit =
          span.suspect(mean)
              .map(
                  slip ->
                      "written in "
                          + slip.unit()
                          + "? The key would then want "
                          + Span.print(mean * slip.factor()))
              .orElse("look at it again; its unit is in the key");
      reading.warn(value, Span.print(mean) + " is unusual", unit);
    }
    boolean mostlyInside =
        number.isFixed()
            || (span.holds(number.quantile(0.05)) && span.holds(number.quantile(0.95)));
    if (!mostlyInside) {
      reading.warn(
          value,
          "more than one draw in twenty falls outside of "
              + Span.print(span.min())
              + " to "
              + Span.print(span.max())
              + " and is taken at the limit",
          "narrow the spread or use {min, max}");
    }
  }

  int whole(String key, int min, int max) {
    YamlTree value = require(key);
    int read = YamlValues.whole(value, min, max, reading.problems).orElse(min);
    reading.met(new MissionNumbers.Met(value.path(), Uncertain.of(read), Span.of(min, max), true));
    return read;
  }

  String text(String key) {
    return YamlValues.text(require(key), reading.problems).orElse("");
  }

  String text(String key, String otherwise) {
    YamlTree value = get(key);
    if (value.isNothing()) {
      noteDefault(value, otherwise);
      return otherwise;
    }
    return YamlValues.text(value, reading.problems).orElse(otherwise);
  }

  boolean bool(String key, boolean otherwise) {
    YamlTree value = get(key);
    if (value.isNothing()) {
      noteDefault(value, Boolean.toString(otherwise));
      return otherwise;
    }
    return YamlValues.bool(value, reading.problems).orElse(otherwise);
  }

  <E extends Enum<E>> E choice(String key, Class<E> type) {
    return YamlValues.choice(require(key), type, reading.problems)
        .orElse(type.getEnumConstants()[0]);
  }

  <E extends Enum<E>> E choice(String key, E otherwise) {
    YamlTree value = get(key);
    if (value.isNothing()) {
      noteDefault(value, word(otherwise));
      return otherwise;
    }
    return YamlValues.choice(value, otherwise.getDeclaringClass(), reading.problems)
        .orElse(otherwise);
  }

  /** Says what is taken for a key that is not written. */
  void noteDefault(YamlTree value, String taken) {
    if (reading.isFirst()) {
      reading.defaults.add(new DefaultUsed(value.path(), taken));
    }
  }

  private void noteDefault(YamlTree value, Uncertain taken) {
    if (reading.isFirst()) {
      noteDefault(value, print(taken));
    }
  }

  /** Adds a problem at a key for every name that comes twice, letter case ignored. */
  void requireDistinct(String key, List<String> names, String what) {
    Set<String> seen = new HashSet<>();
    List<YamlTree> items = get(key).items();
    for (int i = 0; i < names.size() && i < items.size(); i++) {
      if (!names.get(i).isEmpty() && !seen.add(names.get(i).toLowerCase(Locale.ROOT))) {
        YamlTree at = items.get(i).find("name").orElse(items.get(i));
        reading.problems.add(
            at, "a second " + what + " is called '" + names.get(i) + "'", "give it its own name");
      }
    }
  }

  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT);
  }

  static String print(Uncertain number) {
    if (number instanceof Uncertain.Normal n) {
      return "{ mean: " + Span.print(n.mean()) + ", sd: " + Span.print(n.sd()) + " }";
    }
    if (number instanceof Uncertain.Uniform u) {
      return "{ min: " + Span.print(u.min()) + ", max: " + Span.print(u.max()) + " }";
    }
    if (number instanceof Uncertain.LogNormal l) {
      return "{ median: " + Span.print(l.median()) + ", factor: " + Span.print(l.factor()) + " }";
    }
    return Span.print(number.mean());
  }
}

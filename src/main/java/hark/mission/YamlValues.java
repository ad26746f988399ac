package hark.mission;

import hark.mission.YamlTree.Kind;
import hark.problem.NearestWord;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Scalars of a YAML file. Each reader adds its problem and answers empty when the node is not what
 * it should be; a node of kind NOTHING answers empty without a problem, because {@link
 * YamlMap#require} has already said so.
 */
public final class YamlValues {
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?\\d+,\\d+");
  private static final Pattern STARTS_AS_NUMBER = Pattern.compile("[-+]?[.\\d]+\\s*[^\\d\\s].*");

  private YamlValues() {}

  /** A plain finite number. */
  public static OptionalDouble number(YamlTree node, Problems problems) {
    if (node.isNothing()) {
      return OptionalDouble.empty();
    }
    if (node.kind() == Kind.TEXT && !node.isQuoted() && NUMBER.matcher(node.text()).matches()) {
      double value = Double.parseDouble(node.text());
      if (Double.isFinite(value)) {
        return OptionalDouble.of(value);
      }
    }
    problems.add(node, "found " + node.found() + ", expected a number", numberCure(node));
    return OptionalDouble.empty();
  }

  private static String numberCure(YamlTree node) {
    String text = node.text();
    if (node.kind() == Kind.TEXT && DECIMAL_COMMA.matcher(text).matches()) {
      return "write the decimal with a point";
    }
    if (node.isQuoted()) {
      return "take the quotes away";
    }
    if (node.kind() == Kind.TEXT && STARTS_AS_NUMBER.matcher(text).matches()) {
      return "write the bare number; its unit is in the key";
    }
    return "write a number such as 1.5";
  }

  /** A plain number within a span. */
  public static OptionalDouble number(YamlTree node, Span span, Problems problems) {
    OptionalDouble read = number(node, problems);
    if (read.isPresent() && !span.holds(read.getAsDouble())) {
      problems.add(node, outside(read.getAsDouble(), span), mend(read.getAsDouble(), span));
      return OptionalDouble.empty();
    }
    return read;
  }

  /** What is wrong with a value outside of a span. */
  static String outside(double value, Span span) {
    return "found " + Span.print(value) + ", expected " + span.words();
  }

  /** What to do about a value outside of a span. */
  static String mend(double value, Span span) {
    return span.suspect(value)
        .map(
            slip ->
                "this looks like "
                    + slip.unit()
                    + "; the key wants "
                    + Span.print(value * slip.factor()))
        .orElse("correct the value; its unit is in the key");
  }

  /** A whole number within limits, both allowed. */
  public static Optional<Integer> whole(YamlTree node, int min, int max, Problems problems) {
    OptionalDouble read = number(node, problems);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    double value = read.getAsDouble();
    if (value != Math.rint(value) || value < min || value > max) {
      problems.add(
          node,
          "found " + node.found() + ", expected a whole number from " + min + " to " + max,
          "correct the value");
      return Optional.empty();
    }
    return Optional.of((int) value);
  }

  /** Words; quotes are optional. */
  public static Optional<String> text(YamlTree node, Problems problems) {
    if (node.isNothing()) {
      return Optional.empty();
    }
    if (node.kind() != Kind.TEXT || node.text().isBlank()) {
      problems.add(node, "found " + node.found() + ", expected words", "write words");
      return Optional.empty();
    }
    return Optional.of(node.text().strip());
  }

  /** {@code true} or {@code false}. */
  public static Optional<Boolean> bool(YamlTree node, Problems problems) {
    if (node.isNothing()) {
      return Optional.empty();
    }
    if (node.kind() == Kind.TEXT && (node.text().equals("true") || node.text().equals("false"))) {
      return Optional.of(node.text().equals("true"));
    }
    problems.add(node, "found " + node.found() + ", expected true or false", "write true or false");
    return Optional.empty();
  }

  /** One of an enumeration's names, written in lower case. */
  public static <E extends Enum<E>> Optional<E> choice(
      YamlTree node, Class<E> type, Problems problems) {
    if (node.isNothing()) {
      return Optional.empty();
    }
    List<E> all = Arrays.asList(type.getEnumConstants());
    List<String> names = all.stream().map(e -> e.name().toLowerCase(Locale.ROOT)).toList();
    int at = names.indexOf(node.text());
    if (at >= 0) {
      return Optional.of(all.get(at));
    }
    problems.add(
        node,
        "found " + node.found() + ", expected " + String.join(", ", names),
        NearestWord.find(node.text(), names)
            .map(near -> "did you mean '" + near + "'?")
            .orElse("choose one of these"));
    return Optional.empty();
  }

  /** A UTC time, ISO-8601 with {@code Z}. */
  public static Optional<Instant> instant(YamlTree node, Problems problems) {
    if (node.isNothing()) {
      return Optional.empty();
    }
    String text = node.text();
    try {
      if (text.endsWith("Z")) {
        return Optional.of(Instant.parse(text));
      }
    } catch (DateTimeParseException e) {
      // told below, in our own words
    }
    problems.add(
        node,
        "found " + node.found() + ", expected a UTC time",
        "write it like 2026-10-02T03:14:00Z");
    return Optional.empty();
  }

  /** A UTC time, or a date, which is taken to its end (24:00 UTC). */
  public static Optional<Instant> untilEndOf(YamlTree node, Problems problems) {
    try {
      if (node.kind() == Kind.TEXT && node.text().length() == "2026-10-02".length()) {
        LocalDate day = LocalDate.parse(node.text());
        return Optional.of(day.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant());
      }
    } catch (DateTimeParseException e) {
      // told by the next reader
    }
    return instant(node, problems);
  }

  /** A list of words; a single word stands for a list of one. */
  public static List<String> texts(YamlTree node, Problems problems) {
    if (node.kind() == Kind.TEXT) {
      return text(node, problems).map(List::of).orElse(List.of());
    }
    return list(node, problems).stream().flatMap(item -> text(item, problems).stream()).toList();
  }

  /** A list of anything; what is not a list is a problem. */
  public static List<YamlTree> list(YamlTree node, Problems problems) {
    if (!node.isNothing() && node.kind() != Kind.LIST) {
      problems.add(node, "found " + node.found() + ", expected a list", "write [ … ]");
    }
    return node.items();
  }

  /** A list of exactly so many plain numbers; anything else is a problem and answers empty. */
  public static Optional<double[]> numbers(YamlTree node, int count, Problems problems) {
    if (node.isNothing()) {
      return Optional.empty();
    }
    if (node.items().size() != count) {
      problems.add(
          node,
          "found " + node.found() + ", expected a list of " + count + " numbers",
          "write it in brackets with commas between");
      return Optional.empty();
    }
    int before = problems.count();
    double[] values =
        node.items().stream()
            .mapToDouble(item -> number(item, problems).orElse(Double.NaN))
            .toArray();
    for (YamlTree item : node.items()) {
      if (item.isNothing()) {
        problems.add(item, "found nothing, expected a number", "write a number");
      }
    }
    return problems.count() == before ? Optional.of(values) : Optional.empty();
  }
}

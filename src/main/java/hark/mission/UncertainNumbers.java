package hark.mission;

import hark.ensemble.Uncertain;
import hark.mission.YamlTree.Kind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Numbers known only so well: plain, {@code {mean, sd}} (normal), {@code {min, max}} (uniform) or
 * {@code {median, factor}} (lognormal, factor e^σ).
 */
public final class UncertainNumbers {
  private static final String FORMS = "write a number, {mean, sd}, {min, max} or {median, factor}";

  private static final List<String> KEYS = List.of("mean", "sd", "min", "max", "median", "factor");

  private UncertainNumbers() {}

  /**
   * Reads one. A plain number, a mean, a median, a least and a greatest value must lie within the
   * span; the tails of a normal or lognormal may reach beyond it (whoever draws clamps them).
   *
   * @return empty, with a problem added, when it cannot be read; empty without one for a node of
   *     kind NOTHING
   */
  public static Optional<Uncertain> read(YamlTree node, Span span, Problems problems) {
    if (node.kind() != Kind.MAP) {
      OptionalDouble plain = YamlValues.number(node, span, problems);
      return plain.isPresent() ? Optional.of(Uncertain.of(plain.getAsDouble())) : Optional.empty();
    }
    Set<String> keys = node.entries().keySet();
    if (keys.contains("mean") || keys.contains("sd")) {
      return pair(node, span, List.of("mean", "sd"), problems);
    }
    if (keys.contains("min") || keys.contains("max")) {
      return pair(node, span, List.of("min", "max"), problems);
    }
    if (keys.contains("median") || keys.contains("factor")) {
      return pair(node, span, List.of("median", "factor"), problems);
    }
    problems.add(node, "found " + node.found() + ", expected an uncertain number", FORMS);
    return Optional.empty();
  }

  /** True for a map that is meant as an uncertain number, well written or not. */
  static boolean isOne(YamlTree node) {
    return KEYS.stream().anyMatch(node.entries()::containsKey);
  }

  private static Optional<Uncertain> pair(
      YamlTree node, Span span, List<String> names, Problems problems) {
    int before = problems.count();
    YamlMap map = YamlMap.of(node, problems);
    boolean bothAreValues = names.get(1).equals("max");
    YamlTree first = map.require(names.get(0));
    YamlTree second = map.require(names.get(1));
    double one = YamlValues.number(first, span, problems).orElse(Double.NaN);
    double two =
        YamlValues.number(second, bothAreValues ? span : Span.ANY, problems).orElse(Double.NaN);
    map.finish();
    if (problems.count() > before) {
      return Optional.empty();
    }
    return make(second, names, one, two, problems);
  }

  private static Optional<Uncertain> make(
      YamlTree at, List<String> names, double one, double two, Problems problems) {
    try {
      return Optional.of(
          switch (names.get(1)) {
            case "sd" -> new Uncertain.Normal(one, two);
            case "max" -> new Uncertain.Uniform(one, two);
            default -> new Uncertain.LogNormal(one, two);
          });
    } catch (IllegalArgumentException e) {
      problems.add(at, e.getMessage(), cure(names.get(1)));
      return Optional.empty();
    }
  }

  private static String cure(String second) {
    return switch (second) {
      case "sd" -> "sd is a standard deviation above 0; for an exact value write the number alone";
      case "max" -> "write min below max; for an exact value write the number alone";
      default -> "median must be positive and factor (e^σ) above 1";
    };
  }
}

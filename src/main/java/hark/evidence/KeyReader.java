package hark.evidence;

import hark.problem.BadInput;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the keys of one entry and gathers what is wrong with them, so that all problems are told at
 * once. Values of faulty keys are stand-ins that never leave: {@link #finish} throws first.
 */
final class KeyReader {
  /** Words that any entry may have; whoever writes an entry takes them off before. */
  private static final List<String> BESIDE = List.of("who", "note");

  private final String kind;
  private final Map<String, String> keys;
  private final List<Problem> problems = new ArrayList<>();

  KeyReader(String kind, Map<String, String> keys) {
    this.kind = kind;
    this.keys = keys;
    for (String key : keys.keySet().stream().sorted().toList()) {
      refuseStranger(key);
    }
  }

  private void refuseStranger(String key) {
    List<String> known = EvidenceKinds.keysOf(kind);
    if (BESIDE.contains(key)) {
      problem(
          key,
          "'" + key + "' stands beside an entry, not among the keys of " + kind,
          "take it out of the keys; every entry has room for who and note of its own");
    } else if (!known.contains(key)) {
      List<String> offered = new ArrayList<>(known);
      offered.addAll(BESIDE);
      problem(key, "'" + key + "' is not a key of " + kind, NearestWord.advice(key, offered));
    }
  }

  void problem(String key, String what, String mend) {
    problems.add(new Problem(what, "key " + key, mend));
  }

  boolean has(String key) {
    return keys.containsKey(key);
  }

  Optional<String> text(String key) {
    String value = keys.get(key);
    if (value == null) {
      return Optional.empty();
    }
    if (value.isBlank()) {
      problem(key, key + " is empty", "give it a value or leave it out");
      return Optional.empty();
    }
    return Optional.of(value.strip());
  }

  String requiredText(String key) {
    if (!has(key)) {
      problem(key, kind + " needs " + key, "add " + key + "=…");
    }
    return text(key).orElse("");
  }

  /** A name that must be one of those known; an empty list of known names checks nothing. */
  Optional<String> name(String key, List<String> known) {
    Optional<String> name = text(key);
    if (name.isPresent() && !known.isEmpty() && !known.contains(name.get())) {
      problem(
          key,
          "the mission has no " + key + " '" + name.get() + "'",
          NearestWord.advice(name.get(), known));
    }
    return name;
  }

  Optional<Instant> instant(String key) {
    return text(key).flatMap(value -> instant(key, value));
  }

  private Optional<Instant> instant(String key, String value) {
    try {
      if (value.endsWith("Z")) {
        return Optional.of(Instant.parse(value));
      }
    } catch (DateTimeParseException e) {
      // told below in the same words as a missing Z
    }
    problem(key, "'" + value + "' is not a UTC time", "write it like 2026-10-02T03:14:00Z");
    return Optional.empty();
  }

  /** A finite number within limits, both allowed. */
  OptionalDouble number(String key, double least, double most, String unit) {
    Optional<String> value = text(key);
    if (value.isEmpty()) {
      return OptionalDouble.empty();
    }
    double number = parsed(value.get());
    if (number >= least && number <= most) {
      return OptionalDouble.of(number);
    }
    problem(
        key,
        String.format(
            Locale.ROOT,
            "%s '%s' is not a number from %s to %s %s",
            key,
            value.get(),
            plain(least),
            plain(most),
            unit),
        "the unit is " + unit);
    return OptionalDouble.empty();
  }

  boolean requiredYesOrNo(String key) {
    if (!has(key)) {
      problem(key, kind + " needs " + key, "add " + key + "=yes or " + key + "=no");
    }
    return yesOrNo(key).orElse(false);
  }

  private static double parsed(String value) {
    try {
      return Double.parseDouble(value);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  private static String plain(double limit) {
    return new java.math.BigDecimal(limit).round(new java.math.MathContext(6)).toPlainString();
  }

  /** One word of a few. */
  Optional<String> choice(String key, List<String> words) {
    Optional<String> value = text(key);
    if (value.isEmpty() || words.contains(value.get())) {
      return value;
    }
    problem(
        key,
        key + " '" + value.get() + "' is not one of " + String.join(", ", words),
        NearestWord.advice(value.get(), words));
    return Optional.empty();
  }

  /** One of a closed set of choices, written in lower case. */
  <E extends Enum<E>> Optional<E> choice(String key, Class<E> choices) {
    List<String> words = EvidenceText.words(choices.getEnumConstants());
    return choice(key, words).map(w -> Enum.valueOf(choices, w.toUpperCase(Locale.ROOT)));
  }

  Optional<Boolean> yesOrNo(String key) {
    return choice(key, List.of("yes", "no")).map("yes"::equals);
  }

  /** Throws all problems there are. */
  void finish() {
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }
}
